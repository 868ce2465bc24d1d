// The yield chain of a salvaged lot: sorted in two goes, culls found late, a flood in the store, link by link.
import { addLot, logHours, setRate, startBuild } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

const MAPLE = { "what, or from where": "gymnasium maple", "rough quantity": "120", paid: "36", "usable, as you expect": "80" };

/** Rules, 5: 120 rough, fetched 36.00; 48 of 60 good after 6 h at 25, then 45 good and 15 culled after 7 h; 20 drawn. */
async function maple(thumb) {
  await startBuild(thumb);
  await setRate(thumb, "25");
  await addLot(thumb, { origin: "salvaged" }, MAPLE);
  for (const [length, good, culled] of [["6 h", "48", "12"], ["7 h", "45", "15"]]) {
    await thumb.place("Bench");
    await thumb.tap(/^hours/i);
    await thumb.type("How long", length);
    await thumb.choose("Stage", "reclaim");
    await thumb.choose("Worked for", "gymnasium maple");
    await thumb.tap("Keep hours");
    await thumb.kept("reclaim");
    await thumb.key(/^hours/i).waitFor();
    await sort(thumb, { good, culled });
  }
  await thumb.tap(/^Use/);
  await thumb.tap("bd ft", "Say how much by");
  await thumb.type("How much", "20");
  await thumb.tap(/^Use 20/);
  await thumb.kept("77.63");
}

async function sort(thumb, { good = "", culled = "", link = "", flood = false }) {
  await thumb.place("Stock");
  await thumb.tap("Sort");
  await thumb.sheet("Sort: gymnasium maple");
  if (good) await thumb.type("good", good);
  await thumb.type("culled", culled);
  if (link) await thumb.tap(link, "how far it had come");
  if (flood) await thumb.tap(/^Not to be expected/);
  await thumb.tap("Keep the sort");
  await thumb.kept(`${good || "0"} good, ${culled} culled`);
  await thumb.sheet("gymnasium maple");
}

async function chain(thumb) {
  await thumb.place("Stock");
  await thumb.tap(/^gymnasium maple/);
  await thumb.tap(/^From the yard to the piece/);
}

journey("each link says what reached it, what was lost on the way and how long it took", async ({ thumb }) => {
  await maple(thumb);
  await chain(thumb);
  await thumb.sees("In the piece, of all gathered");
  await thumb.key(/^Gathered 120 bd ft .*36\.00/).waitFor();
  await thumb.key(/^Nails out 120 bd ft, 100 % 13 h 00 325\.00/).waitFor();
  await thumb.key(/^Sorted 93 bd ft, 78 % culled 27/).waitFor();
  await thumb.key(/^In the piece 20 bd ft, 17 % 73 not yet/).waitFor();
  await thumb.sees("361.00");
  await thumb.tap(/^Nails out/);
  await thumb.sees("175.00");
});

journey("a flood in the store is a loss at what it had cost, and no yield", async ({ thumb }) => {
  await maple(thumb);
  await sort(thumb, { culled: "10", flood: true });
  await thumb.place("Stock");
  // 63 of 93 at 3.8817 are left; the draw still cost 77.63.
  await thumb.key(/^gymnasium maple.*244\.55/).waitFor();
  await chain(thumb);
  await thumb.key(/^In the piece 20 bd ft, 17 % gone 10; 63 not yet/).waitFor();
});

journey("a cull found late costs the rest more, and its mistake is put right in its fields", async ({ thumb }) => {
  await maple(thumb);
  await sort(thumb, { culled: "10" });
  await chain(thumb);
  await thumb.key(/^Milled 83 bd ft, 69 % culled 10/).waitFor();
  await thumb.place("Stock");
  await thumb.tap(/^gymnasium maple/);
  await thumb.tap("Journal");
  await thumb.tap(/culled gymnasium/);
  await thumb.tap(/^Correct/);
  await thumb.type("Culled", "5");
  await thumb.tap(/^Keep/);
  await thumb.kept("5");
});
