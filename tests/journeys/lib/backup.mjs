// Backups as a reader makes and brings them: saved in one tap, chosen from the phone's files, opened with plain ZIP.
import { readFileSync } from "node:fs";
import { inflateRawSync } from "node:zlib";

/** Saves a backup, and gives `{ name, bytes }`. */
export async function backUp({ page, thumb }) {
  await thumb.place("Shop");
  const [download] = await Promise.all([page.waitForEvent("download"), thumb.tap(/^Back up now/)]);
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}

/** Chooses a file on the sheet that brings one in. */
export async function choose({ page, thumb }, bytes, { name = "backup.zip", key = "Choose a file" } = {}) {
  const [chooser] = await Promise.all([page.waitForEvent("filechooser"), thumb.tap(key)]);
  const mimeType = name.endsWith(".zip") ? "application/zip" : "application/jsonl";
  await chooser.setFiles({ name, mimeType, buffer: Buffer.from(bytes) });
}

/** Brings a file in whole. */
export async function bringIn(walk, bytes, options) {
  await walk.go("bring-in");
  await choose(walk, bytes, options);
  await walk.thumb.tap(/^Take it/);
  await walk.thumb.sees(/brought in, and kept/);
}

/** The parts of a ZIP by name: what its list says, read with nothing of ours. */
export function parts(zip) {
  const end = zip.lastIndexOf("PK\u0005\u0006", undefined, "latin1");
  const found = new Map();
  let at = zip.readUInt32LE(end + 16);
  for (let left = zip.readUInt16LE(end + 10); left > 0; left -= 1) {
    const [method, packed] = [zip.readUInt16LE(at + 10), zip.readUInt32LE(at + 20)];
    const [name, extra, comment] = [28, 30, 32].map((field) => zip.readUInt16LE(at + field));
    const head = zip.readUInt32LE(at + 42);
    const from = head + 30 + zip.readUInt16LE(head + 26) + zip.readUInt16LE(head + 28);
    const bytes = zip.subarray(from, from + packed);
    found.set(zip.toString("utf8", at + 46, at + 46 + name), { head, from, bytes: method === 8 ? inflateRawSync(bytes) : bytes });
    at += 46 + name + extra + comment;
  }
  return found;
}

/** The lines in it. */
export const linesOf = (zip) => parts(zip).get("journal.jsonl").bytes.toString("utf8").trimEnd().split("\n");
