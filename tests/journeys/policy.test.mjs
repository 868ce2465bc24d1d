// The security policy of the release build, on every sheet: no breach, no request to any other host, no error in the
// console. A breach made on purpose is heard, so that silence means something.
import assert from "node:assert/strict";
import { test } from "node:test";
import { launch, PHONE } from "./lib/browser.mjs";
import { fullShop, standing } from "./lib/full.mjs";
import { PATIENCE_MS, watched } from "./lib/journey.mjs";
import { serve, unbuilt } from "./lib/server.mjs";
import { Thumb, until } from "./lib/thumb.mjs";

test("every sheet keeps the policy, asks nobody else, and says no error", { skip: unbuilt }, async () => {
  const server = await serve();
  const browser = await launch();
  const context = await browser.newContext(PHONE);
  context.setDefaultTimeout(PATIENCE_MS);
  await context.clock.install();
  const watch = await watched(context, new URL(server.url).origin);
  try {
    const page = await context.newPage();
    const answer = await page.goto(server.url);
    const policy = answer.headers()["content-security-policy"];
    assert.match(policy, /^default-src 'none'; script-src 'self' 'wasm-unsafe-eval'/);
    assert.doesNotMatch(policy, /'unsafe-inline'|'unsafe-eval'|\*|https?:/);
    assert.equal(answer.headers()["content-type"], "text/html; charset=utf-8");
    const inPage = await page.content();
    assert.ok(inPage.includes("http-equiv=\"Content-Security-Policy\""), "in the page too, for hosts that send no headers");

    const thumb = new Thumb(page);
    const go = async (at) => void (await page.goto(`${server.url}?at=${at}`));
    for (const at of await fullShop({ page, thumb, go })) {
      await go(at);
      await standing(page);
    }
    await watch.settled();
    assert.deepEqual(watch.wrong(), []);

    await page.evaluate(() => document.body.insertAdjacentHTML("beforeend", "<p style='color:red'>breach</p>"));
    await until("the breach is heard", () => watch.heard.some((line) => line.startsWith("policy: style-src")));
    await page.evaluate(() => fetch("https://elsewhere.example/").catch(() => {}));
    await until("the request elsewhere is heard", () => watch.heard.some((line) => /^(policy: connect-src|elsewhere:)/.test(line)));
  } finally {
    await browser.close();
    await server.stop();
  }
});
