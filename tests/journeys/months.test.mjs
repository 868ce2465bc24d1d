// What the shop costs every month, borne by the hours worked: the rate, what a build bears, what nobody bore.
import { logHours, sheetOf, startBuild } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

async function addCost(thumb, what, aMonth, { film = false } = {}) {
  await thumb.place("Shop");
  await thumb.tap(/^(What it costs every month|All hours|Film hours)/);
  await thumb.tap("Add a cost");
  await thumb.type("What", what);
  await thumb.type("A month", aMonth);
  if (film) await thumb.tap(/^Borne by film hours only/);
  await thumb.tap("Keep");
  await thumb.kept(`every month ${what}`);
}

async function normal(thumb, go, all, film) {
  await go("choices");
  await thumb.type("Hours, all", all);
  if (film) await thumb.type("Of them, film", film);
  await thumb.tap("Keep");
  await thumb.kept("set");
}

journey("360 a month over 90 hours is 4.00 an hour; what hours don't bear is shown by month", async ({ thumb, go }) => {
  await startBuild(thumb);
  await addCost(thumb, "Rent", "360");
  await thumb.place("Shop");
  await thumb.key(/^All hours 360\.00 a month\s*no hours a month/).waitFor();
  await normal(thumb, go, "90", "36");
  await addCost(thumb, "Storage plan", "45", { film: true });
  await logHours(thumb, "2 h", "mill");
  await logHours(thumb, "4 h", "edit");
  await thumb.place("Shop");
  await thumb.key(/^All hours 360\.00 a month ÷ 90 h\s*4\.00/).waitFor();
  await thumb.key(/^Film hours, on top 45\.00 a month ÷ 36 h\s*1\.25/).waitFor();
  await sheetOf(thumb, "Cost");
  // 6 h at 4.00, 4 of them at 1.25 more.
  await thumb.key(/^Overhead\s*29\.00/).waitFor();
  await go("months");
  await thumb.sees("November 2026, under way");
  await thumb.sees("cost 405.00, borne by hours 29.00");
  await thumb.sees("376.00");
});

journey("power stands in the tools or in the month, and what is for both goes by a key", async ({ thumb, go }) => {
  await startBuild(thumb);
  await go("choices");
  await thumb.tap("in the month", "Power");
  await thumb.kept("Power: in the month");
  await thumb.tap("by income", "What is for both sides");
  await thumb.kept("by income");
  await thumb.type("Film, fixed share", "140");
  await thumb.tap("Keep");
  await thumb.refused("Film, fixed share", "More than all of it", "140");
  await thumb.type("Film, fixed share", "40");
  await thumb.type("Filming slows by", "25");
  await thumb.tap("Keep");
  await thumb.kept("40 %");
});

journey("tools that drew more power than its bill leave nothing of it, and that is said", async ({ thumb, go }) => {
  await startBuild(thumb);
  await go("choices");
  await thumb.type("A kWh", "0.15");
  await thumb.tap("Keep");
  await thumb.kept("A kWh");
  await normal(thumb, go, "90");
  await go("add.monthly_cost");
  await thumb.type("What", "Power");
  await thumb.type("A month", "48");
  await thumb.type("Tools in it, kWh", "400");
  await thumb.tap("Keep");
  await thumb.kept("every month Power");
  await thumb.place("Bench");
  await logHours(thumb, "2 h", "mill");
  await go("months");
  // 400 kWh at 0.15 are 60.00.
  await thumb.key(/^Power .*the tools’ power comes to more\s*48\.00/s).waitFor();
  await sheetOf(thumb, "Cost");
  await thumb.tap(/^Overhead/);
  await thumb.sees(/Power of the tools comes to more than Power/);
});
