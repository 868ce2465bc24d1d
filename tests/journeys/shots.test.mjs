// Shots: planned in a few taps, ticked while the clock runs, told before they are too late; takes, clips, the card.
import assert from "node:assert/strict";
import { logHours, openBuild, sheetOf, startBuild, startStage } from "./lib/acts.mjs";
import { lines } from "./lib/disk.mjs";
import { journey } from "./lib/journey.mjs";
import { until } from "./lib/thumb.mjs";

const TRAYS = "Trays";

async function addStep(thumb, go, build, title, stage) {
  await go(`add.step.${build}`);
  await thumb.type("What is to be done", title);
  await thumb.choose("Stage", stage);
  await thumb.tap("Keep");
  await thumb.kept(title);
}

/** A shot, with what else is said of it. */
export async function addShot(thumb, go, build, what, { cells = {}, step, taps = [] } = {}) {
  await go(`add.shot.${build}`);
  await thumb.type("What is to be shot", what);
  for (const [label, text] of Object.entries(cells)) await thumb.type(label, text);
  if (step) await thumb.choose("At which step", step);
  for (const tap of taps) await thumb.tap(tap);
  await thumb.tap("Keep");
  await thumb.kept(what);
}

async function planned({ thumb, go }) {
  await startBuild(thumb, TRAYS);
  await openBuild(thumb, TRAYS);
  const build = new URL(thumb.page.url()).searchParams.get("at").split(".")[1];
  await addStep(thumb, go, build, "Sand all", "sand");
  await addStep(thumb, go, build, "First coat", "finish");
  await addShot(thumb, go, build, "Grit change", { step: "Sand all", cells: { Takes: "2", "Length of a take": "20 s", "To set up, minutes": "5" } });
  await addShot(thumb, go, build, "First wipe", { step: "First coat", cells: { "Length of a take": "40", "To set up, minutes": "15" }, taps: ["before", /^Once only/] });
  return build;
}

journey("an empty sheet says what goes there, and a name is enough for a shot", async ({ thumb }) => {
  await startBuild(thumb, TRAYS);
  await sheetOf(thumb, "Film", TRAYS);
  await thumb.sees("No shots yet");
  const before = thumb.taps;
  await thumb.tap(/^New shot/);
  await thumb.type("What is to be shot", "Old nails, close");
  await thumb.tap("Keep");
  await thumb.kept("Old nails, close");
  assert.equal(thumb.taps - before, 2);
  await thumb.sheet(`Shots, ${TRAYS}`);
  await thumb.sees("0 of 1 taken");
  await thumb.key(/^Old nails, close.*must; 1 take/s).waitFor();
});

journey("one tap on the bench ticks a shot, and the next missing one takes its place on the key", async ({ page, thumb, go }) => {
  await planned({ thumb, go });
  await thumb.place("Bench");
  await startStage(thumb, "sand");
  const key = () => thumb.key(/^Shot it/);
  await key().filter({ hasText: "Grit change" }).waitFor();
  await thumb.tap(/^Shot it: Grit change, take 1/);
  await thumb.kept("take 1 of 2");
  await thumb.tap(/^Shot it: Grit change, take 2/);
  await thumb.kept("take 2 of 2");
  await key().filter({ hasText: "First wipe" }).waitFor();
  await thumb.undo();
  await key().filter({ hasText: "Grit change" }).waitFor();
  assert.equal(await page.getByRole("dialog").count(), 0);
});

journey("what can be had once only stands on the bench before the change-over, and is missed after it", async ({ thumb, go }) => {
  const build = await planned({ thumb, go });
  await thumb.place("Bench");
  await startStage(thumb, "sand");
  await thumb.sees("once only: before First coat begins");
  await startStage(thumb, "finish");
  await thumb.mark().filter({ hasText: "missed: First wipe" }).waitFor();
  await thumb.misses("once only: before First coat begins");
  await go(`build.${build}.film`);
  await thumb.key(/^First wipe.*once only, missed: before First coat/s).waitFor();
  // The other can be set up again.
  await thumb.key(/^Grit change.*during Sand all is over/s).waitFor();
});

journey("a shot that is left out is no longer told, and is wanted after all in one tap", async ({ thumb, go }) => {
  const build = await planned({ thumb, go });
  await go(`build.${build}.film`);
  await thumb.tap(/^First wipe/);
  await thumb.tap(/^Waive it/);
  await thumb.kept("left out");
  // Of those that are wanted.
  await thumb.sees("0 of 1 taken");
  await thumb.place("Bench");
  await startStage(thumb, "sand");
  await thumb.clock("sand");
  await thumb.misses("before First coat begins");
  await go(`build.${build}.film`);
  await thumb.tap(/^First wipe/);
  await thumb.tap(/^Want it/);
  await thumb.kept("after all");
  await thumb.sees("once only: before First coat begins");
});

journey("a take is a keeper in one tap, its clip is typed later, and the card says what was shot since", async ({ page, thumb, go }) => {
  const build = await planned({ thumb, go });
  await go(`build.${build}.film`);
  await thumb.sees("never copied, nothing on it");
  await thumb.tap(/^Grit change/);
  await thumb.tap(/^Shot it/);
  await thumb.kept("take 1 of 2");
  await thumb.sees("never copied, 1 take");
  await thumb.tap(/^Keeper: Take 1/);
  await thumb.kept("keeper");
  await thumb.sees("1 of 2 taken");
  await page.clock.fastForward("00:01:00");
  await thumb.tap(/^Copied/);
  await thumb.kept("copied");
  await thumb.sees(/copied .*, nothing shot since/);
  await thumb.tap(/^Grit change/);
  await thumb.tap(/^Take 1,/);
  await thumb.sheet("Take");
  await thumb.type("Clip", "x".repeat(61));
  await thumb.tap("Keep");
  await thumb.refused("Clip", /60/, "x".repeat(61));
  await thumb.type("Clip", "clip 412");
  await thumb.tap("Keep");
  await thumb.kept("clip 412, keeper");
  await thumb.key(/^Grit change.*clip 412, keeper/s).waitFor();
  await page.clock.fastForward("00:01:00");
  await thumb.tap(/^Shot it/);
  await thumb.sees(/copied .*, 1 take since/);
});

