// Receipt now, lines later: total and photo at the till in two taps; what it bought in the evening, and what stands
// once on it shared by value. Also what a sponsor gives, what a client owns, and money that by-products bring.
import assert from "node:assert/strict";
import { BUILD, addLot, openBuild, sheetOf, startBuild, startStage } from "./lib/acts.mjs";
import { lines } from "./lib/disk.mjs";
import { journey } from "./lib/journey.mjs";
import { phonePhoto, takePhoto } from "./lib/pictures.mjs";

/** What entries of a kind say now, in the order in which they were begun. */
async function standing(page, kind) {
  const all = (await lines(page)).map((line) => JSON.parse(line)).filter((line) => line.kind === kind);
  return [...new Map(all.map((line) => [line.entry, line])).values()].filter((line) => line.body);
}

/** Types on the pad. */
async function typed(thumb, figure) {
  for (const sign of figure) await thumb.tap(sign === "." ? "point" : sign, "Number pad");
}

/** A receipt at the till, from the shelf. */
async function atTheTill(thumb, total, from = "") {
  await thumb.place("Stock");
  await thumb.tap(/^Receipt/);
  await thumb.sheet("Receipt now");
  await typed(thumb, total);
  if (from) {
    await thumb.tap(/^From/);
    await thumb.type("From whom", from);
    await thumb.tap("So it is");
  }
}

journey("at the till: the total, a photo, Keep; it is spent at once, for what is going on", async ({ page, thumb }) => {
  await startBuild(thumb);
  await startStage(thumb, "sand");
  await thumb.place("Stock");
  await thumb.tap(/^Receipt/);
  await typed(thumb, "31.85");
  const before = thumb.taps;
  await takePhoto(page, thumb, await phonePhoto(page));
  await page.getByRole("img").first().waitFor();
  await thumb.tap("Keep");
  assert.equal(thumb.taps - before, 2);
  await thumb.kept("31.85");
  const [receipt] = await standing(page, "receipt");
  assert.equal(receipt.body.total, "31.85");
  assert.ok(receipt.body.bearer.build);
  const [photo] = await standing(page, "photo");
  assert.equal(photo.body.entry, receipt.entry, "the photo is of the receipt");
  await sheetOf(thumb, "Journal");
  await thumb.sees("31.85 of 31.85 still to be said");
  await sheetOf(thumb, "Cost");
  await thumb.key(/^Spent 31\.85/).waitFor();
  await thumb.place("Builds");
  await thumb.tap(/^No home yet/);
  await thumb.key("Say what it bought").waitFor();
});

journey("a receipt left half-way is there when one comes back, its photo too", async ({ page, thumb }) => {
  await startBuild(thumb);
  await atTheTill(thumb, "12", "timber yard");
  await takePhoto(page, thumb, await phonePhoto(page));
  await page.getByRole("img").first().waitFor();
  await thumb.tap("Leave");
  await page.reload();
  await thumb.place("Stock");
  await thumb.tap(/^Receipt/);
  await page.getByRole("img").first().waitFor();
  await thumb.sees("timber yard");
  assert.equal(await thumb.field("Total paid, tax in it").inputValue(), "12");
  // Another one in its place: the first is struck out, and only one is of the receipt.
  await takePhoto(page, thumb, await phonePhoto(page, { orientation: 1 }));
  await thumb.key(/^Photo again/).waitFor();
  await thumb.tap("Keep");
  await thumb.kept("12.00");
  const photos = await standing(page, "photo");
  assert.equal(photos.filter((photo) => photo.body.entry).length, 1);
  assert.equal(photos.length, 1);
});

journey("nothing typed and no photo is said, and a photo alone will do", async ({ page, thumb }) => {
  await startBuild(thumb);
  await thumb.place("Stock");
  await thumb.tap(/^Receipt/);
  await thumb.tap("Keep");
  await thumb.refused("Total paid, tax in it", "Type the total, or take a photo");
  await takePhoto(page, thumb, await phonePhoto(page));
  await page.getByRole("img").first().waitFor();
  await thumb.tap("Keep");
  await thumb.kept("no total yet");
});

