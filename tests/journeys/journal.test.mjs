// The journal of a build, a lot and the shop: newest first, by day; find as you type; correct, strike out, bring back;
// history on view; notes, and what has no home yet.
import assert from "node:assert/strict";
import { addLot, BUILD, logHours, openBuild, startBuild, startStage } from "./lib/acts.mjs";
import { backUp, bringIn, parts } from "./lib/backup.mjs";
import { journey } from "./lib/journey.mjs";
import { until } from "./lib/thumb.mjs";

/** A build with two days of work and a note, and its journal open. */
async function written({ thumb }) {
  await startBuild(thumb);
  await logHours(thumb, "2 h 15", "mill", { day: "yesterday" });
  await logHours(thumb, "1 h 30", "sand");
  await openBuild(thumb);
  await thumb.sheet(`Journal, ${BUILD}`);
}

/** The journal as the file that a backup holds. */
const journalOf = async (walk) => parts((await backUp(walk)).bytes).get("journal.jsonl").bytes.toString("utf8");

/** A file of revisions brought into a phone. */
const bringInText = (walk, text) => bringIn(walk, text, { name: "journal.jsonl" });

const linesOnView = (thumb) => thumb.page.getByRole("list", { name: "Lines of the day" }).getByRole("listitem").allInnerTexts();

journey("newest first, by day, each day with what it came to", async (walk) => {
  const { page, thumb } = walk;
  await written(walk);
  const days = page.getByRole("heading", { level: 2 });
  assert.match(await days.nth(0).innerText(), /Nov 20/);
  assert.match(await days.nth(1).innerText(), /Nov 19/);
  await thumb.sees("2 h 15");
  await thumb.sees("1 h 30");
  const texts = (await linesOnView(thumb)).join("|");
  assert.ok(texts.indexOf("sand") < texts.indexOf("mill"), "newest first");
});

journey("find as you type: a word, a day, an amount; nothing found is said", async (walk) => {
  const { thumb } = walk;
  await written(walk);
  await thumb.type("Find in the journal", "mil");
  await until("one line", async () => (await linesOnView(thumb)).length === 1);
  assert.match((await linesOnView(thumb))[0], /mill/);
  await thumb.type("Find in the journal", "1 h 30");
  await until("the other line", async () => /sand/.test((await linesOnView(thumb)).join("|")) && (await linesOnView(thumb)).length === 1);
  await thumb.type("Find in the journal", "nails");
  await thumb.sees("No line says “nails”");
});

journey("an entry is corrected, and every version stays on view", async (walk) => {
  const { thumb } = walk;
  await written(walk);
  await thumb.tap(/mill/);
  await thumb.tap("Correct");
  assert.match(await thumb.field("How long").inputValue(), /2 h 15|2:15/);
  await thumb.type("How long", "3 h");
  await thumb.tap("Keep it so");
  await thumb.kept("corrected");
  await thumb.sees("Every version");
  await thumb.sees(/How long: 3 h( 00)?, was 2 h 15/);
  await thumb.tap("Journal", `Sheets of ${BUILD}`);
  await thumb.key(/mill.*3 h 00/).waitFor();
  await thumb.page.getByRole("img", { name: "version 2" }).waitFor();
});

journey("struck out it stays, counts nothing, and comes back in one tap", async (walk) => {
  const { thumb } = walk;
  await written(walk);
  await thumb.tap(/mill/);
  await thumb.tap(/^Strike out/);
  await thumb.kept("struck out");
  await thumb.tap("Journal", `Sheets of ${BUILD}`);
  await thumb.sees(/struck out \d/);
  assert.equal(await thumb.page.getByText("2 h 15", { exact: true }).count(), 0, "counts nothing");
  await thumb.tap("put back");
  await thumb.kept("put back");
  await thumb.key(/mill.*2 h 15/).waitFor();
});

journey("a note from the running clock is of its build", async ({ thumb }) => {
  await startBuild(thumb);
  await startStage(thumb, "mill");
  await thumb.tap(/^Note/);
  await thumb.type("What is it about?", "Third board has a shake");
  await thumb.tap("Keep note");
  await thumb.kept("note Third board has a shake");
  await openBuild(thumb);
  await thumb.key(/note Third board has a shake/).waitFor();
});

journey("a note without a home waits until it gets one", async ({ thumb, go }) => {
  await startBuild(thumb);
  await go("note");
  await thumb.type("What is it about?", "Ask about the skylight frames");
  await thumb.choose("Where it goes", "no home yet");
  await thumb.tap("Keep note");
  await thumb.kept("Ask about the skylight");
  await go("no-home-yet");
  await thumb.sees("1 waits");
  await thumb.part(/^A home for/).getByRole("button", { name: BUILD }).tap();
  await thumb.kept(`for ${BUILD}`);
  await thumb.sees("Everything has a home");
});

