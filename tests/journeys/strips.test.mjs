// Strips out of boards, said where the boards are used; and what a finish loses, said where it is used.
import { addLot, openBuild, startBuild, startStage } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

async function maple(thumb) {
  await startBuild(thumb, "Trays");
  await addLot(thumb, {}, { "what, or from where": "maple boards", "how much": "40", "price, before tax": "200" });
  await thumb.place("Bench");
  await startStage(thumb, "cut");
  await thumb.place("Stock");
  await thumb.tap(/^maple boards/);
  await thumb.tap("Use some");
  await thumb.type("Length of one piece", "48");
  await thumb.tap(/^Width/, "Say how much by");
  await thumb.type("Width of one piece", "3 1/2");
  await thumb.tap(/^Thick/, "Say how much by");
  await thumb.type("Thickness of one piece", "3/4");
  await thumb.tap(/^Pieces/, "Say how much by");
}

journey("22 strips of 7/8 in take 8 boards, while the clock runs, and the working is kept with the draw", async ({ thumb }) => {
  await maple(thumb);
  await thumb.tap(/^Strips/, "Strips out of it");
  await thumb.type("Strips to rip, how many", "22");
  await thumb.tap(/^Each wide/, "Strips out of it");
  await thumb.type("Width of one strip", "7/8");
  await thumb.sees(/8 pieces; 22 strips of .* 3 a board, .* left of each, .* side by side/);
  await thumb.tap(/^Use 8/);
  await thumb.kept("used");
  await openBuild(thumb, "Trays");
  await thumb.sees(/22 strips of/);
});

journey("strips that no board gives are refused by their field", async ({ thumb }) => {
  await maple(thumb);
  await thumb.tap(/^Strips/, "Strips out of it");
  await thumb.type("Strips to rip, how many", "2.5");
  await thumb.tap("Use it");
  await thumb.refused("Strips to rip, how many", /whole/i, "2.5");
  await thumb.type("Strips to rip, how many", "22");
  await thumb.tap("Use it");
  await thumb.refused("Width of one strip", /./);
  await thumb.type("Width of one strip", "5");
  await thumb.tap("Use it");
  await thumb.refused("Width of one strip", /wider than the board/, "5");
});

journey("what a finish loses comes on top, and a data sheet's solids and film say what it covers", async ({ thumb }) => {
  await startBuild(thumb, "Trays");
  await addLot(thumb, { use: "used up" }, {
    what: "varnish", "how much": "2 tins", "price, before tax": "116", "one tin holds": "1 l", "one coat covers": "65 % at 125 µm",
  });
  await thumb.place("Stock");
  await thumb.tap(/^varnish/);
  await thumb.tap("Use some");
  await thumb.tap("Area × coats");
  await thumb.type("Area of one, or length × width", "2.6 m2");
  await thumb.tap(/^On top/, "What is coated");
  await thumb.type("Lost in brush and tin, % on top", "10");
  // 2.6 ÷ 5.2 and a tenth of it.
  await thumb.sees(/÷ 5.2 m² a tin, 10 % on top/);
  await thumb.tap("Use 0.55 tin");
  await thumb.kept("31.90");
});
