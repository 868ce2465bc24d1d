// Publishing: back from the date, what is owed, chapters, those outside; and the pack with its files.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { addLot, sheetOf, startBuild, startStage } from "./lib/acts.mjs";
import { lines } from "./lib/disk.mjs";
import { journey } from "./lib/journey.mjs";

/** The Friday on which the sample shop stands as it was written. */
const ITS_OWN_DAY = "2026-11-20T10:00:00-05:00";
const SAMPLE = { at: ITS_OWN_DAY, phone: { timezoneId: "America/Toronto", locale: "en-CA" } };
const NOW = { at: ITS_OWN_DAY, phone: { timezoneId: "America/Toronto", locale: "en-GB" } };

async function save({ page, thumb }, key) {
  const [file] = await Promise.all([page.waitForEvent("download"), thumb.tap(key)]);
  return { name: file.suggestedFilename(), text: readFileSync(await file.path(), "utf8") };
}

/** The publishing sheet of the one build, as a thumb comes to it. */
async function publishing(thumb, title) {
  await sheetOf(thumb, "Cost", title);
  await thumb.tap(/^Publishing/);
  await thumb.sheet("Publishing");
}

async function publishOn(thumb, day, film = "") {
  await thumb.tap(/^Publish date/);
  await thumb.type("Film goes out", day);
  await thumb.type("Film planned, minutes", film);
  await thumb.tap("Keep");
  await thumb.kept("goes out");
}

/** The days of the chain in their order. */
const chain = (thumb) => thumb.part("Back from the publish date").locator(".figure").allInnerTexts();

journey("the second run of the sample shop is counted back from its date", SAMPLE, async ({ thumb }) => {
  await thumb.tap(/^Look around a sample shop/);
  await thumb.sheet(/second run/);
  await publishing(thumb, "Gymnasium-floor trays, second run");
  await thumb.sees("The cut must go out by");
  assert.deepEqual(await chain(thumb), ["Thu, Dec 17", "Wed, Dec 16", "Tue, Dec 15", "Mon, Dec 14", "Wed, Dec 9", "Wed, Dec 9"]);
  await thumb.sees("19 days left");
  // 27 h over 29 minutes of film, for ten minutes, less three hours.
  await thumb.sees(/^6 h 18$/);
  // Owed: one tap does it, one takes it back.
  const before = thumb.taps;
  await thumb.tap("Done: cut for review");
  await thumb.kept("cut for review is done");
  assert.equal(thumb.taps - before, 1);
  await thumb.key("Not yet: cut for review").waitFor();
  await thumb.undo();
  await thumb.key("Done: cut for review").waitFor();
});

journey("an empty sheet says what goes there; a date counts back by the usual list", NOW, async ({ thumb }) => {
  await startBuild(thumb, "Bench");
  await publishing(thumb, "Bench");
  await thumb.sees(/No publish date yet/);
  await thumb.sees(/Nothing is owed/);
  await thumb.sees(/No chapters yet/);
  await thumb.sees("length not said");
  await publishOn(thumb, "2026-12-17", "10");
  // Nothing is owed to anybody: nobody reviews the cut.
  assert.deepEqual(await chain(thumb), ["Thu 17 Dec", "Wed 16 Dec", "Tue 15 Dec", "Mon 14 Dec", "Mon 14 Dec"]);
  await thumb.sees(/common practice/);
  await thumb.sees("no film of your own yet");
});

journey("a sponsor reviews in their own days, and what was promised earlier counts", NOW, async ({ thumb }) => {
  await startBuild(thumb, "Bench");
  await publishing(thumb, "Bench");
  await publishOn(thumb, "2026-12-17");
  await thumb.tap(/^A sponsor, client or shop/);
  await thumb.type("Name", "Reed and Rush");
  // Open Tuesday to Thursday, and away on the 9th.
  await thumb.tap("Monday", "Working week");
  await thumb.tap("Friday", "Working week");
  await thumb.tap("One more day off");
  await thumb.type("Day off", "2026-12-09");
  await thumb.tap("Keep");
  await thumb.kept("Reed and Rush");
  await thumb.tap(/^Owed/);
  await thumb.choose("What", "cut for review");
  await thumb.tap("Keep");
  await thumb.kept("cut for review");
  await thumb.sees("no day, to Reed and Rush");
  assert.deepEqual((await chain(thumb)).slice(-2), ["Thu 3 Dec", "Thu 3 Dec"]);
  await thumb.sees("3 of their working days");
  // Promised for a day before that.
  await thumb.tap(/^cut for review/);
  await thumb.tap("Correct");
  await thumb.type("By", "2026-12-01");
  await thumb.tap(/^Keep/);
  await thumb.kept("corrected");
  await thumb.tap(/^Publishing/);
  assert.deepEqual((await chain(thumb)).slice(-2), ["Tue 1 Dec", "Tue 1 Dec"]);
  await thumb.sees(/promised: cut for review/);
  // Late: in red, until it is done.
  await thumb.tap(/^Owed/);
  await thumb.choose("What", "mention");
  await thumb.type("Words", "spoken mention");
  await thumb.type("By", "2026-11-19");
  await thumb.tap("Keep");
  await thumb.kept("spoken mention");
  await thumb.sees("late: by Thu 19 Nov, to Reed and Rush");
  await thumb.sees("spoken mention is due Thu 19 Nov, before the film goes out.");
  await thumb.tap("Done: spoken mention");
  await thumb.kept("spoken mention is done");
  // What only held until a day is over then, and not late.
  await thumb.tap(/^Owed/);
  await thumb.choose("What", "nobody else’s goods until");
  await thumb.type("By", "2026-11-18");
  await thumb.tap("Keep");
  await thumb.kept("nobody else’s goods until");
  await thumb.sees("over, it held until Wed 18 Nov");
  await thumb.misses(/^late:/);
});

