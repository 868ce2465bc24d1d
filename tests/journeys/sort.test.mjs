// Sorting a salvaged lot: today's good and culled, the yield and what is usable at once.
import assert from "node:assert/strict";
import { addLot, startBuild } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

const MAPLE = { "what, or from where": "gymnasium maple", "rough quantity": "120", paid: "36", "usable, as you expect": "80" };

journey("48 good and 12 culled: the yield stands there while it is typed", async ({ thumb }) => {
  await startBuild(thumb);
  await addLot(thumb, { origin: "salvaged" }, MAPLE);
  await thumb.place("Stock");
  const before = thumb.taps;
  await thumb.tap("Sort");
  await thumb.sheet("Sort: gymnasium maple");
  // The pad writes where the cursor is: good first.
  for (const digit of "48") await thumb.tap(digit, "Number pad");
  await thumb.field("culled").tap();
  for (const digit of "12") await thumb.tap(digit, "Number pad");
  await thumb.sees("Yield so far, 48 of 60");
  await thumb.sees("80 %");
  await thumb.sees(/^Usable in all 96/);
  await thumb.tap("Keep the sort");
  await thumb.kept("48 good, 12 culled");
  assert.equal(thumb.taps - before, 6, "two taps and the digits");
});

journey("more than was gathered is kept and said, never refused", async ({ thumb }) => {
  await startBuild(thumb);
  await addLot(thumb, { origin: "salvaged" }, MAPLE);
  await thumb.place("Stock");
  await thumb.tap("Sort");
  await thumb.type("good", "130");
  await thumb.sees(/^More than is still unsorted/);
  await thumb.tap("Keep the sort");
  await thumb.kept("130 good, 0 culled");
});

journey("nothing typed is refused by the field", async ({ thumb }) => {
  await startBuild(thumb);
  await addLot(thumb, { origin: "salvaged" }, MAPLE);
  await thumb.place("Stock");
  await thumb.tap("Sort");
  await thumb.tap("Keep the sort");
  await thumb.refused("good", "0 is a number too");
});
