// Stock used: the usual draw, a count, a share of a tin, a length with marks that add, what it is for, a return, found
// empty.
import assert from "node:assert/strict";
import { addLot, openBuild, startBuild, startStage } from "./lib/acts.mjs";
import { lines } from "./lib/disk.mjs";
import { journey } from "./lib/journey.mjs";
import { until } from "./lib/thumb.mjs";

const DISCS = { what: "discs", "how much": "16 discs", "price, before tax": "11.36" };
const OIL = { what: "hard oil", "how much": "2 tins", "price, before tax": "116", "one tin holds": "750 ml" };
const OAK = { "what, or from where": "barn oak", "how much": "40", "price, before tax": "160" };

journey("a count is typed on the pad; from then on it is the usual draw, one tap on the bench while some is left", async ({ thumb }) => {
  await startBuild(thumb);
  await addLot(thumb, { use: "used up" }, DISCS);
  await thumb.place("Bench");
  await startStage(thumb, "sand");
  await thumb.tap(/^(Other|Use stock)/);
  await thumb.sheet(/discs/);
  await thumb.tap("4", "Number pad");
  // What it costs and leaves is said before the tap.
  await thumb.sees("2.84");
  await thumb.sees(/leaves 12/);
  await thumb.tap("Use 4 discs");
  await thumb.kept(/used 4 discs, 2\.84/);
  await thumb.kept("12 discs left on the shelf");
  const before = thumb.taps;
  await thumb.tap(/^4 discs/, "Bench keys");
  await thumb.kept(/used 4 discs, 2\.84/);
  await thumb.kept("8 discs left on the shelf");
  assert.equal(thumb.taps - before, 1);
  for (const left of ["4 discs left on the shelf", "0 discs left on the shelf"]) {
    await thumb.tap(/^4 discs/, "Bench keys");
    await thumb.kept(left);
  }
  const usual = thumb.part("Bench keys").getByRole("button", { name: /^4 discs/ });
  await until("nothing left to offer", async () => (await usual.count()) === 0);
});

journey("a quarter of a tin in three taps, the rest said before", async ({ thumb }) => {
  await startBuild(thumb);
  await addLot(thumb, { use: "used up" }, OIL);
  await thumb.place("Bench");
  await startStage(thumb, "finish");
  const before = thumb.taps;
  await thumb.tap(/^(Other|Use stock)/);
  await thumb.sheet(/hard oil/);
  await thumb.tap(/^1\/4 tin/);
  await thumb.tap("Use 1/4 tin");
  await thumb.kept(/used.*1\/4 tin.*14\.50/);
  assert.equal(thumb.taps - before, 3);
  await thumb.tap(/^(Other|Use stock)/);
  // By what the tin holds: 375 ml is half a tin.
  await thumb.tap("ml", "Say how much by");
  for (const digit of "375") await thumb.tap(digit, "Number pad");
  await thumb.sees("29.00");
  await thumb.tap("Use 375 ml");
  await thumb.kept("29.00");
});

journey("a length of timber: the lit marks of the rule add to three eighths", async ({ thumb }) => {
  await startBuild(thumb);
  await addLot(thumb, {}, OAK);
  await thumb.place("Bench");
  await startStage(thumb, "cut");
  await thumb.tap(/^(Other|Use stock)/);
  for (const digit of "19") await thumb.tap(digit, "Number pad");
  await thumb.tap("add 1/4");
  await thumb.tap("add 1/8");
  // A fraction is drawn as one sign, and stands beside it in plain text for a screen reader.
  await thumb.sees(/19 \+ .*1\/4 \+ .*1\/8/);
  assert.equal(await thumb.field("Length of one piece").inputValue(), "19 3/8");
  await thumb.tap(/^Width/, "Say how much by");
  await thumb.tap("2", "Number pad");
  await thumb.tap("add 1/4");
  await thumb.tap(/^Thick/, "Say how much by");
  await thumb.tap("2", "Number pad");
  // 19 3/8 x 2 1/4 x 2 in is 87.1875 cubic inches: 0.605469 board feet at 4.00.
  await thumb.sees("2.42");
  await thumb.tap(/^Use 19 3\/8 in/);
  await thumb.kept(/19.*3\/8 in.*2\.42/);
});

