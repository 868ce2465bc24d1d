// Storage that is full, missing, newer, blocked or taken away: a clear message, nothing confirmed that was not kept,
// nothing lost that was.
import assert from "node:assert/strict";
import { BUILD, startBuild, startStage } from "./lib/acts.mjs";
import { lines } from "./lib/disk.mjs";
import { address, bystander, journey } from "./lib/journey.mjs";
import { empty, fill, small } from "./lib/room.mjs";
import { until } from "./lib/thumb.mjs";

journey("a full phone: the act is not confirmed, what was kept is safe, and room made lets it go on", async ({ context, open, t }) => {
  const filler = await small(context);
  const { page, thumb } = await open();
  await startBuild(thumb);
  await startStage(thumb, "sand");
  const before = (await lines(page)).length;
  t.diagnostic(`${await fill(filler)} bytes of something else`);
  await thumb.tap("Stop");
  await page.getByRole("alert").filter({ hasText: "No room left" }).waitFor();
  await thumb.mark().filter({ hasText: "not safe" }).waitFor();
  // Never confirmed: the clock runs on, here and after a reload, and no line was written.
  await thumb.clock("sand");
  assert.equal((await lines(page)).length, before);
  await page.reload();
  await thumb.clock("sand");
  await thumb.sheet(BUILD);
  await empty(filler);
  await thumb.tap("Stop");
  await thumb.kept("0 h 00, Me");
  assert.equal((await lines(page)).length, before + 1);
});

journey("a browser without storage says so", async ({ context }) => {
  await context.addInitScript(() => Object.defineProperty(globalThis, "indexedDB", { value: undefined }));
  const page = await context.newPage();
  await page.goto(address("bench"));
  await page.getByRole("alert").filter({ hasText: "This browser gives no storage" }).waitFor();
  // The way round the place still stands.
  assert.equal(await page.getByRole("navigation", { name: "Places" }).getByRole("link").count(), 5);
});

journey("a journal of a newer version is left untouched and said so", async ({ page, thumb, context }) => {
  await startBuild(thumb);
  const kept = await lines(page);
  await page.close();
  const newer = await bystander(context);
  await newer.evaluate(() => new Promise((done, failed) => {
    const asked = indexedDB.open("benchslate", 99);
    asked.onsuccess = () => (asked.result.close(), done());
    asked.onerror = () => failed(asked.error);
  }));
  const page2 = await context.newPage();
  await page2.goto(address("bench"));
  await page2.getByRole("alert").filter({ hasText: "Written by a newer Benchslate" }).waitFor();
  assert.deepEqual(await lines(page2), kept);
  const version = () => page2.evaluate(() => indexedDB.databases().then((all) => all.find((it) => it.name === "benchslate").version));
  assert.equal(await version(), 99);
});

journey("a window that holds an older journal open is named, and waited for", async ({ page, thumb, context }) => {
  await startBuild(thumb);
  await page.close();
  // An older program that does not let go when it is asked to.
  const older = await bystander(context);
  await older.evaluate(() => new Promise((done) => {
    indexedDB.open("benchslate").onsuccess = (event) => done((globalThis.held = event.target.result) && undefined);
  }));
  const next = await context.newPage();
  // The program of a later version: it asks for one version more.
  await next.addInitScript(() => {
    const own = IDBFactory.prototype.open;
    IDBFactory.prototype.open = function (name, version) {
      return version === undefined ? own.call(this, name) : own.call(this, name, version + 1);
    };
  });
  await next.goto(address("bench"));
  await next.getByText("Another window holds the journal").waitFor();
  await older.close();
  await next.getByRole("heading", { level: 1, name: new RegExp(BUILD) }).waitFor();
  await until("the message goes", async () => (await next.getByText("Another window holds the journal").count()) === 0);
});

journey("a window of the old version lets go when the new one comes, says so, and confirms nothing more", async ({ page, thumb, context }) => {
  await startBuild(thumb);
  await startStage(thumb, "sand");
  const newer = await bystander(context);
  await newer.evaluate(() => new Promise((done, failed) => {
    const asked = indexedDB.open("benchslate", 2);
    asked.onblocked = () => failed(new Error("blocked: the old window did not let go"));
    asked.onsuccess = () => (asked.result.close(), done());
  }));
  await page.getByRole("alert").filter({ hasText: "Written by a newer Benchslate" }).waitFor();
  await thumb.tap("Stop");
  await thumb.mark().filter({ hasText: "not safe" }).waitFor();
  await thumb.clock("sand");
});

journey("a journal taken away in mid-session is said, and nothing more is confirmed", async ({ page, thumb, context }) => {
  await startBuild(thumb);
  await startStage(thumb, "sand");
  const other = await bystander(context);
  await other.evaluate(() => new Promise((done, failed) => {
    const asked = indexedDB.deleteDatabase("benchslate");
    asked.onblocked = () => failed(new Error("blocked"));
    asked.onsuccess = () => done();
  }));
  await page.getByRole("alert").filter({ hasText: "Not safe yet" }).waitFor();
  await thumb.tap("Stop");
  assert.equal(await thumb.mark().filter({ has: page.getByText("kept", { exact: true }) }).filter({ hasText: "0 h 00" }).count(), 0);
});
