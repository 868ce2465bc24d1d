// Every sheet, in light and in dark: no rule of the accessibility checker broken; and at 320 wide, and at twice the
// lettering, nothing scrolls sideways.
import assert from "node:assert/strict";
import { AxeBuilder } from "@axe-core/playwright";
import { fullShop, turnTo } from "./lib/full.mjs";
import { startBuild } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

/** What is broken on the sheet that is on view, a line each. */
async function broken(page, at, rules) {
  const checker = new AxeBuilder({ page }).setLegacyMode(true);
  const { violations } = await (rules ? checker.withRules(rules) : checker).analyze();
  return violations.flatMap((rule) => rule.nodes.map((node) => `${at}: ${rule.id}, ${node.target.join(" ")}`));
}

/** By night the same marks stand in other colours: only what hangs on colour is asked again. */
const BY_COLOUR = ["color-contrast", "link-in-text-block"];

for (const [colorScheme, rules] of [["light", undefined], ["dark", BY_COLOUR]]) {
  journey(`every sheet by ${colorScheme === "dark" ? "night" : "day"}`, { phone: { colorScheme } }, async (walk) => {
    const { page } = walk;
    const found = [];
    for (const at of await fullShop(walk)) {
      await turnTo(page, at);
      found.push(...(await broken(page, at, rules)));
    }
    assert.deepEqual(found, []);
  });

  journey(`an empty shop and a form with errors by ${colorScheme === "dark" ? "night" : "day"}`, { phone: { colorScheme } }, async (walk) => {
    const { page, thumb, go } = walk;
    const found = await broken(page, "first run", rules);
    for (const at of ["builds", "stock", "plan", "shop", "use", "no-home-yet"]) {
      await turnTo(page, at);
      found.push(...(await broken(page, `empty ${at}`, rules)));
    }
    await go("bench");
    await startBuild(thumb);
    await go("new-lot");
    await thumb.tap("Keep the lot");
    await thumb.refused("rough quantity", "How much came?");
    found.push(...(await broken(page, "new-lot with errors", rules)));
    assert.deepEqual(found, []);
  });
}

for (const [what, viewport, lettering] of [
  ["at 320 wide", { width: 320, height: 640 }, 1],
  ["at 360 wide with twice the lettering", { width: 360, height: 640 }, 2],
  ["on a laptop", { width: 1200, height: 800 }, 1],
]) {
  journey(`nothing scrolls sideways ${what}`, { phone: { viewport } }, async (walk) => {
    const { page } = walk;
    const places = await fullShop(walk);
    // As the reader's own setting for larger lettering does it; no style is written into the page.
    if (lettering !== 1) {
      const cdp = await walk.context.newCDPSession(page);
      await cdp.send("Page.enable");
      await cdp.send("Page.setFontSizes", { fontSizes: { standard: 16 * lettering, fixed: 13 * lettering } });
    }
    const wide = [];
    for (const at of places) {
      await turnTo(page, at);
      const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
      const inside = await page.evaluate(() =>
        [...document.querySelectorAll("main *")].filter((it) => it.scrollWidth > it.clientWidth + 1 && /auto|scroll/.test(getComputedStyle(it).overflowX)).length,
      );
      if (over > 0 || inside > 0) wide.push(`${at}: ${over} px, ${inside} parts`);
    }
    assert.deepEqual(wide, []);
  });
}
