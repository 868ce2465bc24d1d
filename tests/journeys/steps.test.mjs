// What is still to be done: steps, taken over from an earlier build or typed; and the outlook that they give.
import assert from "node:assert/strict";
import { logHours, openBuild, setRate, startBuild, startStage } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";
import { until } from "./lib/thumb.mjs";

const idOf = async (thumb, title) => {
  await openBuild(thumb, title);
  return new URL(thumb.page.url()).searchParams.get("at").split(".")[1];
};

/** All fields of a step from the plain list of something turned. */
async function sandOfTurned({ thumb, go }) {
  await startBuild(thumb, "Side table");
  await go(`steps.${await idOf(thumb, "Side table")}`);
  await thumb.tap(/^turned/);
  await thumb.kept("steps");
  await thumb.tap(/^sand/);
  await thumb.tap(/^All of the step/);
}

journey("the outlook of an open build: what comes in, less what it cost and what its steps still cost", async ({ thumb, go }) => {
  await startBuild(thumb, "Trays");
  await setRate(thumb, "30");
  await thumb.place("Bench");
  await logHours(thumb, "2 h", "mill");
  const id = await idOf(thumb, "Trays");
  await go(`money.${id}`);
  await thumb.sees(/Outlook.*no steps yet/s);
  await thumb.tap(/^Money in/);
  await thumb.type("Expected", "500");
  await thumb.tap("Keep");
  await thumb.kept("sale");
  await thumb.tap(/^Steps still to do/);
  await thumb.sees(/Nothing is planned/);
  await thumb.tap(/^New step/);
  await thumb.type("What is to be done", "Sand all of it");
  // One value is enough; what can't be is said by its field.
  await thumb.type("Usual", "6");
  await thumb.type("Quick", "7");
  await thumb.tap("Keep");
  await thumb.refused("Quick", /Quick is the shortest/, "7");
  await thumb.type("Quick", "4");
  await thumb.type("Slow", "9");
  await thumb.tap("Keep");
  await thumb.kept("Sand all of it");
  await go(`steps.${id}`);
  await thumb.key(/^Sand all of it.*6 h 18 left/s).waitFor();
  await go(`money.${id}`);
  // 500 less two hours done and 6.3 still to do, at 30.
  await thumb.key(/^Outlook.*251\.00/s).waitFor();
  await thumb.tap(/^Outlook/);
  await thumb.sheet(/^Outlook/);
  await thumb.tap(/Still to spend/);
  await thumb.sees("189.00");
});

journey("what an earlier build took is taken over in one tap, and a step is done in one", async ({ thumb, go }) => {
  await startBuild(thumb, "First");
  await setRate(thumb, "30");
  await logHours(thumb, "4 h", "mill");
  await logHours(thumb, "2 h", "sand");
  const first = await idOf(thumb, "First");
  await thumb.place("Builds");
  await startBuild(thumb, "Second");
  const id = await idOf(thumb, "Second");
  await go(`steps.${id}`);
  // First is not finished: nobody knows yet how long its stages take.
  await thumb.sees("how is it put together?");
  assert.equal(await thumb.key(/^Take over/).count(), 0);
  await go(`money.${first}`);
  await thumb.tap(/^Made/);
  await thumb.type("Good", "1");
  await thumb.tap("Keep");
  await thumb.kept("made 1 good");
  await go(`steps.${id}`);
  const before = thumb.taps;
  await thumb.tap(/^Take over the hours of First/);
  await thumb.kept("2 steps");
  assert.equal(thumb.taps - before, 1);
  await thumb.sees(/mill.*4 h \d\d left/is);
  await thumb.tap(/^Done: mill/i);
  await thumb.kept("mill is done");
  await thumb.tap("Undo");
  await thumb.key(/^Done: mill/i).waitFor();
});

