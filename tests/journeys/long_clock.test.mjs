// A long or forgotten clock is asked about: on the bench, at the next look, never by a dialog.
import assert from "node:assert/strict";
import { startBuild, startStage } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

const QUESTION = "Is this clock right?";

/** Sand since five past eight, and nothing written since. */
async function forgotten({ page, thumb }, hours) {
  page.on("dialog", (dialog) => assert.fail(`a dialog: ${dialog.message()}`));
  await startBuild(thumb);
  await startStage(thumb, "sand");
  await page.clock.fastForward(hours);
}

journey("after four quiet hours the bench asks, and goes on when told so", async (walk) => {
  const { page, thumb } = walk;
  await forgotten(walk, "03:58:00");
  await thumb.clock("3:58");
  assert.equal(await thumb.part(QUESTION).count(), 0, "not before four hours");
  await page.clock.fastForward("00:12:00");
  await thumb.part(QUESTION).filter({ hasText: "Still sand? 4 h 10 on the clock" }).waitFor();
  await thumb.tap("Goes on", QUESTION);
  await thumb.kept("goes on");
  await thumb.part(QUESTION).waitFor({ state: "detached" });
  await thumb.clock("4:10");
  await page.clock.fastForward("03:00:00");
  await thumb.clock("7:10");
  assert.equal(await thumb.part(QUESTION).count(), 0, "answered");
});

journey("one tap ends it where something was last written", async (walk) => {
  const { page, thumb } = walk;
  await forgotten(walk, "01:25:00");
  await thumb.clock("1:25");
  await thumb.tap(/^camera/);
  await thumb.kept("rolling");
  await page.clock.fastForward("05:00:00");
  await thumb.tap(/^Ended 9:30 a\.m\./, QUESTION);
  await thumb.kept("ended 9:30 a.m., 1 h 25");
  assert.equal(await thumb.part("Clock running").count(), 0);
});

journey("an act on the build is an answer before the question", async (walk) => {
  const { page, thumb } = walk;
  await forgotten(walk, "03:00:00");
  await thumb.tap(/^camera/);
  await thumb.kept("rolling");
  await page.clock.fastForward("03:00:00");
  await thumb.clock("6:00");
  assert.equal(await thumb.part(QUESTION).count(), 0);
});

journey("a clock that ran past midnight is asked about at the next look", async (walk) => {
  const { page, thumb, open } = walk;
  await forgotten(walk, "00:00:00");
  await thumb.clock("0:00");
  await page.close();
  const late = await open();
  await late.page.clock.fastForward("16:10:00");
  await late.thumb.part(QUESTION).filter({ hasText: /since Fri,? Nov 20.* past midnight/ }).waitFor();
  await late.thumb.tap(/^Ended 8:05 a\.m\./, QUESTION);
  await late.thumb.kept("0 h 00");
});

journey("any other end is typed", async (walk) => {
  const { page, thumb } = walk;
  await forgotten(walk, "06:00:00");
  await thumb.clock("6:00");
  await thumb.tap(/^Other/, QUESTION);
  await thumb.type("Ended", "11:20");
  await thumb.tap("Keep these times");
  await thumb.kept("11:20");
  assert.equal(await thumb.part("Clock running").count(), 0);
});

journey("a paused clock waits and is not asked about", async (walk) => {
  const { page, thumb } = walk;
  await forgotten(walk, "01:00:00");
  await thumb.tap("Pause");
  await thumb.kept("paused");
  await page.clock.fastForward("06:00:00");
  await thumb.clock("1:00");
  assert.equal(await thumb.part(QUESTION).count(), 0);
});