journey("the list before publishing is the maker's own, and the usual one comes back in a tap", NOW, async ({ thumb }) => {
  await startBuild(thumb, "Bench");
  await publishing(thumb, "Bench");
  await publishOn(thumb, "2026-12-17");
  await thumb.tap("Change the list");
  await thumb.sheet("Days before publishing");
  await thumb.type("Captions", "soon");
  await thumb.tap("Keep");
  await thumb.refused("Captions", "Type a whole number", "soon");
  await thumb.type("Captions", "-1");
  await thumb.tap("Keep");
  await thumb.refused("Captions", "It can't be less than 0", "-1");
  await thumb.type("Captions", "2");
  await thumb.part("Captions: days").getByLabel("Counted in").selectOption("days");
  await thumb.tap("Keep");
  await thumb.kept("own list");
  assert.deepEqual(await chain(thumb), ["Thu 17 Dec", "Wed 16 Dec", "Tue 15 Dec", "Sun 13 Dec", "Sun 13 Dec"]);
  await thumb.tap("Change the list");
  await thumb.tap(/^The usual list/);
  await thumb.kept("usual list");
  assert.deepEqual((await chain(thumb)).at(-1), "Mon 14 Dec");
});

journey("a date that is over is taken and said, nonsense is refused", NOW, async ({ page, thumb }) => {
  await startBuild(thumb, "Bench");
  await publishing(thumb, "Bench");
  await publishOn(thumb, "2026-11-10");
  await thumb.sees("The publish date was Tue 10 Nov, and the film is not out.");
  await thumb.tap(/^Publish date/);
  const before = await lines(page);
  for (const [field, typed, says] of [
    ["Film planned, minutes", "long", "Type an amount as"],
    ["Film planned, minutes", "-3", "It can't be less than 0"],
    ["Film planned, minutes", "0", "A film is longer than nothing"],
    ["Film goes out", "1026-11-20", /Years from \d+ to \d+ are kept/],
  ]) {
    await thumb.type(field, typed);
    await thumb.tap("Keep");
    await thumb.refused(field, says, typed);
  }
  assert.deepEqual(await lines(page), before, "nothing was written");
});

journey("chapters: odd times are refused, good ones stand in their order", NOW, async ({ page, thumb }) => {
  await startBuild(thumb, "Bench");
  await publishing(thumb, "Bench");
  await thumb.tap(/^Chapter/);
  await thumb.type("Name", "Oil");
  const before = await lines(page);
  for (const [typed, says] of [
    ["", "Nothing typed yet"],
    ["ninety", "Type a place in the film as"],
    ["90", "Type a place in the film as"],
    ["1:75", "59 seconds at most"],
    ["1:60:00", "59 minutes at most"],
    ["-1:00", "It can't be less than 0"],
  ]) {
    await thumb.type("Begins at", typed);
    await thumb.tap("Keep");
    await thumb.refused("Begins at", says, typed);
  }
  assert.deepEqual(await lines(page), before, "nothing was written");
  await thumb.type("Begins at", "1:02:03");
  await thumb.tap("Keep");
  await thumb.kept("Oil");
  for (const [title, at] of [["The floor comes up", "0:00"], ["Nails & <grit>", "1:35"]]) {
    await thumb.tap(/^Chapter/);
    await thumb.type("Name", title);
    await thumb.type("Begins at", at);
    await thumb.tap("Keep");
    await thumb.kept(title);
  }
  await thumb.tap(/^Chapter/);
  await thumb.type("Name", "Again");
  await thumb.type("Begins at", "1:35");
  await thumb.tap("Keep");
  await thumb.refused("Begins at", "Nails & <grit> begins there", "1:35");
  await thumb.tap("Leave");
  const listed = await page.getByRole("link", { name: /^\d+:\d\d/ }).allInnerTexts();
  assert.deepEqual(listed, ["0:00 The floor comes up", "1:35 Nails & <grit>", "1:02:03 Oil"]);
  // Without the length of the film the last has no end.
  await thumb.tap(/^Pack/);
  await thumb.tap(/^Chapters/);
  await thumb.sees(/The length of the film is not said/);
});