journey("two corrections of one entry on two phones: both are seen, one tap picks", async (walk) => {
  const { page, thumb, elsewhere } = walk;
  await written(walk);
  const correct = async (of, length) => {
    await openBuild(of.thumb);
    await of.thumb.tap(/mill/);
    await of.thumb.tap("Correct");
    await of.thumb.type("How long", length);
    await of.thumb.tap("Keep it so");
    await of.thumb.kept("corrected");
  };
  const partner = await elsewhere();
  await bringInText(partner, await journalOf(walk));
  await correct(walk, "3 h");
  await page.clock.fastForward("00:05:00");
  await partner.page.clock.fastForward("00:10:00");
  await correct(partner, "4 h");
  await bringInText(walk, await journalOf(partner));
  await openBuild(thumb);
  await thumb.sees("two versions: one must be picked");
  await thumb.tap(/mill/);
  await thumb.sees("Two versions of this entry");
  assert.equal(await thumb.key(/^This one/).count(), 2);
  await thumb.key(/^This one/).last().tap();
  await thumb.kept("one version picked");
  await thumb.misses("Two versions of this entry");
});

journey("hours on a lot stand in the journal of the lot, are corrected from there, and come back there", async ({ thumb }) => {
  await startBuild(thumb);
  await addLot(thumb, { origin: "salvaged" }, { "what, or from where": "gymnasium maple", "rough quantity": "120", paid: "36" });
  await thumb.place("Stock");
  await thumb.tap(/gymnasium maple/);
  const before = thumb.taps;
  await thumb.tap("Journal", "Lot keys");
  await thumb.sheet("Journal, gymnasium maple");
  assert.equal(thumb.taps - before, 1);
  await thumb.key(/came in gymnasium maple, 120/).waitFor();
  // The form is opened for the lot.
  await thumb.tap("hours", "Journal keys");
  await thumb.type("How long", "2 h 15");
  await thumb.choose("Stage", "reclaim");
  await thumb.tap("Keep hours");
  await thumb.kept("reclaim");
  await thumb.sheet("Journal, gymnasium maple");
  await thumb.tap(/reclaim.*2 h 15/);
  await thumb.tap("Correct");
  await thumb.type("How long", "3 h");
  await thumb.tap("Keep it so");
  await thumb.kept("corrected");
  await thumb.tap("Leave");
  await thumb.sheet("Journal, gymnasium maple");
  await thumb.key(/reclaim.*3 h 00/).waitFor();
  await thumb.type("Find in the journal", "maple");
  await until("only what came in", async () => (await linesOnView(thumb)).length === 1);
  // Of the build it is no hour.
  await openBuild(thumb);
  assert.equal(await thumb.key(/reclaim/).count(), 0);
});

journey("what is for the shop as a whole stands in the journal of the shop", async ({ thumb }) => {
  await startBuild(thumb);
  await thumb.place("Shop");
  await thumb.tap("Journal", "Shop keys");
  await thumb.sheet("Journal, the shop");
  await thumb.tap("money", "Journal keys");
  await thumb.type("What for", "Dust bags");
  await thumb.type("Paid", "24");
  await thumb.tap(/^Keep/);
  await thumb.kept("24.00");
  await thumb.sheet("Journal, the shop");
  await thumb.key(/paid Dust bags 24\.00/).waitFor();
  // What was written with the first amount is of the shop too.
  await thumb.key(/choice currency, CAD/).waitFor();
});

journey("stock taken from the journal of a build goes into that build", async ({ thumb, go }) => {
  await startBuild(thumb);
  await addLot(thumb, { use: "used up" }, { what: "discs", "how much": "16 discs", "price, before tax": "11.36" });
  await go("new-build");
  await thumb.type("What is it?", "Kettle stand");
  await thumb.tap("Start it");
  await thumb.kept("Kettle stand");
  await openBuild(thumb, "Kettle stand");
  await thumb.tap("stock", "Journal keys");
  await thumb.sheet(/discs/);
  await thumb.sees(/Kettle stand/);
  await thumb.tap("4", "Number pad");
  await thumb.tap("Use 4 discs");
  await thumb.kept(/used 4 discs/);
  await thumb.key(/used discs, 4 discs/).waitFor();
});

