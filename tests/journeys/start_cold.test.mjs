// Start cold: nothing drawn yet, one filled key, a name is enough.
import assert from "node:assert/strict";
import { BUILD, startBuild } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

journey("an empty shop says what it is for and offers one action", async ({ page, thumb }) => {
  await thumb.sheet("Nothing drawn yet");
  await thumb.sees(/no signal/);
  const keys = thumb.part("Bench keys");
  assert.equal(await keys.getByRole("link").or(keys.getByRole("button")).count(), 1);
  // The five places stand already, and the first of them is where one is.
  const places = page.getByRole("navigation", { name: "Places" }).getByRole("link");
  assert.equal(await places.count(), 5);
  assert.equal(await places.first().getAttribute("aria-current"), "page");
});

journey("a build begins with a name, and the bench works for it", async ({ thumb, go }) => {
  await startBuild(thumb);
  assert.equal(thumb.taps, 2, "two taps and a name");
  await thumb.sheet(new RegExp(BUILD));
  await go("bench");
  await thumb.sheet(new RegExp(BUILD));
  await thumb.kept(BUILD);
});

journey("without a name the form says so and keeps its key", async ({ thumb }) => {
  await thumb.tap(/^Start a build/);
  await thumb.tap("Start it");
  await thumb.refused("What is it?", "No name yet");
  await thumb.type("What is it?", "Stool");
  await thumb.tap("Start it");
  await thumb.kept("Stool");
});

journey("leaving the form leaves an empty shop", async ({ thumb }) => {
  await thumb.tap(/^Start a build/);
  await thumb.tap("Leave");
  await thumb.sheet("Nothing drawn yet");
});
