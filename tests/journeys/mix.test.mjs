// Resin for a void: both parts poured in one go, by volume; and what a tired person types.
import { addLot, openBuild, startBuild, startStage } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

async function resin(thumb) {
  await startBuild(thumb, "River table");
  await addLot(thumb, { use: "used up" }, { what: "resin A", "how much": "2 tins", "price, before tax": "80", "one tin holds": "1 l" });
  await addLot(thumb, { use: "used up" }, { what: "hardener B", "how much": "2 tins", "price, before tax": "60", "one tin holds": "500 ml" });
  await thumb.place("Bench");
  await startStage(thumb, "glue-up");
  await thumb.place("Stock");
  await thumb.tap(/^resin A/);
  await thumb.tap("Use some");
  await thumb.tap(/^Fill a void/);
  await thumb.sheet("Mix resin A");
}

journey("a void is filled: resin and hardener are drawn at once, each with the working", async ({ thumb }) => {
  await resin(thumb);
  await thumb.type("What is filled", "50 x 30 x 2 cm");
  await thumb.type("Mixed by volume", "2:1");
  await thumb.sees(/2,?000 ml resin A, 1,?000 ml hardener B/);
  await thumb.type("What is filled", "500 x 30 x 20 mm");
  await thumb.type("On top", "10");
  await thumb.sees(/220 ml resin A, 110 ml hardener B/);
  await thumb.sees(/By weight the ratio is another one/);
  await thumb.tap("Pour both");
  await thumb.kept("220 ml resin A, 110 ml hardener B");
  await openBuild(thumb, "River table");
  await thumb.sees(/used resin A/);
  await thumb.sees(/used hardener B/);
  await thumb.sees(/500 x 30 x 20 mm, 10 % on top = 330 ml, 2:1 by volume/);
  // One tap takes both back.
  await thumb.undo();
  await thumb.place("Stock");
  await thumb.key(/^resin A.*2 tins/s).waitFor();
  await thumb.key(/^hardener B.*2 tins/s).waitFor();
});

journey("half a void and half a ratio are refused by their fields", async ({ thumb }) => {
  await resin(thumb);
  await thumb.tap("Pour both");
  await thumb.refused("What is filled", /No void yet/);
  for (const typed of ["500 x 30", "500 x 30 x", "0 x 30 x 20", "40 l", "a crack"]) {
    await thumb.type("What is filled", typed);
    await thumb.tap("Pour both");
    await thumb.refused("What is filled", /Type it like/, typed);
  }
  await thumb.type("What is filled", "dia 2 x 1");
  for (const typed of ["2", "2:", "0:1", "two to one"]) {
    await thumb.type("Mixed by volume", typed);
    await thumb.tap("Pour both");
    await thumb.refused("Mixed by volume", /Type it like 2:1/, typed);
  }
});
