// Two windows of one maker: what one writes the other shows, one clock a person, no write lost.
import assert from "node:assert/strict";
import { startBuild, startStage } from "./lib/acts.mjs";
import { lines, stretches } from "./lib/disk.mjs";
import { journey } from "./lib/journey.mjs";
import { until } from "./lib/thumb.mjs";

journey("what one window writes the other shows", async ({ page, thumb, open }) => {
  await startBuild(thumb);
  const other = await open();
  await startStage(thumb, "sand");
  await other.thumb.clock("sand");
  await page.clock.fastForward("00:25:00");
  await other.thumb.tap("Stop");
  await other.thumb.kept("0 h 25, Me");
  await thumb.part("Clock running").waitFor({ state: "detached" });
  await thumb.key(/^Start /).waitFor();
});

journey("two windows start at the same time: one person has one clock", async ({ page, thumb, open }) => {
  await startBuild(thumb);
  const other = await open();
  await other.thumb.key("reclaim").waitFor();
  // Both wait for one word and press at it: what the first then writes can't be heard before that word.
  const keys = await Promise.all([thumb.key("Start design"), other.thumb.key("reclaim")].map((key) => key.elementHandle()));
  const waits = (key) => key.evaluate((it) => void (new BroadcastChannel("now").onmessage = () => it.click()));
  await Promise.all(keys.map(waits));
  await page.evaluate(() => new BroadcastChannel("now").postMessage("press"));
  await Promise.all([thumb.kept(/begun|now/), other.thumb.kept(/begun|now/)]);
  await until("one running clock on the disk", async () => {
    const all = await stretches(page);
    return all.length === 2 && all.filter((it) => !it.to).length === 1;
  });
  // Both windows come to show the one that runs.
  const running = await until("the same slate in both", async () => {
    const [mine, theirs] = await Promise.all([thumb, other.thumb].map((it) => it.part("Clock running").getByRole("heading").allInnerTexts()));
    return mine.length === 1 && mine[0] === theirs[0] && mine[0];
  });
  assert.ok(["design", "reclaim"].includes(running));
});

journey("both windows write as fast as they can, and nothing is lost", async ({ page, thumb, open }) => {
  await startBuild(thumb);
  await startStage(thumb, "mill");
  const other = await open();
  await other.thumb.clock("mill");
  const before = (await lines(page)).length;
  const ROUNDS = 6;
  const keepTapping = async (window) => {
    for (let round = 0; round < ROUNDS; round += 1) {
      await window.tap("15 minutes earlier");
      // The mark tells of this tap, or of one of the other window's: each has written one line.
      await window.kept("begun");
    }
  };
  await Promise.all([keepTapping(thumb), keepTapping(other.thumb)]);
  const written = async () => (await lines(page)).length - before;
  await until("a line for every tap", async () => (await written()) >= 2 * ROUNDS).catch(async (why) => {
    const [mine, theirs] = [await thumb.mark().innerText(), await other.thumb.mark().innerText()];
    throw new Error(`${why.message}: ${await written()} of ${2 * ROUNDS}; the marks say "${mine}" and "${theirs}"`);
  });
  assert.equal(await written(), 2 * ROUNDS);
  // Twelve quarters of an hour earlier than five past eight: each tap was added to what the other had left.
  await thumb.clock("3:00");
  await other.thumb.clock("3:00");
  await thumb.key("Begun 5:05 a.m., change it").waitFor();
});
