// The slate: the whole screen before the camera, upright and lying, put away by one key that counts the take.
import assert from "node:assert/strict";
import { AxeBuilder } from "@axe-core/playwright";
import { openBuild, startBuild } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";
import { until } from "./lib/thumb.mjs";

async function withShot({ thumb, go }, what = "Red line before sanding") {
  await startBuild(thumb, "Trays");
  await openBuild(thumb, "Trays");
  const build = new URL(thumb.page.url()).searchParams.get("at").split(".")[1];
  await go(`add.shot.${build}`);
  await thumb.type("What is to be shot", what);
  await thumb.tap("Keep");
  await thumb.kept(what);
  await go(`build.${build}.film`);
  return build;
}

const slate = (page) => page.getByRole("main", { name: "Slate" });

/** All of it is on the screen, and it is as large as the screen. */
async function fills(page) {
  const { screen, main, key, over } = await slate(page).evaluate((it) => {
    const box = (node) => node.getBoundingClientRect().toJSON();
    return { screen: { width: innerWidth, height: innerHeight }, main: box(it), key: box(it.querySelector("button")), over: it.scrollHeight - it.clientHeight };
  });
  assert.deepEqual([main.width, main.height], [screen.width, screen.height]);
  assert.ok(key.bottom <= screen.height && key.height >= 56, "its key is on the screen");
  assert.ok(over <= 0, "nothing of it is past the edge");
}

journey("held before the camera it says build, shot, take and day; one key puts it away and counts the take", async ({ page, thumb, go }) => {
  await withShot({ thumb, go });
  await thumb.tap(/^Hold the slate/);
  await slate(page).waitFor();
  await thumb.sheet("Red line before sanding");
  for (const text of ["Build 1", "Trays", "Fri, Nov 20, 2026"]) await thumb.sees(text);
  await slate(page).getByText(/^shot\s*1$/).waitFor();
  await slate(page).getByText(/^take\s*1$/).waitFor();
  await fills(page);
  await page.setViewportSize({ width: 640, height: 360 });
  await fills(page);
  await page.setViewportSize({ width: 320, height: 568 });
  await fills(page);
  const { violations } = await new AxeBuilder({ page }).setLegacyMode(true).analyze();
  assert.deepEqual(violations.map((it) => it.id), []);
  await thumb.tap("Away, take 1 begun");
  await thumb.sheet("Shots, Trays");
  await thumb.kept("take 1");
  await thumb.sees("1 of 1 taken");
  await thumb.undo();
  await thumb.sees("0 of 1 taken");
  // Looked at and put away again: no take.
  await thumb.tap(/^Hold the slate/);
  await thumb.tap("No take");
  await thumb.sheet("Shots, Trays");
  await thumb.sees("0 of 1 taken");
});

journey("the next take has the next number", async ({ page, thumb, go }) => {
  await withShot({ thumb, go });
  for (const take of [1, 2]) {
    await thumb.tap(/^Red line before sanding/);
    await thumb.tap(/^Hold the slate/);
    await thumb.tap(`Away, take ${take} begun`);
    await thumb.sheet("Shots, Trays");
    await thumb.kept(`take ${take}`);
  }
});

journey("the screen is kept lit where the browser can, and let go when the slate is away", async ({ context, page, thumb, go }) => {
  await context.addInitScript(() => {
    window.lit = [];
    Object.defineProperty(Navigator.prototype, "wakeLock", {
      configurable: true,
      get: () => ({ request: async (what) => (window.lit.push(what), { release: async () => void window.lit.push("released") }) }),
    });
  });
  await withShot({ thumb, go });
  await thumb.tap(/^Hold the slate/);
  await until("it is asked for", () => page.evaluate(() => window.lit.includes("screen")));
  await thumb.misses("can\u2019t keep the screen lit");
  await thumb.tap(/^Away/);
  await until("it is let go", () => page.evaluate(() => window.lit.includes("released")));
});

journey("where the browser can't keep it lit, the slate says so", async ({ context, thumb, go }) => {
  await context.addInitScript(() => Object.defineProperty(Navigator.prototype, "wakeLock", { configurable: true, get: () => undefined }));
  await withShot({ thumb, go });
  await thumb.tap(/^Hold the slate/);
  await thumb.sees("can\u2019t keep the screen lit");
});

journey("a slate of a shot that is gone says so and leads away", async ({ thumb, go }) => {
  await startBuild(thumb, "Trays");
  await go("slate.0190f3c2-0000-7000-8000-000000000001");
  await thumb.sheet("No such shot");
  await thumb.key("Leave").waitFor();
});
