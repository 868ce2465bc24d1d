// Stock in: bought and salvaged lots, the writings of the trade, nominal and actual kept apart.
import assert from "node:assert/strict";
import { addLot, startBuild } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";
import { until } from "./lib/thumb.mjs";

journey("an empty shelf says what goes there and offers the first lot", async ({ thumb }) => {
  await startBuild(thumb);
  await thumb.place("Stock");
  await thumb.sees("The shelf is empty");
  await thumb.tap(/^Add a lot/);
  await thumb.sheet(/^New lot/);
});

journey("a bought lot: price and tax, the guess of the currency shown beside it", async ({ thumb }) => {
  await startBuild(thumb);
  await thumb.place("Stock");
  await thumb.tap(/^Add a lot/);
  await thumb.tap("fitting", "What it is for");
  await thumb.tap("bought", "How it was come by");
  // Canada by the language of the phone: said once, changed in one tap.
  await thumb.sees("Counted in CAD, going by where this phone is");
  await thumb.type("what", "brass hinges");
  await thumb.type("how much", "8 hinges");
  await thumb.type("price, before tax", "40");
  await thumb.type("tax", "13 %");
  await thumb.sees("Tax 5.20, with it 45.20");
  await thumb.sees("5.65");
  await thumb.tap("Keep the lot");
  await thumb.kept(/lot.*8 hinges/);
  await thumb.place("Stock");
  await thumb.key(/brass hinges.*45\.20/).waitFor();
  await thumb.tap(/^Add a lot/);
  assert.equal(await thumb.page.getByText(/going by where this phone is/).count(), 0, "asked once");
});

journey("the shop's sales tax stands in what is bought, and not in what is salvaged", async ({ thumb, go }) => {
  await startBuild(thumb);
  await go("choices");
  await thumb.type("Sales tax", "14.975");
  await thumb.tap("Keep");
  await thumb.kept("14.975 %");
  await thumb.place("Stock");
  await thumb.tap(/^Add a lot/);
  await thumb.tap("salvaged", "How it was come by");
  assert.equal(await thumb.field("tax").inputValue(), "");
  await thumb.tap("bought", "How it was come by");
  await until("the tax is offered", async () => (await thumb.field("tax").inputValue()) === "14.975 %");
  await thumb.type("what, or from where", "barn oak");
  await thumb.type("how much", "40");
  await thumb.type("price, before tax", "160");
  await thumb.sees("Tax 23.96, with it 183.96");
  await thumb.tap("Keep the lot");
  await thumb.kept("barn oak");
  await thumb.place("Stock");
  await thumb.key(/barn oak.*183\.96/).waitFor();
});

journey("tax that can be got back is no cost", async ({ thumb }) => {
  await startBuild(thumb);
  await addLot(thumb, { use: "fitting", ticks: [/^The tax can be got back/] }, { what: "screws", "how much": "100", "price, before tax": "20", tax: "2.60" });
  await thumb.place("Stock");
  await thumb.key(/screws.*20\.00/).waitFor();
});

journey("a salvaged lot for nothing, in its plain form", async ({ thumb }) => {
  await startBuild(thumb);
  const before = thumb.taps;
  await addLot(thumb, { origin: "salvaged" }, {
    "what, or from where": "gymnasium maple", "rough quantity": "120", paid: "0", "fee at the place": "36", "usable, as you expect": "80",
  });
  assert.ok(thumb.taps - before <= 5);
  await thumb.place("Stock");
  // 36.00 over 96 usable of 120.
  await thumb.key(/gymnasium maple.*36\.00/).waitFor();
});

journey("what is expected to be usable reads as a part or in hundredths, and says which", async ({ thumb }) => {
  await startBuild(thumb);
  await thumb.place("Stock");
  await thumb.tap(/^Add a lot/);
  await thumb.tap("salvaged", "How it was come by");
  await thumb.type("what, or from where", "gymnasium maple");
  await thumb.type("rough quantity", "100");
  await thumb.type("paid", "70");
  for (const [typed, read] of [["70", "= 70 %"], ["0.7 %", "= 0.7 %"], ["0.7", "= 70 %"]]) {
    await thumb.type("usable, as you expect", typed);
    await thumb.page.getByText(read, { exact: true }).waitFor();
  }
  await thumb.sees(/^1\.00$/);
  await thumb.tap("Keep the lot");
  await thumb.kept("gymnasium maple");
});

journey("while the haul has no rate a kilometre a board foot comes to no figure", async ({ thumb }) => {
  await startBuild(thumb);
  await thumb.place("Stock");
  await thumb.tap(/^Add a lot/);
  await thumb.tap("salvaged", "How it was come by");
  await thumb.type("what, or from where", "gymnasium maple");
  await thumb.type("rough quantity", "100");
  await thumb.type("paid", "0");
  await thumb.type("usable, as you expect", "70");
  await thumb.sees(/^0\.00$/);
  await thumb.type("haul, there and back", "84");
  await thumb.sees("no rate a km");
  await thumb.misses(/^0\.00$/);
});

journey("a lot in every writing of the trade", async ({ thumb, go }) => {
  await startBuild(thumb);
  for (const [typed, kept] of [
    ["12 board feet", /12 bd ft/],
    ["12,5 board feet", /12\.5 bd ft/],
    ["0.03 m3", /0\.03 m³/],
  ]) {
    await addLot(thumb, { origin: "salvaged" }, { "what, or from where": "barn oak", "rough quantity": typed, paid: "0" });
    await thumb.kept(kept);
    await thumb.undo();
    await go("stock");
  }
});

journey("boards by size: what is there and what it is sold as, never mixed", async ({ thumb }) => {
  await startBuild(thumb);
  await thumb.place("Stock");
  await thumb.tap(/^Add a lot/);
  await thumb.tap("timber", "What it is for");
  await thumb.tap("salvaged", "How it was come by");
  await thumb.type("what, or from where", "old decking");
  // Rules, 4: 12 boards of 3/4 x 5 1/2 x 48 in, sold as 1 x 6 x 4 ft: 16.5 board feet of wood, 24 nominal.
  await thumb.type("thick", "3/4");
  await thumb.type("wide", "5 1/2");
  await thumb.type("long", "4");
  await thumb.type("boards", "12");
  await thumb.sees("16.5 bd ft of wood");
  await thumb.sees("24 bd ft nominal");
  await thumb.tap("as it is sold", "These sizes are");
  await thumb.type("thick", "1");
  await thumb.type("wide", "6");
  await thumb.sees("24 bd ft nominal");
  await thumb.sees("16.5 bd ft of wood");
  await thumb.type("paid", "0");
  await thumb.tap("Keep the lot");
  await thumb.kept("24 bd ft");
});

journey("more of what is kept already joins it, at one average cost", async ({ thumb }) => {
  await startBuild(thumb);
  const discs = (quantity, price) => addLot(thumb, { use: "used up" }, { what: "discs", "how much": quantity, "price, before tax": price });
  await discs("10 discs", "10");
  await discs("10", "20");
  await thumb.place("Stock");
  await thumb.key(/discs.*20.*30\.00/).waitFor();
  await thumb.sees(/^1 kind/);
});
