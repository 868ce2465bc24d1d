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
