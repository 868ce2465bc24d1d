// Ten rounds: the whole browser is killed right at a confirmed write, while the next one is under way. Opened again,
// every line that was said to be kept must be there. (The disk stays on, so this is a test of order: nothing may be
// confirmed before it is handed over. `power.mjs` is the test of the disk.)
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { begin, keepChangingOver } from "./acts.mjs";
import { keptLines, open, until } from "./chromium.mjs";

const ROUNDS = Number(process.env.BENCHSLATE_ROUNDS ?? 10);
const url = process.env.BENCHSLATE_URL;
let passed = 0;

for (let round = 1; round <= ROUNDS; round += 1) {
  const profile = mkdtempSync(join(tmpdir(), "kill-"));
  try {
    const { confirmed, kept } = await oneRound(profile, 2 + (round % 7));
    const lost = confirmed.filter((line) => !kept.has(line));
    console.log(`kill ${round}: ${confirmed.length} confirmed, ${lost.length} lost, ${kept.size} on the disk`);
    if (lost.length === 0 && confirmed.length > 0) passed += 1;
  } catch (why) {
    console.log(`kill ${round}: ${why.stack}`);
  }
  rmSync(profile, { recursive: true, force: true, maxRetries: 20 });
}
console.log(`${passed} passed, ${ROUNDS - passed} failed`);
process.exit(passed === ROUNDS ? 0 : 1);

async function oneRound(profile, confirmations) {
  let confirmed = [];
  let count = 0;
  let killed = false;
  const browser = await open(profile, url, {
    onKept(lines) {
      if (killed) return;
      count += 1;
      confirmed = lines;
      if (count >= confirmations) killed = browser.kill();
    },
  });
  await begin(browser.page);
  // It ends by an error, when the browser under it is gone.
  const acting = keepChangingOver(browser.page).catch((why) => why);
  await until(`confirmation ${confirmations}`, () => killed, 60000).catch(async (why) => {
    browser.kill();
    throw new Error(`${why.message} (${count} came; ${await acting})`);
  });
  await acting;
  await browser.gone();
  const again = await open(profile, url);
  await again.page.getByRole("navigation").first().waitFor();
  const kept = new Set(await keptLines(again.page));
  await again.close();
  return { confirmed, kept };
}
