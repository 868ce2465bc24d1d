// Tables for a spreadsheet: one tap saves one, of the shop or of a build, and they read as what the phone shows.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { logHours, setRate, sheetOf, startBuild } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

const FORMULA = "=2+5+cmd";

async function save({ page, thumb }, key) {
  const [file] = await Promise.all([page.waitForEvent("download"), thumb.tap(key)]);
  return { name: file.suggestedFilename(), text: readFileSync(await file.path(), "utf8") };
}

journey("a tap saves a table of the shop, and of a build", async ({ page, thumb, go }) => {
  await startBuild(thumb);
  await setRate(thumb, "26");
  await logHours(thumb, "2 h 15", "mill", { day: "yesterday" });
  await go("expense");
  await thumb.type("What for", FORMULA);
  await thumb.type("Paid", "12.50");
  await thumb.tap(/^Keep/);
  await thumb.kept("12.50");
  await thumb.place("Shop");
  await thumb.tap(/^Files for a spreadsheet/);
  const entries = await save({ page, thumb }, /^Entries/);
  assert.equal(entries.name, "benchslate-entries.csv");
  await thumb.sees("Saved as benchslate-entries.csv");
  assert.match(entries.text, /^entry,state,kind,day,/);
  assert.ok(entries.text.includes(`"'${FORMULA}"`), "what could run as a formula does not");
  assert.ok(entries.text.endsWith("\r\n") && !entries.text.replaceAll("\r\n", "").includes("\n"));
  await sheetOf(thumb, "Cost");
  await thumb.tap(/^Files for a spreadsheet/);
  const cost = await save({ page, thumb }, /^Cost lines/);
  assert.match(cost.name, /^benchslate-.+-cost-lines\.csv$/);
  const lines = cost.text.trim().split("\r\n").slice(1);
  const figures = lines.map((line) => Number(line.split(",").at(-2)));
  assert.equal(figures.reduce((sum, it) => sum + it, 0).toFixed(2), "71.00", cost.text);
});
