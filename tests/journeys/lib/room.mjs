// A phone with little room, filled and emptied.
import { URL_BASE, bystander } from "./journey.mjs";

/** Room that the browser gives this origin, in bytes: the program fits, much more does not. */
const ROOM = 24 * 1024 * 1024;

/** A page of the same origin that is not the program: it takes the room. Before the journal is opened at all. */
export async function small(context) {
  const filler = await bystander(context);
  await allow(filler, ROOM);
  return filler;
}

async function allow(page, quotaSize) {
  const cdp = await page.context().newCDPSession(page);
  await cdp.send("Storage.overrideQuotaForOrigin", { origin: new URL(URL_BASE).origin, quotaSize });
  await cdp.detach();
}

/** Fills the room with random bytes (anything else would be made small) until the browser gives no more; how many. */
export async function fill(page) {
  const filled = await page.evaluate(async () => {
    const open = () => new Promise((done, failed) => {
      const asked = indexedDB.open("something else", 1);
      asked.onupgradeneeded = () => asked.result.createObjectStore("bytes", { autoIncrement: true });
      asked.onsuccess = () => done(asked.result);
      asked.onerror = () => failed(asked.error);
    });
    const db = await open();
    const put = (size) => new Promise((done) => {
      const bytes = new Uint8Array(size);
      for (let at = 0; at < size; at += 65536) crypto.getRandomValues(bytes.subarray(at, Math.min(size, at + 65536)));
      const tx = db.transaction("bytes", "readwrite");
      tx.objectStore("bytes").add(bytes);
      tx.oncomplete = () => done(true);
      tx.onabort = () => done(false);
    });
    let sum = 0;
    for (let size = 4 << 20; size >= 256; size >>= 1) while (await put(size)) sum += size;
    db.close();
    return sum;
  });
  // What the browser took beside that it gives back when it tidies up, in its own time: it is no room for anybody.
  await allow(page, filled);
  return filled;
}

/** Gives it back. */
export async function empty(page) {
  await allow(page, ROOM);
  await page.evaluate(() => new Promise((done) => {
    indexedDB.deleteDatabase("something else").onsuccess = () => done();
  }));
}
