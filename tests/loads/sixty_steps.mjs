// A plan of sixty steps of three builds, the processor four times slower: from the tap on Plan until it stands there, its
// chance after 2,000 finishes, and all ways to make it surer; and the longest that the page was busy at a time.
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { bringIn } from "./acts.mjs";
import { open } from "./chromium.mjs";

const url = process.env.BENCHSLATE_URL;
const ROUNDS = Number(process.env.BENCHSLATE_ROUNDS ?? 5);
const SLOWER = 4;
/** So many days from now on the first build is due. */
const DUE_IN = 70;

/** The journal, with a date for its first build. */
function journal() {
  const due = new Date(Date.now() + DUE_IN * 86_400_000).toISOString().slice(0, 10);
  let dated = false;
  const lines = readFileSync(process.env.BENCHSLATE_PLAN, "utf8").trim().split("\n").map((text) => {
    const line = JSON.parse(text);
    if (line.kind !== "build" || dated) return text;
    dated = true;
    return JSON.stringify({ ...line, body: { ...line.body, due } });
  });
  return `${lines.join("\n")}\n`;
}

const profile = mkdtempSync(join(tmpdir(), "sixty-"));
const browser = await open(profile, url);
const rounds = [];
try {
  const { page } = browser;
  await page.addInitScript(() => {
    window.busy = [];
    new PerformanceObserver((list) => list.getEntries().forEach((it) => window.busy.push([Math.round(it.startTime), Math.round(it.duration)]))).observe({ type: "longtask" });
  });
  await bringIn(page, url, journal());
  const slow = await page.context().newCDPSession(page);
  await slow.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
  for (let round = 0; round < ROUNDS; round += 1) {
    await page.goto(`${url}?at=shop`);
    await page.getByRole("link", { name: /Plan$/ }).first().waitFor();
    await page.locator("main:not([aria-busy])").first().waitFor();
    await page.evaluate(() => addEventListener("click", (event) => (window.tapped = event.timeStamp), { capture: true, once: true }));
    const seen = page.evaluate(async () => {
      const until = (holds) =>
        new Promise((done) => {
          const look = new MutationObserver(() => holds() && (look.disconnect(), done(performance.now())));
          look.observe(document, { subtree: true, childList: true, characterData: true });
        });
      const text = (query) => document.querySelector(query)?.textContent ?? "";
      const drawn = until(() => document.querySelector(".chance"));
      const chance = until(() => /\d/.test(text(".chance > b")));
      const ways = until(() => /best first|Nothing that the plan/.test(text(".over-ways")));
      return [await drawn, await chance, await ways];
    });
    await page.getByRole("link", { name: /Plan$/ }).first().click();
    const [drawn, chance, ways] = await seen;
    const { tapped, busy, many } = await page.evaluate(() => ({ tapped: window.tapped, busy: window.busy, many: document.querySelectorAll(".ways > li").length }));
    // The tap itself: what is drawn and placed at once; after it: what goes on beside a screen that is alive.
    const first = busy.filter(([start]) => start >= tapped - 5 && start < drawn).map((it) => it[1]);
    const later = busy.filter(([start]) => start >= drawn).map((it) => it[1]);
    const after = (at) => Math.round(at - tapped);
    rounds.push({ drawn: after(drawn), chance: after(chance), ways: after(ways), first: Math.max(0, ...first), later: Math.max(0, ...later), many });
  }
} finally {
  await browser.close();
  rmSync(profile, { recursive: true, force: true, maxRetries: 20 });
}
const middle = (what) => rounds.map((it) => it[what]).sort((one, other) => one - other)[Math.floor(rounds.length / 2)];
const line = (what, value, wanted) => console.log(`${what.padEnd(52)} ${String(value).padStart(9)}   wanted ${wanted}`);
console.log(`Sixty steps, processor ${SLOWER} times slower; medians of ${ROUNDS}:`);
line("tap on Plan to the plan of 60 steps, ms", middle("drawn"), "200 or less");
line("the same to the chance of 2,000 finishes, ms", middle("chance"), "1000 or less");
line(`the same to ${middle("many")} ways that help, ms`, middle("ways"), "5000 or less");
line("longest task at the tap, ms", middle("first"), "(no target)");
line("longest task after it, ms", middle("later") || "under 50", "50 or less");
