// The money of a year, and two builds side by side.
import assert from "node:assert/strict";
import { addLot, logHours, openBuild, setRate, startBuild } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

async function paid({ thumb, go }, what, amount) {
  await go("expense");
  await thumb.type("What for", what);
  await thumb.type("Paid", amount);
  await thumb.tap(/^Keep/);
  await thumb.kept(amount);
}

journey("a year is what came in less what was paid, by kind and by month, and adds up", async (walk) => {
  const { thumb, go } = walk;
  await startBuild(thumb, "Stool");
  await setRate(thumb, "30");
  await logHours(thumb, "4 h", "mill");
  await paid(walk, "screws", "12.40");
  const build = new URL(thumb.page.url()).searchParams.get("at");
  assert.ok(build);
  await thumb.place("Builds");
  await thumb.tap(/^\d?\s*Stool/, "Builds, latest first");
  const id = new URL(thumb.page.url()).searchParams.get("at").split(".")[1];
  await go(`money.${id}`);
  await thumb.tap(/^Money in/);
  await thumb.type("Received", "113");
  await thumb.type("Tax in it", "13");
  await thumb.tap("Keep");
  await thumb.kept("sale");
  await thumb.place("Shop");
  await thumb.tap(/^The year/);
  await thumb.sheet("The year 2026");
  await thumb.sees(/Left of it\s*87\.60/);
  // 87.60 over four own hours.
  await thumb.sees(/An own hour left.*21\.90/s);
  await thumb.sees(/sale\s*100\.00/);
  await thumb.sees(/paid directly, tolls\s*[−-]12\.40/);
  await thumb.sees(/Tax that came in\s*owed, no income\s*13\.00/);
  await thumb.sees(/Not tax advice/);
  await thumb.sees(/What a tool cost is not in here/);
  await thumb.tap(/^Stool/);
  await thumb.sheet("Stool");
});

journey("a year with nothing but rent is reached, and a build says why no hour earned anything", async (walk) => {
  const { page, thumb, go } = walk;
  await startBuild(thumb, "Stool");
  await go("add.monthly_cost");
  await thumb.type("What", "Rent");
  await thumb.type("A month", "100");
  await thumb.type("From", "2025-11-01");
  await thumb.type("Until", "2025-12-31");
  await thumb.tap("Keep");
  await thumb.kept("every month Rent");
  await openBuild(thumb, "Stool");
  const id = new URL(page.url()).searchParams.get("at").split(".")[1];
  await go(`money.${id}`);
  await thumb.tap(/^Money in/);
  await thumb.type("Received", "50");
  await thumb.tap("Keep");
  await thumb.kept("sale");
  await go("year");
  // Money came in, and nobody worked on it without pay.
  await thumb.key(/^Stool.*no own hours/s).waitFor();
  await thumb.tap("2025");
  await thumb.sees(/Left of it\s*[−-]200\.00/);
  await go("add.tool");
  await thumb.sees(/What was paid for it is in no sum of the year/);
});

journey("two builds stand side by side, and either can be another one", async (walk) => {
  const { thumb } = walk;
  await startBuild(thumb, "Stool");
  await setRate(thumb, "30");
  await logHours(thumb, "4 h", "mill");
  await thumb.place("Builds");
  await startBuild(thumb, "Shelf");
  await logHours(thumb, "1 h", "mill");
  await thumb.place("Builds");
  await thumb.tap(/^Side by side/);
  const row = (name) => thumb.page.getByRole("row", { name });
  await row(/^True cost 30\.00 120\.00$/).waitFor();
  await thumb.choose("Left", "Stool");
  await thumb.choose("Right", "Shelf");
  await row(/^True cost 120\.00 30\.00$/).waitFor();
  await row(/^Hours 4 h 00 1 h 00$/).waitFor();
  await row(/^Stool Shelf$/).waitFor();
});

journey("what was lost from stock is lost in its own year", async ({ thumb, go }) => {
  await startBuild(thumb, "Stool");
  await addLot(thumb, { use: "used up" }, { what: "discs", "how much": "10 discs", "price, before tax": "20", "came on": "2025-03-01" });
  await thumb.place("Stock");
  const gone = async (many, day) => {
    await thumb.tap(/^discs/);
    await thumb.tap(/^Gone/);
    await thumb.type("How much", many);
    if (day) await thumb.type("Day", day);
    await thumb.tap("Keep");
    await thumb.kept("thrown out");
    await thumb.place("Stock");
  };
  await gone("3", "2025-06-01");
  await gone("1");
  await go("year");
  await thumb.sees(/Lost from stock\s*in this year: counted, thrown out, given\s*2\.00/);
  await thumb.tap("2025");
  await thumb.sees(/Lost from stock\s*in this year: counted, thrown out, given\s*6\.00/);
  await thumb.tap(/^Lost from stock/);
  await thumb.sees(/Lost in 2026\s*2\.00/);
  await thumb.sees(/Lost in 2025\s*6\.00/);
});