journey("the pack: what is in it by itself, what only when ticked; copied and saved", { ...NOW, phone: { ...NOW.phone, permissions: ["clipboard-read", "clipboard-write"] } }, async (walk) => {
  const { page, thumb, go } = walk;
  await startBuild(thumb, "Bench");
  await addLot(thumb, { use: "used up" }, { what: "discs", "how much": "16 discs", "price, before tax": "11.36" });
  await thumb.place("Bench");
  await startStage(thumb, "sand");
  await thumb.tap(/^(Other|Use stock)/);
  await thumb.tap("4", "Number pad");
  await thumb.tap("Use 4 discs");
  await thumb.kept(/used 4 discs/);
  await go("add.tool");
  await thumb.type("Name", "Sander");
  await thumb.choose("Come by", "lent");
  await thumb.type("Own link", "https://sanders.invalid/s");
  await thumb.tap("sand");
  await thumb.tap("Keep");
  await thumb.kept("Sander");
  await publishing(thumb, "Bench");
  await publishOn(thumb, "2026-12-17", "10");
  await thumb.tap(/^Chapter/);
  await thumb.type("Name", "Oil --> wax");
  await thumb.type("Begins at", "0:00");
  await thumb.tap("Keep");
  await thumb.kept("Oil");
  await thumb.tap(/^Pack/);
  const pack = thumb.part("The pack as it will be");
  await pack.filter({ hasText: "discs, 4 discs" }).waitFor();
  const text = await pack.innerText();
  assert.match(text, /^Lent: Sander\.$/m);
  assert.match(text, /^Sander: https:\/\/sanders\.invalid\/s$/m);
  assert.match(text, /^0:00 Oil --> wax$/m);
  assert.doesNotMatch(text, /True cost/);
  await thumb.sees(/say so at the start/);
  await thumb.tap("What it cost, by kind");
  await pack.filter({ hasText: "True cost" }).waitFor();
  await thumb.tap(/^Copy/);
  await thumb.sees("Copied.");
  assert.equal(await page.evaluate(() => navigator.clipboard.readText()), await pack.innerText());
  const saved = await save(walk, /^Save/);
  assert.equal(saved.name, "benchslate-bench-pack.txt");
  assert.match(saved.text, /discs, 4 discs/);
  const vtt = await save(walk, /^Chapters/);
  assert.equal(vtt.name, "benchslate-bench-chapters.vtt");
  assert.equal(vtt.text, "WEBVTT\n\n00:00:00.000 --> 00:10:00.000\nOil --&gt; wax\n");
  const dates = await save(walk, /^Calendar/);
  assert.equal(dates.name, "benchslate-bench-dates.ics");
  const ics = dates.text.replaceAll("\r\n ", "");
  assert.match(ics, /DTSTART;VALUE=DATE:20261217\r\nDTEND;VALUE=DATE:20261218\r\nSUMMARY:Film goes out: Bench\r\n/);
  assert.match(ics, /DTSTART;VALUE=DATE:20261214\r\n[^]*SUMMARY:Cut must go out: Bench\r\n/);
  assert.match(ics, /TRIGGER:-PT15H\r\n/);
  await thumb.tap(/^Reminders in the calendar file/);
  const quiet = await save(walk, /^Calendar/);
  assert.doesNotMatch(quiet.text, /VALARM/);
  // Taken in again it puts right what is there: the same names.
  const uids = (file) => file.match(/^UID:.*$/gm);
  assert.deepEqual(uids(quiet.text), uids(dates.text));
});

journey("the calendar file has the day of the piece, and calls off what has no date any more", async (walk) => {
  const { thumb } = walk;
  await startBuild(thumb, "Bench");
  await publishing(thumb, "Bench");
  await thumb.tap(/^Publish date/);
  await thumb.type("The piece is due", "2026-12-01");
  await thumb.type("Film goes out", "2026-12-17");
  await thumb.tap("Keep");
  await thumb.kept("goes out");
  await thumb.tap(/^Publish date/);
  await thumb.type("Film goes out", "");
  await thumb.tap("Keep");
  await thumb.kept("due");
  await thumb.tap(/^Pack/);
  const { text } = await save(walk, /^Calendar/);
  const events = text.replaceAll("\r\n ", "").split("BEGIN:VEVENT");
  const of = (title) => events.find((it) => it.includes(`SUMMARY:${title}`));
  assert.match(of("Due: Bench"), /DTSTART;VALUE=DATE:20261201/);
  assert.doesNotMatch(of("Due: Bench"), /STATUS/);
  assert.match(of("Film goes out: Bench"), /STATUS:CANCELLED/);
  assert.match(of("Cut must go out: Bench"), /STATUS:CANCELLED/);
  assert.doesNotMatch(of("Film goes out: Bench"), /VALARM/);
});
