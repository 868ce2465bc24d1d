// Five cuts of the power: the profile lies on a file system of its own in a file; at a confirmed write everything is
// frozen and the file copied as it is, without what the system had not yet written to it. The copy is mended as after
// a real cut, mounted, and opened: every line that was said to be kept must be there.
// One more round runs with the strictness taken out of the writes: it must lose something, or the cut is no cut.
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { begin, keepChangingOver } from "./acts.mjs";
import { keptLines, open, until } from "./chromium.mjs";

const ROUNDS = Number(process.env.BENCHSLATE_ROUNDS ?? 5);
const url = process.env.BENCHSLATE_URL;
const sh = (...words) => execFileSync(words[0], words.slice(1), { stdio: ["ignore", "ignore", "pipe"] });

const refused = whyNot();
if (refused) {
  console.log(`not run: ${ROUNDS} cuts of the power (${refused})`);
  console.log("0 passed, 0 failed");
  process.exit(0);
}

let passed = 0;
for (let round = 1; round <= ROUNDS + 1; round += 1) {
  const relaxed = round > ROUNDS;
  const folder = mkdtempSync(join(tmpdir(), "power-"));
  try {
    const { confirmed, kept } = await oneRound(folder, 2 + (round % 5), relaxed);
    const lost = confirmed.filter((line) => !kept.has(line));
    const name = relaxed ? "power, without strictness" : `power ${round}`;
    console.log(`${name}: ${confirmed.length} confirmed, ${lost.length} lost, ${kept.size} on the disk`);
    if (confirmed.length > 0 && lost.length > 0 === relaxed) passed += 1;
  } catch (why) {
    console.log(`power ${round}: ${why.stack}`);
  }
  for (const at of ["before", "after"]) unmounted(join(folder, at));
  rmSync(folder, { recursive: true, force: true, maxRetries: 20 });
}
console.log(`${passed} passed, ${ROUNDS + 1 - passed} failed`);
process.exit(passed === ROUNDS + 1 ? 0 : 1);

async function oneRound(folder, confirmations, relaxed) {
  const [disk, cut] = [join(folder, "disk.img"), join(folder, "cut.img")];
  sh("truncate", "-s", "400M", disk);
  sh("mkfs.ext4", "-q", disk);
  const before = mounted(disk, join(folder, "before"));
  let confirmed = [];
  let count = 0;
  let frozen = false;
  const browser = await open(join(before, "profile"), url, {
    relaxed,
    onKept(lines) {
      if (frozen) return;
      count += 1;
      confirmed = lines;
      if (count >= confirmations) frozen = browser.freeze();
    },
  });
  await begin(browser.page);
  const acting = keepChangingOver(browser.page).catch((why) => why);
  try {
    await until(`confirmation ${confirmations}`, () => frozen, 60000);
    sh("cp", "--sparse=always", disk, cut);
  } finally {
    browser.kill();
    await acting;
    await browser.gone();
  }
  await until("the disk to be let go", () => unmounted(before));
  // 1: mended. Anything above is a file system that cannot be mended.
  try {
    sh("e2fsck", "-fy", cut);
  } catch (why) {
    if (why.status > 1) throw why;
  }
  const after = mounted(cut, join(folder, "after"));
  const again = await open(join(after, "profile"), url);
  await again.page.getByRole("navigation").first().waitFor();
  const kept = new Set(await keptLines(again.page));
  await again.close();
  return { confirmed, kept };
}

function mounted(image, at) {
  mkdirSync(at, { recursive: true });
  sh("mount", "-o", "loop", image, at);
  return at;
}

/** Unmounts; says whether it is unmounted now. */
function unmounted(at) {
  try {
    sh("umount", at);
    return true;
  } catch (why) {
    return !String(why.stderr).includes("busy");
  }
}

/** Why this machine cannot try it, or nothing. */
function whyNot() {
  const folder = mkdtempSync(join(tmpdir(), "power-"));
  try {
    sh("truncate", "-s", "8M", join(folder, "disk.img"));
    sh("mkfs.ext4", "-q", join(folder, "disk.img"));
    mounted(join(folder, "disk.img"), join(folder, "at"));
    unmounted(join(folder, "at"));
    return "";
  } catch (why) {
    return String(why.stderr ?? why).trim().split("\n")[0] || "loop mounts are refused";
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
