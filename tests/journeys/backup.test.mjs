// The backup with the photos in it: out in one tap, back on an empty phone with every picture, large and small; a damaged
// file says what is wrong and where and changes nothing; what takes long is counted and can be stopped.
import assert from "node:assert/strict";
import { openBuild, startBuild, startStage } from "./lib/acts.mjs";
import { backUp, bringIn, choose, linesOf, parts } from "./lib/backup.mjs";
import { lines } from "./lib/disk.mjs";
import { journey } from "./lib/journey.mjs";
import { keptPhotos, phonePhoto, takePhoto } from "./lib/pictures.mjs";
import { empty, fill, small } from "./lib/room.mjs";
import { until } from "./lib/thumb.mjs";

/** A build with so many photos of it, each another. */
async function photographed({ page, thumb }, count = 1) {
  await startBuild(thumb);
  await startStage(thumb, "sand");
  for (let at = 1; at <= count; at += 1) {
    await takePhoto(page, thumb, await phonePhoto(page, { width: 400 + 8 * at, height: 200 }));
    await until(`photo ${at} is kept`, async () => (await keptPhotos(page)).length === at);
  }
}

/** What is kept of every photo, apart from how it came there. */
const pictures = async (page, store) =>
  (await keptPhotos(page, store)).map(({ hash, type, w, h, bytes, pixels }) => ({ hash, type, w, h, bytes, pixels }));

journey("a photo comes back on another phone, large and small, and the next backup is the same", async (walk) => {
  await photographed(walk, 2);
  const file = await backUp(walk);
  const [photos, thumbs, kept] = [await pictures(walk.page), await pictures(walk.page, "thumbs"), await lines(walk.page)];
  const inside = parts(file.bytes);
  const manifest = JSON.parse(inside.get("manifest.json").bytes);
  assert.deepEqual([manifest.lines, manifest.photos, manifest.photos_missing], [kept.length, 2, 0]);
  for (const { hash, bytes } of photos) assert.equal(inside.get(`photos/${hash}.jpg`).bytes.length, bytes);

  const other = await walk.elsewhere();
  await other.go("bring-in");
  await choose(other, file.bytes);
  await other.thumb.sees("Photos, new here");
  assert.deepEqual(await lines(other.page), [], "shown before it is taken");
  await other.thumb.tap(/^Take it .*and 2 photos/);
  await other.thumb.sees(`${kept.length} lines and 2 photos brought in, and kept.`);
  assert.deepEqual((await lines(other.page)).sort(), [...kept].sort());
  assert.deepEqual(await pictures(other.page), photos, "to the byte");
  assert.deepEqual((await pictures(other.page, "thumbs")).map(({ hash, w, h }) => ({ hash, w, h })), thumbs.map(({ hash, w, h }) => ({ hash, w, h })));
  await openBuild(other.thumb);
  await until("both are drawn", () => other.page.locator("img").evaluateAll((all) => all.length === 2 && all.every((img) => img.naturalWidth > 0)));

  const again = await backUp(other);
  assert.deepEqual(linesOf(again.bytes), linesOf(file.bytes));
  assert.deepEqual([...parts(again.bytes).keys()].sort(), [...inside.keys()].sort());
  await other.go("bring-in");
  await choose(other, file.bytes);
  await other.thumb.sees("Nothing new: every line and photo of it is here already.");
});

journey("photos that stayed behind come after their lines", async (walk) => {
  await photographed(walk);
  const file = await backUp(walk);
  const other = await walk.elsewhere();
  await bringIn(other, parts(file.bytes).get("journal.jsonl").bytes, { name: "journal.jsonl" });
  assert.deepEqual(await keptPhotos(other.page), []);
  // A backup from there says what it lacks.
  const without = await backUp(other);
  const { photos, photos_missing } = JSON.parse(parts(without.bytes).get("manifest.json").bytes);
  assert.deepEqual([photos, photos_missing], [0, 1]);
  await other.go("bring-in");
  await choose(other, file.bytes);
  await other.thumb.tap(/^Take it 0 lines and 1 photo$/);
  await other.thumb.sees(/1 photo brought in, and kept/);
  assert.deepEqual(await pictures(other.page), await pictures(walk.page));
  const third = await walk.elsewhere();
  await third.go("bring-in");
  await choose(third, without.bytes);
  await third.thumb.sees("Photos not in the file");
});

