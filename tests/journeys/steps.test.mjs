// What is still to be done: steps, taken over from an earlier build or typed; and the outlook that they give.
import assert from "node:assert/strict";
import { logHours, openBuild, setRate, startBuild } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

const idOf = async (thumb, title) => {
  await openBuild(thumb, title);
  return new URL(thumb.page.url()).searchParams.get("at").split(".")[1];
};

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
  await thumb.place("Builds");
  await startBuild(thumb, "Second");
  const id = await idOf(thumb, "Second");
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
