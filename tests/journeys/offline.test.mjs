// Offline: after the first load the server is stopped for good. Reload, cold start of every address after the
// browser was closed and started again, and the main job itself.
import assert from "node:assert/strict";
import { test } from "node:test";
import { BUILD, startBuild, startStage } from "./lib/acts.mjs";
import { launchOn } from "./lib/browser.mjs";
import { lines } from "./lib/disk.mjs";
import { PATIENCE_MS, watched } from "./lib/journey.mjs";
import { freshProfile, serve, unbuilt } from "./lib/server.mjs";
import { Thumb } from "./lib/thumb.mjs";

/** Every place that needs no entry. */
const PLACES = [
  "bench", "stages", "work-for", "builds", "new-build", "hours", "note", "no-home-yet", "expense", "stock", "new-lot",
  "use", "plan", "shop", "person", "choices", "bring-in",
];
/** Sheets of a build. */
const SHEETS = ["journal", "cost", "spent", "time", "film"];

for (const base of ["/", "/deep/folder/"]) {
  test(`with the server gone everything goes on, served below ${base}`, { skip: unbuilt }, async () => {
    const profile = freshProfile();
    const server = await serve({ base });
    let browser = await begin(profile.folder, server.url);
    try {
      await browser.thumb.page.goto(server.url);
      await keptForOffline(browser.page);
      await server.stop();
      await browser.page.reload();
      await browser.thumb.sheet("Nothing drawn yet");
      await startBuild(browser.thumb);
      await startStage(browser.thumb, "sand");
      const build = buildOf(await lines(browser.page));
      const stretch = (await lines(browser.page)).map((line) => JSON.parse(line)).find((it) => it.kind === "stretch").entry;
      await browser.close();

      const addresses = [
        ...PLACES,
        ...SHEETS.map((tab) => `build.${build}.${tab}`),
        `entry.${build}`, `minute.${stretch}`, `entry.${stretch}`, `opened.${build}.true.labour`,
      ];
      browser = await begin(profile.folder, server.url);
      for (const at of addresses) {
        const page = await browser.context.newPage();
        await page.goto(`${server.url}?at=${at}`);
        await page.getByRole("heading", { level: 1 }).waitFor();
        assert.equal(await page.getByRole("navigation", { name: "Places" }).getByRole("link").count() >= 5, true, at);
        assert.equal(new URL(page.url()).searchParams.get("at"), at, "the address stays");
        await page.close();
      }
      await browser.close();

      // A start of the whole browser on a deep address, and the next act from there.
      browser = await begin(profile.folder, server.url);
      await browser.page.goto(`${server.url}?at=build.${build}.journal`);
      await browser.thumb.part("Places").getByRole("link", { name: /^Bench, sand/ }).tap();
      await browser.thumb.clock("sand");
      await browser.thumb.tap("Stop");
      await browser.thumb.kept("0 h");
      await browser.page.reload();
      await browser.thumb.sheet(new RegExp(BUILD));
      assert.equal(await browser.thumb.part("Clock running").count(), 0);
    } finally {
      await browser.close();
      profile.drop();
    }
    assert.deepEqual(browser.wrong(), []);
  });
}

async function begin(folder, url) {
  const context = await launchOn(folder);
  context.setDefaultTimeout(PATIENCE_MS);
  const watch = await watched(context, new URL(url).origin);
  const page = context.pages()[0] ?? (await context.newPage());
  let open = true;
  return {
    context,
    page,
    thumb: new Thumb(page),
    wrong: watch.wrong,
    async close() {
      if (open) await context.close();
      open = false;
    },
  };
}

/** The service worker has kept a whole version, and this page comes from it next time. */
async function keptForOffline(page) {
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    if (registration.active.state !== "activated") {
      await new Promise((done) => registration.active.addEventListener("statechange", done, { once: true }));
    }
  });
}

const buildOf = (all) => all.map((line) => JSON.parse(line)).find((line) => line.kind === "build").entry;