journey("what earlier builds took is offered while a step's hours are typed, and what no free time holds is said", async ({ thumb, go }) => {
  await startBuild(thumb, "First tray");
  await logHours(thumb, "2 h", "glue-up");
  const first = await idOf(thumb, "First tray");
  await go(`add.made.${first}`);
  await thumb.type("Good", "1");
  await thumb.tap("Keep");
  await thumb.kept("1 good");
  await thumb.place("Builds");
  await startBuild(thumb, "Second tray");
  const second = await idOf(thumb, "Second tray");
  await go(`add.step.${second}`);
  await thumb.type("What is to be done", "Glue all");
  await thumb.choose("Stage", "glue-up");
  await thumb.tap(/^In one go/);
  await thumb.tap("Keep");
  await thumb.kept("Glue all");
  await go(`steps.${second}`);
  await thumb.tap(/^Glue all/);
  await thumb.tap(/^As your one build before.*2 h/);
  assert.equal(await thumb.field("Usually").inputValue(), "2");
});

journey("a plain list by how it is put together, and how long each takes, step after step with one thumb", async ({ thumb, go }) => {
  await startBuild(thumb, "Side table");
  await setRate(thumb, "30");
  const id = await idOf(thumb, "Side table");
  await go(`steps.${id}`);
  await thumb.sees("how is it put together?");
  await thumb.tap("with its film first edit, the finished piece, edit lock");
  await thumb.tap(/^a panel/);
  await thumb.kept("7 steps");
  await thumb.key(/^mill.*no estimate/s).waitFor();
  await thumb.key(/^second coat.*no estimate/s).waitFor();
  assert.equal(await thumb.key(/^edit lock/).count(), 0);
  await thumb.tap(/^mill/);
  await thumb.sheet("mill");
  await thumb.tap("Keep, next");
  await thumb.refused("Usually", /How long it usually takes is missing/);
  await thumb.type("Usually", "4");
  await thumb.type("1 in 10 quicker", "5");
  await thumb.tap("Keep, next");
  await thumb.refused("1 in 10 quicker", /Quick is the shortest/, "5");
  await thumb.type("1 in 10 quicker", "3");
  // Thrown away by the phone and opened again: what was typed is there.
  await thumb.page.reload();
  await until("what was typed stands there", async () => (await thumb.field("1 in 10 quicker").inputValue()) === "3");
  assert.equal(await thumb.field("Usually").inputValue(), "4");
  await thumb.tap("Keep, next");
  // The usual alone: 4 h are up to five thirds of it, to the quarter.
  await thumb.sheet("glue-up");
  assert.equal(await thumb.field("Usually").inputValue(), "");
  await thumb.tap("1", "Number pad");
  await thumb.tap("Keep, next");
  await thumb.sheet("flatten");
  await thumb.tap("Leave");
  await thumb.sheet(/^Steps, Side table/);
  // 0.3 × 3 + 0.4 × 4 + 0.3 × 6.75, and 0.3 × 0.5 + 0.4 × 1 + 0.3 × 1.75: half a minute each, which make one together.
  await thumb.key(/^mill 4 h 32 left/).waitFor();
  await thumb.key(/^glue-up 1 h 04 left/).waitFor();
  await thumb.sees("5 h 36");
});

journey("what a step comes after, how long that dries and when it must be are typed in its fields", async ({ thumb, go }) => {
  await sandOfTurned({ thumb, go });
  await thumb.sees("Comes after");
  await thumb.tap("Correct");
  await thumb.choose("Comes after", "cut, Side table");
  await thumb.type("That one dries for", "12");
  await thumb.type("Not before", "2026-12-05");
  await thumb.type("Over by", "2026-12-01");
  await thumb.tap(/^Keep/);
  await thumb.refused("Over by", /over before it may begin/);
  await thumb.type("Over by", "2026-12-20");
  await thumb.tap(/^Keep/);
  await thumb.sees("cut, 12 h to dry");
});

