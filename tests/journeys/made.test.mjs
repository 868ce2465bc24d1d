// A batch: good and spoiled, one good piece, what was sold, given and left, one-off work over the run.
import { logHours, openBuild, setRate, startBuild } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

/** A build of so many, at a cost of 600 that was paid for it, and its money. */
async function batch({ page, thumb, go }, { pieces = "12", spoils = "" } = {}) {
  await startBuild(thumb, "Trays");
  await openBuild(thumb, "Trays");
  const id = new URL(page.url()).searchParams.get("at").split(".")[1];
  await go(`entry.${id}`);
  if (pieces !== "1") {
    await thumb.tap("Correct");
    await thumb.type("Pieces", pieces);
    await thumb.tap("Keep it so");
    await thumb.kept("corrected");
  }
  if (spoils) {
    await thumb.tap("Correct");
    await thumb.type("Usually spoils", spoils);
    await thumb.tap("Keep it so");
    await thumb.kept("corrected");
  }
  await go("expense");
  await thumb.type("What for", "parts");
  await thumb.type("Paid", "600");
  await thumb.tap(/^Keep/);
  await thumb.kept("600.00");
  await go(`money.${id}`);
  await thumb.sheet("Money, Trays");
  return id;
}

async function handOver(thumb, count, how) {
  await thumb.tap(/^Left/);
  await thumb.tap(how, "What became of them");
  await thumb.type("Pieces", count);
  await thumb.tap("Keep");
  await thumb.kept(`handed over ${count} ${how}`);
}

journey("10 good of 12 at 600 with 10 % usual spoilage cost 56.00 each; sold, given and left add up", async (walk) => {
  const { thumb } = walk;
  await batch(walk, { spoils: "10" });
  await thumb.tap(/^Made/);
  await thumb.type("Good", "10");
  await thumb.type("Spoiled", "2");
  await thumb.tap("Keep");
  await thumb.kept("made 10 good, 2 spoiled");
  await thumb.key(/^One good piece\s*56\.00/).waitFor();
  await thumb.tap(/^Pieces 10 good/);
  await thumb.sees("Lost to spoilage");
  await thumb.sees("40.00");
  await thumb.tap(/^Money in/);
  await thumb.type("Received", "560");
  await thumb.tap("Keep");
  await thumb.kept("income sale");
  await handOver(thumb, "7", "sold");
  await handOver(thumb, "1", "given");
  await thumb.tap(/^Left/);
  await thumb.type("Pieces", "3");
  await thumb.tap("Keep");
  await thumb.refused("Pieces", "2 are still here", "3");
  await thumb.tap("Leave");
  await thumb.tap(/^Pieces 10 good, 2 still here/);
  await thumb.sees(/Profit on sold\s*560\.00 net − cost of 7\s*168\.00/);
  await thumb.sees(/Given, at cost\s*1 of them\s*56\.00/);
  await thumb.sees(/Left, at cost\s*2 of them\s*112\.00/);
});

journey("a spoiled one with 40 % of the work in it counts so; a single piece asks for no spoilage", async (walk) => {
  const { thumb } = walk;
  await batch(walk, { spoils: "10" });
  await thumb.tap(/^Made/);
  await thumb.type("Good", "10");
  await thumb.type("Spoiled", "2");
  await thumb.page.locator("#done-1").fill("40");
  await thumb.tap("Keep");
  await thumb.kept("made 10 good, 2 spoiled");
  await thumb.key(/^One good piece\s*57\.05/).waitFor();
  await thumb.place("Bench");
});

journey("a build of one asks for no spoilage and has no one-off switch", async (walk) => {
  const { thumb, go } = walk;
  await batch(walk, { pieces: "1" });
  await thumb.tap(/^Made/);
  await thumb.field("Good").waitFor();
  await thumb.misses("Spoiled");
  await go("hours");
  await thumb.field("Stage").waitFor();
  await thumb.misses("One-off: jig");
});

journey("a jig's hours go over the run that is planned", async (walk) => {
  const { thumb, go } = walk;
  const id = await batch(walk);
  await setRate(thumb, "30");
  await go(`entry.${id}`);
  await thumb.tap("Correct");
  await thumb.type("To be made in all", "30");
  await thumb.tap("Keep it so");
  await thumb.kept("corrected");
  await go("hours");
  await thumb.type("How long", "5 h");
  await thumb.choose("Stage", "mill");
  await thumb.tap(/^One-off: jig/);
  await thumb.tap("Keep hours");
  await thumb.kept("mill");
  await go(`money.${id}`);
  await thumb.tap(/^Made/);
  await thumb.type("Good", "10");
  await thumb.tap("Keep");
  await thumb.kept("made 10 good");
  await thumb.tap(/^Jigs, templates, design\s*150\.00/);
  await thumb.sees(/In all\s*over 30, 5\.00 each\s*150\.00/);
  await thumb.sees(/Borne here\s*50\.00/);
  await thumb.sees(/Still to be borne\s*100\.00/);
  await thumb.tap(/^No more of it will be made/);
  await thumb.kept("no more will be made");
  await thumb.sees(/Written off, run ended .*\s*100\.00/);
  await thumb.misses("Still to be borne");
  await thumb.tap("Undo");
  await thumb.sees(/Still to be borne\s*100\.00/);
  // 600 for ten, and five of the jig.
  await thumb.key(/^One good piece\s*65\.00/).waitFor();
  await logHours(thumb, "1 h", "sand");
});
