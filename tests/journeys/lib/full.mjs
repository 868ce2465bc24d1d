// A shop with something on every sheet, made by hand in a minute: for journeys that look at all sheets.
import { addPerson, BUILD, addLot, logHours, setRate, startBuild, startStage } from "./acts.mjs";
import { lines } from "./disk.mjs";
import { phonePhoto, takePhoto } from "./pictures.mjs";

/** Makes it, and gives the addresses of all its sheets, `{ at, name }`. */
export async function fullShop({ page, thumb, go }) {
  await startBuild(thumb);
  await setRate(thumb, "26");
  await addPerson(thumb, "Tobin");
  await addLot(thumb, { origin: "salvaged" }, {
    "what, or from where": "gymnasium maple", "rough quantity": "120", paid: "36", "usable, as you expect": "80", "same thing new, a bd ft": "7",
  });
  await addLot(thumb, { use: "used up" }, { what: "hard oil", "how much": "2 tins", "price, before tax": "58", "one tin holds": "750 ml" });
  await logHours(thumb, "2 h 15", "mill", { day: "yesterday" });
  await thumb.place("Bench");
  await startStage(thumb, "glue-up");
  await page.clock.fastForward("00:30:00");
  await thumb.tap("Stop");
  await thumb.tap(/^24 h/);
  await thumb.kept("dries until");
  await startStage(thumb, "finish");
  await thumb.tap(/^(Other|Use stock)/);
  await thumb.tap(/^1\/4 tin/);
  await thumb.tap("Use 1/4 tin");
  await thumb.kept("used");
  await takePhoto(page, thumb, await phonePhoto(page));
  await thumb.kept("photo");
  await go("receipt");
  await thumb.type("Total paid, tax in it", "31.85");
  await takePhoto(page, thumb, await phonePhoto(page));
  await thumb.key(/^Photo again/).waitFor();
  await thumb.tap("Keep");
  await thumb.kept("31.85");
  await go("note");
  await thumb.type("What is it about?", "Ask about the skylight frames");
  await thumb.choose("Where it goes", "no home yet");
  await thumb.tap("Keep note");
  await thumb.kept("note");
  await go("find");
  await thumb.type("what it is", "church pews");
  await thumb.type("or how much in all", "40");
  await thumb.type("asked", "20");
  await thumb.type("same thing new, a bd ft", "7");
  await thumb.tap("Keep");
  await thumb.kept("church pews");
  await runningShop({ thumb, go });
  await page.clock.fastForward("01:10:00");
  return sheets(await lines(page));
}

/** A tool with a blade, a monthly cost, and money that came in. */
async function runningShop({ thumb, go }) {
  await go("add.tool");
  const tool = { Name: "Thickness planer", Price: "780", "Sells for at the end": "180", "Lasts, hours": "1500", "Hours before": "120" };
  for (const [label, text] of Object.entries(tool)) await thumb.type(label, text);
  await thumb.tap("mill");
  await thumb.type("Share of mill", "60");
  await thumb.tap("Keep");
  await thumb.kept("Thickness planer");
  await thumb.tap("New blade");
  await thumb.type("What", "Knives");
  await thumb.type("Price", "54.24");
  await thumb.type("Lasts, hours", "60");
  await thumb.tap("Keep");
  await thumb.kept("Knives");
  await go("months");
  await thumb.tap("Add a cost");
  await thumb.type("What", "Rent");
  await thumb.type("A month", "180");
  await thumb.tap("Keep");
  await thumb.kept("Rent");
  await go("bench");
  await thumb.place("Builds");
  await thumb.tap(new RegExp(BUILD), "Builds, latest first");
  const build = await thumb.page.evaluate(() => new URL(location.href).searchParams.get("at").split(".")[1]);
  await go(`money.${build}`);
  await thumb.tap(/^Money in/);
  await thumb.type("Expected", "780");
  await thumb.type("Received", "300");
  await thumb.tap("Keep");
  await thumb.kept("sale");
  await go(`add.part.${build}`);
  for (const [label, text] of Object.entries({ Part: "Slat", "How many": "24", Length: "19 3/8", Width: "1 1/4", Thickness: "1/2" })) await thumb.type(label, text);
  await thumb.tap("Keep");
  await thumb.kept("part");
  await shots({ thumb, go, build });
}

