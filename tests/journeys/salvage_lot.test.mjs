// Salvage of a lot: board, two pools, bought instead, saving, and what an hour of reclaiming paid.
import { addLot, setRate, startBuild } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

// Rules, 5: 120 rough, fetched 36.00; 60 sorted -> 48 good after 6 h at 25; expected yield 0.8; draw 20 = 70.00;
// the same thing new at 7, a tenth to waste, 13 % tax: 175.78.
async function maple(thumb, { paid = "36", price = "7", hours = "6 h" } = {}) {
  await startBuild(thumb);
  await setRate(thumb, "25");
  await addLot(thumb, { origin: "salvaged" }, {
    "what, or from where": "gymnasium maple", "rough quantity": "120", paid, "usable, as you expect": "80",
    "same thing new, a bd ft": price, "new: cut to waste": "10", "new: tax": "13",
  });
  if (hours) {
    await thumb.place("Bench");
    await thumb.tap(/^hours/i);
    await thumb.type("How long", hours);
    await thumb.choose("Stage", "reclaim");
    await thumb.choose("Worked for", "gymnasium maple");
    await thumb.tap("Keep hours");
    await thumb.kept("reclaim");
  }
  await thumb.place("Stock");
  await thumb.tap("Sort");
  await thumb.type("good", "48");
  await thumb.type("culled", "12");
  await thumb.tap("Keep the sort");
  await thumb.kept("48 good, 12 culled");
  await thumb.tap(/^Use/);
  await thumb.tap("bd ft", "Say how much by");
  await thumb.type("How much", "20");
}

async function lot(thumb) {
  await thumb.tap(/^Use 20/);
  await thumb.kept("used");
  await thumb.place("Stock");
  await thumb.tap(/gymnasium maple/);
}

journey("the worked example: 70.00 drawn, 175.78 bought instead, three ways to see the saving", async ({ thumb }) => {
  await maple(thumb);
  await thumb.sees("70.00");
  await lot(thumb);
  await thumb.sees("175.78");
  await thumb.tap(/free/);
  await thumb.sees("168.28");
  await thumb.tap(/at (its )?rate/);
  await thumb.sees("105.78");
  await thumb.tap(/an hour/);
  await thumb.sees("67.31");
});

journey("dearer than new is said plainly", async ({ thumb }) => {
  await maple(thumb, { paid: "600", price: "2" });
  await lot(thumb);
  await thumb.sees(/[Dd]earer than new by/);
});

journey("no hours is said plainly", async ({ thumb }) => {
  await maple(thumb, { hours: "" });
  await lot(thumb);
  await thumb.tap(/an hour/);
  await thumb.sees(/no hours|No own hours/);
});
