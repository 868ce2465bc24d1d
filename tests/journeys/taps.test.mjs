// Taps, counted: never more than the table says. Typing and its digits are not taps; the keys before and after are.
import assert from "node:assert/strict";
import { BUILD, addLot, addPerson, logHours, openBuild, setRate, startBuild, startStage } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

const SALVAGED = { "what, or from where": "gymnasium maple", "rough quantity": "120", paid: "36", "usable, as you expect": "80" };

async function running({ thumb }, stage = "sand") {
  await startBuild(thumb);
  await startStage(thumb, stage);
}
async function withPartner(walk) {
  const { thumb } = walk;
  await startBuild(thumb);
  await addPerson(thumb, "Tobin");
  await thumb.place("Bench");
  await startStage(thumb, "sand");
}
async function withDiscs(walk) {
  const { thumb } = walk;
  await startBuild(thumb);
  await addLot(thumb, { use: "used up" }, { what: "discs", "how much": "16 discs", "price, before tax": "11.36" });
  await thumb.place("Bench");
  await startStage(thumb, "sand");
  await thumb.tap(/^(Other|Use stock)/);
  await thumb.tap("4", "Number pad");
  await thumb.tap("Use 4 discs");
  await thumb.kept("used 4 discs");
}
async function withOil(walk) {
  const { thumb } = walk;
  await startBuild(thumb);
  await addLot(thumb, { use: "used up" }, { what: "hard oil", "how much": "2 tins", "price, before tax": "58" });
  await thumb.place("Bench");
  await startStage(thumb, "finish");
}
async function withOak(walk) {
  const { thumb } = walk;
  await startBuild(thumb);
  await addLot(thumb, {}, { "what, or from where": "barn oak", "how much": "40", "price, before tax": "160" });
  await thumb.place("Bench");
  await startStage(thumb, "cut");
  // The width and the thickness of the piece before stay for the next.
  await thumb.tap(/^(Other|Use stock)/);
  await thumb.type("Length of one piece", "20");
  await thumb.tap(/^Width/, "Say how much by");
  await thumb.type("Width of one piece", "2");
  await thumb.tap(/^Thick/, "Say how much by");
  await thumb.type("Thickness of one piece", "2");
  await thumb.tap(/^Use 20 in/);
  await thumb.kept("used");
}
async function withHours(walk) {
  const { thumb } = walk;
  await startBuild(thumb);
  await setRate(thumb, "26");
  await logHours(thumb, "2 h", "mill");
  await openBuild(thumb);
}
/** Hours, and money paid: without any the row to the bridge would say nothing. */
async function withMoney(walk) {
  await withHours(walk);
  const { thumb } = walk;
  await thumb.tap("Journal", `Sheets of ${BUILD}`);
  await thumb.tap("money", "Journal keys");
  await thumb.type("What for", "Hire of a drum sander");
  await thumb.type("Paid", "60");
  await thumb.tap(/^Keep/);
  await thumb.kept("60.00");
  await openBuild(thumb);
}

async function withSalvage(walk) {
  const { thumb } = walk;
  await startBuild(thumb);
  await addLot(thumb, { origin: "salvaged" }, { ...SALVAGED, "same thing new, a bd ft": "7" });
  await thumb.place("Stock");
}

