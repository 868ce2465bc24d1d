// The sample shop: in with one tap, its sums known, apart from the maker's own, and gone in one tap.
import assert from "node:assert/strict";
import { AxeBuilder } from "@axe-core/playwright";
import { BUILD, startBuild } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";
import { until } from "./lib/thumb.mjs";

/** The Friday on which the sample shop stands as it was written: ten o'clock in its own zone. */
const ITS_OWN_DAY = "2026-11-20T10:00:00-05:00";
const IN_ITS_ZONE = { phone: { timezoneId: "America/Toronto", locale: "en-CA" } };

/** Into it from the first sheet. */
async function lookAround(thumb) {
  await thumb.tap(/^Look around a sample shop/);
  await thumb.sheet(/Gymnasium-floor trays, second run/);
}

/** The databases that this phone has. */
const databases = (page) =>
  page.evaluate(async () => (await indexedDB.databases()).map((it) => it.name).sort());

journey("one tap from the first sheet its clock runs, begun 1 h 55 ago", { at: ITS_OWN_DAY, ...IN_ITS_ZONE }, async ({ thumb }) => {
  await lookAround(thumb);
  assert.equal(thumb.taps, 1);
  await thumb.clock(/sand/);
  await thumb.clock(/1:55/);
  await thumb.clock(/Wren/);
});

journey("its pew bench cost what two other programs have worked out", { at: ITS_OWN_DAY, ...IN_ITS_ZONE }, async ({ page, thumb }) => {
  await lookAround(thumb);
  await thumb.place("Builds");
  await thumb.tap(/Bench from church pews/);
  await thumb.tap("Cost");
  const leading = thumb.part("What it comes to");
  for (const figure of ["2,994.01", "24.29", "550.13"]) await leading.getByText(figure, { exact: true }).waitFor();
  await thumb.sees(/^Spent 259\.41, used up 220\.33$/);
  await thumb.sees("closed Wed, May 20");
  for (const [kind, figure] of [["Salvaged", "425.06"], ["Labour", "1,736.50"], ["Tools", "15.88"], ["Overhead", "612.17"]]) {
    await thumb.key(new RegExp(`^${kind}.*${figure.replace(".", "\\.")}`)).waitFor();
  }
  await thumb.key(/^Piece.*2,083\.92/).waitFor();
  await thumb.key(/Film.*910\.09/).waitFor();
  await thumb.tap(/^Salvage saved/);
  await thumb.sees("898.95");
  await thumb.tap(/^free/);
  await thumb.sees("803.33");
  await thumb.tap(/^paid an hour/);
  await thumb.sees("79.03");
  const { violations } = await new AxeBuilder({ page }).setLegacyMode(true).analyze();
  assert.deepEqual(violations.map((it) => it.id), []);
});

journey("one good tray of the first run, and what spoiled beyond the usual", { at: ITS_OWN_DAY, ...IN_ITS_ZONE }, async ({ thumb }) => {
  await lookAround(thumb);
  await thumb.place("Builds");
  await thumb.tap(/Gymnasium-floor trays, first run/);
  await thumb.tap("Cost");
  await thumb.tap(/One good item.*119\.52/);
  await thumb.sees("62.25");
  await thumb.sees("4.12");
});

journey("it is apart from the maker's own, and goes in one tap", { at: ITS_OWN_DAY, ...IN_ITS_ZONE }, async ({ page, thumb }) => {
  await startBuild(thumb);
  await thumb.place("Shop");
  await thumb.tap(/^Look around a sample shop/);
  await thumb.sheet(/second run/);
  await thumb.place("Shop");
  // A file of it is not taken for one of the maker's own.
  const [file] = await Promise.all([page.waitForEvent("download"), thumb.tap(/^Back up now/)]);
  assert.match(file.suggestedFilename(), /^sample-shop-\d{4}-\d\d-\d\d\.zip$/);
  await thumb.tap(/^Sample shop, invented/);
  await thumb.sheet(new RegExp(BUILD));
  await until("its database is gone", async () => !(await databases(page)).includes("benchslate.sample"));
  assert.ok((await databases(page)).includes("benchslate"));
  await thumb.place("Builds");
  await thumb.misses(/Bench from church pews/);
  await thumb.place("Shop");
  await thumb.sees(/Never backed up/);
});

journey("weeks later it stands in that week, its clock 1 h 55 old", { at: "2027-06-16T09:30:00-04:00", ...IN_ITS_ZONE }, async ({ thumb }) => {
  await lookAround(thumb);
  await thumb.clock(/1:55/);
  await thumb.place("Builds");
  await thumb.tap(/Bench from church pews/);
  await thumb.tap("Cost");
  await thumb.sees("2,994.01");
});

journey("its file does not arrive: said, nothing of one's own touched, tried again", { at: ITS_OWN_DAY, ...IN_ITS_ZONE, allowed: [/Failed to load resource/, /ERR_FAILED/] }, async ({ context, thumb }) => {
  await context.route("**/sample-shop.jsonl", (route) => route.abort());
  await thumb.tap(/^Look around a sample shop/);
  await thumb.sees("The sample shop could not be set up");
  await context.unroute("**/sample-shop.jsonl");
  await thumb.tap("Try again");
  await thumb.sheet(/second run/);
});