journey("stock is for what the clock is for; another side is chosen on the spot, and stands there the next time", async ({ thumb }) => {
  await startBuild(thumb);
  await addLot(thumb, { use: "used up" }, DISCS);
  await thumb.place("Bench");
  await startStage(thumb, "shoot");
  let before = thumb.taps;
  await thumb.tap(/^(Other|Use stock)/);
  await thumb.key("for the film: change").waitFor();
  await thumb.tap("2", "Number pad");
  await thumb.tap("Use 2 discs");
  await thumb.kept(/used 2 discs/);
  assert.equal(thumb.taps - before, 3, "the usual way is no tap longer");
  // The usual draw repeats what it was for, and says so.
  await thumb.tap(/^2 discs 1\.42, for the film/, "Bench keys");
  await thumb.kept("12 discs left on the shelf");
  before = thumb.taps;
  await thumb.tap(/^(Other|Use stock)/);
  await thumb.tap("for the film: change");
  await thumb.tap("both", "What it is for");
  await thumb.key("for both: change").waitFor();
  await thumb.tap("3", "Number pad");
  await thumb.tap("Use 3 discs");
  await thumb.kept(/used 3 discs/);
  assert.equal(thumb.taps - before, 5);
  await thumb.tap(/^(Other|Use stock)/);
  await thumb.key("for both: change").waitFor();
  await openBuild(thumb);
  assert.equal(await thumb.key(/used discs, 2 discs, for the film/).count(), 2);
  await thumb.key(/used discs, 3 discs, both/).waitFor();
  // At another stage it is for what that one is for.
  await thumb.place("Bench");
  await startStage(thumb, "sand");
  await thumb.tap(/^(Other|Use stock)/);
  await thumb.key("for the piece: change").waitFor();
});

journey("half a fraction shows its hole and is refused in plain words", async ({ thumb }) => {
  await startBuild(thumb);
  await addLot(thumb, {}, OAK);
  await thumb.place("Bench");
  await startStage(thumb, "cut");
  await thumb.tap(/^(Other|Use stock)/);
  for (const digit of "23") await thumb.tap(digit, "Number pad");
  await thumb.tap(/^over/, "Number pad");
  await thumb.tap(/^Use/);
  await thumb.refused("Length of one piece", "The fraction has no bottom yet");
  // A tap on the rule gives it its bottom.
  await thumb.tap("add 1/8");
  assert.match(await thumb.field("Length of one piece").inputValue(), /\/8$/);
  // It is finished: an eighth does not become an eighty-second, tapped or typed.
  await thumb.tap("2", "Number pad");
  assert.match(await thumb.field("Length of one piece").inputValue(), /\/8$/);
  await thumb.type("Length of one piece", "2 3/82");
  await thumb.tap(/^Use/);
  await thumb.refused("Length of one piece", "No rule has such a mark");
});

journey("some of it comes back at what it cost", async ({ thumb }) => {
  await startBuild(thumb);
  await addLot(thumb, { use: "used up" }, DISCS);
  await thumb.place("Bench");
  await startStage(thumb, "sand");
  await thumb.tap(/^(Other|Use stock)/);
  await thumb.tap("6", "Number pad");
  await thumb.tap("Use 6 discs");
  await thumb.kept(/used 6 discs/);
  await openBuild(thumb);
  await thumb.tap(/used discs/);
  await thumb.tap(/^Some back/);
  await thumb.tap("2", "Number pad");
  await thumb.tap("Put back 2 discs");
  await thumb.kept(/2 discs/);
  await thumb.place("Stock");
  await thumb.key(/discs.*12/).waitFor();
});