/** Act, taps at most, what goes before, the act itself. */
const TABLE = [
  ["start the likely stage", 1, ({ thumb }) => startBuild(thumb), async ({ thumb }) => {
    await thumb.tap(/^Start /);
    await thumb.kept("begun");
  }],
  ["change over", 1, running, async ({ thumb }) => {
    await thumb.tap("finish", "Bench keys");
    await thumb.kept("now finish");
  }],
  ["change over to any other stage", 2, running, async ({ thumb }) => {
    await thumb.tap(/^all \d+$/);
    await thumb.tap("thumbnail");
    await thumb.kept("now thumbnail");
  }],
  ["stop", 1, running, async ({ thumb }) => {
    await thumb.tap("Stop");
    await thumb.kept("0 h 00, Me");
  }],
  ["forgot to start", 1, running, async ({ thumb }) => {
    await thumb.tap("30 minutes earlier");
    await thumb.kept("begun 7:35 a.m.");
  }],
  ["forgot to stop", 2, async (walk) => {
    await running(walk);
    await walk.page.clock.fastForward("02:00:00");
  }, async ({ thumb }) => {
    await thumb.tap("Stop");
    await thumb.tap("30 minutes earlier", "Just stopped");
    await thumb.kept("1 h 30");
  }],
  ["pause", 1, running, async ({ thumb }) => {
    await thumb.tap("Pause");
    await thumb.kept("paused");
  }],
  ["go on", 1, async (walk) => {
    await running(walk);
    await walk.thumb.tap("Pause");
    await walk.thumb.kept("paused");
  }, async ({ thumb }) => {
    await thumb.tap("Go on");
    await thumb.kept("goes on");
  }],
  ["partner", 1, withPartner, async ({ thumb }) => {
    await thumb.tap("Tobin", "Who");
    await thumb.kept("by Tobin");
  }],
  ["both", 1, withPartner, async ({ thumb }) => {
    await thumb.tap("both", "Who");
    await thumb.kept("by Me and Tobin");
  }],
  ["camera", 1, running, async ({ thumb }) => {
    await thumb.tap(/^camera/);
    await thumb.kept("rolling");
  }],
  ["usual draw at this stage", 1, withDiscs, async ({ thumb }) => {
    await thumb.tap(/^4 discs/, "Bench keys");
    await thumb.kept("8 discs left");
  }],
  ["a quarter of a tin", 3, withOil, async ({ thumb }) => {
    await thumb.tap(/^(Other|Use stock)/);
    await thumb.tap(/^1\/4 tin/);
    await thumb.tap("Use 1/4 tin");
    await thumb.kept(/used.*1\/4 tin/);
  }],
  ["a length: other, two digits, two marks of the rule, Use", 6, withOak, async ({ thumb }) => {
    await thumb.tap(/^(Other|Use stock)/);
    await thumb.tap("1", "Number pad");
    await thumb.tap("9", "Number pad");
    await thumb.tap("add 1/4");
    await thumb.tap("add 1/8");
    await thumb.tap("Use 19 3/8 in");
    await thumb.kept(/used.*19.*3\/8 in/);
  }],
  ["add a salvaged lot", 2, async ({ thumb }) => {
    await startBuild(thumb);
    await thumb.place("Stock");
  }, async ({ thumb }) => {
    await thumb.tap(/^Add a lot/);
    for (const [label, text] of Object.entries(SALVAGED)) await thumb.type(label, text);
    await thumb.tap("Keep the lot");
    await thumb.kept("gymnasium maple");
  }],
  ["sort", 2, withSalvage, async ({ thumb }) => {
    await thumb.tap("Sort");
    await thumb.type("good", "48");
    await thumb.type("culled", "12");
    await thumb.tap("Keep the sort");
    await thumb.kept("48 good, 12 culled");
  }],
  ["is salvage worth it", 1, withSalvage, async ({ thumb }) => {
    await thumb.tap(/gymnasium maple/);
    await thumb.sees(/an hour/);
  }],
  ["true cost from a build", 1, withHours, async ({ thumb }) => {
    await thumb.tap("Cost", `Sheets of ${BUILD}`);
    await thumb.key(/^True cost.*52\.00/).waitFor();
  }],
  ["spent and used up, one more", 2, withMoney, async ({ thumb }) => {
    await thumb.tap("Cost", `Sheets of ${BUILD}`);
    await thumb.tap(/^Spent /);
    await thumb.sheet("Spent, used up, true cost");
  }],
  ["open a figure down to its lines", 3, async (walk) => {
    await withHours(walk);
    await walk.thumb.tap("Cost", `Sheets of ${BUILD}`);
  }, async ({ thumb }) => {
    await thumb.tap(/^Labour/);
    await thumb.tap(/^\W*mill/i);
    await thumb.key(/Nov 20/).waitFor();
  }],
  ["fold back", 1, async (walk) => {
    await withHours(walk);
    await walk.thumb.tap("Cost", `Sheets of ${BUILD}`);
    await walk.thumb.tap(/^Labour/);
    await walk.thumb.tap(/^\W*mill/i);
    await walk.thumb.sheet(/^Mill/);
  }, async ({ thumb }) => {
    await thumb.tap(/^Fold back/, "Cost keys");
    await thumb.sheet(/^Labour/);
  }],
  ["undo", 1, running, ({ thumb }) => thumb.undo()],
  ["strike out", 1, async (walk) => {
    await withHours(walk);
    await walk.thumb.tap(/mill/);
  }, async ({ thumb }) => {
    await thumb.tap(/^Strike out/);
    await thumb.kept("struck out");
  }],
  ["put back", 1, async (walk) => {
    await withHours(walk);
    await walk.thumb.tap(/mill/);
    await walk.thumb.tap(/^Strike out/);
    await walk.thumb.kept("struck out");
  }, async ({ thumb }) => {
    await thumb.tap("Put back", "Journal keys");
    await thumb.kept("put back");
  }],
];

for (const [act, most, before, does] of TABLE) {
  journey(`${act}: ${most === 1 ? "1 tap" : `${most} taps`} at most`, async (walk) => {
    await before(walk);
    const from = walk.thumb.taps;
    await does(walk);
    assert.ok(walk.thumb.taps - from <= most, `${walk.thumb.taps - from} taps`);
  });
}
