// When somebody is free for the shop, days off, and what steps take and give back.
import { startBuild } from "./lib/acts.mjs";
import { lines } from "./lib/disk.mjs";
import { journey } from "./lib/journey.mjs";

const kept = async (page, kind) => (await lines(page)).map((line) => JSON.parse(line)).filter((line) => line.kind === kind).map((line) => line.body);

journey("the week is typed as it is said, day by day, and stands there again", async ({ page, thumb }) => {
  await startBuild(thumb);
  await thumb.place("Shop");
  await thumb.tap(/^Me\b/);
  await thumb.tap(/^Free hours.*none yet/);
  await thumb.type("Wednesday", "18-21");
  await thumb.type("Saturday", "9-13, 14:30 to 16");
  await thumb.tap("Keep the week");
  await thumb.tap(/^Free hours.*3 a week/);
  const week = (await kept(page, "person")).at(-1).free;
  const said = week.map(({ weekday, from, to }) => `${weekday} ${from} ${to}`);
  if (said.join("; ") !== "wednesday 18:00 21:00; saturday 09:00 13:00; saturday 14:30 16:00") throw new Error(said.join("; "));
  if ((await page.getByLabel("Saturday").inputValue()) !== "09:00-13:00, 14:30-16:00") throw new Error("the week does not stand there");
  await thumb.type("Wednesday", "evening");
  await thumb.tap("Keep the week");
  await thumb.refused("Wednesday", "18:00-21:00");
});

journey("beside each day stands what was read, and what was hardly meant is refused", async ({ page, thumb, go }) => {
  await startBuild(thumb);
  await thumb.place("Shop");
  await thumb.tap(/^Me\b/);
  await thumb.tap(/^Free hours/);
  const day = (name) => page.locator(".field").filter({ has: page.getByLabel(name) });
  await thumb.type("Monday", "6-9pm");
  await day("Monday").getByText("= 3 h 00").waitFor();
  await thumb.type("Tuesday", "9-1pm, 2-4pm");
  await day("Tuesday").getByText("= 6 h 00").waitFor();
  await thumb.type("Sunday", "21-18");
  await thumb.type("Friday", "9-9");
  await thumb.tap("Keep the week");
  await thumb.refused("Sunday", "That is 21 h in one go", "21-18");
  await thumb.refused("Friday", "It ends when it begins", "9-9");
  await thumb.type("Sunday", "");
  await thumb.type("Friday", "");
  await thumb.tap("Keep the week");
  await thumb.tap(/^Free hours.*3 a week/);
  const week = (await kept(page, "person")).at(-1).free.map(({ weekday, from, to }) => `${weekday} ${from} ${to}`);
  const want = "monday 18:00 21:00; tuesday 09:00 13:00; tuesday 14:00 16:00";
  if (week.join("; ") !== want) throw new Error(week.join("; "));
  await thumb.tap("Leave");
  await thumb.tap(/^Free hours/);
  await thumb.tap(/^Day off or extra/);
  await thumb.type("Free then, else off", "6-9pm");
  await day("Free then, else off").getByText("= 3 h 00").waitFor();
  await go("choices");
  await thumb.tap("Sunday", "The week begins");
  const me = (await lines(page)).map((line) => JSON.parse(line)).find((line) => line.kind === "person").entry;
  await go(`free-hours.${me}`);
  await page.getByLabel("Sunday").waitFor();
  const labels = await page.locator(".field label").allTextContents();
  if (labels[0] !== "Sunday" || labels[6] !== "Saturday") throw new Error(labels.join());
});

journey("a day off and an hour more are entries of their own", async ({ page, thumb, go }) => {
  await startBuild(thumb);
  await thumb.place("Shop");
  await thumb.tap(/^Me\b/);
  await thumb.tap(/^Free hours/);
  await thumb.tap(/^Day off or extra/);
  await thumb.type("On", "2026-12-05");
  await thumb.tap("Keep");
  await thumb.key(/^off, .*Dec 5/).waitFor();
  await thumb.tap(/^Day off or extra/);
  await thumb.type("On", "2026-12-08");
  await thumb.type("Free then, else off", "18-21");
  await thumb.tap("Keep");
  await thumb.key(/18:00.*Dec 8|6:00.*Dec 8/).waitFor();
  const days = await kept(page, "free_day");
  if (days.length !== 2 || days[0].extra || days[1].extra[0].from !== "18:00") throw new Error(JSON.stringify(days));
  await go(`add.free_day.${days[0].person}`);
  await thumb.type("On", "2026-12-08");
  await thumb.type("Until, that day too", "2026-12-01");
  await thumb.tap("Keep");
  await thumb.refused("Until, that day too", "before the first");
});

journey("what there is a count of is kept in the shop, and put right", async ({ thumb }) => {
  await startBuild(thumb);
  await thumb.place("Shop");
  await thumb.tap(/^Add what steps share/);
  await thumb.type("Name", "long clamps");
  await thumb.type("How many", "6");
  await thumb.tap("Keep");
  await thumb.tap(/^long clamps.*6/);
  await thumb.tap("Correct");
  await thumb.type("How many", "0");
  await thumb.tap(/^Keep/);
  await thumb.refused("How many", "One at least");
  await thumb.type("How many", "8");
  await thumb.tap(/^Keep/);
  await thumb.place("Shop");
  await thumb.key(/^long clamps.*8/).waitFor();
});