journey("more than there is: kept, flagged, never refused", async ({ thumb }) => {
  await startBuild(thumb);
  await addLot(thumb, { use: "used up" }, DISCS);
  await thumb.place("Bench");
  await startStage(thumb, "sand");
  await thumb.tap(/^(Other|Use stock)/);
  for (const digit of "20") await thumb.tap(digit, "Number pad");
  await thumb.sees("more than is left");
  await thumb.tap("Use 20 discs");
  await thumb.kept(/used 20 discs/);
  await thumb.place("Stock");
  await thumb.key(/discs.*−4/).waitFor();
});

journey("a thing is found empty in one tap", async ({ thumb }) => {
  await startBuild(thumb);
  await addLot(thumb, {}, OAK);
  await thumb.place("Stock");
  await thumb.tap(/barn oak/);
  await thumb.tap(/^It is empty/);
  await thumb.kept("found empty");
});

journey("money paid directly", async ({ thumb }) => {
  await startBuild(thumb);
  await openBuild(thumb);
  await thumb.tap("money", "Journal keys");
  await thumb.type("What for", "Hire of a drum sander");
  await thumb.type("Paid", "60");
  await thumb.tap(/^Keep/);
  await thumb.kept("60.00");
});

journey("tax says what it comes to before it is kept, and the mark says what was paid with it", async ({ thumb, go }) => {
  await startBuild(thumb);
  await go("expense");
  await thumb.type("What for", "Sharpening");
  await thumb.type("Paid", "18.54");
  await thumb.misses(/with it/);
  await thumb.type("Tax on top", "13");
  await thumb.sees("Tax 13.00, with it 31.54");
  await thumb.type("Tax on top", "13 %");
  await thumb.sees("Tax 2.41, with it 20.95");
  await thumb.tap(/^Keep/);
  await thumb.kept("20.95, Sharpening");
});

journey("the shop's sales tax stands in a new expense, and what is emptied stays empty", async ({ thumb, go, open, page }) => {
  await startBuild(thumb);
  await go("choices");
  await thumb.type("Sales tax", "13");
  await thumb.tap("Keep");
  await thumb.kept("13 %");
  await go("expense");
  await until("13 % is offered", async () => (await thumb.field("Tax on top").inputValue()) === "13 %");
  await thumb.type("What for", "Sharpening");
  await thumb.type("Paid", "100");
  await thumb.sees("Tax 13.00, with it 113.00");
  await thumb.type("Tax on top", "");
  await thumb.misses(/with it/);
  // The draft keeps that, too.
  await page.close({ runBeforeUnload: true });
  const again = await open("expense");
  await until("the draft is back", async () => (await again.thumb.field("Paid").inputValue()) === "100");
  assert.equal(await again.thumb.field("Tax on top").inputValue(), "");
  await again.thumb.tap(/^Keep/);
  await again.thumb.kept("100.00, Sharpening");
});

journey("a draw takes the stage of a clock that runs for what it goes into, and of no other", async ({ page, thumb }) => {
  await startBuild(thumb, "Tray");
  await thumb.place("Builds");
  await startBuild(thumb, "Box");
  await addLot(thumb, { use: "used up" }, DISCS);
  await thumb.place("Bench");
  await startStage(thumb, "sand");
  const use = async (into) => {
    await thumb.tap(/^(Other|Use stock)/);
    await page.locator(".who-for").tap();
    await thumb.tap(into);
    await thumb.tap("1", "Number pad");
    await thumb.tap(/^Use 1 disc/);
    await thumb.kept(/used 1 disc/);
    const draws = (await lines(page)).map((line) => JSON.parse(line)).filter((it) => it.kind === "draw");
    return draws.at(-1).body.stage;
  };
  assert.ok(await use(/^Box/));
  assert.equal(await use(/^Tray/), undefined);
  assert.equal(await use(/^the shop/i), undefined);
});
