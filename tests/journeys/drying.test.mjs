// Drying: offered where a glue-up or a coat is stopped, kept in one tap, skipped in one tap, shown until it is dry.
import assert from "node:assert/strict";
import { BUILD, openBuild, startBuild, startStage } from "./lib/acts.mjs";
import { lines } from "./lib/disk.mjs";
import { journey } from "./lib/journey.mjs";

/** A stage that runs so long and is stopped. */
async function stopped({ page, thumb }, stage, length) {
  await startStage(thumb, stage);
  await page.clock.fastForward(length);
  await thumb.tap("Stop");
  await thumb.kept(stage);
}

const dryings = async (page) => (await lines(page)).map((line) => JSON.parse(line)).filter((line) => line.kind === "drying");

journey("a time is typed once, and offered in one tap the next time", async ({ page, thumb }) => {
  await startBuild(thumb);
  await stopped({ page, thumb }, "glue-up", "01:10:00");
  await thumb.sees("How long does it dry?");
  await thumb.sees(/It can’t ring/);
  await thumb.tap(/^Type it/);
  await thumb.type("Next step after", "6");
  await thumb.type("Clamps or corner taken for", "4");
  await thumb.tap("Keep this time");
  await thumb.kept(/glue-up dries until 3:15/);
  await thumb.sees(/^Glue-up, until 3:15/);
  await thumb.sees(/^clamps or corner taken until 1:15/);
  // Said once.
  await thumb.misses(/It can’t ring/);
  await stopped({ page, thumb }, "glue-up", "00:30:00");
  await thumb.misses(/It can’t ring/);
  const before = thumb.taps;
  await thumb.tap(/^6 h held 4 h/);
  await thumb.kept(/glue-up dries until/);
  assert.equal(thumb.taps - before, 1);
  assert.deepEqual((await dryings(page)).map(({ body }) => [body.next, body.held]), [[360, 240], [360, 240]]);
});

journey("the bench shows what dries while a clock runs, and that it is dry once it is", async ({ page, thumb }) => {
  await startBuild(thumb);
  await stopped({ page, thumb }, "finish", "00:20:00");
  await thumb.tap(/^24 h common practice/);
  await thumb.kept("finish dries until");
  await startStage(thumb, "sand");
  await thumb.key(/^finish dries until Sat 8:25/).waitFor();
  await page.clock.fastForward("26:00:00");
  await thumb.key(/^finish is dry since 8:25/).waitFor();
  await thumb.tap("Stop");
  await thumb.sees(/^Finish, since 8:25/);
  // Worked on again: it is told no more.
  await startStage(thumb, "finish");
  await thumb.misses(/is dry/);
});

journey("none is one tap, is not asked again, and writes nothing", async ({ page, thumb }) => {
  await startBuild(thumb);
  await stopped({ page, thumb }, "glue-up", "00:30:00");
  const before = await lines(page);
  await thumb.tap(/^Doesn’t dry/);
  await thumb.part("What comes next").waitFor();
  await thumb.misses("How long does it dry?");
  assert.deepEqual(await lines(page), before);
  await page.reload();
  await thumb.part("What comes next").waitFor();
  await thumb.misses("How long does it dry?");
});

journey("changed over from a glue-up, it is one tap away under the running clock", async ({ page, thumb }) => {
  await startBuild(thumb);
  await startStage(thumb, "glue-up");
  await page.clock.fastForward("00:40:00");
  await startStage(thumb, "sand");
  await page.clock.fastForward("00:05:00");
  const before = thumb.taps;
  await thumb.tap(/^How long does it dry\? glue-up, 8:45/);
  assert.equal(thumb.taps - before, 1);
  await thumb.sheet("How long glue-up dries");
  await thumb.tap("until when", "How the time is said");
  await thumb.type("Until", "8:30");
  await thumb.type("On, if not at once", "2026-11-20");
  await thumb.tap("Keep this time");
  await thumb.refused("Until", /^!The work ended 8:45/, "8:30");
  await thumb.type("On, if not at once", "");
  await thumb.type("Until", "13:30");
  await thumb.tap("Keep this time");
  await thumb.kept(/glue-up dries until 1:30/);
  await thumb.sheet(BUILD);
  await thumb.key(/^glue-up dries until 1:30/).waitFor();
});

journey("undo takes it back, it can be put back, corrected and struck out", async ({ page, thumb }) => {
  await startBuild(thumb);
  await stopped({ page, thumb }, "glue-up", "01:00:00");
  await thumb.tap(/^24 h common practice/);
  await thumb.kept("dries until");
  await thumb.undo();
  await thumb.misses(/^Glue-up, until/);
  await thumb.tap("Put back");
  await thumb.sees(/^Glue-up, until Sat/);
  await openBuild(thumb);
  await thumb.tap(/dries glue-up, 24 h/);
  await thumb.tap("Correct");
  await thumb.type("Next after", "5 h");
  await thumb.tap("Keep it so");
  await thumb.kept("dries");
  await thumb.place("Bench");
  await thumb.sees(/^Glue-up, until 2:05/);
});

journey("a start moved earlier moves nothing, an end moved earlier dries earlier", async ({ page, thumb }) => {
  await startBuild(thumb);
  await stopped({ page, thumb }, "glue-up", "01:00:00");
  await thumb.tap(/^24 h common practice/);
  await thumb.kept("dries until");
  await thumb.sees(/^Glue-up, until Sat 9:05/);
  await thumb.tap("15 minutes earlier");
  await thumb.kept("ended 8:50");
  await thumb.sees(/^Glue-up, until Sat 8:50/);
});
