// Chapters of a film: proposed from the takes, typed one after the other with one thumb, in a list and as WebVTT.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { openBuild, sheetOf, startBuild } from "./lib/acts.mjs";
import { lines } from "./lib/disk.mjs";
import { journey } from "./lib/journey.mjs";
import { until } from "./lib/thumb.mjs";

const NOW = { at: "2026-11-20T10:00:00-05:00", phone: { timezoneId: "America/Toronto", locale: "en-GB" } };
const SAMPLE = { ...NOW, phone: { ...NOW.phone, locale: "en-CA" } };

async function publishing(thumb, title) {
  await sheetOf(thumb, "Cost", title);
  await thumb.tap(/^Publishing/);
  await thumb.sheet("Publishing");
}

/** With the pad, sign by sign; what stood there goes. */
async function tapTime(thumb, text) {
  await thumb.type("Begins at", "");
  for (const sign of text) await thumb.tap(sign === ":" ? "colon" : sign, "Number pad");
}

/** Waits for the form of a shot: its words stand there, the cursor in the empty time. */
async function proposed(thumb, words) {
  await thumb.sheet("New chapter");
  await thumb.page.waitForFunction((words) => {
    const [name, at] = ["name", "at"].map((id) => document.getElementById(id));
    return name?.value === words && at?.value === "" && document.activeElement === at;
  }, words);
}

const taken = (page) => page.locator("xpath=//a[preceding-sibling::h2[1][.='From the takes']]").allInnerTexts();
const listed = (page) => page.getByRole("link", { name: /^\d+:\d\d / }).allInnerTexts();

/** Three shots and one that is left out, each with a take, in another order than they were thought of. */
async function shotBuild({ page, thumb, go }) {
  await startBuild(thumb, "Bench");
  await openBuild(thumb, "Bench");
  const build = new URL(page.url()).searchParams.get("at").split(".")[1];
  for (const what of ["Finished & standing", "Old nails, close", "First wipe", "Never mind"]) {
    await go(`add.shot.${build}`);
    await thumb.type("What is to be shot", what);
    await thumb.tap("Keep");
    await thumb.kept(what);
  }
  await go(`build.${build}.film`);
  for (const what of ["Old nails, close", "First wipe", "Never mind", "Finished & standing"]) {
    await thumb.tap(new RegExp(`^${what}`));
    await thumb.tap(new RegExp(`^Shot it.*${what}, take 1`, "s"));
    await thumb.kept(what);
    await page.clock.fastForward("00:10:00");
  }
  await thumb.tap(/^Never mind/);
  await thumb.tap(/leave it out/);
  await thumb.kept("Never mind");
  // The nails once more, much later; the take before it is the one that is used.
  await thumb.tap(/^Old nails, close/);
  await thumb.tap(/^Keeper: Take 1/);
  await thumb.kept("keeper");
  await thumb.tap(/^Shot it.*Old nails, close, take 2/s);
  await thumb.kept("take 2");
  return build;
}

/** What the film will be, in minutes. */
async function filmOf(thumb, minutes) {
  await thumb.tap(/^Publish date/);
  await thumb.type("Film planned, minutes", minutes);
  await thumb.tap("Keep");
  await thumb.sheet("Publishing");
}

journey("three shots that were taken become chapters in their order, with one thumb; the file holds them so", NOW, async (walk) => {
  const { page, thumb, go } = walk;
  const build = await shotBuild(walk);
  await go(`publishing.${build}`);
  await filmOf(thumb, "10");
  // As they were taken, the nails by the take that is used; what was left out does not come.
  await until("three of them", async () => (await taken(page)).length === 3);
  assert.deepEqual((await taken(page)).map((it) => it.replace(/\s+/g, " ")), [
    "Old nails, close no clip yet", "First wipe no clip yet", "Finished & standing no clip yet",
  ]);
  await thumb.tap(/^Old nails, close/);
  await proposed(thumb, "Old nails, close");
  await tapTime(thumb, "0:00");
  await thumb.tap("Keep, next");
  await proposed(thumb, "First wipe");
  await tapTime(thumb, "1:35");
  const before = thumb.taps;
  await thumb.tap("Keep, next");
  await proposed(thumb, "Finished & standing");
  assert.equal(thumb.taps - before, 1, "the next comes with one tap");
  await tapTime(thumb, "8:20");
  // It is the last: there is nothing after it.
  await thumb.tap("Keep");
  await thumb.kept("Finished & standing");
  assert.deepEqual(await listed(page), ["0:00 Old nails, close", "1:35 First wipe", "8:20 Finished & standing"]);
  await thumb.misses("From the takes");
  await thumb.tap(/^Pack/);
  const [file] = await Promise.all([page.waitForEvent("download"), thumb.tap(/^Chapters/)]);
  const cue = (from, to, words) => `\n00:${from}.000 --> 00:${to}.000\n${words}\n`;
  assert.equal(readFileSync(await file.path(), "utf8"), [
    "WEBVTT\n", cue("00:00", "01:35", "Old nails, close"), cue("01:35", "08:20", "First wipe"), cue("08:20", "10:00", "Finished &amp; standing"),
  ].join(""));
  // One that was typed is put right as before.
  await go(`publishing.${build}`);
  await thumb.tap(/^1:35 First wipe/);
  await thumb.tap("Correct");
  await thumb.type("Begins at", "1:40");
  await thumb.tap(/^Keep/);
  await thumb.kept("First wipe");
  await go(`publishing.${build}`);
  await thumb.key("1:40 First wipe").waitFor();
});

