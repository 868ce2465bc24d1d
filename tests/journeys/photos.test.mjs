// Photos: taken in one tap, kept upright and without the place they were taken at, shown beside their line, kept or not
// kept with it; bad files are refused in words, and nothing is lost.
import assert from "node:assert/strict";
import { BUILD, openBuild, startBuild, startStage } from "./lib/acts.mjs";
import { lines } from "./lib/disk.mjs";
import { journey } from "./lib/journey.mjs";
import { hugePicture, keptPhotos, phonePhoto, takePhoto } from "./lib/pictures.mjs";
import { empty, fill, small } from "./lib/room.mjs";
import { until } from "./lib/thumb.mjs";

const photos = async (page) => (await lines(page)).map((line) => JSON.parse(line)).filter((line) => line.kind === "photo");

/** Waits until every picture on view is drawn, and gives how many there are. */
async function drawn(page) {
  const all = page.getByRole("img").and(page.locator("img"));
  await all.first().waitFor();
  await until("the pictures are drawn", () => all.evaluateAll((all) => all.every((img) => img.complete && img.naturalWidth > 0)));
  return all.count();
}

journey("a photo taken on its side with its place in it is kept upright, small and without either", async ({ page, thumb }) => {
  await startBuild(thumb);
  await startStage(thumb, "sand");
  await takePhoto(page, thumb, await phonePhoto(page, { width: 3200, height: 2400 }));
  await thumb.kept("photo");
  const [photo, ...none] = await keptPhotos(page);
  assert.equal(none.length, 0);
  assert.deepEqual(photo.pixels, [1200, 1600], "turned, and its long side 1600");
  assert.deepEqual([photo.w, photo.h, photo.type], [1200, 1600, "image/jpeg"]);
  assert.deepEqual([photo.top, photo.bottom], ["red", "blue"], "what the camera had at its left is on top");
  assert.equal(photo.exif, false);
  assert.ok(photo.isBuffer);
  assert.equal(photo.hash, photo.digest);
  const [thumbnail] = await keptPhotos(page, "thumbs");
  assert.deepEqual([thumbnail.pixels, thumbnail.exif, thumbnail.hash], [[168, 224], false, photo.hash]);
  const [line] = await photos(page);
  const { hash, width, height, bytes, type, bearer } = line.body;
  assert.deepEqual([hash, width, height, bytes, type], [photo.hash, 1200, 1600, photo.bytes, "image/jpeg"]);
  assert.ok(bearer.build, "for what the clock runs for");
});

journey("a photo stands in the journal with its words, and opens to the whole of it, after a reload too", async ({ page, thumb }) => {
  await startBuild(thumb);
  await startStage(thumb, "glue-up");
  await takePhoto(page, thumb, await phonePhoto(page));
  await thumb.kept("photo");
  await openBuild(thumb);
  await page.getByRole("img", { name: /^photo of / }).waitFor();
  assert.equal(await drawn(page), 1);
  await thumb.tap(/photo of /);
  await thumb.sees("200 × 400, 0.1 MB");
  await thumb.tap("Correct");
  await thumb.type("Words", "trays in clamps");
  await thumb.tap("Keep it so");
  await thumb.kept("corrected");
  await page.reload();
  await page.getByRole("img", { name: "trays in clamps" }).waitFor();
  assert.equal(await drawn(page), 1);
  await openBuild(thumb);
  await thumb.key(/photo trays in clamps/).waitFor();
});

journey("between two jobs a photo waits for a home, and gets one in a tap", async ({ page, thumb }) => {
  await startBuild(thumb);
  await thumb.place("Bench");
  await takePhoto(page, thumb, await phonePhoto(page));
  await thumb.kept("no home yet");
  await thumb.place("Builds");
  await thumb.tap(/^No home yet/);
  await thumb.sheet("No home yet");
  assert.equal(await drawn(page), 1);
  await thumb.tap(BUILD, "A home for “photo”");
  await thumb.kept(`for ${BUILD}`);
  await thumb.sees(/^Everything has a home/);
  await openBuild(thumb);
  assert.equal(await drawn(page), 1);
});

