// Start cold: nothing drawn yet, one filled key, a name is enough.
import assert from "node:assert/strict";
import { BUILD, startBuild } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

journey("an empty shop says what it is for and offers two actions", async ({ page, thumb }) => {
  await thumb.sheet("Nothing drawn yet");
  await thumb.sees(/no signal/);
  const keys = thumb.part("Bench keys");
  assert.equal(await keys.getByRole("link").or(keys.getByRole("button")).count(), 2);
  // The five places stand already, and the first of them is where one is.
  const places = page.getByRole("navigation", { name: "Places" }).getByRole("link");
  assert.equal(await places.count(), 5);
  // The page alone can't know at which address it stands; the program, once it draws, does.
  await page.locator("main:not([aria-busy])").waitFor();
  assert.equal(await places.first().getAttribute("aria-current"), "page");
});

journey("the page itself paints the first sheet, word for word and line for line", async ({ page, thumb }) => {
  await thumb.key(/^Start a build/).waitFor();
  await page.locator("main:not([aria-busy])").waitFor();
  const [painted, drawn] = await page.evaluate(async () => {
    const seen = (main) => [
      ...[...main.querySelectorAll("h1, p, text, a")].map((it) => `${it.getAttribute("href")} ${it.textContent.replace(/\s+/g, " ").trim()}`),
      ...[...main.querySelectorAll("path")].map((it) => it.outerHTML.replace(/><\/path>|\/>/, ">")),
      ...[...main.querySelectorAll("[aria-label]")].map((it) => it.getAttribute("aria-label")),
    ];
    const own = new DOMParser().parseFromString(await (await fetch("./")).text(), "text/html").querySelector("main");
    own.querySelector("noscript").remove();
    const region = document.querySelector("main .read").getAttribute("aria-label");
    return [seen(own), seen(document.querySelector("main")).filter((it, at, all) => it !== region || all.indexOf(it) !== at)];
  });
  assert.deepEqual(painted, drawn);
});

// The program is kept from coming, and both it and the browser say so.
const NO_PROGRAM = { allowed: [/Failed to load resource: net::ERR_FAILED/, /Failed to fetch/] };

journey("with a journal there the page paints only its frame", NO_PROGRAM, async ({ page, thumb, context }) => {
  await startBuild(thumb);
  await context.route("**/*.wasm", (route) => route.abort());
  await page.goto(page.url()).catch(() => {});
  await page.getByRole("navigation", { name: "Places" }).waitFor();
  assert.equal(await page.getByRole("heading").count(), 0);
  assert.equal(await page.getByRole("link", { name: /^Start a build/ }).count(), 0);
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