journey("a drive is corrected: how far, what the way cost, and who bears how many parts of it", async ({ thumb, go }) => {
  await startBuild(thumb);
  await go("choices");
  await thumb.type("Vehicle, a km", "0.50");
  await thumb.tap("Keep");
  const lot = { "what, or from where": "gymnasium maple", "rough quantity": "120", paid: "36", "haul, there and back": "84" };
  await addLot(thumb, { origin: "salvaged" }, lot);
  await thumb.place("Stock");
  await thumb.tap(/gymnasium maple/);
  await thumb.tap("Journal", "Lot keys");
  await thumb.tap(/drive 84 km 42\.00/);
  await thumb.tap("Correct");
  assert.equal(await thumb.field("Parts for gymnasium maple").inputValue(), "1");
  // What can't be is said by its field, and kept as typed.
  await thumb.type("Kilometres", "far");
  await thumb.type("Parts for gymnasium maple", "0");
  await thumb.tap("Keep it so");
  await thumb.refused("Kilometres", "“f” has no place here", "far");
  await thumb.refused("Parts for gymnasium maple", "One part at least", "0");
  await thumb.type("Parts for gymnasium maple", "1.5");
  await thumb.tap("Keep it so");
  await thumb.refused("Parts for gymnasium maple", /whole/i, "1.5");
  await thumb.type("Parts for gymnasium maple", "");
  await thumb.tap("Keep it so");
  await thumb.refused("Parts for gymnasium maple", "Somebody must bear it", "");
  await thumb.type("Kilometres", "90");
  await thumb.type("Fee", "6");
  await thumb.type("Parts for gymnasium maple", "2");
  await thumb.choose("Shared with one more", BUILD);
  await thumb.type(`Parts for ${BUILD}`, "1");
  await thumb.tap("Keep it so");
  await thumb.kept("corrected");
  // 90 km at 0.50 and 6.00: 51.00 in three parts.
  await thumb.sees(`gymnasium maple, 2 of 3 parts; ${BUILD}, 1 of 3 parts`);
  await thumb.tap("Leave");
  await thumb.key(/drive 90 km.*34\.00/).waitFor();
  await openBuild(thumb);
  await thumb.key(/drive 90 km.*17\.00/).waitFor();
  // Whoever bears none of it is out.
  await thumb.tap(/drive 90 km/);
  await thumb.tap("Correct");
  await thumb.type("Parts for gymnasium maple", "");
  await thumb.tap("Keep it so");
  await thumb.kept("corrected");
  await openBuild(thumb);
  await thumb.key(/drive 90 km.*51\.00/).waitFor();
});

/** An expense of the build. */
async function paid({ thumb }) {
  await openBuild(thumb);
  await thumb.tap("money", "Journal keys");
  await thumb.type("What for", "Hire of a drum sander");
  await thumb.type("Paid", "60");
  await thumb.tap(/^Keep/);
  await thumb.kept("Hire of a drum sander");
}

journey("tax is put right as it is typed first: a share of what was paid, or money", async (walk) => {
  const { thumb } = walk;
  await startBuild(thumb);
  await paid(walk);
  await openBuild(thumb);
  await thumb.tap(/paid Hire of a drum sander/);
  await thumb.tap("Correct");
  await thumb.type("Tax", "13 %%");
  await thumb.tap("Keep it so");
  await thumb.refused("Tax", "“%” has no place here", "13 %%");
  await thumb.type("Tax", "13 %");
  await thumb.tap("Keep it so");
  await thumb.kept("corrected");
  await thumb.sees(/Tax.*7\.80/);
  await openBuild(thumb);
  await thumb.key(/paid Hire of a drum sander.*67\.80/).waitFor();
});

/** What another phone knows that was never told what the shop counts in. */
const withoutChoices = (text) => text.split("\n").filter((line) => !line.includes('"kind":"setting"')).join("\n");

journey("an expense that is corrected to have the first amount is counted in what is guessed, which is said beside it", async (walk) => {
  await startBuild(walk.thumb);
  await paid(walk);
  const other = await walk.elsewhere();
  const { thumb } = other;
  await bringInText(other, withoutChoices(await journalOf(walk)));
  await openBuild(thumb);
  await thumb.tap(/paid Hire of a drum sander/);
  await thumb.tap("Correct");
  await thumb.sees("Counted in CAD, going by where this phone is");
  await thumb.sees(/^CAD$/);
  await thumb.type("Amount", "64");
  await thumb.tap("Keep it so");
  await thumb.kept("corrected");
  await thumb.sees("64.00");
  await other.go("journal.shop");
  await thumb.key(/choice currency, CAD/).waitFor();
  // Chosen by now: nothing more is said of it.
  await openBuild(thumb);
  await thumb.tap(/paid Hire of a drum sander/);
  await thumb.tap("Correct");
  await thumb.misses("Counted in CAD, going by where this phone is");
});

journey("where no currency can be guessed a corrected expense asks for it", { phone: { locale: "eo", timezoneId: "UTC" } }, async (walk) => {
  await startBuild(walk.thumb);
  await walk.go("choices");
  await walk.thumb.type("Find another: code or name", "EUR");
  await walk.thumb.tap(/EUR$/);
  await walk.thumb.kept("EUR");
  await paid(walk);
  const other = await walk.elsewhere();
  const { thumb } = other;
  await bringInText(other, withoutChoices(await journalOf(walk)));
  await openBuild(thumb);
  await thumb.tap(/paid Hire of a drum sander/);
  await thumb.tap("Correct");
  await thumb.key("Choose the currency").waitFor();
  await thumb.type("Amount", "64");
  await thumb.tap("Keep it so");
  await thumb.refused("Amount", "In which currency?", "64");
});

journey("a choice is told in words, not as it is stored", async ({ thumb, go }) => {
  await startBuild(thumb);
  await go("choices");
  await thumb.tap("Sunday", "The week begins");
  await thumb.kept("Sunday");
  await thumb.type("Sales tax", "13");
  await thumb.tap("Keep");
  await thumb.kept("13 %");
  await go("journal.shop");
  await thumb.key(/choice first day of the week, Sunday/).waitFor();
  await thumb.key(/choice sales tax, 13 %/).waitFor();
});
