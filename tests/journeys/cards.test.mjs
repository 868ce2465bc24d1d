// Cost cards: what is chosen stands on them, and both kinds of file leave the phone at the size of a film.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { addLot, logHours, setRate, sheetOf, startBuild } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";
import { until } from "./lib/thumb.mjs";

const preview = (page) => page.getByRole("img", { name: /^The card as it will be/ });

async function save({ page, thumb }, key) {
  const [file] = await Promise.all([page.waitForEvent("download"), thumb.tap(key)]);
  return { name: file.suggestedFilename(), bytes: readFileSync(await file.path()) };
}

/** Across and down, as the head of a PNG says. */
const pngSize = (bytes) => [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];

const drawn = (page) =>
  until("the preview is drawn", () => preview(page).evaluate((image) => image.complete && image.naturalWidth).catch(() => 0));

/** Whether the pixel in the corner can be seen through. */
const clear = (page, bytes) =>
  page.evaluate(async (data) => {
    const image = await createImageBitmap(new Blob([new Uint8Array(data)], { type: "image/png" }));
    const pen = new OffscreenCanvas(image.width, image.height).getContext("2d");
    pen.drawImage(image, 0, 0);
    return pen.getImageData(2, 2, 1, 1).data[3] === 0;
  }, [...bytes]);

journey("a card is chosen, looked at, and saved both ways", async ({ page, thumb }) => {
  await startBuild(thumb);
  await setRate(thumb, "26");
  await logHours(thumb, "2 h 15", "mill", { day: "yesterday" });
  await addLot(thumb, { use: "used up" }, { what: "hard oil", "how much": "2 tins", "price, before tax": "58", "one tin holds": "750 ml" });
  await sheetOf(thumb, "Cost");
  await thumb.tap(/^Cost cards/);
  await drawn(page);
  const wide = await save({ page, thumb }, /^Save SVG/);
  assert.equal(wide.name, "benchslate-true-cost-16x9.svg");
  await thumb.sees("Saved as benchslate-true-cost-16x9.svg");
  assert.match(wide.bytes.toString(), /^<svg [^>]*width="1920" height="1080"/);
  // A tick more is more on it.
  await thumb.tap("build", "On the card");
  await until("the build's name is on it", async () => (await save({ page, thumb }, /^Save SVG/)).bytes.length > wide.bytes.length + 2000);
  await thumb.tap("9:16", "Shape");
  await thumb.tap("hours", "Which card");
  await thumb.tap("clear", "Ground");
  await until("a tall card", async () => (await drawn(page)) === 1080);
  const tall = await save({ page, thumb }, /^Save PNG/);
  assert.equal(tall.name, "benchslate-hours-9x16.png");
  assert.deepEqual(pngSize(tall.bytes), [1080, 1920]);
  assert.ok(await clear(page, tall.bytes), "nothing behind it");
  await thumb.tap("film", "Ground");
  await thumb.tap("16:9", "Shape");
  await until("a wide card", async () => (await drawn(page)) === 1920);
  const solid = await save({ page, thumb }, /^Save PNG/);
  assert.deepEqual(pngSize(solid.bytes), [1920, 1080]);
  assert.ok(!(await clear(page, solid.bytes)), "film behind it");
  await thumb.tap("one item", "Which card");
  await thumb.sees("No good item made yet.");
  assert.ok(await thumb.key(/^Save PNG/).isDisabled());
});
