// The list of builds, a build renamed from its own sheet, and what is put away: not offered, whole, taken back.
import assert from "node:assert/strict";
import { addPerson, logHours, openBuild, startBuild } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

const rows = (thumb) => thumb.part("Builds, latest first").getByRole("listitem").allInnerTexts();

async function twoBuilds(thumb) {
  await startBuild(thumb, "Reading bench");
  await logHours(thumb, "1 h", "mill", { day: "yesterday" });
  await thumb.place("Builds");
  await startBuild(thumb, "Trays, run 2");
  await logHours(thumb, "2 h", "sand");
}

journey("the build that was worked on last stands first, with its stage and its last day", async ({ thumb }) => {
  await twoBuilds(thumb);
  await thumb.place("Builds");
  await thumb.sheet("2 builds");
  const [first, second] = await rows(thumb);
  assert.match(first, /^2\s+Trays, run 2\s+sand, Fri/);
  assert.match(second, /^1\s+Reading bench\s+mill, Thu/);
  await thumb.place("Bench");
  await thumb.tap("Trays, run 2");
  await thumb.tap("Reading bench");
  await thumb.tap(/^Start/);
  await thumb.place("Builds");
  assert.match((await rows(thumb))[0], /^1\s+Reading bench/, "a clock runs for it");
});

journey("a build is renamed from its own sheet: its title, then Correct", async ({ thumb }) => {
  await startBuild(thumb, "Tray");
  await openBuild(thumb, "Tray");
  const before = thumb.taps;
  await thumb.tap("Journal, Tray");
  await thumb.tap("Correct");
  assert.equal(thumb.taps - before, 2);
  await thumb.type("Name", "Gym-floor tray");
  await thumb.tap("Keep it so");
  await thumb.kept("Gym-floor tray");
  await thumb.place("Builds");
  await thumb.key(/Gym-floor tray/, "Builds, latest first").waitFor();
  await thumb.place("Bench");
  await thumb.sheet("Gym-floor tray");
});

journey("a build that is put away is not offered, stays whole, and comes back in one tap", async ({ thumb }) => {
  await twoBuilds(thumb);
  await openBuild(thumb, "Reading bench");
  await thumb.tap("Journal, Reading bench");
  await thumb.tap(/^Put away/);
  await thumb.kept("Reading bench");
  await thumb.place("Builds");
  await thumb.sheet("1 build");
  await thumb.place("Bench");
  await thumb.tap("Trays, run 2");
  await thumb.sheet("Work for");
  assert.equal(await thumb.page.getByRole("button", { name: "Reading bench" }).count(), 0, "not offered");
  await thumb.place("Bench");
  await thumb.tap(/^hours/i);
  assert.ok(!(await thumb.field("Worked for").innerText()).includes("Reading bench"), "not among the choices");
  await thumb.place("Builds");
  await thumb.tap(/^Put away.*1 build/);
  await thumb.tap(/^Reading bench/);
  await thumb.sheet("Journal, Reading bench");
  await thumb.sees("1 h 00");
  await thumb.page.goBack();
  const before = thumb.taps;
  await thumb.tap("Take back Reading bench");
  await thumb.kept("taken back");
  assert.equal(thumb.taps - before, 1);
  await thumb.place("Builds");
  await thumb.sheet("2 builds");
});

journey("putting away is taken back by the last mark too", async ({ thumb }) => {
  await startBuild(thumb, "Tray");
  await openBuild(thumb, "Tray");
  await thumb.tap("Journal, Tray");
  await thumb.tap(/^Put away/);
  await thumb.kept("put away");
  await thumb.key(/^Take back/).waitFor();
  await thumb.undo();
  await thumb.key(/^Put away/).waitFor();
  await thumb.place("Builds");
  await thumb.sheet("1 build");
});

journey("a person and a stage that are put away are not offered; old hours keep both", async ({ thumb, go }) => {
  await startBuild(thumb, "Tray");
  await addPerson(thumb, "Tobin");
  await logHours(thumb, "3 h", "sand", { who: "Tobin" });
  await thumb.place("Shop");
  await thumb.tap(/^Tobin/);
  await thumb.tap(/^Put away/);
  await thumb.kept("Tobin");
  await thumb.place("Shop");
  await thumb.tap(/^Put away/);
  await thumb.tap("Put away sand");
  await thumb.kept("sand");
  await go("stages");
  await thumb.sheet(/Start|Change/);
  assert.equal(await thumb.page.getByRole("button", { name: "sand", exact: true }).count(), 0);
  await thumb.place("Bench");
  await thumb.tap(/^hours/i);
  assert.ok(!(await thumb.field("Who").innerText()).includes("Tobin"));
  assert.ok(!(await thumb.field("Stage").innerText()).includes("sand"));
  await openBuild(thumb, "Tray");
  await thumb.tap(/^sand/);
  await thumb.tap("Correct");
  const chosen = (field) => thumb.field(field).evaluate((it) => it.selectedOptions[0]?.textContent);
  assert.equal(await chosen("Who"), "Tobin");
  assert.equal(await chosen("Stage"), "sand");
});
