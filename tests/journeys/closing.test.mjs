// Closing a build freezes what its draws cost; what comes late is asked about; paused, reopened.
import { addLot, logHours, sheetOf, startBuild, startStage } from "./lib/acts.mjs";
import { lines } from "./lib/disk.mjs";
import { until } from "./lib/thumb.mjs";
import { journey } from "./lib/journey.mjs";

const TITLE = "Hall bench";

/** A build that drew 4 of 10 board feet at 40.00, and its money. */
async function drawn({ page, thumb, go }) {
  await startBuild(thumb, TITLE);
  await addLot(thumb, {}, { "what, or from where": "barn oak", "how much": "10 bd ft", "price, before tax": "40" });
  const all = (await lines(page)).map((line) => JSON.parse(line));
  const of = (kind) => all.find((line) => line.kind === kind).entry;
  await go(`use.${of("lot")}`);
  await thumb.tap("bd ft", "Say how much by");
  await thumb.tap("4", "Number pad");
  await thumb.tap(/^Use 4/);
  await thumb.kept("used");
  await go(`money.${of("build")}`);
  await thumb.sheet(`Money, ${TITLE}`);
  return { build: of("build"), lot: of("lot") };
}

async function close(thumb) {
  await thumb.tap("Close");
  await thumb.sees(/its one draw stays at 16\.00/);
  await thumb.tap("Close it");
  await thumb.kept("closed at 16.00");
}

journey("a closed build keeps what its draws cost, and says what is known today", async (walk) => {
  const { thumb, go } = walk;
  const { build, lot } = await drawn(walk);
  await close(thumb);
  await thumb.sees(/Closed at\s*16\.00/);
  await go(`entry.${lot}`);
  await thumb.tap("Correct");
  await thumb.type("Paid", "60");
  await thumb.tap("Keep it so");
  await thumb.kept("corrected");
  await go(`money.${build}`);
  await thumb.sees(/Closed at.*by today’s knowledge 24\.00\s*16\.00/);
  await sheetOf(thumb, "Journal", TITLE);
  await thumb.sees(/^closed Fri/);
});

journey("late hours on a closed build are asked about: the shop bears them", async (walk) => {
  const { thumb, page } = walk;
  await drawn(walk);
  await close(thumb);
  await thumb.place("Bench");
  await thumb.tap(/^hours/i);
  await thumb.type("How long", "1 h");
  await thumb.choose("Stage", "sand");
  await thumb.choose("Worked for", TITLE);
  await thumb.tap("Keep hours");
  await thumb.sees(`${TITLE} was closed`);
  await thumb.tap("Not now", "Closed build");
  await thumb.misses(`${TITLE} was closed`);
  await thumb.tap("Keep hours");
  await thumb.tap(/^The shop/, "Closed build");
  await thumb.kept("sand 1 h 00");
  const last = (await lines(page)).map((line) => JSON.parse(line)).findLast((line) => line.kind === "stretch");
  if (last.body.bearer !== "shop") throw new Error(`borne by ${JSON.stringify(last.body.bearer)}`);
});

journey("what was made of a closed build reopens it or is left; money that came for its offcuts can be the shop's", async (walk) => {
  const { thumb, page, go } = walk;
  const { build } = await drawn(walk);
  await close(thumb);
  const kept = async (kind) => (await lines(page)).map((line) => JSON.parse(line)).filter((line) => line.kind === kind);
  await go(`add.made.${build}`);
  await thumb.type("Good", "1");
  await thumb.tap("Keep");
  await thumb.sees(/was closed .*Open it again for this\?/);
  await thumb.misses(/or does the shop bear it/);
  await thumb.tap("Not now", "Closed build");
  if ((await kept("made")).length > 0) throw new Error("kept without an answer");
  await thumb.tap("Keep");
  await thumb.tap("Reopen", "Closed build");
  await thumb.kept("made 1 good");
  await go(`money.${build}`);
  await thumb.sheet(`Money, ${TITLE}`);
});

journey("a clock on a closed build asks, and reopens it", async (walk) => {
  const { thumb, page, go } = walk;
  const { build } = await drawn(walk);
  await close(thumb);
  // A day later: reopening is an entry of its own.
  await page.clock.fastForward("24:00:00");
  await go("work-for");
  await thumb.tap(TITLE);
  await thumb.tap(/^all \d+$/);
  await thumb.tap("sand");
  await thumb.sees(`${TITLE} was closed`);
  await thumb.tap("Reopen", "Closed build");
  await thumb.kept("sand");
  await go(`money.${build}`);
  await thumb.sees("under way");
  const kinds = (await lines(page)).map((line) => JSON.parse(line)).filter((line) => line.kind === "build_state");
  await until("reopened", () => kinds.some((line) => line.body?.state === "reopened"));
});

journey("a build is paused, goes on, closed and opened again on one day", async (walk) => {
  const { thumb } = walk;
  await drawn(walk);
  await thumb.tap("Pause");
  await thumb.kept("paused");
  await thumb.tap("Go on");
  await thumb.kept("goes on");
  await close(thumb);
  await thumb.tap("Reopen");
  await thumb.kept("open again");
  await thumb.key("Close").waitFor();
  await logHours(thumb, "1 h", "mill");
  await thumb.place("Bench");
  await startStage(thumb, "sand");
});

journey("a clock that runs for a build stops as it is closed, and the bench goes on to what is open", async ({ page, thumb, go }) => {
  await startBuild(thumb, "Stool");
  await logHours(thumb, "1 h", "sand");
  await thumb.place("Builds");
  await startBuild(thumb, TITLE);
  await startStage(thumb, "mill");
  await page.clock.fastForward("01:00:00");
  await thumb.clock("1:00");
  const lastBuild = (await lines(page)).map((line) => JSON.parse(line)).findLast((line) => line.kind === "build");
  await go(`money.${lastBuild.entry}`);
  await thumb.tap("Close");
  await thumb.tap("Close it");
  await thumb.kept("its clock stopped");
  await thumb.place("Bench");
  await thumb.sheet("Stool");
  await thumb.misses(/^Clock running/);
  await thumb.undo();
  await thumb.clock(/mill/);
});
