// A thing that was typed in twice is said to be one.
import assert from "node:assert/strict";
import { addLot, openBuild, startBuild } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

async function twice(thumb) {
  await startBuild(thumb, "Tray");
  await addLot(thumb, { use: "used up" }, { what: "sanding discs", "how much": "10", "price, before tax": "20" });
  await addLot(thumb, { use: "used up" }, { what: "discs, sanding", "how much": "10", "price, before tax": "40" });
  await addLot(thumb, { use: "used up" }, { what: "wood glue", "how much": "1 kg", "price, before tax": "9" });
}

async function open(thumb, item) {
  await thumb.place("Stock");
  await thumb.tap(new RegExp(`^${item}`));
  await thumb.sheet(item);
}

journey("an item typed twice is one after a tap, and two again after Undo", async ({ thumb }) => {
  await twice(thumb);
  await open(thumb, "discs, sanding");
  await thumb.tap(/^Same as/);
  await thumb.sees("the units don’t fit");
  assert.equal(await thumb.page.getByRole("button", { name: /^wood glue/ }).count(), 0, "counted in another unit");
  await thumb.tap(/^sanding discs/);
  await thumb.kept("one item");
  await thumb.sheet("sanding discs");
  await thumb.sees("20");
  await thumb.sees("discs, sanding");
  await thumb.key(/60\.00/).or(thumb.page.getByText("60.00")).first().waitFor();
  await thumb.place("Stock");
  await thumb.sees("2 kinds");
  await thumb.undo();
  await thumb.sees("3 kinds");
});

journey("what was drawn of both costs as of one from the beginning", async ({ thumb, page }) => {
  await twice(thumb);
  await open(thumb, "discs, sanding");
  await thumb.tap("Use some");
  await thumb.type(/^How many/, "10");
  await thumb.tap(/^Use 10/);
  await thumb.kept("used");
  await open(thumb, "sanding discs");
  await thumb.tap(/^Same as/);
  await thumb.tap(/^discs, sanding/);
  await thumb.kept("one item");
  // 20 for 60.00: ten of them are 30.00, not the 40.00 of the dearer ten.
  await openBuild(thumb, "Tray");
  await thumb.tap("Cost", "Sheets of Tray");
  await thumb.key(/30\.00/).first().waitFor();
  assert.equal(await page.getByText("40.00").count(), 0);
});
