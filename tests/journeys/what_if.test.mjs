// What to ask for a piece, and what if: answers that follow the thumb, and nothing kept until it is taken.
import assert from "node:assert/strict";
import { logHours, openBuild, setRate, startBuild } from "./lib/acts.mjs";
import { lines } from "./lib/disk.mjs";
import { journey } from "./lib/journey.mjs";

/** Two hours at 30 and 20 paid for parts; 100 expected. */
async function stool({ thumb, go, page }) {
  await startBuild(thumb, "Stool");
  await setRate(thumb, "30");
  await thumb.place("Bench");
  await logHours(thumb, "2 h", "mill");
  await go("expense");
  await thumb.type("What for", "screws");
  await thumb.type("Paid", "20");
  await thumb.tap(/^Keep/);
  await thumb.kept("20.00");
  await openBuild(thumb, "Stool");
  const id = new URL(page.url()).searchParams.get("at").split(".")[1];
  await go(`money.${id}`);
  return id;
}

journey("a price from a margin with a fee and tax, expected in one tap", async (walk) => {
  const { thumb } = walk;
  await stool(walk);
  await thumb.tap(/^What to ask/);
  await thumb.sees("One piece");
  await thumb.tap("Expect that");
  await thumb.refused("Margin, of the price", /Say how much/, "");
  // 80 at a margin of 30 % with 6.5 % kept back: 80 ÷ 0.635.
  await thumb.type("Margin, of the price", "30");
  await thumb.type("Fee kept back", "6,5");
  await thumb.type("Tax on top", "13");
  await thumb.sees("125.98");
  await thumb.sees("142.36");
  await thumb.type("Margin, of the price", "95");
  await thumb.sees(/Margin and fee together leave nothing/);
  await thumb.tap("Expect that");
  await thumb.refused("Margin, of the price", /leave nothing/, "95");
  // An hour at 50: 20 and two hours, over what the fee leaves.
  await thumb.tap("an hour", "What the price goes by");
  await thumb.type("An hour is to earn", "50");
  await thumb.sees("128.34");
  await thumb.tap("Expect that");
  await thumb.kept("128.34");
  await thumb.sees(/Still expected/);
  await thumb.key(/^sale\s*128\.34/).waitFor();
});

journey("what if follows the thumb, keeps nothing, and is taken in one tap", async (walk) => {
  const { page, thumb } = walk;
  await stool(walk);
  await thumb.tap(/^What if/);
  await thumb.sheet("What if, Stool");
  const before = await lines(page);
  await thumb.tap("My hour", "What is tried");
  const scale = page.getByRole("slider", { name: "My hour" });
  assert.equal(await scale.getAttribute("aria-valuetext"), "30.00");
  await scale.fill("40");
  // 20 and two hours at 40.
  await thumb.sees(/True cost\s*stands at 80\.00\s*100\.00/);
  await thumb.tap("My hour: +");
  await thumb.sees(/True cost\s*stands at 80\.00\s*102\.00/);
  await thumb.tap("Put back");
  await thumb.sees(/True cost\s*80\.00/);
  assert.deepEqual(await lines(page), before);
  await scale.fill("40");
  await thumb.tap(/^Take it/);
  await thumb.kept("taken");
  // The rate holds from today on, and the work was done today.
  await thumb.tap(/^What if/);
  await thumb.sees(/True cost\s*100\.00/);
});

journey("a price that is taken corrects what is expected, and what is settled says why it is not taken", async (walk) => {
  const { page, thumb, go } = walk;
  const id = await stool(walk);
  await thumb.tap(/^Money in/);
  await thumb.choose("Where from", "commission");
  await thumb.type("Expected", "90");
  await thumb.tap("Keep");
  await thumb.kept("income commission");
  await thumb.tap(/^What to ask/);
  await thumb.type("Margin, of the price", "20");
  await thumb.tap("Expect that");
  // 80 at a margin of a fifth: one income is there, as before, and nothing beside it.
  await thumb.kept("100.00");
  await thumb.key(/^commission\s*100\.00/).waitFor();
  await thumb.tap(/^What if/);
  const scale = page.getByRole("slider", { name: "A piece" });
  await scale.fill("60");
  await thumb.tap(/^Take it/);
  await thumb.kept("taken");
  await thumb.key(/^commission\s*120\.00/).waitFor();
  await thumb.misses(/^sale/);
  await thumb.tap(/^commission\s*120/);
  await thumb.tap(/^Received 120\.00/);
  await thumb.kept("received");
  await go(`what-if.${id}`);
  await thumb.sheet("What if, Stool");
  // Fifty, where 120 came in already.
  await scale.fill("10");
  await thumb.sees(/Not to be taken: /);
  assert.equal(await thumb.key(/^Take it/).count(), 0);
});