journey("a photo of an entry stands on its sheet and in the journal it is in", async ({ page, thumb }) => {
  await startBuild(thumb);
  await startStage(thumb, "sand");
  await openBuild(thumb);
  await thumb.tap(/sand Me/);
  await takePhoto(page, thumb, await phonePhoto(page));
  await thumb.kept("of sand, Me");
  await page.getByRole("list", { name: "Photos" }).getByRole("img").waitFor();
  await openBuild(thumb);
  await thumb.key(/photo of sand, Me/).waitFor();
  // Taken back, it is struck out and can be brought back whole.
  await thumb.place("Bench");
  await thumb.undo();
  await openBuild(thumb);
  await thumb.tap("put back");
  await thumb.kept("put back");
  assert.equal(await drawn(page), 1);
});

for (const [what, file, says] of [
  ["words with the name of a picture", () => Buffer.from("Total 31.85"), /no picture known here/],
  ["an empty file", () => Buffer.alloc(0), /the file is empty/],
  ["a picture larger than any phone has room for", hugePicture, /30,000 × 30,000 is too large for a phone/],
  ["a picture cut off before its first line", async (page) => (await phonePhoto(page)).subarray(0, 180), /no picture known here/],
]) {
  journey(`${what}: no photo, said why, and all goes on`, async ({ page, thumb }) => {
    await startBuild(thumb);
    await startStage(thumb, "sand");
    const before = await lines(page);
    await takePhoto(page, thumb, await file(page), { name: "receipt.jpg" });
    await page.getByRole("alert").filter({ hasText: "no photo:" }).filter({ hasText: says }).waitFor();
    assert.deepEqual(await lines(page), before);
    assert.deepEqual(await keptPhotos(page), []);
    await thumb.clock("sand");
    await takePhoto(page, thumb, await phonePhoto(page));
    await thumb.kept("photo");
    await thumb.misses(/no photo:/);
  });
}

journey("the message about a bad file goes when it was seen", async ({ page, thumb }) => {
  await startBuild(thumb);
  await thumb.place("Bench");
  await takePhoto(page, thumb, Buffer.alloc(0));
  await thumb.sees(/no photo:/);
  await thumb.place("Stock");
  await thumb.sees(/no photo:/);
  await thumb.tap("seen");
  await thumb.misses(/no photo:/);
});

for (const [what, estimate] of [["", undefined], [", though the browser said there was room", { usage: 0, quota: 1e12 }]]) {
  journey(`a full phone keeps neither the photo nor its line, and both once there is room${what}`, async ({ context, open }) => {
    const filler = await small(context);
    if (estimate) await context.addInitScript((said) => void (globalThis.StorageManager && (StorageManager.prototype.estimate = async () => said)), estimate);
    const { page, thumb } = await open();
    await startBuild(thumb);
    await startStage(thumb, "sand");
    const before = await lines(page);
    const photo = await phonePhoto(page, { width: 1600, height: 1200 });
    await fill(filler);
    await takePhoto(page, thumb, photo);
    await page.getByRole("alert").filter({ hasText: "No room left" }).waitFor();
    await thumb.mark().filter({ hasText: "not safe" }).waitFor();
    assert.deepEqual(await lines(page), before);
    assert.deepEqual([await keptPhotos(page), await keptPhotos(page, "thumbs")], [[], []]);
    await empty(filler);
    await thumb.tap("Try again");
    await thumb.kept("photo");
    assert.equal((await keptPhotos(page)).length, 1);
    assert.equal((await lines(page)).length, before.length + 1);
  });
}

journey("a photo whose bytes stayed on another phone says so, and breaks nothing", async (walk) => {
  const { page, thumb, elsewhere } = walk;
  await startBuild(thumb);
  await startStage(thumb, "sand");
  await takePhoto(page, thumb, await phonePhoto(page));
  await thumb.kept("photo");
  const text = `${(await lines(page)).join("\n")}\n`;
  const other = await elsewhere();
  await other.go("bring-in");
  const [chooser] = await Promise.all([other.page.waitForEvent("filechooser"), other.thumb.tap("Choose a file")]);
  await chooser.setFiles({ name: "journal.jsonl", mimeType: "application/jsonl", buffer: Buffer.from(text) });
  await other.thumb.tap(/^Take it/);
  await other.thumb.sees(/brought in, and kept/);
  await openBuild(other.thumb);
  await other.thumb.sees("photo not on this device");
  await other.thumb.tap(/photo not on this device/);
  await other.thumb.sees("200 × 400, 0.1 MB");
  assert.equal(await other.page.locator("img").count(), 0);
});
