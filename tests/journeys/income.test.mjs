// What comes in for a build: expected, received bit by bit, tax and fee in it, shared with another build.
import assert from "node:assert/strict";
import { openBuild, startBuild } from "./lib/acts.mjs";
import { lines } from "./lib/disk.mjs";
import { journey } from "./lib/journey.mjs";

async function moneyOf({ page, thumb, go }, title) {
  await openBuild(thumb, title);
  const id = new URL(page.url()).searchParams.get("at").split(".")[1];
  await go(`money.${id}`);
  await thumb.sheet(`Money, ${title}`);
  return id;
}

journey("565.00 with 13 % tax in it and a fee of 16.95 is 483.05 net", async (walk) => {
  const { thumb } = walk;
  await startBuild(thumb, "Side table");
  await moneyOf(walk, "Side table");
  await thumb.sees("Nothing came in yet");
  const before = thumb.taps;
  await thumb.tap(/^Money in/);
  await thumb.type("Received", "565.00");
  await thumb.type("Tax in it", "13 %");
  await thumb.type("Fee kept back", "16.95");
  await thumb.tap("Keep");
  await thumb.kept("income sale");
  assert.ok(thumb.taps - before <= 2, "two taps beside the typing");
  await thumb.key(/^sale 565\.00 − tax 65\.00 − fee 16\.95\s*483\.05/).waitFor();
  await thumb.sees("Tax that came with it");
  await thumb.sees("65.00");
});

journey("a deposit counts, the rest stays expected, and arrives in two taps", async (walk) => {
  const { thumb } = walk;
  await startBuild(thumb, "Reading bench");
  await moneyOf(walk, "Reading bench");
  await thumb.tap(/^Money in/);
  await thumb.choose("Where from", "commission");
  await thumb.type("Expected", "780");
  await thumb.type("Expected by", "2026-12-18");
  await thumb.type("Received", "300");
  await thumb.tap("Keep");
  await thumb.kept("income commission");
  await thumb.key(/^commission by .*300\.00 of 780\.00 in\s*480\.00/).waitFor();
  const before = thumb.taps;
  await thumb.tap(/^commission by /);
  await thumb.tap(/^Received 480\.00/);
  assert.equal(thumb.taps - before, 2);
  await thumb.kept("received");
  await thumb.key(/^commission 780\.00\s*780\.00/).waitFor();
  await thumb.misses("Still expected");
  await thumb.undo();
  await thumb.key(/^commission by /).waitFor();
});

journey("money is shared among builds by parts; paid back is below zero", async (walk) => {
  const { page, thumb } = walk;
  await startBuild(thumb, "Tray");
  await thumb.place("Builds");
  await thumb.tap("Start a build");
  await thumb.type("What is it?", "Stool");
  await thumb.tap("Start it");
  await thumb.kept("Stool");
  await moneyOf(walk, "Stool");
  await thumb.tap(/^Money in/);
  await thumb.type("Received", "100");
  await thumb.choose("Shared with one more", "Tray");
  await thumb.type("Parts for Tray", "3");
  await thumb.tap("Keep");
  await thumb.kept("income sale");
  await thumb.key(/^sale 25\.00; 1 of 4 parts\s*25\.00/).waitFor();
  await thumb.tap(/^sale 25\.00/);
  await thumb.tap("Correct");
  await thumb.tap("One more payment");
  await page.getByLabel("Received", { exact: true }).nth(1).fill("-20");
  await thumb.tap("Keep it so");
  await thumb.kept("corrected");
  const income = (await lines(page)).map((line) => JSON.parse(line)).findLast((line) => line.kind === "income");
  assert.deepEqual(income.body.received.map((it) => it.amount), ["100", "-20"]);
});

journey("income without an amount, or with tax of nothing, is refused by its field", async (walk) => {
  const { thumb } = walk;
  await startBuild(thumb, "Tray");
  await moneyOf(walk, "Tray");
  await thumb.tap(/^Money in/);
  await thumb.tap("Keep");
  await thumb.refused("Expected", "No amount yet");
  await thumb.type("Tax in it", "13 %");
  await thumb.tap("Keep");
  await thumb.refused("Received", "No amount yet");
  await thumb.type("Received", "12,3,4");
  await thumb.tap("Keep");
  await thumb.refused("Received", "Kept as typed", "12,3,4");
});
