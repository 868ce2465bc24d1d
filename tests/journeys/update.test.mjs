// A newer version: offered, never forced; what is typed and what runs survive it, in every window.
import assert from "node:assert/strict";
import { test } from "node:test";
import { startBuild, startStage } from "./lib/acts.mjs";
import { launchOn } from "./lib/browser.mjs";
import { PATIENCE_MS, watched } from "./lib/journey.mjs";
import { freshProfile, nextVersion, serve, unbuilt, versionOf } from "./lib/server.mjs";
import { Thumb, until } from "./lib/thumb.mjs";

const TYPED = "A stool that is not begun yet";

test("a newer version is offered, and taken only on a tap; drafts in all windows survive", { skip: unbuilt }, async () => {
  const profile = freshProfile();
  const next = nextVersion();
  let server = await serve();
  const context = await launchOn(profile.folder);
  context.setDefaultTimeout(PATIENCE_MS);
  const watch = await watched(context, new URL(server.url).origin);
  try {
    const page = context.pages()[0];
    const thumb = new Thumb(page);
    await page.goto(server.url);
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => {}));
    const old = await version(page);
    await startBuild(thumb);
    await startStage(thumb, "sand");

    // The next upload, at the same address.
    const { port } = server;
    await server.stop();
    server = await serve({ dist: next.dist, port });
    const other = await context.newPage();
    await other.goto(`${server.url}?at=new-build`);
    const others = new Thumb(other);
    await page.bringToFront();
    await page.evaluate(() => navigator.serviceWorker.getRegistration().then((it) => it.update()).then(() => {}));
    await page.getByRole("status").filter({ hasText: "A newer version" }).waitFor();

    // Not forced: a reload and a new window stay with the old one.
    await page.reload();
    await thumb.clock("sand");
    assert.equal(await version(page), old);
    const third = await context.newPage();
    await third.goto(server.url);
    await new Thumb(third).clock("sand");
    assert.equal(await version(third), old);
    await third.close();

    await others.type("What is it?", TYPED);
    await thumb.tap("Take it");
    for (const window of [page, other]) await until("the newer version in both windows", async () => (await version(window)) === next.version);
    await thumb.clock("sand");
    await until("the draft", async () => (await others.field("What is it?").inputValue()) === TYPED);
    assert.equal(await page.getByText("A newer version").count(), 0);
    assert.deepEqual(await page.evaluate(() => caches.keys()), [`benchslate-${next.version}`], "the old one is not kept");
    await thumb.tap("Stop");
    await thumb.kept("0 h");
  } finally {
    await context.close();
    await server.stop();
    next.drop();
    profile.drop();
  }
  assert.deepEqual(watch.wrong(), []);
});

/** The version of the page that a window shows; none while it is loading. */
const version = (page) => page.content().then(versionOf, () => undefined);
