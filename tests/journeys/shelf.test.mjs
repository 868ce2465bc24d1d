// The shelf as books: the formula and what a change comes to, the count, what is lost, what lay there on a day.
import assert from "node:assert/strict";
import { addLot, openBuild, startBuild } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

/** Ten discs for 20, ten more for 40, and twelve of them used. */
async function discs(thumb) {
  await startBuild(thumb, "Tray");
  await addLot(thumb, { use: "used up" }, { what: "discs", "how much": "10 discs", "price, before tax": "20" });
  await addLot(thumb, { use: "used up" }, { what: "discs", "how much": "10", "price, before tax": "40" });
}

async function use(thumb, many) {
  await thumb.place("Stock");
  await thumb.tap(/^discs/);
  await thumb.tap("Use some");
  await thumb.type(/^How many/, many);
  await thumb.tap(new RegExp(`^Use ${many}`));
  await thumb.kept("used");
}

journey("a change of formula says what it comes to before it is kept", async ({ thumb, go }) => {
  await discs(thumb);
  await use(thumb, "12");
  await thumb.place("Shop");
  await thumb.tap(/^Stock is drawn by/);
  await thumb.sheet("Stock is drawn by");
  // Twelve of twenty at 3: 36.00. First in, first out: ten at 2 and two at 4.
  await thumb.sees("On the shelf");
  await thumb.sees("24.00 by moving average");
  await thumb.sees("32.00");
  await thumb.sees("used up; 36.00 by moving average");
  await thumb.sees("28.00");
  // From tomorrow on nothing that was drawn moves.
  await thumb.type("From", "2026-11-21");
  await thumb.sees("No figure of today moves");
  await thumb.type("From", "2026-11-20");
  await thumb.sees("28.00");
  await thumb.tap("Keep it");
  await thumb.sheet(/./);
  await openBuild(thumb, "Tray");
  await thumb.tap("Cost", "Sheets of Tray");
  await thumb.key(/28\.00/).first().waitFor();
  await go("shop");
  await thumb.key(/^Stock is drawn by.*first in, first out/).waitFor();
  // A second time it is said that it is so already.
  await thumb.tap(/^Stock is drawn by/);
  await thumb.tap("Keep it");
  await thumb.refused("From", "it is first in, first out already", "2026-11-20");
});

journey("a walk along the shelf is counted in one go, and the shop bears the difference", async ({ thumb, page }) => {
  await discs(thumb);
  await addLot(thumb, { use: "fitting" }, { what: "brass hinges", "how much": "8 hinges", "price, before tax": "40" });
  await addLot(thumb, {}, { "what, or from where": "barn oak", "how much": "40", "price, before tax": "160" });
  await thumb.place("Stock");
  await thumb.tap("Count");
  await thumb.sheet("Count");
  await thumb.type("discs, 20 discs by the books", "18");
  await thumb.sees(/differs .2/);
  await thumb.type("brass hinges, 8 hinges by the books", "8");
  await thumb.sees("as by the books");
  // Half the walk, kept; the rest later.
  await thumb.tap("Keep 2 counts");
  await thumb.kept("counted");
  await thumb.sees("differences 6.00");
  await thumb.field("discs, 18 discs by the books").waitFor();
  await thumb.type(/^barn oak, 40 bd ft/, "a lot");
  await thumb.tap("Keep the count");
  await thumb.refused(/^barn oak, 40 bd ft/, /./, "a lot");
  await thumb.type(/^barn oak, 40 bd ft/, "36");
  await thumb.tap("Keep the count");
  await thumb.kept("barn oak");
  await thumb.sees("differences 16.00");
  await thumb.tap("Leave");
  await thumb.key(/discs.*54\.00/).waitFor();
  await page.goto(new URL("./?at=stock-losses", page.url()).href);
  await thumb.sees("Count differences");
  await thumb.key(/^discs.*6\.00/).waitFor();
  await thumb.key(/^barn oak.*16\.00/).waitFor();
  await thumb.sees("22.00");
  await thumb.tap(/^discs/);
  await thumb.sheet(/counted/);
});

journey("what spoiled and what was given away are losses on lines of their own, and put right", async ({ thumb, go }) => {
  await discs(thumb);
  await thumb.place("Stock");
  await thumb.tap(/^discs/);
  await thumb.tap(/^Gone/);
  await thumb.type("How much", "2");
  await thumb.tap("Keep");
  await thumb.kept("thrown out");
  await thumb.sees("18");
  await thumb.tap(/^Gone/);
  await thumb.tap("given away", "What happened to it");
  await thumb.type("How much", "1");
  await thumb.tap("Keep");
  await thumb.kept("given away");
  await go("stock-losses");
  await thumb.sees("Thrown out");
  await thumb.key(/^discs, 2.*6\.00/).waitFor();
  await thumb.sees("9.00");
  await thumb.tap(/^discs, 1/);
  await thumb.tap("Correct");
  await thumb.type("How much", "3");
  await thumb.tap(/^Keep/);
  await thumb.kept("3");
  await go("stock-losses");
  await thumb.key(/^discs, 3.*9\.00/).waitFor();
  await thumb.undo();
  await thumb.key(/^discs, 1.*3\.00/).waitFor();
});

journey("what lay on the shelf on any day adds up and opens to its entries", async ({ thumb, go, page }) => {
  await discs(thumb);
  await page.clock.fastForward("24:00:00");
  await go("bench");
  await use(thumb, "5");
  await go("on-the-shelf");
  await thumb.sheet("What is on the shelf");
  await thumb.key(/^discs.*15 discs at 3\.00.*45\.00/).waitFor();
  await thumb.type("At the end of", "2026-11-20");
  await thumb.key(/^discs.*20 discs at 3\.00.*60\.00/).waitFor();
  await thumb.type("At the end of", "2026-11-19");
  await thumb.sees("Nothing lay on the shelf");
  await thumb.type("At the end of", "2026-11-21");
  // What was drawn lies in the build now: the day before nothing did.
  await thumb.sees("Work under way");
  await thumb.key(/^Tray.*15\.00/).waitFor();
  await thumb.type("At the end of", "2026-11-20");
  await thumb.misses("Work under way");
  await thumb.type("At the end of", "2026-11-21");
  await thumb.tap(/^discs/);
  await thumb.key(/^used, discs.*-15\.00|^used, discs.*−15\.00/).waitFor();
  assert.equal(await thumb.key(/^came in, discs/).count(), 2);
  await thumb.tap(/^used, discs/);
  await thumb.sheet(/used/);
});
