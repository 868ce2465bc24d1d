// Cautions: where the work happens, once, and kept where they can be read again.
import assert from "node:assert/strict";
import { addLot, startBuild, startStage } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

const RAGS = "Spread oily rags flat outdoors";

journey("a caution comes up where the work happens until it is tapped away, and can be read again", async ({ thumb, page, go }) => {
  await startBuild(thumb, "Trays");
  await addLot(thumb, { use: "used up" }, { what: "hard oil", "how much": "2 tins", "price, before tax": "58" });
  await thumb.place("Stock");
  await thumb.tap(/^hard oil/);
  const sheet = new URL(page.url()).search;
  await thumb.tap("Use some");
  await thumb.sees(RAGS);
  await thumb.tap("Seen: Oily rags");
  await thumb.misses(RAGS);
  await page.reload();
  await thumb.key(/^Use/).first().waitFor();
  await thumb.misses(RAGS);
  await go(sheet.replace("?at=", ""));
  await thumb.tap(/^Cautions.*1 for this/);
  await thumb.sees(RAGS);
  await thumb.sees("seen on this device");
  await thumb.place("Shop");
  await thumb.tap(/^Cautions/);
  await thumb.sees(RAGS);
  await thumb.tap(/^Show them again/);
  await go("use");
  await thumb.sees(RAGS);
});

journey("the treatment mark of a salvaged lot says which caution goes with it", async ({ thumb }) => {
  await startBuild(thumb, "Trays");
  await thumb.place("Stock");
  await thumb.tap(/^Add a lot/);
  await thumb.tap("salvaged", "How it was come by");
  await thumb.sees("without a mark, or with MB");
  await thumb.tap("HT", "Treatment mark, on pallets and crates");
  await thumb.sees("treated against pests only");
  await thumb.misses("without a mark, or with MB");
  await thumb.tap("SF", "Treatment mark, on pallets and crates");
  await thumb.sees("if in doubt, leave it");
  await thumb.type("what, or from where", "pallets");
  await thumb.type("rough quantity", "40");
  await thumb.tap("Keep the lot");
  await thumb.kept("lot");
  await thumb.place("Stock");
  await thumb.tap(/^pallets/);
  await thumb.tap("Correct");
  await thumb.sees("SF");
  await thumb.tap("Correct");
  assert.equal(await thumb.field("Treatment mark").evaluate((it) => it.selectedOptions[0]?.textContent), "SF");
});

journey("no caution stands in the way of a machine stage", async ({ thumb, page }) => {
  await startBuild(thumb, "Bench");
  for (const stage of ["mill", "cut", "sand"]) await startStage(thumb, stage);
  await thumb.clock(/sand/);
  assert.equal(await page.getByRole("button", { name: /^Seen/ }).count(), 0);
  assert.equal(await page.getByRole("dialog").count(), 0);
});

journey("what bears somebody is told while it is named", async ({ thumb }) => {
  await thumb.tap(/^Start a build/);
  await thumb.type("What is it?", "Tray");
  await thumb.misses("Load and fixing");
  await thumb.type("What is it?", "Reading bench");
  await thumb.sees("Load and fixing are not checked");
});
