// The hand that holds the phone: right or left, the phone lying on its side, and twice the lettering.
import assert from "node:assert/strict";
import { addPerson, logHours, startBuild, startStage } from "./lib/acts.mjs";
import { lines } from "./lib/disk.mjs";
import { fullShop, turnTo } from "./lib/full.mjs";
import { journey } from "./lib/journey.mjs";
import { until } from "./lib/thumb.mjs";

const middle = async (key) => {
  const box = await key.boundingBox();
  return box.x + box.width / 2;
};

journey("held in the left hand, Stop and Undo stand on its side, and stay so", async ({ thumb, page }) => {
  await startBuild(thumb, "Tray");
  await startStage(thumb, "sand");
  const [stop, pause] = [thumb.key("Stop"), thumb.key("Pause")];
  assert.ok((await middle(stop)) > (await middle(pause)), "on the right at first");
  await thumb.place("Shop");
  await thumb.tap("left hand", "Hand that holds it");
  await thumb.place("Bench");
  await thumb.clock(/sand/);
  assert.ok((await middle(stop)) < (await middle(pause)), "Stop on the left");
  assert.ok((await middle(thumb.key("Undo"))) < 90, "Undo too");
  await page.reload();
  await thumb.clock(/sand/);
  assert.ok((await middle(stop)) < (await middle(pause)), "also when the page is opened anew");
  await thumb.tap("Stop");
  await thumb.kept("sand");
  await thumb.place("Shop");
  await thumb.tap("right hand", "Hand that holds it");
  assert.equal(await page.evaluate(() => document.documentElement.dataset.hand), undefined);
});

for (const hand of ["right", "left"]) {
  journey(`on a phone lying on its side Stop stays in reach of the ${hand} hand`, { phone: { viewport: { width: 640, height: 360 } } }, async ({ thumb, page }) => {
    await startBuild(thumb, "Tray");
    if (hand === "left") {
      await thumb.place("Shop");
      await thumb.tap("left hand", "Hand that holds it");
      await thumb.place("Bench");
    }
    await startStage(thumb, "sand");
    const at = async () => thumb.key("Stop").boundingBox();
    const before = await at();
    assert.ok(before.y >= 0 && before.y + before.height <= 360, "in view");
    assert.ok(hand === "left" ? before.x < 200 : before.x > 440, `on the ${hand}`);
    await page.locator("main").evaluate((sheet) => sheet.scrollTo(0, sheet.scrollHeight));
    assert.deepEqual(await at(), before, "and does not scroll away");
    assert.ok(await onTop(page, thumb.key("Stop")), "nothing lies over it");
    await thumb.tap("Stop");
    await thumb.kept("sand");
  });
}

for (const [how, viewport, insets] of [
  ["upright", { width: 360, height: 640 }, { top: 44, bottom: 34 }],
  ["on its side", { width: 640, height: 360 }, { left: 44, right: 44, bottom: 21 }],
]) {
  journey(`nothing lies under the notch or the home bar of a phone that stands ${how}`, { phone: { viewport } }, async ({ thumb, page, context }) => {
    const cdp = await context.newCDPSession(page);
    await cdp.send("Emulation.setSafeAreaInsetsOverride", { insets });
    await startBuild(thumb, "Tray");
    await startStage(thumb, "sand");
    for (const place of ["Bench", "Builds", "Stock", "Plan", "Shop"]) {
      await thumb.place(place);
      assert.deepEqual(await underAnEdge(page, insets), [], place);
    }
  });
}

/** Words and keys on view that stand where the phone itself is in the way. */
const underAnEdge = (page, { top = 0, right = 0, bottom = 0, left = 0 }) =>
  page.evaluate(
    ([top, right, bottom, left]) => {
      const inSight = [...document.querySelectorAll("main :is(a, button, h1, h2, p, input, select)")].filter((it) => it.checkVisibility());
      const wrong = inSight.filter((it) => {
        const box = it.getBoundingClientRect();
        if (box.width < 2 || box.bottom <= top || box.top >= innerHeight) return false;
        // What scrolls goes on unseen, past the edge of its own part or of the sheet.
        const parts = [it.closest(".read, .hand, main"), it.closest("main")].map((part) => part.getBoundingClientRect());
        const foot = Math.min(box.bottom, ...parts.map((part) => part.bottom));
        const head = Math.max(box.top, ...parts.map((part) => part.top));
        return foot > head && (head < top - 1 || foot > innerHeight - bottom + 1 || box.left < left - 1 || box.right > innerWidth - right + 1);
      });
      return wrong.map((it) => `${it.tagName} ${it.textContent.slice(0, 30)}`);
    },
    [top, right, bottom, left],
  );

journey("on a phone lying on its side every key of every sheet can be reached", { phone: { viewport: { width: 640, height: 360 } } }, async (walk) => {
  assert.deepEqual(await outOfReach(walk, await fullShop(walk)), []);
});

journey("with twice the lettering every key of every sheet can be reached, and the places stay", async (walk) => {
  const { page, context } = walk;
  const places = await fullShop(walk);
  const cdp = await context.newCDPSession(page);
  await cdp.send("Page.enable");
  await cdp.send("Page.setFontSizes", { fontSizes: { standard: 32, fixed: 26 } });
  assert.deepEqual(await outOfReach(walk, places), []);
});

