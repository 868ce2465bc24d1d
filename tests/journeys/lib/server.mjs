// Servers of our own, that really stop: the release build, served as `cargo xtask serve` does it.
import { spawn } from "node:child_process";
import { once } from "node:events";
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";

const ROOT = fileURLToPath(new URL("../../../", import.meta.url));

export const DIST = process.env.BENCHSLATE_DIST ?? join(ROOT, "dist");

/** Why there is nothing to serve, or nothing. */
export const unbuilt = existsSync(join(DIST, "sw.js")) ? false : "no release build in dist (cargo xtask test builds one)";

/** Serves a folder. `stop()` returns once nobody listens any more. */
export async function serve({ dist = DIST, base = "/deep/folder/", port = 0 } = {}) {
  const words = ["serve", "--built", "--port", String(port), "--base", base, "--dist", dist];
  const own = process.env.BENCHSLATE_XTASK;
  const child = own ? spawn(own, words, pipes) : spawn("cargo", ["run", "--quiet", "--package", "xtask", "--", ...words], pipes);
  const [first] = await Promise.race([
    once(createInterface(child.stdout), "line"),
    once(child, "exit").then(() => [""]),
  ]);
  if (!first.startsWith("http")) throw new Error("the server did not start");
  const url = first.trim();
  return {
    url,
    port: Number(new URL(url).port),
    async stop() {
      const gone = once(child, "exit");
      child.kill("SIGKILL");
      await gone;
      await fetch(url).then(
        () => Promise.reject(new Error("somebody still listens")),
        () => {},
      );
    },
  };
}

const pipes = { cwd: ROOT, stdio: ["ignore", "pipe", "inherit"] };

/** A copy of the release build under another version, as the next upload would be: `{ dist, version, drop }`. */
export function nextVersion() {
  const dist = mkdtempSync(join(tmpdir(), "benchslate-next-"));
  cpSync(DIST, dist, { recursive: true });
  const own = versionOf(readFileSync(join(dist, "index.html"), "utf8"));
  const version = [...own].reverse().join("");
  for (const name of ["index.html", "sw.js"]) {
    const file = join(dist, name);
    writeFileSync(file, readFileSync(file, "utf8").replaceAll(own, version));
    // The compressed copy is of the old one.
    rmSync(`${file}.br`, { force: true });
  }
  return { dist, version, drop: () => rmSync(dist, { recursive: true, force: true }) };
}

/** The version that a page carries. */
export const versionOf = (html) => /<meta name="version" content="(\w+)">/.exec(html)[1];

/** A folder for a browser's profile. */
export function freshProfile() {
  const folder = mkdtempSync(join(tmpdir(), "benchslate-profile-"));
  return { folder, drop: () => rmSync(folder, { recursive: true, force: true, maxRetries: 20 }) };
}
