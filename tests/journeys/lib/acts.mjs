// What many journeys begin with.

export const BUILD = "Gym-floor trays";

/** From nothing to a build with a name. */
export async function startBuild(thumb, title = BUILD) {
  await thumb.tap(/^Start a build/);
  await thumb.type("What is it?", title);
  await thumb.tap("Start it");
  await thumb.kept(title);
}

/** A stage from the sheet of all stages. */
export async function startStage(thumb, stage) {
  await thumb.tap(/^all \d+$/);
  await thumb.tap(stage);
  await thumb.kept(stage);
}

/** Hours logged afterwards, from the bench: how long, at which stage. */
export async function logHours(thumb, length, stage, { day = "today", who = "" } = {}) {
  await thumb.place("Bench");
  await thumb.tap(/^hours/i);
  if (day !== "today") await thumb.tap(day, "Which day");
  await thumb.type("How long", length);
  await thumb.choose("Stage", stage);
  if (who) await thumb.choose("Who", who);
  await thumb.tap("Keep hours");
  await thumb.kept(stage);
}

/** A lot that came in. `cells` are typed as they are labelled. */
export async function addLot(thumb, { use = "timber", origin = "bought", ticks = [] }, cells) {
  await thumb.place("Stock");
  await thumb.tap(/^Add a lot/);
  await thumb.tap(use, "What it is for");
  await thumb.tap(origin, "How it was come by");
  for (const [label, text] of Object.entries(cells)) await thumb.type(label, text);
  for (const tick of ticks) await thumb.tap(tick);
  await thumb.tap("Keep the lot");
  await thumb.kept("lot");
}

/** A rate for somebody who is there, from the beginning or from a day. */
export async function setRate(thumb, figure, { person = "Me", from = "" } = {}) {
  await thumb.place("Shop");
  await thumb.tap(new RegExp(`^${person}\\b`));
  await thumb.type("An hour", figure);
  await thumb.type("From day", from);
  await thumb.tap("Keep");
  await thumb.key(new RegExp(`^${person} .*${figure}`)).waitFor();
}

/** Somebody more at the benches; `paid`: wages are money out. */
export async function addPerson(thumb, name, { rate = "", paid = false } = {}) {
  await thumb.place("Shop");
  await thumb.tap(/^Add a person/);
  await thumb.type("Name", name);
  if (paid) await thumb.tap(/^paid/, "Wages");
  await thumb.type("An hour", rate);
  await thumb.tap("Keep");
  await thumb.key(new RegExp(`^${name} `)).waitFor();
}

/** The journal of a build, from the list of builds. */
export async function openBuild(thumb, title = BUILD) {
  await thumb.place("Builds");
  await thumb.tap(new RegExp(title), "Builds, latest first");
  await thumb.sheet(`Journal, ${title}`);
}

/** A sheet of the one build there is. */
export async function sheetOf(thumb, tab, title = BUILD) {
  await openBuild(thumb, title);
  if (tab !== "Journal") await thumb.tap(tab, `Sheets of ${title}`);
}
