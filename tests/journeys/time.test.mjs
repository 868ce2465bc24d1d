// The time sheet of a build: hours as bars, cut by stage, person, day and camera, down to the lines of the journal.
import assert from "node:assert/strict";
import { addPerson, BUILD, logHours, sheetOf, startBuild, startStage } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

/** `1 h 30` as minutes. */
const minutes = (text) => {
  const [, hours, rest] = /(\d+) h (\d\d)/.exec(text);
  return Number(hours) * 60 + Number(rest);
};

/** The head figures of the groups, and the rows under them, as minutes. */
async function cut(page) {
  const of = async (selector) => (await page.locator(`${selector} > .figure`).allTextContents()).map(minutes);
  const sum = (figures) => figures.reduce((all, one) => all + one, 0);
  return { groups: sum(await of(".time-group")), rows: sum(await of(".time-row")) };
}

/** Two people at the glue-up, camera running for a quarter of an hour; then editing, and milling logged afterwards. */
async function worked({ page, thumb }) {
  await startBuild(thumb);
  await addPerson(thumb, "Tobin");
  await thumb.place("Bench");
  await startStage(thumb, "glue-up");
  await thumb.tap("both");
  await thumb.kept("by Me and Tobin");
  await page.clock.fastForward("01:00:00");
  await thumb.tap(/^camera/);
  await thumb.kept("camera rolling");
  await page.clock.fastForward("00:15:00");
  await startStage(thumb, "edit");
  await page.clock.fastForward("00:45:00");
  await thumb.tap("Stop");
  await thumb.kept("edit");
  await logHours(thumb, "1 h 30", "mill", { day: "yesterday" });
}

journey("hours are drawn by stage, and every other way to cut them comes to the same", async ({ page, thumb }) => {
  await worked({ page, thumb });
  await sheetOf(thumb, "Time");
  await thumb.sheet(`Time, ${BUILD}`);
  // Twice two hours, and what was logged afterwards.
  await thumb.sees("person-hours 5 h 30");
  await thumb.sees("on the wall 2 h 00");
  await thumb.sees(/^1 h 30 logged as how long only/);
  await thumb.sees("piece 4 h 00");
  await thumb.sees("film 1 h 30");
  for (const way of ["stage", "person", "day"]) {
    await thumb.tap(way, "How it is cut");
    assert.deepEqual(await cut(page), { groups: 330, rows: 330 }, way);
  }
  await thumb.key(/^Fri,? Nov 20/).waitFor();
});

journey("a row opens to the lines of the journal that it is made of", async ({ page, thumb }) => {
  await worked({ page, thumb });
  await sheetOf(thumb, "Time");
  await thumb.tap(/^mill /);
  await thumb.tap(/^Thu,? Nov 19, \w+, logged as how long/);
  await thumb.sheet("mill");
});

journey("the camera's time counts once for two who were filmed, and the film is held against the piece", async ({ page, thumb }) => {
  await worked({ page, thumb });
  await sheetOf(thumb, "Time");
  await thumb.tap("camera", "How it is cut");
  // A rolling camera rolls on over a change of stage: a quarter of an hour of glue-up, 45 minutes of editing.
  const { groups, rows } = await cut(page);
  assert.deepEqual([groups, rows], [60, 60]);
  await thumb.sees("Film, per hour of making");
  await thumb.sees(/1 h 30 ÷ 4 h 00/);
});

journey("once the length of the film is known, the edit is told by its minute", async ({ page, thumb }) => {
  await worked({ page, thumb });
  await sheetOf(thumb, "Time");
  await thumb.misses("Edit, per finished minute");
  await sheetOf(thumb, "Film");
  await thumb.tap(/^The film/);
  await thumb.type("Film, minutes", "12.5");
  await thumb.type("Shot, minutes", "90");
  await thumb.tap("Keep");
  await thumb.kept("film 12.5 min");
  await sheetOf(thumb, "Time");
  // 90 minutes over 12.5 are 7 minutes and 12 seconds for each.
  await thumb.sees(/Edit, per finished minute\s*1 h 30 ÷ 12\.5 min\s*7 min 12 s/);
  await thumb.sees(/Footage, per finished minute\s*7\.2/);
});

journey("a clock that runs is in it so far, and a build without hours says what goes there", async ({ page, thumb }) => {
  await startBuild(thumb, "Stool");
  await sheetOf(thumb, "Time", "Stool");
  await thumb.sees("No hours yet");
  await thumb.place("Bench");
  await startStage(thumb, "sand");
  await page.clock.fastForward("00:20:00");
  await sheetOf(thumb, "Time", "Stool");
  await thumb.sees("person-hours 0 h 20");
  await thumb.sees("so far");
  await thumb.tap(/^sand /);
  await thumb.key(/^Fri,? Nov 20, Me, still runs/).waitFor();
  await page.clock.fastForward("00:05:00");
  await thumb.sees("person-hours 0 h 25");
  // What was opened stays open.
  await thumb.key(/^Fri,? Nov 20, Me, still runs 0 h 25/).waitFor();
});
