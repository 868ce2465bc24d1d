// A build on one line of time, and its ratios beside those of earlier builds.
import assert from "node:assert/strict";
import { journey } from "./lib/journey.mjs";
import { logHours, openBuild, sheetOf, startBuild, startStage } from "./lib/acts.mjs";

const pages = (pdf) => Number(pdf.toString("latin1").match(/\/Count (\d+)/)[1]);

journey("work, drying, the camera, a gap and milestones stand on one line that prints on a page", async ({ page, thumb }) => {
  await startBuild(thumb, "Trays");
  await thumb.place("Bench");
  await startStage(thumb, "glue-up");
  await page.clock.fastForward("00:30:00");
  await thumb.tap("Stop");
  await thumb.tap(/^24 h/);
  await thumb.kept("dries until");
  await page.clock.fastForward(480 * 3_600_000);
  await thumb.place("Bench");
  await startStage(thumb, "sand");
  await thumb.tap(/^camera/i);
  await page.clock.fastForward("01:00:00");
  await thumb.tap("Stop");
  await thumb.kept("sand");
  await sheetOf(thumb, "Time", "Trays");
  await thumb.tap(/^All of it on one line/);
  await thumb.sheet("Line, Trays");
  await thumb.sees("21 days, 1 h 30");
  // Dry on the 21st; the next work on the 10th of December.
  await thumb.sees(/Longest gap\s*18 days from Sun, Nov 22/);
  await thumb.sees(/Days worked\s*2/);
  await thumb.sees(/Days with the camera\s*1/);
  await thumb.sees(/1\s+begun\s*Fri, Nov 20, 2026/);
  for (const format of ["A4", "Letter"]) assert.equal(pages(await page.pdf({ format })), 1, format);
});

journey("a ratio stands beside the middle of the builds before that are over", async ({ page, thumb, go }) => {
  for (const [title, making, cutting] of [["One", "4 h", "1 h"], ["Two", "4 h", "3 h"], ["Under way", "1 h", "1 h"], ["Mine", "2 h", "2 h"]]) {
    await thumb.place("Builds");
    await startBuild(thumb, title);
    await logHours(thumb, making, "mill");
    await logHours(thumb, cutting, "edit");
    if (["One", "Two"].includes(title)) {
      await openBuild(thumb, title);
      await go(`money.${new URL(page.url()).searchParams.get("at").split(".")[1]}`);
      await thumb.tap("Close");
      await thumb.tap("Close it");
      await thumb.kept("closed at");
    }
    await page.clock.fastForward("00:01:00");
  }
  await openBuild(thumb, "Mine");
  await sheetOf(thumb, "Time", "Mine");
  await thumb.sees(/Film, per hour of making.*0\.5 in the middle of 2 before/s);
  await thumb.sees(/The piece, per item.*4 h 00 in the middle of 2 before.*2 h 00/s);
});
