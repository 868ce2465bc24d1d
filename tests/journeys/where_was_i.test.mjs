// Where was I: the last thing done, how long ago, and the likely stage in one tap.
import assert from "node:assert/strict";
import { addLot, BUILD, startBuild, startStage } from "./lib/acts.mjs";
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

journey("what has dried since, what was done on the film and what is low stand under what was done last", async ({ page, thumb, go }) => {
  await startBuild(thumb);
  await addLot(thumb, { use: "used up" }, { what: "disc 120", "how much": "20", "price, before tax": "12", "say when under": "30" });
  await thumb.place("Bench");
  await startStage(thumb, "edit");
  await page.clock.fastForward("00:30:00");
  await startStage(thumb, "glue-up");
  await page.clock.fastForward("01:00:00");
  await thumb.tap("Stop");
  await thumb.tap(/^24 h common practice/);
  await thumb.kept("glue-up dries until");
  await page.clock.fastForward(3 * 24 * 60 * 60 * 1000);
  await go("bench");
  await thumb.sheet(`Where was I: ${BUILD}`);
  await thumb.sees(/^Glue-up, Me 1 h 00/);
  await thumb.sees(/^Edit, Me 0 h 30/);
  await thumb.sees(/^Glue-up, since Sat 9:35/);
  await thumb.sees(/^disc 120, 20 .*left/);
});

journey("with nothing drying that is said too", async ({ page, thumb, go }) => {
  await startBuild(thumb);
  await startStage(thumb, "sand");
  await page.clock.fastForward("00:30:00");
  await thumb.tap("Stop");
  await thumb.kept("sand");
  await page.clock.fastForward(2 * 24 * 60 * 60 * 1000);
  await go("bench");
  await thumb.part("What comes next").waitFor();
  await thumb.sees("Nothing");
});

journey("a build on which nothing was done says so", async ({ thumb }) => {
  await startBuild(thumb, "Stool");
  await thumb.sheet("Stool");
  await thumb.sees(/^Nothing yet\./);
  await thumb.part("What comes next").getByRole("button", { name: /^Start / }).waitFor();
});
