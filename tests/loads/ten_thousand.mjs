// The bench with ten thousand entries behind it, the processor four times slower: from tap to paint, and from opening
// to a usable bench and to a sheet that needs every entry, against a shop with a handful; and how soon the answers of
// what-if follow the thumb.
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { begin, bringIn } from "./acts.mjs";
import { open } from "./chromium.mjs";

const url = process.env.BENCHSLATE_URL;
const FILE = process.env.BENCHSLATE_JOURNAL;
const TAPS = Number(process.env.BENCHSLATE_TAPS ?? 40);
const OPENS = Number(process.env.BENCHSLATE_ROUNDS ?? 9);
const SLOWER = 4;

const few = await measured("a handful", async (page) => {
  await begin(page);
  await page.getByRole("status").getByText("kept").first().waitFor();
});
const many = await measured("10,000", (page) => bringIn(page, url, readFileSync(FILE)), true);

const ratio = (what) => (few[what] === undefined ? "" : (many[what] / few[what]).toFixed(2));
const line = (what, value, wanted) => console.log(`${what.padEnd(52)} ${String(value).padStart(9)}   wanted ${wanted}`);
console.log(`Processor ${SLOWER} times slower, 360 x 640; medians of ${OPENS} openings, ${TAPS} taps:`);
line("tap on a stage to its slate, 10,000, median ms", at(many.taps, 0.5), "(no target)");
line("tap on a stage to its slate, 10,000, 95th ms", at(many.taps, 0.95), "100 or less");
line("the same with a handful, 95th ms", at(few.taps, 0.95), "(no target)");
line("what if, thumb to the answer, 10,000, median ms", at(many.slides, 0.5), "(no target)");
line("what if, thumb to the answer, 10,000, 95th ms", at(many.slides, 0.95), "50 or less");
line("open to a usable bench, ms", `${few.bench} ${many.bench}`, "(no target)");
line("open to a usable bench, 10,000 against a handful", ratio("bench"), "1.2 or less");
line("open to a folded sheet, ms", `${few.sheet} ${many.sheet}`, "(no target)");
line("open to a folded sheet, 10,000 against a handful", ratio("sheet"), "1.75 or less");

/** A profile that is filled, then opened over and over; its figures. */
async function measured(what, fill, slides = false) {
  const profile = mkdtempSync(join(tmpdir(), "many-"));
  const browser = await open(profile, url);
  const { page } = browser;
  try {
    await page.addInitScript(watch);
    await fill(page);
    const slow = await page.context().newCDPSession(page);
    await slow.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
    const build = await aBuild(page);
    const bench = await median(() => opened(page, "bench", ".hand button"));
    const sheet = await median(() => opened(page, `build.${build}.cost`, "main:not([aria-busy]) .roll > *"));
    await page.goto(`${url}?at=bench`);
    const taps = await tapped(page);
    return { bench, sheet, taps, slides: slides ? await slid(page, build) : undefined };
  } catch (why) {
    throw new Error(`${what}: ${why.message}`);
  } finally {
    await browser.close();
    rmSync(profile, { recursive: true, force: true, maxRetries: 20 });
  }
}

/** A build of the shop, as its address names it. */
async function aBuild(page) {
  await page.goto(`${url}?at=builds`);
  const href = await page.locator('main a[href*="at=build."]').first().getAttribute("href");
  return href.split("at=")[1].split(".")[1];
}

/** Opens an address anew: milliseconds until what was asked for is painted. */
async function opened(page, place, wanted) {
  await page.goto("about:blank");
  await page.goto(`${url}?at=${place}`);
  return page.evaluate((wanted) => window.whenPainted(wanted), wanted);
}

/** Taps a stage, over and over, each tap once the one before is on the disk. */
async function tapped(page) {
  const took = [];
  for (let tap = 0; tap < TAPS; tap += 1) {
    const key = page.locator(".bench-over button, .hand .filled").first();
    await key.waitFor();
    const name = (await key.locator("span").first().innerText()).replace(/^Start /, "");
    const painted = page.evaluate((name) => window.fromTapTo(name), name);
    await key.click();
    took.push(await painted);
    await page.locator(".mark .state:not(.pending)").getByText("kept").waitFor();
  }
  return took;
}

/** Moves the scale of what-if, step after step: from each move of the thumb until its answer is painted. */
async function slid(page, build) {
  await page.goto(`${url}?at=what-if.${build}`);
  const knob = page.getByRole("radio", { name: "My hour" }).or(page.getByRole("button", { name: "My hour", exact: true })).first();
  await knob.click();
  const scale = page.getByRole("slider", { name: "My hour" });
  await scale.focus();
  const took = [];
  for (let step = 0; step < TAPS; step += 1) {
    const painted = page.evaluate(() => window.fromMoveToAnswer());
    await scale.press(step % 2 ? "ArrowLeft" : "ArrowRight");
    took.push(await painted);
  }
  return took;
}

/** Runs in the page before the program. */
function watch() {
  // The frame after the one in which it is there: by then it was painted.
  const painted = () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done(performance.now()))));
  const until = (holds) =>
    new Promise((done, failed) => {
      if (holds()) return done();
      setTimeout(() => failed(new Error(`waited in vain: ${holds}`)), 20000);
      const look = new MutationObserver(() => holds() && (look.disconnect(), done()));
      look.observe(document, { subtree: true, childList: true, characterData: true, attributes: true });
    });
  window.whenPainted = async (wanted) => {
    await until(() => document.querySelector(wanted));
    return Math.round(performance.now());
  };
  window.fromMoveToAnswer = () =>
    new Promise((done) => {
      const said = () => document.querySelector(".answers")?.textContent;
      const before = said();
      addEventListener(
        "input",
        async (event) => {
          await until(() => said() !== before);
          done(Math.round((await painted()) - event.timeStamp));
        },
        { capture: true, once: true },
      );
    });
  window.fromTapTo = (stage) =>
    new Promise((done) => {
      addEventListener(
        "click",
        async (event) => {
          await until(() => document.querySelector(".slate h2")?.textContent === stage);
          done(Math.round((await painted()) - event.timeStamp));
        },
        { capture: true, once: true },
      );
    });
}

async function median(measure) {
  const all = [];
  for (let round = 0; round < OPENS; round += 1) all.push(await measure());
  return at(all, 0.5);
}

function at(all, share) {
  const sorted = [...all].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)];
}
