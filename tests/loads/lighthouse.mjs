// Lighthouse's phone profile (simulated slow 4G, processor four times slower) on the served release; the worst of
// several runs, each with a fresh profile.
import { launch } from "chrome-launcher";
import lighthouse from "lighthouse";

const RUNS = Number(process.env.BENCHSLATE_ROUNDS ?? 5);
const url = process.env.BENCHSLATE_URL;
const flags = ["--headless=new", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run"];
const runs = [];

let unscoredRuns = 0;
while (runs.length < RUNS) {
  const chrome = await launch({ chromePath: process.env.BENCHSLATE_CHROMIUM, chromeFlags: flags });
  const { lhr } = await lighthouse(url, {
    port: chrome.port,
    logLevel: "error",
    onlyCategories: ["performance", "accessibility", "best-practices"],
  });
  await chrome.kill();
  // A run that could not be scored is no run: a nought in its place would be a lie.
  const unscored = Object.values(lhr.audits).find((audit) => audit.scoreDisplayMode === "error");
  if (lhr.runtimeError || lhr.categories.performance.score === null) {
    console.log(`a run that could not be scored: ${lhr.runtimeError?.message ?? `${unscored?.id}: ${unscored?.errorMessage}`}`);
    unscoredRuns += 1;
    if (unscoredRuns === RUNS) process.exit(1);
    continue;
  }
  const failed = Object.values(lhr.audits).filter((audit) => audit.score === 0 && audit.scoreDisplayMode === "binary");
  runs.push({
    performance: Math.round(100 * lhr.categories.performance.score),
    accessibility: Math.round(100 * lhr.categories.accessibility.score),
    practices: Math.round(100 * lhr.categories["best-practices"].score),
    first: lhr.audits["first-contentful-paint"].numericValue,
    index: lhr.audits["speed-index"].numericValue,
    paint: lhr.audits["largest-contentful-paint"].numericValue,
    blocking: lhr.audits["total-blocking-time"].numericValue,
    shift: lhr.audits["cumulative-layout-shift"].numericValue,
    failed: failed.map((audit) => audit.id),
    version: lhr.lighthouseVersion,
  });
}

const least = (name) => Math.min(...runs.map((run) => run[name]));
const most = (name) => Math.max(...runs.map((run) => run[name]));
const line = (what, value, wanted) => console.log(`${what.padEnd(44)} ${String(value).padStart(9)}   wanted ${wanted}`);
console.log(`Lighthouse ${runs[0].version}, phone profile, worst of ${RUNS}:`);
line("performance", least("performance"), "98 or more");
line("accessibility", least("accessibility"), "100");
line("best practices", least("practices"), "(no target)");
line("largest contentful paint, ms", most("paint").toFixed(0), "1500 or less");
line("first contentful paint, ms", most("first").toFixed(0), "(no target)");
line("speed index, ms", most("index").toFixed(0), "(no target)");
line("blocking, ms", most("blocking").toFixed(0), "50 or less");
line("layout shift", most("shift").toFixed(4), "0");
const failed = [...new Set(runs.flatMap((run) => run.failed))];
if (failed.length > 0) console.log(`audits not passed: ${failed.join(", ")}`);
