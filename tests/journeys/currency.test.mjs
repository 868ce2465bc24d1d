// One currency a shop: free until an amount stands, then it stays; what was paid in another is typed beside it.
import assert from "node:assert/strict";
import { addLot, startBuild } from "./lib/acts.mjs";
import { lines } from "./lib/disk.mjs";
import { journey } from "./lib/journey.mjs";

async function paid(thumb, go, amount) {
  await go("expense");
  await thumb.type("What for", "slabs");
  await thumb.type("Paid", amount);
  await thumb.tap(/^Keep/);
  await thumb.kept(amount);
}

const last = async (page, kind) => (await lines(page)).map((line) => JSON.parse(line)).findLast((line) => line.kind === kind);

journey("the currency is free until an amount stands, then it stays and says the way out", async ({ page, thumb, go }) => {
  await startBuild(thumb);
  await go("choices");
  for (const [find, row] of [["EUR", /^Euro\b/], ["CAD", /^Canadian Dollar/]]) {
    await thumb.type("Find another: code or name", find);
    await thumb.tap(row);
    await thumb.kept(find);
  }
  await paid(thumb, go, "12.00");
  await go("choices");
  await thumb.sees(/so it stays/);
  await thumb.misses("Find another: code or name");
  // A guess that was wrong from the first day is struck out, and chosen anew.
  await thumb.tap(/^Was it wrong from the first day/);
  await thumb.tap(/^Strike out/);
  await thumb.kept("struck");
  await go("choices");
  await thumb.type("Find another: code or name", "EUR");
  await thumb.tap(/^Euro\b/);
  await thumb.kept("EUR");
  assert.equal((await last(page, "expense")).body.amount, "12.00", "no amount was touched");
});

journey("money of elsewhere is typed in an expense, a receipt and a lot, and both are kept and shown", async ({ page, thumb, go }) => {
  await startBuild(thumb);
  const abroad = async (amount, currency) => {
    await thumb.tap(/^Paid in another currency/);
    await thumb.type("As the statement shows it", amount);
    await thumb.type("Its currency", currency);
  };
  await go("expense");
  await thumb.type("What for", "hinges");
  await thumb.type("Paid", "31.20");
  await abroad("20", "euros");
  await thumb.tap(/^Keep/);
  await thumb.refused("Its currency", /three letters, like EUR/, "euros");
  await thumb.type("Its currency", "");
  await thumb.type("As the statement shows it", "");
  await thumb.type("Its currency", "eur");
  await thumb.tap(/^Keep/);
  await thumb.refused("As the statement shows it", /Type the amount too/);
  await thumb.type("As the statement shows it", "1,234");
  await thumb.tap(/^Keep/);
  await thumb.refused("As the statement shows it", /Is it 1234 or 1.234/, "1,234");
  await thumb.type("As the statement shows it", "20");
  await thumb.tap(/^Keep/);
  await thumb.kept("31.20");
  const expense = await last(page, "expense");
  assert.deepEqual([expense.body.amount, expense.body.abroad], ["31.20", { amount: "20", currency: "EUR" }]);
  await go(`entry.${expense.entry}`);
  await thumb.sees(/20(\.00)? EUR/);

  await go("receipt");
  await abroad("20", "EUR");
  await thumb.tap("Keep");
  await thumb.refused("Total paid, tax in it", /Type the total|your own currency/);
  await thumb.type("Total paid, tax in it", "31.20");
  await thumb.tap("Keep");
  await thumb.kept("31.20");
  assert.deepEqual((await last(page, "receipt")).body.abroad, { amount: "20", currency: "EUR" });

  await thumb.place("Stock");
  await thumb.tap(/^Add a lot/);
  await thumb.tap("timber", "What it is for");
  await thumb.tap("bought", "How it was come by");
  await thumb.type("what, or from where", "walnut");
  await thumb.type("how much", "4 bd ft");
  await thumb.type("price, before tax", "60");
  await abroad("45.50", "USD");
  await thumb.tap("Keep the lot");
  await thumb.kept("walnut");
  assert.deepEqual((await last(page, "lot")).body.abroad, { amount: "45.50", currency: "USD" });
  await addLot(thumb, {}, { "what, or from where": "oak", "how much": "4 bd ft", "price, before tax": "20" });
  assert.equal((await last(page, "lot")).body.abroad, undefined);
});
