// What was planned for a build beside what came of it; materials still to buy in the outlook; above what it will fetch.
import { addLot, logHours, openBuild, setRate, startBuild } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

/** A build at 30 an hour, with a step of 6.3 h at sanding and discs of 2.00 on the shelf. */
async function planned({ page, thumb, go }) {
  await startBuild(thumb, "Trays");
  await setRate(thumb, "30");
  await addLot(thumb, { use: "used up" }, { what: "discs", "how much": "40 discs", "price, before tax": "80" });
  await openBuild(thumb, "Trays");
  const id = new URL(page.url()).searchParams.get("at").split(".")[1];
  await go(`add.step.${id}`);
  await thumb.type("What is to be done", "Sand all of it");
  await thumb.choose("Stage", "sand");
  await thumb.type("Quick", "4");
  await thumb.type("Usual", "6");
  await thumb.type("Slow", "9");
  await thumb.tap("Keep");
  await thumb.kept("Sand all of it");
  return id;
}

/** One more line of what is to be bought for it. */
async function toBuy({ thumb, go }, id, fields) {
  // Keeping it leads back there, where its mark stands.
  await go("buying");
  await go(`add.buy_line.${id}`);
  for (const [label, text] of Object.entries(fields)) await thumb.type(label, text);
  await thumb.tap("Keep");
  await thumb.kept("to buy");
}

journey("hours by stage and materials by item stand beside what was planned, and open to their lines", async (walk) => {
  const { thumb, go } = walk;
  const id = await planned(walk);
  await go(`money.${id}`);
  await thumb.key(/^Planned and actual 0 h 00 of 6 h 18/).waitFor();
  await toBuy(walk, id, { What: "discs", "How much": "10" });
  await toBuy(walk, id, { What: "felt", "How much": "2", "What it may cost, all of it": "9" });
  await logHours(thumb, "7 h", "sand");
  await logHours(thumb, "1 h", "mill");
  await thumb.place("Stock");
  await thumb.tap(/^discs/);
  await thumb.tap("Use some");
  await thumb.type(/^How many/, "12");
  await thumb.tap(/^Use 12/);
  await thumb.kept("used");
  await go(`money.${id}`);
  await thumb.tap(/^Planned and actual/);
  await thumb.sheet("Planned and actual, Trays");
  await thumb.sees(/\+0 h 42/);
  await thumb.sees("7 h 00 of 6 h 18, 1 h 00 not planned");
  await thumb.key(/^sand 6 h 18 planned, 7 h 00 logged\s*\+0 h 42/).waitFor();
  await thumb.key(/^mill not planned, 1 h 00 logged\s*\+1 h 00/).waitFor();
  await thumb.key(/^discs 10 discs for 20\.00 planned, 12 discs for 24\.00 used\s*\+4\.00/).waitFor();
  await thumb.key(/^felt 2 for 9\.00 planned, 0 used\s*−9\.00/).waitFor();
  await thumb.tap(/^sand 6 h 18/);
  await thumb.sheet(/^Sand, in Trays/i);
  await thumb.key(/7 h 00/).first().waitFor();
});

journey("what is still to be bought counts in the outlook, with its working; without a price it is said", async (walk) => {
  const { thumb, go } = walk;
  const id = await planned(walk);
  await go(`money.${id}`);
  await thumb.tap(/^Money in/);
  await thumb.type("Expected", "300");
  await thumb.tap("Keep");
  await thumb.kept("sale");
  // 300 less 6.3 h at 30.
  await thumb.key(/^Outlook.*111\.00/s).waitFor();
  await toBuy(walk, id, { What: "discs", "How much": "10" });
  await go(`money.${id}`);
  await thumb.key(/^Outlook.*91\.00/s).waitFor();
  await thumb.tap(/^Outlook/);
  await thumb.tap(/Still to spend/);
  await thumb.tap(/^\+?\s*Materials still to use/);
  await thumb.sees(/10 ×\s2\.00/);
  await toBuy(walk, id, { What: "felt", "How much": "2" });
  await go(`opened.${id}.outlook.to-come.materials`);
  await thumb.sees("No price for felt");
  // Bought, it counts until it is used.
  await go("buying");
  await thumb.tap(/^discs/);
  await thumb.type(/^Price of discs/, "22");
  await thumb.tap(/^Bought/);
  await thumb.kept("paid 22.00");
  await go(`opened.${id}.outlook.to-come.materials`);
  await thumb.key(/^.*discs/).first().waitFor();
});

journey("a build that takes more money than it brings says so, and opens to what", async (walk) => {
  const { thumb, go } = walk;
  const id = await planned(walk);
  await go("expense");
  await thumb.type("What for", "slabs");
  await thumb.type("Paid", "120");
  await thumb.tap(/^Keep/);
  await thumb.kept("120.00");
  await toBuy(walk, id, { What: "felt", "What it may cost, all of it": "30" });
  await go(`money.${id}`);
  await thumb.sees("Outlook");
  await thumb.misses("Above what it will fetch");
  await thumb.tap(/^Money in/);
  await thumb.type("Expected", "100");
  await thumb.tap("Keep");
  await thumb.kept("sale");
  await thumb.tap(/^Above what it will fetch.*50\.00/s);
  await thumb.sheet(/^Above what it will fetch/);
  await thumb.sees(/your own books/);
  await thumb.key(/Money still to pay\s*30\.00/).waitFor();
});

journey("a lot that stands above the same thing new says so", async ({ thumb }) => {
  await startBuild(thumb);
  await addLot(thumb, { origin: "salvaged" }, {
    "what, or from where": "barn oak", "rough quantity": "10", paid: "100", "usable, as you expect": "100", "same thing new, a bd ft": "7",
  });
  await thumb.place("Stock");
  await thumb.tap(/^barn oak/);
  await thumb.tap(/^Above the same thing new.*30\.00/s);
  await thumb.sheet(/^Above the same thing new/);
  await thumb.sees(/70\.00/);
});

journey("a lot put right after it was drawn from says what moved, and what stays because it is closed", async ({ page, thumb, go }) => {
  await startBuild(thumb, "Hall bench");
  await addLot(thumb, {}, { "what, or from where": "barn oak", "how much": "10 bd ft", "price, before tax": "40" });
  const lot = await page.evaluate(() => document.querySelector('a[href*="at=lot."]').href.split("at=lot.")[1]);
  await go(`use.${lot}`);
  await thumb.tap("bd ft", "Say how much by");
  await thumb.type("How much", "4");
  await thumb.tap(/^Use 4/);
  await thumb.kept("used");
  const correct = async (paid) => {
    await go(`entry.${lot}`);
    await thumb.tap("Correct");
    await thumb.type("Paid", paid);
    await thumb.tap("Keep it so");
  };
  await correct("60");
  await thumb.kept("Hall bench 16.00 to 24.00");
  await openBuild(thumb, "Hall bench");
  const build = new URL(page.url()).searchParams.get("at").split(".")[1];
  await go(`money.${build}`);
  await thumb.tap("Close");
  await thumb.tap("Close it");
  await thumb.kept("closed at 24.00");
  await correct("80");
  await thumb.kept("Hall bench is closed and keeps 24.00");
});