journey("a photo that is no longer what it was is left out and said, and that is no whole backup", async (walk) => {
  const { page, thumb } = walk;
  await photographed(walk, 2);
  await page.evaluate(() => new Promise((done) => {
    indexedDB.open("benchslate").onsuccess = ({ target: { result: db } }) => {
      const tx = db.transaction("photos", "readwrite");
      tx.objectStore("photos").openCursor().onsuccess = ({ target: { result: cursor } }) => {
        new Uint8Array(cursor.value.bytes)[99] ^= 1;
        cursor.update(cursor.value);
      };
      tx.oncomplete = () => done(db.close());
    };
  }));
  const file = await backUp(walk);
  await thumb.sees("Saved without 1 photo that could not be put in.");
  assert.equal(JSON.parse(parts(file.bytes).get("manifest.json").bytes).photos, 1);
  await page.reload();
  await thumb.sees(/Never backed up/);
  const other = await walk.elsewhere();
  await bringIn(other, file.bytes);
  assert.equal((await keptPhotos(other.page)).length, 1);
});

journey("a file chosen before the journal is read is held against all of it", async (walk) => {
  await photographed(walk);
  const file = await backUp(walk);
  await walk.page.addInitScript(() => {
    // Reading the rows waits until it is let go, as on a slow phone.
    const { getAll } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.getAll = function (...from) {
      const asked = getAll.apply(this, from);
      if (this.name !== "revisions" || window.letGo === null) return asked;
      const held = new EventTarget();
      Object.defineProperty(held, "result", { get: () => asked.result });
      asked.onsuccess = () => (window.letGo = () => held.onsuccess(new Event("success")));
      return held;
    };
  });
  await walk.go("bring-in");
  await choose(walk, file.bytes);
  await walk.thumb.sees("The file is being read.");
  await until("the rows wait", () => walk.page.evaluate(() => Boolean(window.letGo)));
  await walk.page.evaluate(() => {
    const { letGo } = window;
    window.letGo = null;
    letGo();
  });
  await walk.thumb.sees("Nothing new: every line and photo of it is here already.");
});

/** The file with one byte of a part changed; `head`: in front of what it holds. */
const spoilt = (name, at) => (file) => {
  const [, part] = [...parts(file)].find(([it]) => it.startsWith(name));
  const bytes = Buffer.from(file);
  bytes[part.from + at] ^= 0x40;
  return bytes;
};

for (const [what, broken, says] of [
  ["cut off in the middle", (file) => file.subarray(0, file.length / 2), /No whole ZIP/],
  ["with a photo damaged", spoilt("photos/", 90), /photos\/[0-9a-f]{64}\.jpg: damaged/],
  ["with its journal damaged", spoilt("journal", 40), /journal\.jsonl: /],
  ["with its manifest damaged", spoilt("manifest", 20), /manifest\.json: /],
  ["with a part of another name", (file) => Buffer.from(file.toString("latin1").replaceAll("manifest.json", "../../../json"), "latin1"), /\.\.\/\.\.\/\.\.\/json: no part of a backup/],
]) {
  journey(`a backup ${what} says what is wrong and where, and changes nothing`, async (walk) => {
    const { page, thumb, go } = walk;
    await photographed(walk);
    const file = broken((await backUp(walk)).bytes);
    const before = [await lines(page), await pictures(page)];
    await go("bring-in");
    await choose(walk, file);
    const alert = page.getByRole("alert").filter({ hasText: "Nothing was taken from this file" });
    await alert.filter({ hasText: says }).waitFor();
    assert.equal(await thumb.key(/^Take it/).count(), 0);
    assert.deepEqual([await lines(page), await pictures(page)], before);
    const other = await walk.elsewhere();
    await other.go("bring-in");
    await choose(other, file);
    await other.thumb.sees("Nothing was taken from this file");
    assert.deepEqual([await lines(other.page), await keptPhotos(other.page)], [[], []]);
  });
}