/** Whether a tap in the middle of it goes to it. */
const onTop = (page, key) =>
  key.evaluate((it) => {
    const { x, y, width, height } = it.getBoundingClientRect();
    return it.contains(document.elementFromPoint(x + width / 2, y + height / 2));
  });

/** Keys of the hand and places that can't be brought into view, or lie under something there. */
async function outOfReach({ page }, places) {
  const found = [];
  for (const at of places) {
    await turnTo(page, at);
    const keys = page.locator(":is(.hand, .block, .mark) :is(button, a)");
    for (let number = 0; number < (await keys.count()); number += 1) {
      const key = keys.nth(number);
      const reached = await key.evaluate((it) => {
        it.scrollIntoView({ block: "center" });
        const { x, y, width, height } = it.getBoundingClientRect();
        return it.contains(document.elementFromPoint(x + width / 2, y + height / 2));
      });
      if (!reached) found.push(`${at}: ${(await key.innerText()).replaceAll("\n", " ")}`);
    }
  }
  return found;
}

/** Notes the keys that stand there; gives back what says which of them were taken away since. */
async function noted(page, where) {
  const keys = page.locator(where).locator(":scope:is(button, a), :is(button, a)");
  await keys.first().waitFor();
  const stood = await keys.evaluateAll((all) => all.forEach((it) => (it.stoodThere = true)) ?? all.length);
  const handle = await page.evaluateHandle((where) => [...document.querySelectorAll(where)].flatMap((it) => [it, ...it.querySelectorAll("*")]).filter((it) => it.stoodThere), where);
  assert.ok(stood > 0, `keys at ${where}`);
  return () => handle.evaluate((all) => all.filter((it) => !it.isConnected).map((it) => it.textContent));
}

journey("a key stays under the finger while a minute passes and another window keeps something", async (walk) => {
  const { page, thumb, go, open } = walk;
  await startBuild(thumb, "Tray");
  await addPerson(thumb, "Tobin");
  await logHours(thumb, "2 h", "mill", { day: "yesterday" });
  await go("add.tool");
  for (const [label, text] of Object.entries({ Name: "Planer", Price: "800", "Lasts, hours": "1500" })) await thumb.type(label, text);
  await thumb.tap("mill");
  await thumb.type("Share of mill", "60");
  await thumb.tap("Keep");
  await thumb.kept("Planer");
  await thumb.place("Bench");
  await startStage(thumb, "sand");
  const ids = (await lines(page)).map((line) => JSON.parse(line));
  const of = (kind) => ids.findLast((it) => it.kind === kind).entry;
  const other = await open();
  await other.thumb.clock("sand");
  const sheets = {
    stages: ".hand",
    [`build.${of("build")}.time`]: ".hand",
    [`money.${of("build")}`]: ".hand",
    [`tool.${of("tool")}`]: ".hand",
    [`entry.${of("stretch")}`]: ".hand",
  };
  let stage = "sand";
  for (const [at, where] of Object.entries(sheets)) {
    await go(at);
    const gone = await noted(page, where);
    // A minute later, and with another clock: the title block or the slate shows both.
    await page.clock.fastForward("00:01:01");
    stage = stage === "sand" ? "mill" : "sand";
    await startStage(other.thumb, stage);
    await until(`${at} knows of ${stage}`, () => page.evaluate((stage) => document.querySelector(".block, .slate")?.closest("main").textContent.includes(stage), stage));
    await page.clock.fastForward("00:01:01");
    assert.deepEqual(await gone(), [], at);
  }
  // One more build stands among those that can be worked for.
  await go("work-for");
  await thumb.key("Tray").waitFor();
  const gone = await noted(page, "main");
  await other.thumb.place("Builds");
  await startBuild(other.thumb, "Chest");
  await thumb.key("Chest").waitFor();
  assert.deepEqual(await gone(), [], "work for");
});

journey("the pieces that put a start or an end right stay while each is tapped, and the question while it grows", async ({ page, thumb }) => {
  await startBuild(thumb, "Tray");
  await startStage(thumb, "sand");
  await page.clock.fastForward("01:30:00");
  await thumb.clock("1:30");
  let gone = await noted(page, ".stretch, .bench-over, .bench-main");
  await thumb.tap("15 minutes earlier");
  await thumb.kept("begun");
  await thumb.clock("1:45");
  assert.deepEqual(await gone(), [], "while it runs");
  await page.clock.fastForward("03:40:00");
  await thumb.part("Is this clock right?").waitFor();
  gone = await noted(page, ".asked");
  await page.clock.fastForward("00:20:00");
  await thumb.part("Is this clock right?").filter({ hasText: "5 h 45" }).waitFor();
  assert.deepEqual(await gone(), [], "while it is asked about");
  await thumb.tap("Stop");
  await thumb.kept("5 h 45");
  gone = await noted(page, ".stopped");
  for (const left of ["5 h 30", "5 h 15"]) {
    await thumb.tap("15 minutes earlier");
    await thumb.part("Just stopped").filter({ hasText: left }).waitFor();
  }
  assert.deepEqual(await gone(), [], "once it is stopped");
});
