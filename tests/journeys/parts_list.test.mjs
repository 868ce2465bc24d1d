// A parts list: written down, planned on boards, cut and ticked while the clock runs; and what a tired person types.
import assert from "node:assert/strict";
import { addLot, openBuild, startBuild, startStage } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

async function partsOf(thumb, go, title) {
  await openBuild(thumb, title);
  const id = new URL(thumb.page.url()).searchParams.get("at").split(".")[1];
  await go(`money.${id}`);
  await thumb.tap(/^Parts list/);
  await thumb.sheet(`Parts, ${title}`);
  return id;
}

async function addPart(thumb, cells) {
  await thumb.tap(/^New part/);
  for (const [label, text] of Object.entries(cells)) await thumb.type(label, text);
  await thumb.tap("Keep");
  await thumb.kept("part");
}

journey("a parts list is planned on boards, and cut and ticked while the clock runs", async ({ thumb, go }) => {
  await startBuild(thumb, "Table");
  const id = await partsOf(thumb, go, "Table");
  await thumb.sees(/No parts yet/);
  await addPart(thumb, { Part: "Leg", "How many": "4", Length: "28", Width: "2", Thickness: "2" });
  // The next one is offered as wide and as thick.
  await addPart(thumb, { Part: "Stretcher", "How many": "2", Length: "3' 4\"" });
  await thumb.key(/^Leg.*28 × 2 × 2 in.*0 of 4 cut/s).waitFor();
  await thumb.key(/^Stretcher.*40 × 2 × 2 in/s).waitFor();
  await thumb.place("Bench");
  await startStage(thumb, "cut");
  await go(`parts.${id}`);
  await thumb.tap(/^Boards/);
  await thumb.sheet("Boards for Table");
  // 4 × 28 + 2 × 40 is 192: two boards of 8 ft would do, were it not for the cuts.
  await thumb.sees("3 boards");
  await thumb.sees(/fewer can’t be/);
  await thumb.type(/^Boards, 8 ft/, "8 ft x 1, 10 ft");
  await thumb.sees(/10 ft to buy, less can’t be/);
  await thumb.tap("Keep the plan");
  await thumb.kept("the plan of cuts");
  await go(`parts.${id}`);
  const before = thumb.taps;
  await thumb.tap("Cut one: Leg");
  await thumb.kept("Leg, 1 of 4");
  assert.equal(thumb.taps - before, 1);
  for (const cut of [2, 3, 4]) {
    await thumb.tap("Cut one: Leg");
    await thumb.kept(`Leg, ${cut} of 4`);
  }
  await thumb.key(/^Leg.*all 4 cut/s).waitFor();
  await thumb.undo();
  await thumb.key("Cut one: Leg").waitFor();
  await thumb.tap("Cut one: Leg");
  await thumb.tap("One less: Leg");
  await thumb.kept("Leg, 3 of 4");
  await openBuild(thumb, "Table");
  await thumb.sees(/Boards 2 × 2 in/);
});

journey("what can't be cut is said by its field, and stays as it was typed", async ({ thumb, go }) => {
  await startBuild(thumb, "Shelf");
  const id = await partsOf(thumb, go, "Shelf");
  await thumb.tap(/^New part/);
  await thumb.type("Part", "Side");
  await thumb.tap("Keep");
  await thumb.type("How many", "2.5");
  await thumb.tap("Keep");
  await thumb.refused("How many", /whole/i, "2.5");
  await thumb.type("How many", "2");
  await thumb.type("Length", "23 3/");
  await thumb.tap("Keep");
  await thumb.refused("Length", /fraction|under/i, "23 3/");
  await thumb.type("Length", "23 3/4");
  await thumb.type("Cut so far", "3");
  await thumb.tap("Keep");
  await thumb.refused("Cut so far", /There are 2/, "3");
  await thumb.type("Cut so far", "");
  await thumb.tap("Keep");
  await thumb.kept("part");
  await go(`cuts.${id}`);
  for (const [typed, says] of [["8 x 3", /unit/i], ["eight", /./], ["8 ft x", /./], ["8 lb", /./]]) {
    await thumb.type(/^Boards, 8 ft/, typed);
    await thumb.tap("Keep the plan");
    await thumb.refused(/^Boards, 8 ft/, says, typed);
  }
  await thumb.type(/^Boards, 8 ft/, "12 in");
  await thumb.sees(/No board is left or long enough for 2 × Side 23 3\/4 in/);
});

