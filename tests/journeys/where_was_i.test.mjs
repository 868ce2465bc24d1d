// Where was I: the last thing done, how long ago, and the likely stage in one tap.
import assert from "node:assert/strict";
import { BUILD, startBuild, startStage } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

journey("twenty days later the bench says what was done and starts the likely stage in one tap", async ({ page, thumb, go }) => {
  await startBuild(thumb);
  // What followed sanding before is what is likely to follow it again.
  await startStage(thumb, "sand");
  await page.clock.fastForward("01:55:00");
  await thumb.clock("1:55");
  await startStage(thumb, "finish");
  await page.clock.fastForward("00:30:00");
  await startStage(thumb, "sand");
  await page.clock.fastForward("01:00:00");
  await thumb.clock("1:00");
  await thumb.tap("Stop");
  await thumb.kept("1 h 00, Me");
  await page.clock.fastForward(20 * 24 * 60 * 60 * 1000);
  await go("bench");
  await thumb.sheet(`Where was I: ${BUILD}`);
  await thumb.sees(/^20 days since Fri,? Nov 20$/);
  await thumb.sees(/^Sand, Me [12] h/);
  const before = thumb.taps;
  await thumb.tap("Start finish");
  await thumb.kept("finish begun, Me");
  assert.equal(thumb.taps - before, 1);
  await thumb.clock("0:00");
});

journey("a build on which nothing was done says so", async ({ thumb }) => {
  await startBuild(thumb, "Stool");
  await thumb.sheet("Stool");
  await thumb.sees(/^Nothing yet\./);
  await thumb.part("What comes next").getByRole("button", { name: /^Start / }).waitFor();
});
