// A finish is used by area and coats: what it takes, what it costs and how that was worked out.
import { addLot, openBuild, startBuild } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

async function oil(thumb, cells = {}) {
  await startBuild(thumb, "Trays");
  await addLot(thumb, { use: "used up" }, {
    what: "hard oil", "how much": "2 tins", "price, before tax": "116", "one tin holds": "750 ml", "one coat covers": "20 m2 a litre", ...cells,
  });
  await thumb.place("Stock");
  await thumb.tap(/^hard oil/);
  await thumb.tap("Use some");
}

journey("24 trays with one coat take 0.304 tin, said as 0.3, and the working is kept with the draw", async ({ thumb }) => {
  await oil(thumb);
  await thumb.tap("Area × coats");
  await thumb.type("Area of one, or length × width", "0.19 m2");
  await thumb.tap(/^Pieces/, "What is coated");
  await thumb.type("How many alike", "24");
  await thumb.sees("0.19 m² × 24 × 1 coat = 4.56 m² ÷ 15 m² a tin");
  await thumb.sees("17.63");
  await thumb.tap("Use 0.3 tin");
  await thumb.kept("17.63");
  await openBuild(thumb, "Trays");
  await thumb.sees("0.19 m² × 24 × 1 coat = 4.56 m² ÷ 15 m² a tin");
});

journey("an area is two sides typed on the pad, and each coat takes as much again", async ({ thumb }) => {
  await oil(thumb);
  await thumb.tap("Area × coats");
  for (const key of ["1", "m²", "rub out", "rub out", "2", "4", "×", "1", "2"]) await thumb.tap(key, "Number pad");
  await thumb.tap(/^Coats/, "What is coated");
  await thumb.tap("2", "Number pad");
  // 24 × 12 in are 2 sq ft, and 15 m² are 161.459 sq ft: two coats take 0.024774 of a tin for 58.00.
  await thumb.sees("2 sq ft × 2 coats = 4 sq ft ÷ 15 m² a tin");
  await thumb.sees("1.44");
});

journey("what is no area is refused by its field and kept as typed", async ({ thumb }) => {
  await oil(thumb);
  await thumb.tap("Area × coats");
  await thumb.tap("Use it");
  await thumb.refused("Area of one, or length × width", "No area yet");
  await thumb.type("Area of one, or length × width", "3 kg");
  await thumb.tap("Use it");
  await thumb.refused("Area of one, or length × width", /./, "3 kg");
});

journey("what it covers is said later too, from its own sheet", async ({ thumb }) => {
  await oil(thumb, { "one coat covers": "" });
  await thumb.page.goBack();
  await thumb.tap("Correct");
  await thumb.tap("Correct");
  await thumb.type("One coat covers", "15");
  await thumb.tap("Keep it so");
  await thumb.kept("hard oil");
  await thumb.place("Stock");
  await thumb.tap(/^hard oil/);
  await thumb.tap("Use some");
  await thumb.key("Area × coats").waitFor();
});
