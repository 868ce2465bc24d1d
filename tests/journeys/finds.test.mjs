// Is it worth taking home? Looked at standing in a yard, taken home, sorted in two goes, expected against actual.
import assert from "node:assert/strict";
import { addLot, setRate, startBuild } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

const tapped = async (thumb, digits) => {
  for (const digit of digits) await thumb.tap(digit, "Number pad");
};

/** A rate an hour, and what a kilometre costs. */
async function shop(thumb, go) {
  await startBuild(thumb);
  await setRate(thumb, "28");
  await go("choices");
  await thumb.type("Vehicle, a km", "0.55");
  await thumb.tap(/^Keep/);
}

/** 88 board feet of library shelves: rules, 5, and the example of the appraisal in core. */
async function shelves(thumb) {
  await thumb.place("Stock");
  await thumb.tap(/^Worth it/);
  await thumb.type("what it is", "library shelves");
  await thumb.type("or how much in all", "88");
  await thumb.type("asked", "60");
  await thumb.type("haul, there and back", "20");
  await thumb.type("same thing new, a bd ft", "6.5");
  await thumb.type("new: cut to waste", "10");
  await thumb.type("new: tax", "13");
  for (const [way, usable, minutes] of [["badly", "60", "840"], ["usually", "75", "540"], ["well", "85", "360"]]) {
    await thumb.tap(way, "if it goes");
    await thumb.type("usable", usable);
    await thumb.type("to reclaim all of it", minutes);
  }
}

journey("standing in the yard: boards by the pad, the answer there with each digit", async ({ thumb, go }) => {
  await shop(thumb, go);
  await thumb.place("Stock");
  await thumb.tap(/^Worth it/);
  const before = thumb.taps;
  await thumb.field("boards").tap();
  await tapped(thumb, "22");
  await thumb.field("thick").tap();
  await tapped(thumb, "1");
  await thumb.field("wide").tap();
  await tapped(thumb, "9");
  await thumb.tap("add 1/4", "Marks of the rule, lit ones add");
  await thumb.tap("add 1/8", "Marks of the rule, lit ones add");
  await thumb.field("long").tap();
  await tapped(thumb, "6");
  await thumb.field("asked").tap();
  await tapped(thumb, "60");
  await thumb.field(/^same thing new/).tap();
  await tapped(thumb, "7");
  await thumb.sees(/common practice/);
  await thumb.sees(/usually an hour would pay/);
  assert.ok(thumb.taps - before <= 16, "sixteen taps on keys");
  await thumb.tap("Take it home");
  await thumb.refused("what it is", /./);
});

journey("three ways, dearer if it goes badly; taken home in one tap, sorted in two goes, expected against actual", async ({ thumb, go }) => {
  await shop(thumb, go);
  await shelves(thumb);
  await thumb.page.getByRole("img", { name: /badly .32\.09; usually 215\.63; well 371\.45/ }).waitFor();
  await thumb.sees("usually an hour would pay 51.96");
  await thumb.tap("Keep");
  await thumb.kept("library shelves");
  await thumb.sheet("library shelves");
  await thumb.sees("215.63");
  await thumb.tap(/^badly/, "if it goes");
  await thumb.sees("Dearer than new by");
  await thumb.sees("32.09");
  await thumb.sees(/An hour of it would pay 25\.71/);
  // It stands on the shelf until it is taken or left.
  await thumb.place("Stock");
  await thumb.tap(/^library shelves/);
  await thumb.tap("Take it home");
  await thumb.kept("taken home");
  await thumb.sheet("library shelves");
  await thumb.sees("paid 60.00");
  for (const [good, culled] of [["30", "4"], ["40", "14"]]) {
    await thumb.place("Stock");
    await thumb.tap("Sort");
    await thumb.type("good", good);
    await thumb.type("culled", culled);
    await thumb.tap("Keep the sort");
    await thumb.kept(`${good} good`);
  }
  await thumb.sees("Expected when it was looked at, and so far");
  await thumb.key(/^Usable expected 52\.8 \/ 66 \/ 74\.8 70 bd ft/).waitFor();
  await thumb.key(/^Cash expected 71\.00 71\.00/).waitFor();
  await thumb.tap(/^From the yard to the piece/);
  await thumb.key(/^Sorted 70 bd ft, 80 % culled 18/).waitFor();
});

journey("a find that is left is put away, and taken back", async ({ thumb, go }) => {
  await shop(thumb, go);
  await shelves(thumb);
  await thumb.tap("Keep");
  await thumb.sheet("library shelves");
  await thumb.tap("Leave it");
  await thumb.kept("library shelves");
  await thumb.misses("Not home yet");
  await go("put-away");
  await thumb.tap(/Take back|Back/);
  await thumb.place("Stock");
  await thumb.sees("Not home yet");
});

journey("a new lot says whether it is worth it while it is typed", async ({ thumb, go }) => {
  await shop(thumb, go);
  await thumb.place("Stock");
  await thumb.tap(/^Add a lot/);
  await thumb.type("what, or from where", "library shelves");
  await thumb.type("rough quantity", "88");
  await thumb.type("paid", "60");
  await thumb.type("same thing new, a bd ft", "6.5");
  await thumb.sees("Worth it?");
  await thumb.page.getByRole("img", { name: /badly .*usually .*well/ }).waitFor();
});

journey("saved by source and by species, adding up, a missing price said", async ({ thumb, go }) => {
  await shop(thumb, go);
  const lots = [
    ["oak boards", "church", "oak", "7"], ["elm boards", "church", "elm", "3"], ["ash boards", "mill", "ash", ""],
  ];
  for (const [what, whence, species, price] of lots) {
    await addLot(thumb, { origin: "salvaged" }, {
      "what, or from where": what, "rough quantity": "40", paid: "20", "usable, as you expect": "100",
      "same thing new, a bd ft": price, "from whom or where": whence, species,
    });
    await thumb.tap(new RegExp(`^${what}`));
    await thumb.tap("Use some");
    await thumb.tap("bd ft", "Say how much by");
    await thumb.type("How much", "20");
    await thumb.tap(/^Use 20/);
    await thumb.kept("used");
  }
  await thumb.place("Stock");
  await thumb.tap(/^What salvage saved/);
  // Church: 140 + 60 - 20; the ash has no price.
  await thumb.page.getByText("180.00").first().waitFor();
  await thumb.page.getByRole("img", { name: /church 180\.00/ }).waitFor();
  await thumb.sees(/No price/i);
  await thumb.tap("species", "by");
  await thumb.page.getByRole("img", { name: /oak 130\.00; elm 50\.00/ }).waitFor();
  // A group opens to its lots, a lot to what it was measured against, that to its lines; and back up again.
  await thumb.tap("source", "by");
  await thumb.tap(/^church/);
  await thumb.sheet("church, in all salvage");
  await thumb.tap(/^Oak boards\s*130\.00/);
  await thumb.sheet("Oak boards, in all salvage");
  await thumb.tap(/^Bought instead.*140\.00/);
  await thumb.sheet("Bought instead, in all salvage");
  await thumb.sees(/20 bd ft ×\s7\.00/);
  await thumb.tap(/^Fold back/, "Cost keys");
  await thumb.sheet("Oak boards, in all salvage");
  await thumb.tap(/^Fold back/, "Cost keys");
  await thumb.tap(/^Fold back/, "Cost keys");
  await thumb.tap(/^Fold back/, "Cost keys");
  await thumb.sheet("What salvage saved");
  await go("salvage");
  await thumb.tap(/paid an hour/);
  await thumb.tap(/^church/);
  await thumb.sheet("church, in all salvage");
});