journey("a panel moves with its moisture by its wood, and only from 6 to 14 %", async ({ thumb, go }) => {
  await startBuild(thumb, "Table");
  const id = await partsOf(thumb, go, "Table");
  await addPart(thumb, { Part: "Top", "How many": "1", Length: "48", Width: "24", Thickness: "1" });
  await go(`parts.${id}`);
  await thumb.tap(/^Top/);
  await thumb.tap(/^How it moves/);
  await thumb.tap("Keep it as a note");
  await thumb.refused("Which wood", /No wood chosen/);
  await thumb.choose("Which wood", "white oak");
  await thumb.type("Moisture now", "6");
  for (const [typed, says] of [["15", /Only from 6 to 14/], ["dry", /./], ["", /./]]) {
    await thumb.type("Where it will stand", typed);
    await thumb.tap("Keep it as a note");
    await thumb.refused("Where it will stand", says, typed);
  }
  await thumb.type("Where it will stand", "10");
  // 24 × .00365 × 4
  await thumb.sees("0.35 in");
  await thumb.tap("quarter sawn");
  await thumb.sees("0.173 in");
  // 8 board feet of white oak at 10 %: 68 × 1.1 pounds of water's weight.
  await thumb.sees("31.1 lb");
  await thumb.tap("Keep it as a note");
  await thumb.kept("Top, moving");
  await openBuild(thumb, "Table");
  await thumb.sees(/white oak, quarter sawn/);
});

journey("a lot of timber moves by its wood too, and what is left of it weighs; parts are on the way to its use", async ({ page, thumb, go }) => {
  await startBuild(thumb, "Table");
  await addLot(thumb, { origin: "salvaged" }, {
    "what, or from where": "black walnut", "rough quantity": "10", paid: "20", "usable, as you expect": "100",
  });
  await thumb.place("Stock");
  await thumb.tap(/^black walnut/);
  const lot = new URL(page.url()).searchParams.get("at").split(".")[1];
  await thumb.tap(/^How it moves/);
  await thumb.sheet("black walnut, moving");
  // Its wood is known by its name.
  await thumb.type("Moisture now", "12");
  await thumb.type("Where it will stand", "8");
  for (const [typed, says] of [["", /Type the width/], ["0", /Type the width/], ["23 3/", /fraction/i], ["2 lb", /weight/], ["-3", /less than 0/]]) {
    await thumb.type("How wide a board or panel", typed);
    await thumb.tap("Keep it as a note");
    await thumb.refused("How wide a board or panel", says, typed);
  }
  await thumb.type("How wide a board or panel", "20");
  // 20 in × 0.00274 × 4.
  await thumb.sees("0.219 in");
  // 10 bd ft of 0.55 at 8 %: 23.6 l × 0.594.
  await thumb.sees("30.9 lb");
  await thumb.tap("Keep it as a note");
  await thumb.kept("black walnut, moving");
  await go(`journal.${lot}`);
  await thumb.sees(/Narrower by 0\.219 in/);
  const id = await partsOf(thumb, go, "Table");
  await addPart(thumb, { Part: "Leg", "How many": "4", Length: "28", Width: "2", Thickness: "2" });
  await go(`use.${lot}`);
  await thumb.tap(/^Parts list\s*0 of 4 cut/);
  await thumb.sheet("Parts, Table");
  await go(`build.${id}.journal`);
  await thumb.tap(/^Parts list\s*0 of 4 cut/);
  await thumb.sheet("Parts, Table");
});
