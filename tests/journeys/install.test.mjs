// Installable: the manifest names itself, its icons are there in the sizes it says, its shortcuts open.
import assert from "node:assert/strict";
import { URL_BASE, journey } from "./lib/journey.mjs";

journey("the manifest holds, and every icon, shortcut and screenshot that it names is there", async ({ page, context }) => {
  const cdp = await context.newCDPSession(page);
  const { url, errors, data } = await cdp.send("Page.getAppManifest");
  assert.deepEqual(errors, []);
  const manifest = JSON.parse(data);
  assert.ok(manifest.id && manifest.name && manifest.start_url && manifest.display === "standalone");
  assert.ok(manifest.icons.some((icon) => icon.purpose === "maskable"));
  assert.ok(manifest.icons.some((icon) => icon.sizes === "512x512" && icon.purpose === "any"));
  assert.ok(manifest.shortcuts.length > 0, "shortcuts");
  assert.ok(manifest.screenshots?.length > 0, "screenshots");
  for (const image of [...manifest.icons, ...manifest.screenshots]) {
    const answer = await page.request.get(new URL(image.src, url).href);
    assert.equal(answer.status(), 200, image.src);
    if (image.type === "image/png") {
      const bytes = await answer.body();
      assert.equal(`${bytes.readUInt32BE(16)}x${bytes.readUInt32BE(20)}`, image.sizes, image.src);
    }
  }
  for (const shortcut of manifest.shortcuts) {
    const target = new URL(shortcut.url, url);
    assert.ok(target.href.startsWith(URL_BASE), "within its own folder");
    await page.goto(target.href);
    await page.getByRole("heading", { level: 1 }).filter({ hasText: /\S/ }).waitFor();
  }
});
