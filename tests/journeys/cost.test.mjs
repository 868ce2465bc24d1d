// The cost: true cost by kind, Spent, Used up and the bridge; every figure opens down to the entries, and the parts
// add up to the last cent.
import assert from "node:assert/strict";
import { BUILD, addLot, logHours, openBuild, setRate, sheetOf, startBuild, startStage } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";
import { until } from "./lib/thumb.mjs";

/** Uses stock from its own sheet, by what is typed. */
async function use(thumb, name, label, typed) {
  await thumb.place("Stock");
  await thumb.tap("Use stock");
  await thumb.sheet(/./);
  if (!(await thumb.page.getByRole("heading", { level: 1, name }).count())) {
    await thumb.page.getByRole("heading", { level: 1 }).getByRole("button").tap();
    await thumb.tap(new RegExp(`^${name}`));
  }
  // A tin or a bottle is used by its share first.
  if (!(await thumb.field(label).count())) await thumb.tap("Count", "Say how much by");
  await thumb.type(label, typed);
  await thumb.tap(/^Use /);
  await thumb.kept("used");
}

/** The figures of the rows of a sum, in hundredths. */
async function figures(thumb, names) {
  const texts = await Promise.all(names.map(async (name) => (await thumb.key(name).innerText())));
  return texts.map(cents);
}

/** The last figure in a row, in hundredths; the sign stands at the head of the row. */
function cents(text) {
  const [, whole, hundredths] = [...text.matchAll(/(\d[\d,]*)\.(\d\d)(?!\d)/g)].at(-1);
  return Number(`${text.trim().startsWith("\u2212") ? "-" : ""}${whole.replaceAll(",", "")}${hundredths}`);
}

// Rules, 1: tin 30, half drawn; hinges 8, all drawn; direct 12; glue from earlier stock 10: 50 - 15 + 10 = 45.
journey("spent, used up, and the bridge between them", async ({ thumb, go }) => {
  await startBuild(thumb);
  const forIt = { ticks: [new RegExp(`^Got for ${BUILD}`)] };
  await addLot(thumb, forIt, { "what, or from where": "oak", "how much": "10", "price, before tax": "30" });
  await addLot(thumb, forIt, { "what, or from where": "ash", "how much": "4", "price, before tax": "8" });
  await addLot(thumb, { use: "used up" }, { what: "glue", "how much": "2 bottles", "price, before tax": "20" });
  const drawTimber = async (name, amount) => {
    await thumb.place("Stock");
    await thumb.tap(new RegExp(`^${name}|${name}`));
    await thumb.tap(/^Use/);
    await thumb.tap("bd ft", "Say how much by");
    await thumb.type("How much", amount);
    await thumb.tap(/^Use /);
    await thumb.kept("used");
  };
  await drawTimber("oak", "5");
  await drawTimber("ash", "4");
  await use(thumb, "glue", "How many bottles", "1");
  await go("expense");
  await thumb.type("What for", "hire");
  await thumb.type("Paid", "12");
  await thumb.tap(/^Keep/);
  await thumb.kept("12.00");
  await sheetOf(thumb, "Cost");
  await thumb.tap(/^Spent 50\.00, used up 45\.00/);
  await thumb.sheet("Spent, used up, true cost");
  await thumb.page.getByRole("img", { name: /Spent 50\.00, less 15\.00 still on the shelf, plus 10\.00 from earlier stock, is 45\.00 used up/ }).waitFor();
  assert.deepEqual(await figures(thumb, [/Bought for it, not drawn/, /Drawn from earlier stock/]), [-1500, 1000]);
});

journey("a figure opens level by level down to the lines, and each level adds up to the cent", async ({ thumb }) => {
  await startBuild(thumb);
  await setRate(thumb, "26");
  // Three times fifty minutes at 26: 21.666666 each, 65.00 in all.
  for (const stage of ["mill", "sand", "finish"]) await logHours(thumb, "50 min", stage);
  await logHours(thumb, "50 min", "mill", { day: "yesterday" });
  await sheetOf(thumb, "Cost");
  const whole = cents(await thumb.key(/^True cost/).innerText());
  assert.equal(whole, 8667);
  const before = thumb.taps;
  await thumb.tap(/^Labour/);
  await thumb.sheet(`Labour, in ${BUILD}`);
  const stages = await figures(thumb, [/^\W*mill/i, /^\W*sand/i, /^\W*finish/i]);
  assert.equal(stages.reduce((sum, it) => sum + it, 0), whole);
  await thumb.tap(/^\W*mill/i);
  await thumb.sheet(new RegExp(`^Mill, in ${BUILD}`));
  const lines = await figures(thumb, [/Nov 19/, /Nov 20/]);
  assert.equal(lines.reduce((sum, it) => sum + it, 0), stages[0], "opening keeps the value that was tapped");
  assert.equal(thumb.taps - before, 2);
  await thumb.tap(/Nov 19/);
  await thumb.tap("Correct");
});