journey("what can't be is said by its field and stays as it was typed", async ({ thumb, go }) => {
  const build = await planned({ thumb, go });
  await go(`add.shot.${build}`);
  await thumb.tap("Keep");
  await thumb.refused("What is to be shot", /./);
  await thumb.type("What is to be shot", "Something");
  const bad = [
    ["Takes", "0", /can.t be 0/], ["Takes", "two", /whole number/], ["Takes", "1.5", /whole/], ["Takes", "1000", /at most 99/], ["Takes", "-1", /less than 0/],
    ["Length of a take", "0", /can.t be 0/], ["Length of a take", "1:75", /59 seconds/], ["Length of a take", "2 h", /no unit/], ["Length of a take", "99999", /at most 3600/],
    ["To set up, minutes", "0", /can.t be 0/], ["To set up, minutes", "quick", /15, or 1 h 15/], ["To set up, minutes", "99999", /at most 1440/],
  ];
  for (const [label, text, says] of bad) {
    const before = await thumb.field(label).inputValue();
    await thumb.type(label, text);
    await thumb.tap("Keep");
    await thumb.refused(label, says, text);
    await thumb.type(label, before);
  }
  await thumb.type("Takes", "3 x");
  await thumb.type("Length of a take", "1 min 30");
  await thumb.type("To set up, minutes", "1 h 15");
  await thumb.choose("At which step", "none");
  await thumb.tap("Keep");
  await thumb.kept("Something");
  await go(`build.${build}.film`);
  await thumb.key(/^Something.*75 min to set up, 3 \u00d7 90 s/s).waitFor();
});

journey("a shot at no step says that the plan leaves no time for it, until it has one", async ({ page, thumb, go }) => {
  await planned({ thumb, go });
  const shot = (await lines(page)).map((line) => JSON.parse(line)).find((line) => line.kind === "shot");
  const at = async (step) => {
    await go(`entry.${shot.entry}`);
    await thumb.tap("Correct");
    await thumb.choose("At which step", step);
    await thumb.tap("Keep it so");
    await thumb.kept("corrected");
    await sheetOf(thumb, "Film", TRAYS);
    await thumb.sees(/Grit change/);
  };
  await at("");
  await thumb.sees(/at no step: the plan leaves no time for it/);
  await at("Sand all");
  await thumb.misses(/at no step/);
});

journey("a shot whose step was struck out says so and can still be taken", async ({ page, thumb, go }) => {
  const build = await planned({ thumb, go });
  const step = (await lines(page)).map((line) => JSON.parse(line)).find((line) => line.body?.title === "First coat");
  await go(`entry.${step.entry}`);
  await thumb.tap(/^Strike out/);
  await thumb.kept("struck out");
  await go(`build.${build}.film`);
  await thumb.key(/^First wipe.*its step was struck out/s).waitFor();
  await thumb.tap(/^First wipe/);
  await thumb.tap(/^Shot it/);
  await thumb.kept("First wipe");
  await thumb.sees("1 of 2 taken");
});

journey("the caution for filming stands where the shots are until it is seen, and can be read again", async ({ thumb }) => {
  await startBuild(thumb, TRAYS);
  await sheetOf(thumb, "Film", TRAYS);
  await thumb.sees(/guards stay on/);
  await thumb.tap(/^Seen/);
  await thumb.misses(/guards stay on/);
  await thumb.tap(/^Cautions/);
  await thumb.sees(/guards stay on/);
});

journey("what filming costs: hours, what is still to shoot, and how it is reckoned", async ({ page, thumb, go }) => {
  const build = await planned({ thumb, go });
  await logHours(thumb, "1 h 30", "shoot");
  await thumb.place("Bench");
  await startStage(thumb, "sand");
  await thumb.tap(/^camera/i);
  await page.clock.fastForward("01:00:00");
  await thumb.tap("Stop");
  await thumb.kept("sand");
  await go(`build.${build}.film`);
  await thumb.tap(/^What filming costs/);
  await thumb.sees(/Hours for the film alone\s*1 h 30/);
  await thumb.sees(/Camera rolling while the piece was made\s*1 h 00/);
  await thumb.sees("not said yet");
  // 5 min + 2 × 20 s × 3, and 15 min + 40 s × 3.
  await thumb.sees(/Set-ups and takes, must.*common practice.*0 h 24/s);
  await thumb.type("Filming slows work by", "250");
  await thumb.tap("Keep");
  await thumb.refused("Filming slows work by", /0 to 100 %/, "250");
  await thumb.type("Filming slows work by", "25");
  await thumb.type("Real seconds for one", "0");
  await thumb.tap("Keep");
  await thumb.refused("Real seconds for one", /can.t be 0/, "0");
  await thumb.type("Real seconds for one", "6");
  await thumb.tap("Keep");
  await thumb.kept("25 %");
  // Of an hour with the camera there 12 minutes are the camera's.
  await thumb.sees(/Of that, slower for the camera.*0 h 12/s);
  await thumb.sees(/Set-ups and takes, must.*6 real seconds.*as you set it.*0 h 28/s);
  await until("the fields show what is set", async () => (await thumb.field("Filming slows work by").inputValue()) === "25");
});
