// Another reader: German, in Berlin. Comma for the decimal mark, 24 hours, euro and metric by the region.
import assert from "node:assert/strict";
import { addLot, sheetOf, startBuild, startStage } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

const BERLIN = { at: "2026-11-20T08:05:10+01:00", phone: { locale: "de-DE", timezoneId: "Europe/Berlin" } };

journey("money and times as they are written there, typed with a comma", BERLIN, async ({ page, thumb, go }) => {
  await startBuild(thumb);
  await startStage(thumb, "sand");
  await thumb.key("Begun 08:05, change it").waitFor();
  await go("new-lot");
  await thumb.tap("fitting", "What it is for");
  await thumb.tap("bought", "How it was come by");
  await thumb.sees(/EUR/);
  await thumb.type("what", "hinges");
  await thumb.type("how much", "8");
  await thumb.type("price, before tax", "1240,50");
  await thumb.tap("Keep the lot");
  await thumb.kept("hinges");
  await thumb.place("Stock");
  await thumb.key(/hinges.*1\.240,50/).waitFor();
  assert.equal(await page.getByText("1,240.50").count(), 0);
});

journey("the pad writes the comma, and a point is taken as well", BERLIN, async ({ thumb, go }) => {
  await startBuild(thumb);
  await addLot(thumb, { origin: "salvaged" }, { "what, or from where": "Eiche", "rough quantity": "2.5 m3", paid: "0" });
  await thumb.kept("2,5 m³");
  await go("stock");
  await thumb.tap("Sort");
  for (const key of ["1", "point", "2"]) await thumb.tap(key, "Number pad");
  assert.equal(await thumb.field("good").inputValue(), "1,2");
  await thumb.sees("Yield so far, 1,2 of 1,2");
  await thumb.tap("Keep the sort");
  await thumb.kept("1,2 good, 0 culled");
});

journey("1.234 can be read in two ways and is asked about", BERLIN, async ({ thumb, go }) => {
  await startBuild(thumb);
  await go("expense");
  await thumb.type("What for", "Miete");
  await thumb.type("Paid", "1.234");
  await thumb.tap(/^Keep/);
  await thumb.refused("Paid", /Is it 1234 or 1[.,]234\?/, "1.234");
});

// ISO 4217 gives the yen no minor unit.
journey("another currency is found by its name, and every figure is written in its digits", async ({ thumb, go }) => {
  await startBuild(thumb);
  await go("choices");
  await thumb.type("Find another: code or name", "zzz");
  await thumb.sees("No currency of that code or name is in use.");
  await thumb.type("Find another: code or name", "yen");
  await thumb.tap(/^Japanese Yen/);
  await thumb.kept("JPY");
  await go("expense");
  await thumb.type("What for", "blades");
  await thumb.sees("JPY");
  await thumb.type("Paid", "1200");
  await thumb.tap(/^Keep/);
  await thumb.kept("blades");
  await sheetOf(thumb, "Cost");
  await thumb.tap(/^Spent /);
  await thumb.sees(/1,200(?!\.)/);
});