/** A shot at a step, with a take, and one that can be had only once. */
async function shots({ thumb, go, build }) {
  await go(`add.step.${build}`);
  await thumb.type("What is to be done", "Glue the panel");
  await thumb.type("Usual", "2");
  await thumb.tap("Keep");
  await thumb.kept("Glue the panel");
  for (const [what, once] of [["Glue squeezing out", true], ["Clamps going on", false]]) {
    await go(`add.shot.${build}`);
    await thumb.type("What is to be shot", what);
    if (once) await thumb.tap(/^Once only/);
    await thumb.tap("Keep");
    await thumb.kept(what);
  }
  await go(`build.${build}.film`);
  await thumb.tap(/^Shot it/);
  await thumb.kept("take 1");
  await go("add.outsider");
  await thumb.type("Name", "Reed and Rush");
  await thumb.tap("Keep");
  await thumb.kept("Reed and Rush");
  await go(`add.due.${build}`);
  await thumb.choose("What", "cut for review");
  await thumb.type("By", "2026-11-10");
  await thumb.tap("Keep");
  await thumb.kept("cut for review");
  await go(`add.chapter.${build}`);
  await thumb.type("Name", "The floor comes up");
  await thumb.type("Begins at", "0:00");
  await thumb.tap("Keep");
  await thumb.kept("The floor comes up");
  await go(`goes-out.${build}`);
  await thumb.type("Film goes out", "2026-12-17");
  await thumb.type("Film planned, minutes", "10");
  await thumb.tap("Keep");
  await thumb.kept("goes out");
}

function sheets(text) {
  const all = text.map((line) => JSON.parse(line));
  const of = (kind, names) => {
    const line = all.find((it) => it.kind === kind);
    return names ? line.body[names] : line.entry;
  };
  const clock = all.findLast((line) => line.kind === "stretch" && line.body.from).entry;
  const build = of("build");
  const tabs = ["journal", "cost", "spent", "time", "film"].map((tab) => `build.${build}.${tab}`);
  return [
    "bench", "stages", "work-for", "new-stage", `minute.${clock}`, `minute.${of("stretch")}`, `drying.${of("drying", "stretch")}`,
    "builds", "new-build", ...tabs, `opened.${build}.true`, `opened.${build}.true.labour`, `saving.${build}`,
    `entry.${of("stretch")}`, `entry.${of("draw")}`, `entry.${of("lot")}`, `entry.${of("note")}`, `entry.${of("drying")}`,
    `entry.${of("photo")}`, `entry.${of("receipt")}`, "receipt", `receipt.${of("receipt")}`, `line-lot.${of("receipt")}`, `line-expense.${of("receipt")}`, "by-product",
    "hours", "note", "no-home-yet", "expense",
    "stock", "salvage", "find", `find.${of("find")}`, `entry.${of("find")}`, "new-lot", `same.${of("item")}`, `lot.${of("lot")}`, `lot.${of("item")}`, `journal.${of("lot")}`, `chain.${of("lot")}`, `sort.${of("lot")}`, "stock-formula", "count", "stock-losses", "on-the-shelf", "buying", `add.shelf.${of("item")}`, "use", `use.${of("lot")}`, `return.${of("draw")}`,
    "plan", `plan-of.${build}`, `how-long.${of("step")}`, "shop", "journal.shop", "person", `person.${of("person")}`, `free-hours.${of("person")}`, `add.free_day.${of("person")}`, "add.resource", "choices", "put-away", "cautions", `cautions.${of("lot")}`, "bring-in",
    "year", "side-by-side", "tools", `tool.${of("tool")}`, `tool-life.${of("tool")}`, "months", `money.${build}`, `against.${build}`, `steps.${build}`, `what-if.${build}`, `price.${build}`, `add.step.${build}`, `add.shot.${build}`, `filming.${build}`, `time-line.${build}`, `take.${of("take")}`, `entry.${of("shot")}`, `entry.${of("take")}`, `parts.${build}`, `cuts.${build}`, `add.part.${build}`, `mix.${of("item")}`, `movement.${of("part")}`, `movement.${of("lot")}`, `entry.${of("part")}`,
    "add.tool", `add.blade.${of("tool")}`, `add.tool_hours.${of("tool")}`, "add.monthly_cost", `add.income.${build}`, `add.made.${build}`,
    `add.hand_over.${build}`, `add.film.${build}`, `entry.${of("tool")}`, `entry.${of("income")}`,
    `publishing.${build}`, `goes-out.${build}`, `pack.${build}`, "publish-leads", `add.due.${build}`, `add.chapter.${build}`, `add.chapter.${of("shot")}`, "add.outsider", `entry.${of("due")}`, `entry.${of("chapter")}`, `entry.${of("outsider")}`,
    "files", `files.${build}`, `cards.${build}`, `print.${build}`,
  ];
}

/** Turns to another sheet without loading the page again, as a link on the sheet does. */
export async function turnTo(page, at) {
  await page.evaluate(async (to) => {
    history.pushState(null, "", `./?at=${to}`);
    dispatchEvent(new PopStateEvent("popstate", { state: null }));
    for (let frame = 0; frame < 3; frame += 1) await new Promise((drawn) => requestAnimationFrame(drawn));
  }, at);
  await standing(page);
}

/** Waits until a sheet stands as it will stay. */
export async function standing(page) {
  await page.getByRole("heading", { level: 1 }).filter({ hasText: /\S/ }).waitFor();
  await page.getByRole("navigation", { name: "Places" }).waitFor();
}

export { BUILD };