journey("in the evening its lines are said: a lot, money paid directly, and what stands once is shared", async ({ page, thumb }) => {
  await startBuild(thumb);
  await atTheTill(thumb, "82.00", "hardware shop");
  await thumb.tap("Keep");
  await thumb.kept("82.00");
  // The shelf names it too, one tap from its lines.
  await thumb.place("Stock");
  await thumb.tap(/^Say what it bought.*hardware shop/);
  await thumb.sheet("Receipt, hardware shop");
  await thumb.place("Builds");
  await thumb.tap(/^No home yet/);
  await thumb.tap("Say what it bought");
  await thumb.sheet("Receipt, hardware shop");
  await thumb.sees("Still to be said");
  // 13 % in it, typed once on the receipt: 9.43. One tap, and the fields stand there.
  await thumb.tap(/^Correct/);
  await thumb.type("Tax", "13 %");
  await thumb.tap("Keep it so");
  await thumb.kept("corrected");
  await thumb.tap("Leave");
  await thumb.sees("72.57");
  await thumb.tap(/^Add a lot/);
  await thumb.sheet("New lot, bought");
  await thumb.tap("fitting", "What it is for");
  await thumb.type("what", "hinges");
  await thumb.type("how much", "8");
  await thumb.type("price, before tax", "41.57");
  await thumb.tap("Keep the lot");
  await thumb.sheet("Receipt, hardware shop");
  await thumb.sees("31.00");
  await thumb.tap(/^Paid directly/);
  await thumb.type("What for", "sharpening");
  await thumb.type("Paid", "31.00");
  await thumb.tap("Keep it");
  await thumb.sees("All of it is said");
  const [lot] = await standing(page, "lot");
  const [receipt] = await standing(page, "receipt");
  const [expense] = await standing(page, "expense");
  assert.deepEqual([lot.body.receipt, expense.body.receipt], [receipt.entry, receipt.entry]);
  assert.equal(receipt.body.tax, "9.43");
  assert.equal(lot.body.whence, "hardware shop");
  assert.equal(lot.body.tax ?? "none", "none", "tax stands once, on the receipt");
  await thumb.place("Builds");
  await thumb.misses(/^No home yet/);
});

journey("a sponsor's goods have a worth, a client's own only a quantity", async ({ page, thumb }) => {
  await startBuild(thumb);
  await addLot(thumb, { use: "used up", origin: "supplied" }, { what: "hard oil", "how much": "2 tins", "what it is worth": "58" });
  await thumb.place("Stock");
  await thumb.tap(/^Add a lot/);
  await thumb.tap("timber", "What it is for");
  await thumb.tap("supplied", "How it was come by");
  await thumb.tap("the client", "Supplied by");
  await thumb.sees(/The client’s own goods/);
  assert.equal(await thumb.field("what it is worth").count(), 0);
  await thumb.type("what, or from where", "grandmother's walnut");
  await thumb.type("how much", "12");
  await thumb.tap("Keep the lot");
  await thumb.kept("walnut");
  const [oil, walnut] = await standing(page, "lot");
  assert.deepEqual([oil.body.value, oil.body.by, oil.body.paid], ["58", "sponsor", undefined]);
  assert.deepEqual([walnut.body.value, walnut.body.by, walnut.body.paid], [undefined, "client", undefined]);
});

journey("money for kindling lowers what its lot cost", async ({ page, thumb }) => {
  await startBuild(thumb);
  await addLot(thumb, { origin: "salvaged" }, { "what, or from where": "pew oak", "rough quantity": "40", paid: "36", "usable, as you expect": "80" });
  await openBuild(thumb);
  await thumb.tap("money", "Journal keys");
  await thumb.tap(/^Money that came in/);
  await thumb.sheet("By-product");
  await thumb.tap(/^Lowers the cost of/);
  await thumb.tap("pew oak");
  await thumb.type("What was it?", "kindling");
  await thumb.type("came for it", "20");
  await thumb.tap("Keep it");
  await thumb.sheet("Paid directly");
  const [kindling] = await standing(page, "by_product");
  assert.deepEqual([kindling.body.what, kindling.body.amount], ["kindling", "20"]);
  assert.ok(kindling.body.of.lot);
});

journey("a drive that fetched a lot is shared with whatever else it was for, by parts", async ({ page, thumb }) => {
  await startBuild(thumb);
  await thumb.place("Stock");
  await thumb.tap(/^Add a lot/);
  await thumb.type("what, or from where", "pew oak");
  await thumb.type("rough quantity", "40");
  await thumb.type("paid", "0");
  await thumb.type("haul, there and back", "40");
  await thumb.choose("Shared with one more", BUILD);
  await thumb.type(`Parts for ${BUILD}`, "3");
  await thumb.tap("Keep the lot");
  await thumb.kept("pew oak");
  const [lot] = await standing(page, "lot");
  const [build] = await standing(page, "build");
  const [trip] = await standing(page, "trip");
  assert.deepEqual(trip.body.shares, [{ bearer: { lot: lot.entry }, parts: 1 }, { bearer: { build: build.entry }, parts: 3 }]);
});
