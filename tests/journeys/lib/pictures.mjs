// Picture files made on the spot, and what is kept of them.

/** A JPEG as a phone writes it: left half red, right half blue, turned by a mark, with the place where it was taken. */
export async function phonePhoto(page, { width = 400, height = 200, orientation = 6 } = {}) {
  const plain = await page.evaluate(async ([width, height]) => {
    const canvas = Object.assign(document.createElement("canvas"), { width, height });
    const pen = canvas.getContext("2d");
    pen.fillStyle = "#c00";
    pen.fillRect(0, 0, width / 2, height);
    pen.fillStyle = "#00c";
    pen.fillRect(width / 2, 0, width / 2, height);
    const blob = await new Promise((done) => canvas.toBlob(done, "image/jpeg", 0.9));
    return [...new Uint8Array(await blob.arrayBuffer())];
  }, [width, height]);
  // Behind the start of the image, where a camera puts it.
  return Buffer.concat([Buffer.from(plain.slice(0, 2)), exif(orientation), Buffer.from(plain.slice(2))]);
}

/** An APP1 segment: orientation, and 43° 39' 0" north. */
function exif(orientation) {
  const tiff = Buffer.alloc(104);
  tiff.write("II*\0", 0, "latin1");
  tiff.writeUInt32LE(8, 4);
  tiff.writeUInt16LE(2, 8);
  field(tiff, 10, 0x0112, 3, 1, orientation);
  field(tiff, 22, 0x8825, 4, 1, 38);
  tiff.writeUInt16LE(2, 38);
  field(tiff, 40, 1, 2, 2, "N".charCodeAt(0));
  field(tiff, 52, 2, 5, 3, 72);
  [43, 1, 39, 1, 0, 1].forEach((number, at) => tiff.writeUInt32LE(number, 72 + 4 * at));
  const body = Buffer.concat([Buffer.from("Exif\0\0", "latin1"), tiff]);
  const head = Buffer.from([0xff, 0xe1, 0, 0]);
  head.writeUInt16BE(body.length + 2, 2);
  return Buffer.concat([head, body]);
}

function field(tiff, at, tag, type, count, value) {
  tiff.writeUInt16LE(tag, at);
  tiff.writeUInt16LE(type, at + 2);
  tiff.writeUInt32LE(count, at + 4);
  tiff.writeUInt32LE(value, at + 8);
}

/** The head of a PNG that says it is 30,000 pixels a side: a few bytes, 3.6 GB of pixels. */
export function hugePicture() {
  const head = Buffer.from("\x89PNG\r\n\x1a\n\0\0\0\rIHDR\0\0\x75\x30\0\0\x75\x30\x08\x06\0\0\0", "latin1");
  return Buffer.concat([head, Buffer.alloc(64)]);
}

/** Taps the key for a photo and gives the camera's answer. */
export async function takePhoto(page, thumb, buffer, { name = "photo.jpg", key = /^Photo/ } = {}) {
  const [chooser] = await Promise.all([page.waitForEvent("filechooser"), thumb.tap(key)]);
  await chooser.setFiles({ name, mimeType: "image/jpeg", buffer });
}

/** What lies in one of the two stores for photos: `{ hash, type, w, h, bytes, digest, exif, top, bottom }` each. */
export function keptPhotos(page, store = "photos") {
  return page.evaluate(async (store) => {
    const answer = (asked) => new Promise((done, failed) => {
      asked.onsuccess = () => done(asked.result);
      asked.onerror = () => failed(asked.error);
    });
    const db = await answer(indexedDB.open("benchslate"));
    const all = db.transaction(store).objectStore(store);
    const [keys, values] = await Promise.all([answer(all.getAllKeys()), answer(all.getAll())]);
    db.close();
    return Promise.all(values.map(async ({ bytes, type, w, h }, at) => {
      const whole = new Uint8Array(bytes);
      const digest = [...new Uint8Array(await crypto.subtle.digest("SHA-256", bytes))];
      const bitmap = await createImageBitmap(new Blob([bytes], { type }));
      const canvas = Object.assign(document.createElement("canvas"), { width: bitmap.width, height: bitmap.height });
      const pen = canvas.getContext("2d");
      pen.drawImage(bitmap, 0, 0);
      const colour = (y) => {
        const [red, , blue] = pen.getImageData(bitmap.width >> 1, y, 1, 1).data;
        return red > blue ? "red" : "blue";
      };
      return {
        hash: keys[at],
        digest: digest.map((byte) => byte.toString(16).padStart(2, "0")).join(""),
        type, w, h,
        pixels: [bitmap.width, bitmap.height],
        bytes: whole.length,
        isBuffer: bytes instanceof ArrayBuffer,
        exif: new TextDecoder("latin1").decode(whole).includes("Exif"),
        top: colour(2),
        bottom: colour(bitmap.height - 3),
      };
    }));
  }, store);
}
