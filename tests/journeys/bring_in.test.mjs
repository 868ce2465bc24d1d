// The journal out and in: one revision a line; what a file holds is shown before it is taken; a broken one changes
// nothing and says where it is broken.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { BUILD, startBuild, startStage } from "./lib/acts.mjs";
import { backUp, bringIn, choose, linesOf, parts } from "./lib/backup.mjs";
import { lines } from "./lib/disk.mjs";
import { journey } from "./lib/journey.mjs";

/** A journal as it was saved before photos came with it. */
const OLD = readFileSync(new URL("../loads/stored/v1/run-of-a-shop.jsonl", import.meta.url), "utf8");

journey("a journal goes out as a file and comes in on another phone, line for line", async (walk) => {
  const { page, thumb, elsewhere } = walk;
  await startBuild(thumb);
  await startStage(thumb, "sand");
  await page.clock.fastForward("01:55:00");
  await thumb.clock("1:55");
  await thumb.tap("Stop");
  await thumb.kept("1 h 55, Me");
  const file = await backUp(walk);
  assert.match(file.name, /^benchslate-\d{4}-\d\d-\d\d\.zip$/);
  const kept = await lines(page);
  assert.deepEqual(linesOf(file.bytes).sort(), [...kept].sort(), "byte for byte what is on the disk");
  const manifest = JSON.parse(parts(file.bytes).get("manifest.json").bytes);
  assert.deepEqual([manifest.version, manifest.lines, manifest.photos], [1, kept.length, 0]);
  await thumb.misses(/Never backed up/);
  await thumb.sees(/Backed up/);
  await thumb.key(/^Back up now 0 lines since/).waitFor();

  const other = await elsewhere();
  await other.go("bring-in");
  await choose(other, file.bytes);
  await other.thumb.sees("New here");
  await other.thumb.sees(String(kept.length));
  assert.deepEqual(await lines(other.page), [], "shown before it is taken");
  await other.thumb.tap(/^Take it/);
  await other.thumb.sees(/brought in, and kept/);
  assert.deepEqual((await lines(other.page)).sort(), [...kept].sort());
  await other.page.clock.fastForward("03:00:00");
  await other.go("bench");
  await other.thumb.sheet(new RegExp(BUILD));
  await other.thumb.sees(/^Sand, Me 1 h 55/);

  // The same file again changes nothing.
  await other.go("bring-in");
  await choose(other, file.bytes);
  await other.thumb.sees(/^Nothing new/);
  assert.deepEqual((await lines(other.page)).sort(), [...kept].sort());
});

journey("what two phones wrote apart comes together, whichever is brought in", async (walk) => {
  const { thumb, elsewhere } = walk;
  await startBuild(thumb);
  const first = await backUp(walk);
  const other = await elsewhere();
  await bringIn(other, first.bytes);
  await other.go("bench");
  await startStage(other.thumb, "mill");
  await thumb.place("Bench");
  await startStage(thumb, "sand");
  const [mine, theirs] = [await backUp(walk), await backUp(other)];
  await bringIn(walk, theirs.bytes);
  await bringIn(other, mine.bytes);
  assert.deepEqual((await lines(walk.page)).sort(), (await lines(other.page)).sort());
});

journey("a journal.jsonl from before photos were in a backup still comes in", async (walk) => {
  const { page, thumb } = walk;
  await bringIn(walk, OLD, { name: "journal.jsonl" });
  const kept = OLD.trimEnd().split("\n");
  await thumb.sees(`${kept.length} lines brought in, and kept.`);
  assert.deepEqual((await lines(page)).sort(), [...kept].sort());
});

for (const [what, broken, says] of [
  ["cut off in the middle", (text) => text.slice(0, -40), /line \d/i],
  ["with a line of another kind in it", (text) => text.replace("\n", "\nthis is no journal\n"), /line 2/i],
  ["that is a picture", () => "\u0089PNG\r\n\u001a\n\u0000\u0000", /line 1|no text|not text/i],
]) {
  journey(`a journal ${what} changes nothing and says where it is broken`, async (walk) => {
    const { page, thumb, go } = walk;
    await startBuild(thumb);
    await startStage(thumb, "sand");
    const before = await lines(page);
    await go("bring-in");
    await choose(walk, broken(`${before.join("\n")}\n`), { name: "journal.jsonl" });
    await refused(walk, says);
    assert.deepEqual(await lines(page), before);
  });
}

/** Said what is wrong and where, and nothing to take. */
async function refused({ page, thumb }, says) {
  const alert = page.getByRole("alert").filter({ hasText: "Nothing was taken from this file" });
  await alert.filter({ hasText: says }).waitFor();
  assert.equal(await thumb.key(/^Take it/).count(), 0);
  await thumb.key("Another file").waitFor();
}
