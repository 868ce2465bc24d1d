// A phone's keyboard composes a word letter by letter and hands it over at its end. No field may change under it: what
// is half composed would be lost, or stand there twice.
import assert from "node:assert/strict";
import { fullShop, turnTo } from "./lib/full.mjs";
import { journey } from "./lib/journey.mjs";

const WORD = "elm";

/** The fields of the sheet on view that take words, by their ids. */
const fields = (page) =>
  page.evaluate(() => {
    const typed = [...document.querySelectorAll("main input, main textarea")].filter((it) => ["text", "search", "textarea"].includes(it.type));
    return typed.filter((it) => it.id && it.checkVisibility()).map((it) => it.id);
  });

/** What stands in the field once the word is composed and handed over. */
async function composed(page, keyboard, id) {
  await page.evaluate((id) => {
    window.composing = document.getElementById(id);
    window.composing.focus();
    window.composing.select();
  }, id);
  for (let at = 1; at <= WORD.length; at += 1) {
    await keyboard.send("Input.imeSetComposition", { text: WORD.slice(0, at), selectionStart: at, selectionEnd: at });
  }
  await keyboard.send("Input.insertText", { text: WORD });
  return page.evaluate((id) => {
    const field = document.getElementById(id);
    return field === window.composing ? field.value : `another field, ${field?.value}`;
  }, id);
}

journey("on every sheet a word that is being composed comes whole into its field", async (walk) => {
  const { page, context } = walk;
  const keyboard = await context.newCDPSession(page);
  const [wrong, tried] = [[], new Set()];
  for (const at of await fullShop(walk)) {
    await turnTo(page, at);
    for (const id of await fields(page)) {
      const stands = await composed(page, keyboard, id);
      tried.add(`${at.split(".")[0]} ${id}`);
      if (stands !== WORD) wrong.push(`${at}, ${id}: ${stands}`);
    }
  }
  assert.deepEqual(wrong, []);
  assert.ok(tried.size > 100, `${tried.size} fields were tried`);
});
