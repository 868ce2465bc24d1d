// The worst that is typed: an error by the field in plain words that say what is accepted, what was typed kept,
// nothing written, and the same key keeps it once it is right.
import assert from "node:assert/strict";
import { BUILD, addLot, startBuild } from "./lib/acts.mjs";
import { lines } from "./lib/disk.mjs";
import { journey } from "./lib/journey.mjs";
import { until } from "./lib/thumb.mjs";

const NOVEL = "It was a dark and stormy night in the shop. ".repeat(500);

/** Types each text into a field, taps the key, and looks for the sentence. */
async function refusals({ page, thumb }, field, key, table) {
  const before = await lines(page);
  for (const [typed, says] of table) {
    await thumb.type(field, typed);
    await thumb.tap(key);
    await thumb.refused(field, says, typed);
  }
  assert.deepEqual(await lines(page), before, "nothing was written");
}

journey("quantities", async (walk) => {
  const { thumb, go } = walk;
  await startBuild(thumb);
  await go("new-lot");
  await thumb.tap("salvaged", "How it was come by");
  await thumb.type("what, or from where", "barn oak");
  await thumb.type("paid", "0");
  await refusals(walk, "rough quantity", "Keep the lot", [
    ["-3", "It can't be less than 0"],
    ["1e30", "Write the number out"],
    ["9999999999999999", "Larger than this field goes"],
    ["7/0", "Nothing can be divided by 0"],
    ["23 3/", "The fraction has no bottom yet"],
    ["1,234", "Is it 1234 or 1.234?"],
    ["12 furlongs", "That is no unit known here"],
    ["0", "nothing"],
    [NOVEL, "Too long for this field"],
  ]);
  await thumb.type("rough quantity", "23 3/4");
  await thumb.tap("Keep the lot");
  await thumb.kept("barn oak");
});

journey("what is wrong above the screen comes into view, with the focus", async (walk) => {
  const { page, thumb, go } = walk;
  await startBuild(thumb);
  await go("new-lot");
  await thumb.tap("salvaged", "How it was come by");
  await thumb.type("paid", "0");
  await page.getByLabel("boards").scrollIntoViewIfNeeded();
  await thumb.tap("Keep the lot");
  await thumb.refused("what, or from where", "name");
  const first = page.getByLabel("what, or from where");
  await until("the first wrong field has the focus", () => first.evaluate((it) => it === document.activeElement));
  const [field, read] = [await first.boundingBox(), await page.locator(".read").boundingBox()];
  assert.ok(field.y >= read.y && field.y + field.height <= read.y + read.height, "it is on view");
  await thumb.refused("rough quantity", "How much came?");
  for (const [name, text] of [["thick", "1"], ["wide", "6"], ["long", "8"]]) await thumb.type(name, text);
  await thumb.misses("How much came?");
  await thumb.type("what, or from where", "barn oak");
  await thumb.tap("Keep the lot");
  await thumb.kept("barn oak");
});

journey("money", async (walk) => {
  const { thumb, go } = walk;
  await startBuild(thumb);
  await go("expense");
  await thumb.type("What for", "hire");
  await refusals(walk, "Paid", /^Keep/, [
    ["a lot", "Type an amount as"],
    ["-60", "It can't be less than 0"],
    ["1e30", "Write the number out"],
    ["1.234", "Is it 1234 or 1.234?"],
    [NOVEL, "Too long for this field"],
  ]);
  await thumb.type("Paid", "60,50");
  await thumb.tap(/^Keep/);
  await thumb.kept("60.50");
});

journey("hours", async (walk) => {
  const { thumb, go } = walk;
  await startBuild(thumb);
  await go("hours");
  await refusals(walk, "How long", "Keep hours", [
    ["soon", "Type hours as"],
    ["2:75", "59 minutes at most"],
    ["-2", "It can't be less than 0"],
    ["1e30", "Write the number out"],
    ["2000000", "Larger than this field goes"],
    ["0", "It can't be 0"],
    ["90", "for minutes type 90 min or 1:30"],
    ["30 h", "24 h at most"],
  ]);
  await thumb.tap("other day", "Which day");
  await thumb.type("How long", "2 h");
  await thumb.type("Day", "1026-11-20");
  await thumb.tap("Keep hours");
  await thumb.refused("Day", /Years from \d+ to \d+ are kept/, "1026-11-20");
});

journey("a rate of nothing is kept, nonsense is not", async (walk) => {
  const { thumb, go } = walk;
  await startBuild(thumb);
  await go("shop");
  await thumb.tap(/^Me\b/);
  await refusals(walk, "An hour", "Keep", [
    ["abc", "Type an amount as"],
    ["-1", "It can't be less than 0"],
  ]);
  await thumb.type("An hour", "0");
  await thumb.tap("Keep");
  await thumb.key(/^Me .*0\.00/).waitFor();
});

journey("a unit that does not fit the stock", async (walk) => {
  const { thumb } = walk;
  await startBuild(thumb);
  await addLot(thumb, { use: "used up" }, { what: "hard oil", "how much": "1 l", "price, before tax": "40" });
  await thumb.place("Stock");
  await thumb.tap("Use stock");
  await refusals(walk, "How much", /^Use/, [["3 kg", /volume|kept in/]]);
});

journey("a name as long as a novel, and one that is nothing but spaces", async (walk) => {
  const { thumb, go } = walk;
  await startBuild(thumb);
  await go("new-build");
  await refusals(walk, "What is it?", "Start it", [
    [NOVEL, "Longer than a title"],
    ["   ", "No name yet"],
  ]);
});

journey("names that look like a page of their own stay words", async ({ page, thumb }) => {
  const title = "<img src=x onerror=alert(1)> & \"co\"";
  page.on("dialog", (dialog) => assert.fail(`a dialog: ${dialog.message()}`));
  await startBuild(thumb, title);
  await thumb.page.getByRole("heading", { level: 1 }).filter({ hasText: title }).waitFor();
});

journey("an address that is no place is the bench", async ({ thumb, go }) => {
  await startBuild(thumb);
  for (const at of ["attic", "build.7.cost", "entry.x", "opened..", "%00", "lot.0190f3c2"]) {
    await go(at);
    await thumb.sheet(new RegExp(BUILD));
  }
});

journey("an address of an entry that is not here says so", async ({ page, thumb, go }) => {
  await startBuild(thumb);
  const nobody = "01939f3c-2000-7000-8000-000000000000";
  const said = {
    entry: "No such entry", minute: "No such stretch", lot: "Not on this shelf: struck out, or never here.", sort: "Not on this shelf: struck out, or never here.",
    use: "Nothing to use yet", return: "This draw is struck out or not there.", person: "No such person", "build.cost": "No such build", "build.journal": "No such build",
    "opened.true": "Nothing to open here any more",
  };
  for (const [kind, words] of Object.entries(said)) {
    await go(kind.replace(/^\w+/, (name) => `${name}.${nobody}`));
    await page.getByRole("heading", { level: 1 }).filter({ hasText: /\w/ }).waitFor();
    await page.getByText(words).first().waitFor();
    assert.equal(await page.getByRole("button", { name: /^Keep|^Put it back/ }).count(), 0, `${kind}: nothing to keep`);
  }
});