journey("one tap from a build to its true cost", async ({ thumb }) => {
  await startBuild(thumb);
  await setRate(thumb, "30");
  await logHours(thumb, "1 h", "mill");
  await openBuild(thumb);
  const before = thumb.taps;
  await thumb.tap("Cost", `Sheets of ${BUILD}`);
  await thumb.key(/^True cost.*30\.00/).waitFor();
  assert.equal(thumb.taps - before, 1);
});

journey("a figure folds back, and the next piece is one tap along the bar", async ({ thumb }) => {
  await startBuild(thumb);
  await setRate(thumb, "30");
  await logHours(thumb, "1 h", "mill");
  await logHours(thumb, "2 h", "sand");
  await sheetOf(thumb, "Cost");
  await thumb.tap(/^Labour/);
  await thumb.tap(/^\W*sand/i);
  await thumb.sheet(/^Sand/);
  await thumb.tap(/^Next piece/);
  await thumb.sheet(/^Mill/);
  await thumb.tap(/^Fold back/, "Cost keys");
  await thumb.sheet(/^Labour/);
});

journey("what can't be worked out says which entry is missing, never 0", async ({ thumb }) => {
  await startBuild(thumb);
  await sheetOf(thumb, "Cost");
  assert.equal(await thumb.page.getByText(/\b0\.00\b/).count(), 0);
  await logHours(thumb, "1 h", "mill");
  await sheetOf(thumb, "Cost");
  await thumb.sees("No rate for you");
  for (const name of [/^True cost/, /^Labour/]) assert.doesNotMatch(await thumb.key(name).innerText(), /\b0\.00\b/);
  // And it leads to where it is put right.
  await thumb.tap(/No rate for you/);
  await thumb.field("An hour").waitFor();
});

journey("while a clock runs the figures grow, and the focus stays where the reader is", async ({ page, thumb }) => {
  await startBuild(thumb);
  await setRate(thumb, "30");
  await thumb.place("Bench");
  await startStage(thumb, "sand");
  await page.clock.fastForward("01:00:00");
  await sheetOf(thumb, "Cost");
  const labour = thumb.key(/^Labour/);
  await labour.waitFor();
  const before = await labour.innerText();
  await labour.focus();
  await page.clock.fastForward("00:30:00");
  await until("the hour and a half", async () => (await labour.innerText()) !== before);
  assert.match(await page.evaluate(() => document.activeElement.textContent), /^Labour/i);
  await page.keyboard.press("Enter");
  await thumb.sheet(/^Labour/);
});

const WIDE = { phone: { viewport: { width: 1200, height: 800 } } };

journey("on a wide screen a kind of cost opens beside the sheet, the largest first", WIDE, async ({ thumb, page, go }) => {
  await startBuild(thumb);
  await setRate(thumb, "30");
  await logHours(thumb, "2 h", "mill");
  await go("expense");
  await thumb.type("What for", "van");
  await thumb.type("Paid", "20");
  await thumb.tap(/^Keep/);
  await thumb.kept("20.00");
  await sheetOf(thumb, "Cost");
  const beside = page.getByRole("region", { name: /^Opened: / });
  await beside.getByText("Opened: Labour").waitFor();
  await beside.getByRole("link", { name: /^Mill/ }).waitFor();
  await page.getByRole("button", { name: /^Direct/ }).click();
  await beside.getByText("Opened: Direct").waitFor();
  await beside.getByText("van").waitFor();
  await page.setViewportSize({ width: 360, height: 640 });
  await page.getByRole("link", { name: /^Direct/ }).waitFor();
  assert.equal(await page.getByText("Opened: Direct").isVisible(), false);
});