journey("a step comes after two others, takes clamps while it dries, and gives way: all typed in its form", async ({ thumb, go }) => {
  await sandOfTurned({ thumb, go });
  await thumb.tap("Correct");
  // Nothing has been counted yet: the row leads to where that is done.
  await thumb.tap(/count them first/);
  await thumb.type("Name", "clamps");
  await thumb.type("How many", "6");
  await thumb.tap("Keep");
  // Back in the form.
  await thumb.choose("Comes after", "cut, Side table");
  await thumb.tap("Comes after one more step");
  await thumb.field("Comes after").nth(1).selectOption("cut, Side table");
  await thumb.tap("Takes clamps, a bench, a corner");
  await thumb.choose("Takes", "clamps");
  await thumb.type("How many of it", "7");
  await thumb.type("Taken after it for", "12");
  await thumb.tap("In one go");
  await thumb.tap("May be broken off for another step");
  await thumb.tap("Keep it so");
  await thumb.page.getByRole("alert").filter({ hasText: "It stands there already" }).waitFor();
  await thumb.refused("How many of it", /There are 6/, "7");
  await thumb.page.getByRole("alert").filter({ hasText: "not both" }).waitFor();
  await thumb.field("Comes after").nth(1).selectOption("first coat, Side table");
  await thumb.type("How many of it", "4");
  await thumb.tap("In one go");
  await thumb.tap("Keep it so");
  await thumb.kept("corrected");
  await thumb.sees("4 of clamps, 12 h after it");
  await thumb.sees(/^cut; first coat$|^cut, first coat$/);
  await thumb.sees("May be broken off for another step");
});

journey("what was just stopped is said to be done in one tap, beside its drying times; undo takes it back", async ({ page, thumb, go }) => {
  await startBuild(thumb, "Bowl");
  const id = await idOf(thumb, "Bowl");
  await go(`steps.${id}`);
  await thumb.tap(/^turned/);
  await thumb.kept("steps");
  await thumb.place("Bench");
  await startStage(thumb, "finish");
  await page.clock.fastForward("00:40:00");
  await thumb.tap("Stop");
  await thumb.kept("finish");
  const before = thumb.taps;
  await thumb.tap("Step done first coat");
  await thumb.kept("first coat is done");
  assert.equal(thumb.taps - before, 1);
  await thumb.misses("Step done first coat");
  // Its drying is still asked for, and its end can still be moved.
  await thumb.sees("How long does it dry?");
  await thumb.key("15 minutes earlier", "Just stopped").waitFor();
  await thumb.undo();
  await startStage(thumb, "finish");
  await page.clock.fastForward("00:40:00");
  await thumb.tap("Stop");
  await thumb.tap(/^24 h common practice/);
  await thumb.kept("finish dries until");
  // Said after the drying too.
  await thumb.tap("Step done first coat");
  await thumb.kept("first coat is done");
  await go(`steps.${id}`);
  await thumb.key("Not yet: first coat").waitFor();
});

journey("steps are taken over from whichever earlier build, in one tap", async ({ thumb, go }) => {
  for (const [title, stage] of [["Chest", "mill"], ["Stool", "sand"], ["Rack", ""]]) {
    await startBuild(thumb, title);
    if (stage) {
      await logHours(thumb, "4 h", stage);
      // What it took is known once it is made.
      await go(`add.made.${await idOf(thumb, title)}`);
      await thumb.type("Good", "1");
      await thumb.tap("Keep");
      await thumb.kept("1 good");
    }
    await thumb.place("Builds");
  }
  await go(`steps.${await idOf(thumb, "Rack")}`);
  // The latest in the hand, the others below.
  await thumb.key(/^Take over the hours of Stool/).waitFor();
  await thumb.sees("Or take over the hours of another build");
  const before = thumb.taps;
  await thumb.tap("Chest");
  await thumb.kept("1 step");
  assert.equal(thumb.taps - before, 1);
  await thumb.key(/^Done: mill/i).waitFor();
});