journey("what a tired person types for a chapter from the takes is said by its field, and nothing is written", NOW, async (walk) => {
  const { page, thumb, go } = walk;
  const build = await shotBuild(walk);
  await go(`publishing.${build}`);
  await filmOf(thumb, "10");
  await thumb.tap(/^Old nails, close/);
  await proposed(thumb, "Old nails, close");
  await tapTime(thumb, "1:00");
  // The phone threw the page away: it is there again.
  await page.reload();
  await until("what was typed", async () => (await thumb.field("Begins at").inputValue()) === "1:00");
  await thumb.tap("Leave");
  // What was typed for one is not there for another.
  await thumb.tap(/^First wipe/);
  await proposed(thumb, "First wipe");
  await thumb.tap("Leave");
  await thumb.tap(/^Old nails, close/);
  await proposed(thumb, "Old nails, close");
  await tapTime(thumb, "1:00");
  await thumb.tap("Keep, next");
  await proposed(thumb, "First wipe");
  const before = await lines(page);
  const wrong = [];
  for (const [typed, says] of [
    ["", "Nothing typed yet"],
    ["135", "Type a place in the film as"],
    ["1.35", "Type a place in the film as"],
    ["1:3", "Type a place in the film as"],
    ["1:", "Type a place in the film as"],
    [":35", "Type a place in the film as"],
    ["1::35", "Type a place in the film as"],
    ["1 m 35", "Type a place in the film as"],
    ["half way", "Type a place in the film as"],
    ["1:75", "59 seconds at most"],
    ["0:61:00", "59 minutes at most"],
    ["-1:35", "It can't be less than 0"],
    ["999:00:00", "100"],
    ["1:35:00", "The film is 10:00 long"],
    ["10:00", "The film is 10:00 long"],
    ["1:00", "Old nails, close begins there"],
    ["0:59", "Old nails, close, taken earlier, begins at 1:00"],
    ["0:58", "Old nails, close, taken earlier, begins at 1:00"],
  ]) {
    await thumb.type("Begins at", typed);
    await thumb.tap("Keep, next");
    const said = await thumb.refused("Begins at", says, typed).then(() => "", (why) => why.message.split("\n")[0]);
    if (said) wrong.push(`${typed}: ${said}`);
  }
  for (const [typed, says] of [["", /name/i], ["It was a dark and stormy night in the shop. ".repeat(3), /120/]]) {
    await thumb.type("Begins at", "1:35");
    await thumb.type("Name", typed);
    await thumb.tap("Keep, next");
    await thumb.refused("Name", says, typed);
  }
  assert.deepEqual(wrong, [], "refused by its field");
  assert.deepEqual(await lines(page), before, "nothing was written");
  // A film may begin with what was taken last: tapped again it is meant.
  await thumb.type("Name", "First wipe");
  await thumb.type("Begins at", "0:00");
  await thumb.tap("Keep, next");
  await thumb.refused("Begins at", "Tap again if the film shows them the other way round", "0:00");
  await thumb.tap("Keep, next");
  await proposed(thumb, "Finished & standing");
  await thumb.tap("Leave");
  await until("both of them", async () => (await listed(page)).length === 2);
  assert.deepEqual(await listed(page), ["0:00 First wipe", "1:00 Old nails, close"]);
});

journey("the takes of the sample shop are proposed with their steps and clips", SAMPLE, async ({ page, thumb }) => {
  await thumb.tap(/^Look around a sample shop/);
  await thumb.sheet(/second run/);
  await publishing(thumb, "Gymnasium-floor trays, second run");
  await until("both of them", async () => (await taken(page)).length === 2);
  assert.deepEqual((await taken(page)).map((it) => it.replace("\n", ": ")), [
    "red line before sanding: sand 24, clip 398", "grit change, close: sand 24, clip 412",
  ]);
  await thumb.tap(/^red line before sanding/);
  await proposed(thumb, "red line before sanding");
  await thumb.sees("sand 24, clip 398");
});
