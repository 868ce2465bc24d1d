// What is to be bought: filled from what is low and what a repeat will take, ticked in the store with the price.
import { addLot, openBuild, startBuild, startStage } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

/** Discs with a mark of ten, of which eight are there. */
async function low(thumb, go) {
  await startBuild(thumb, "Tray");
  await addLot(thumb, { use: "used up" }, { what: "discs", "how much": "8 discs", "price, before tax": "16" });
  await thumb.place("Stock");
  await thumb.tap(/^discs/);
  await thumb.tap("Correct");
  await thumb.tap("Correct");
  await thumb.type("Low under", "10");
  await thumb.tap(/^Keep/);
  await thumb.kept("discs");
}

journey("the list is filled in one tap and ticked with a price while a clock runs", async ({ thumb, go }) => {
  await low(thumb, go);
  await thumb.place("Bench");
  await startStage(thumb, "sand");
  await thumb.place("Stock");
  await thumb.tap(/^To buy/);
  await thumb.sees("Nothing stands on the list");
  await thumb.tap(/^Fill it/);
  await thumb.kept("to buy discs");
  await thumb.sees("For the shop");
  await thumb.tap(/^discs/);
  await thumb.type(/^Price of discs/, "5.20");
  await thumb.tap(/^Bought/);
  await thumb.kept("paid 5.20");
  await thumb.key(/^discs, 2.*5\.20/).waitFor();
  await thumb.place("Stock");
  await thumb.key(/discs.*21\.20/).waitFor();
  // The clock has run on, and taking it back unticks the line and takes the lot away.
  await thumb.undo();
  await thumb.key(/discs.*16\.00/).waitFor();
  await thumb.tap(/^To buy.*1 line/);
  await thumb.key(/^discs/).waitFor();
  await go("bench");
  await thumb.clock(/sand/);
});

journey("a line is added by hand for a build, and bought without a price yet", async ({ thumb, go }) => {
  await startBuild(thumb, "Tray");
  await go("buying");
  await thumb.tap("Add a line");
  await thumb.type("What", "brass hooks");
  await thumb.type("How much", "6");
  await thumb.choose("Got for", "Tray");
  await thumb.tap("Keep");
  await thumb.kept("brass hooks");
  await thumb.sees("For Tray");
  await thumb.tap(/^brass hooks/);
  await thumb.tap(/^Bought/);
  await thumb.kept("no price yet");
  await thumb.tap(/^brass hooks, 6/);
  await thumb.sheet(/came in/i);
});

journey("what a repeat will take is low on the bench and goes on the list", async ({ thumb, go }) => {
  await startBuild(thumb, "Run one");
  await addLot(thumb, { use: "used up" }, { what: "discs", "how much": "32 discs", "price, before tax": "64" });
  await thumb.place("Stock");
  await thumb.tap(/^discs/);
  await thumb.tap("Use some");
  await thumb.type(/^How many/, "20");
  await thumb.tap(/^Use 20/);
  await thumb.kept("used");
  await go("new-build");
  await thumb.type("What is it?", "Run two");
  await thumb.tap("Start it");
  await thumb.kept("Run two");
  await openBuild(thumb, "Run two");
  await thumb.tap("Journal, Run two");
  await thumb.tap("Correct");
  await thumb.choose("The same again as", "Run one");
  await thumb.tap("Keep it so");
  await thumb.kept("Run two");
  await thumb.place("Bench");
  await thumb.sees("discs, 12 discs left");
  await thumb.sees("20 discs went into Run one");
  await thumb.tap(/^To buy/);
  await thumb.tap(/^Fill it/);
  await thumb.kept("to buy discs, 8 discs");
  await thumb.sees("For Run two");
});
