// Brotli at its best (11) beside each file of a folder that gets smaller by it. Node brings the encoder along.
import { readdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { promisify } from "node:util";
import { brotliCompress, constants } from "node:zlib";

const folder = process.argv[2];
const texts = /\.(wasm|js|css|html|svg|json|webmanifest|txt)$/;
const names = (await readdir(folder, { recursive: true })).filter((name) => texts.test(name));

await Promise.all(
  names.map(async (name) => {
    const plain = await readFile(join(folder, name));
    const small = await promisify(brotliCompress)(plain, {
      params: {
        [constants.BROTLI_PARAM_QUALITY]: 11,
        [constants.BROTLI_PARAM_LGWIN]: 24,
        [constants.BROTLI_PARAM_SIZE_HINT]: plain.length,
      },
    });
    if (small.length < plain.length) await writeFile(join(folder, name + ".br"), small);
  }),
);
