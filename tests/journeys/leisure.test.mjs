// Years of entries: what the bench says of stock comes a moment after the tap, and is right when it comes.
import { randomUUID } from "node:crypto";
import { addLot, startBuild, startStage } from "./lib/acts.mjs";
import { backUp, bringIn, linesOf } from "./lib/backup.mjs";
import { journey } from "./lib/journey.mjs";

const MANY = 2500;

/** The journal with so many notes more, as of a shop that has been kept for years. */
function grown(lines) {
  const note = JSON.parse(lines.find((line) => JSON.parse(line).kind === "note"));
  const more = Array.from({ length: MANY }, () => JSON.stringify({ ...note, id: randomUUID(), entry: randomUUID(), parents: [] }));
  return Buffer.from([...lines, ...more].join("\n"));
}

journey("with thousands of entries a usual draw still says what it costs, and what is low is named", async (walk) => {
  const { page, thumb, go } = walk;
  await startBuild(thumb);
  await addLot(thumb, { use: "used up" }, { what: "hard oil, two parts", "how much": "16", "price, before tax": "40", "say when under": "13" });
  await go("note");
  await thumb.type("What is it about?", "as many as there are days");
  await thumb.tap("Keep note");
  await thumb.kept("as many as");
  await go("bench");
  await startStage(thumb, "sand");
  await thumb.tap(/^(Other|Use stock)/);
  await thumb.tap("2", "Number pad");
  await thumb.tap(/^Use 2/);
  await thumb.kept(/used 2/);
  const file = await backUp(walk);
  await bringIn(walk, grown(linesOf(file.bytes)), { name: "journal.jsonl" });
  await go("bench");
  await thumb.tap(/^2 hard oil.*5\.00/);
  await thumb.kept(/used 2.*5\.00/);
  await thumb.sees(/12 .*left/);
  // Counted on from the books that are made then: a second one is of the same price.
  await thumb.tap(/^2 hard oil.*5\.00/);
  await thumb.kept(/10 .*left/);
  await thumb.tap("Stop");
  await thumb.kept("Me");
  await page.clock.fastForward("01:00:00");
  await thumb.sees("Low");
  await thumb.sees(/hard oil, two parts.*10/);
  await thumb.sees(/under your mark of 13/);
});