journey("on a full phone nothing of a backup is taken, and all of it once there is room", async (walk) => {
  await photographed(walk, 2);
  const file = await backUp(walk);
  const other = await walk.elsewhere();
  const filler = await small(other.context);
  await startBuild(other.thumb);
  const before = await lines(other.page);
  await other.go("bring-in");
  await fill(filler);
  // A page behind another opens no chooser.
  await other.page.bringToFront();
  await choose(other, file.bytes);
  await other.thumb.tap(/^Take it/);
  await other.thumb.sees("Not kept: no room left");
  assert.deepEqual([await lines(other.page), await keptPhotos(other.page), await keptPhotos(other.page, "thumbs")], [before, [], []]);
  await empty(filler);
  await choose(other, file.bytes, { key: "Another file" });
  await other.thumb.tap(/^Take it/);
  await other.thumb.sees(/2 photos brought in, and kept/);
});

journey("putting a file together is counted, stopped, and begun again", async (walk) => {
  const { page, thumb } = walk;
  await photographed(walk, 3);
  // The second photo waits until it is let go, as on a slow phone.
  await page.evaluate(() => {
    const { get } = IDBObjectStore.prototype;
    let count = 0;
    IDBObjectStore.prototype.get = function (key) {
      const asked = get.call(this, key);
      if (this.name !== "photos" || (count += 1) !== 2) return asked;
      const held = new EventTarget();
      Object.defineProperty(held, "result", { get: () => asked.result });
      asked.onsuccess = () => (window.letGo = () => held.onsuccess(new Event("success")));
      return held;
    };
  });
  await thumb.place("Shop");
  await thumb.tap(/^Back up now/);
  await thumb.sees("Putting journal and photos into one file.");
  await thumb.key(/^Stop 1 of 3 photos/).waitFor();
  await thumb.tap(/^Stop/);
  await thumb.sees(/Never backed up/);
  await page.evaluate(() => window.letGo());
  const file = await backUp(walk);
  assert.equal(JSON.parse(parts(file.bytes).get("manifest.json").bytes).photos, 3);
  await thumb.sees(/Backed up/);
});

journey("without photos to be had, the lines are saved all the same", async (walk) => {
  const { page, thumb } = walk;
  await photographed(walk);
  await page.evaluate(() => {
    IDBObjectStore.prototype.getAllKeys = () => { throw new DOMException("no", "UnknownError"); };
  });
  const file = await backUp(walk);
  assert.deepEqual(linesOf(file.bytes).sort(), (await lines(page)).sort());
  await thumb.sees("Saved without 1 photo that could not be put in.");
});

journey("reading a long file is stopped in one tap, and what was read is left", async (walk) => {
  await photographed(walk, 2);
  const file = await backUp(walk);
  const other = await walk.elsewhere();
  await other.go("bring-in");
  await other.page.evaluate(() => {
    const { arrayBuffer } = Blob.prototype;
    let count = 0;
    // Head, end, manifest, journal; then photos.
    Blob.prototype.arrayBuffer = async function () {
      if ((count += 1) === 6) await new Promise((go) => (window.letGo = go));
      return arrayBuffer.call(this);
    };
  });
  await choose(other, file.bytes);
  await other.thumb.tap(/^Stop photo 2 of 2/);
  await other.thumb.sees("Stopped.");
  await other.page.evaluate(() => window.letGo());
  assert.deepEqual([await lines(other.page), await keptPhotos(other.page)], [[], []]);
  await choose(other, file.bytes, { key: "Another file" });
  await other.thumb.tap(/^Take it/);
  await other.thumb.sees(/2 photos brought in, and kept/);
});
