// What stands on keys and in the last mark: no word is broken or crosses an edge, and every key is as wide as a thumb.
import assert from "node:assert/strict";
import { addLot, addPerson, sheetOf, startBuild, startStage } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

/** Words of keys and of the mark that are broken in two or stand past an edge; keys less than a thumb wide. */
const wrong = (page, least = 0) =>
  page.evaluate((least) => {
    const found = [];
    for (const box of document.querySelectorAll(".hand .key, .hand .seg button, .mark .said, .mark .undo")) {
      const edge = box.getBoundingClientRect();
      if (box.matches(".key") && edge.width < least) found.push(`${box.textContent} is ${edge.width} wide`);
      const texts = document.createTreeWalker(box, NodeFilter.SHOW_TEXT);
      for (let text = texts.nextNode(); text; text = texts.nextNode()) {
        const holder = text.parentElement;
        const cut = getComputedStyle(holder).overflow === "hidden" ? holder.getBoundingClientRect() : undefined;
        if (cut && (cut.left < edge.left + 4 || cut.right > edge.right - 4)) found.push(`${text.data} crosses an edge`);
        if (cut) continue;
        for (const { index, 0: word } of text.data.matchAll(/\S+/g)) {
          const range = document.createRange();
          range.setStart(text, index);
          range.setEnd(text, index + word.length);
          const lines = [...range.getClientRects()];
          if (lines.length > 1) found.push(`${word} is broken`);
          if (lines.some((it) => it.left < edge.left || it.right > edge.right)) found.push(`${word} crosses an edge`);
        }
      }
    }
    return found;
  }, least);

const twice = async ({ page, context }) => {
  const cdp = await context.newCDPSession(page);
  await cdp.send("Page.setFontSizes", { fontSizes: { standard: 32, fixed: 26 } });
};

journey("on the bench while nothing runs", async (walk) => {
  const { page, thumb } = walk;
  await startBuild(thumb);
  await startStage(thumb, "flatten");
  await thumb.tap("Stop");
  await thumb.kept("flatten");
  await thumb.key(/^hours/).waitFor();
  assert.deepEqual(await wrong(page, 56), []);
  await twice(walk);
  assert.deepEqual(await wrong(page), []);
});

journey("on the bench with a usual draw and a shot to take every key is as wide as a thumb", async (walk) => {
  const { page, thumb, go } = walk;
  await startBuild(thumb);
  await addPerson(thumb, "Tobin");
  await addLot(thumb, { use: "used up" }, { what: "hard oil, two parts", "how much": "16", "price, before tax": "40" });
  await thumb.place("Bench");
  await startStage(thumb, "sand");
  await thumb.tap(/^(Other|Use stock)/);
  await thumb.tap("2", "Number pad");
  await thumb.tap(/^Use 2/);
  await thumb.kept(/used 2/);
  await sheetOf(thumb, "Film");
  await thumb.tap(/^New shot/);
  await thumb.type("What is to be shot", "first wipe of oil over the court line");
  await thumb.tap("Keep");
  await thumb.kept("first wipe of oil");
  await go("bench");
  await thumb.key(/^Shot it/).waitFor();
  assert.deepEqual(await wrong(page, 56), []);
  const tops = await page.evaluate(() => [...document.querySelectorAll(".bench-acts > .key")].map((key) => key.getBoundingClientRect().top));
  assert.deepEqual(tops, tops.map(() => tops[0]), "in one row");
  await thumb.tap("both", "Who");
  await thumb.kept("by Me and Tobin since 8:");
  assert.deepEqual(await wrong(page, 56), []);
});

journey("a long note is told in the mark with what became of it, and one set of dots", async (walk) => {
  const { page, thumb, go } = walk;
  await startBuild(thumb);
  await go("note");
  await page.locator("#note-text").fill("Pew ends: keep the carved caps for the lid");
  await thumb.tap(/^Keep/);
  await thumb.kept("Pew ends: keep the carved…");
  const [said, small] = await page.locator(".mark .said p").evaluate((it) => [it.scrollHeight - it.clientHeight, it.querySelector("small")?.textContent]);
  assert.ok(said <= 1 && small, "all of it is on view");
});
