// A journey: one browser a file, a fresh context each, and what no journey may do: an error in the console, a
// request to any other host, a breach of the security policy, an error that nobody caught.
import assert from "node:assert/strict";
import { after, test } from "node:test";
import { FRIDAY_MORNING, PHONE, launch } from "./browser.mjs";
import { Thumb } from "./thumb.mjs";

/** Where the program is served. The address ends with a slash. */
export const URL_BASE = process.env.BENCHSLATE_URL ?? "http://127.0.0.1:8200/";

/** As long as a phone that is busy with something else may take to show what was asked for. */
export const PATIENCE_MS = Number(process.env.BENCHSLATE_PATIENCE ?? 10_000);

let browser;
after(() => browser?.close());

/**
 * Runs `walk({ t, browser, context, page, thumb, go, open, elsewhere, watch })`: `go(place)` opens an address in the
 * page, `open(place)` one more window of the same phone, `elsewhere()` another phone with nothing on it.
 *
 * `at` is the moment at which it begins; none: the real one. `worker: true` lets the service worker in, which the
 * other journeys do without. `allowed` lists what the console may say in this journey; why is said there.
 */
export function journey(name, options, walk) {
  if (typeof options === "function") [options, walk] = [{}, options];
  const { allowed = [], only, skip } = options;
  test(name, { only, skip }, async (t) => {
    browser ??= await launch();
    const phones = [];
    const phone = async () => {
      phones.push(await freshPhone(options));
      return phones.at(-1);
    };
    try {
      const first = await phone();
      await walk({ ...first, t, browser, elsewhere: phone });
      for (const one of phones) await one.watch.settled();
    } finally {
      for (const one of phones) await one.context.close();
    }
    assert.deepEqual(phones.flatMap((one) => one.watch.wrong(allowed)), [], "what a journey may not do");
  });
}

/** A browser context of its own, with one window on the bench. */
async function freshPhone({ at = FRIDAY_MORNING, phone = {}, worker = false, place = "bench" }) {
  const context = await browser.newContext({ ...PHONE, ...phone });
  context.setDefaultTimeout(PATIENCE_MS);
  if (!worker) await context.addInitScript(withoutWorker);
  if (at) await context.clock.install({ time: new Date(at) });
  const watch = await watched(context);
  const open = async (to = "bench") => {
    const page = await context.newPage();
    await page.goto(address(to));
    return { page, thumb: new Thumb(page) };
  };
  const { page, thumb } = await open(place);
  const go = async (to) => void (await page.goto(address(to)));
  return { context, page, thumb, go, open, watch };
}

/** As in a browser that has none: the page comes from the server each time. */
function withoutWorker() {
  Object.defineProperty(Navigator.prototype, "serviceWorker", { get: () => undefined });
}

/** The address of a place: the value of `at`. */
export const address = (place) => new URL(`./?at=${place}`, URL_BASE).href;

/** A page of the same origin that is not the program. */
export async function bystander(context) {
  const at = new URL("a-page-of-another-kind", URL_BASE).href;
  await context.route(at, (route) => route.fulfill({ contentType: "text/html", body: "<link rel=icon href='data:,'>" }));
  const page = await context.newPage();
  await page.goto(at);
  return page;
}

/** Listens to every page of a context from its first moment. */
export async function watched(context, origin = new URL(URL_BASE).origin) {
  const heard = [];
  await context.exposeBinding("breachOfPolicy", (_, what) => heard.push(`policy: ${what}`));
  await context.addInitScript(() => {
    addEventListener("securitypolicyviolation", (event) => {
      window.breachOfPolicy(`${event.effectiveDirective} ${event.blockedURI} ${event.sourceFile}:${event.lineNumber}`);
    });
  });
  await context.exposeBinding("tookField", (_, which) => heard.push(`field taken from under the typing thumb: ${which}`));
  await context.addInitScript(watchFields);
  await context.exposeBinding("sprang", (_, what) => heard.push(`sprang aside and back: ${what}`));
  await context.addInitScript(watchJumps);
  context.on("console", (message) => message.type() === "error" && heard.push(`console: ${message.text()}`));
  context.on("weberror", (error) => heard.push(`uncaught: ${error.error().message}`));
  context.on("request", (request) => {
    const url = request.url();
    if (!url.startsWith(origin) && !/^(blob|data):/.test(url)) heard.push(`elsewhere: ${url}`);
  });
  return {
    heard,
    wrong: (allowed = []) => heard.filter((line) => !allowed.some((pattern) => pattern.test(line))),
    /** What was said by a page is heard before its next answer. */
    settled: () => Promise.all(context.pages().map((page) => page.evaluate(() => {}).catch(() => {}))),
  };
}

/**
 * Runs in the page before the program: a field that has the focus stays the same field for as long as its sheet stands.
 * Were it drawn anew at a key, a phone's keyboard would lose the word that it is composing; nothing else shows that here.
 */
function watchFields() {
  let typing;
  const look = () => {
    if (!typing || typing.field.isConnected) return;
    const { field, sheet, href } = typing;
    typing = undefined;
    const again = sheet?.isConnected && href === location.href && field.id && document.getElementById(field.id);
    if (again) window.tookField(`${field.id} at ${location.search}`);
  };
  addEventListener("focusin", ({ target }) => {
    // The focus may be given to what was drawn in its place.
    look();
    typing = target.matches("input, textarea") && { field: target, sheet: target.closest("main"), href: location.href };
  });
  // Taken from the page it loses the focus too: only a thumb, or another field, says that it is left.
  addEventListener("pointerdown", ({ target }) => {
    if (target !== typing?.field) typing = undefined;
  });
  new MutationObserver(look).observe(document, { childList: true, subtree: true });
}

/**
 * Runs in the page before the program: what the thumb may be on its way to does not spring aside and back, as a box
 * would that grows into its size and is too small for its words meanwhile. A tap that comes just then goes elsewhere.
 * What moves because of the next tap or key is another matter.
 */
function watchJumps() {
  const SOON_MS = 600;
  // A key is 44 and more: one that moved by less is hit all the same.
  const MISSED_PX = 10;
  const KEYS = "button, a, label, summary";
  // A list is scrolled to the field that is wrong; the words on a key may move, for the key itself is tapped.
  const tapped = (node) =>
    node?.nodeType === Node.ELEMENT_NODE && !node.closest(".read") && !node.parentElement?.closest(KEYS) &&
    (node.matches(KEYS) || node.querySelector(KEYS));
  let seen = new WeakMap();
  for (const does of ["pointerdown", "keydown", "input", "resize"]) {
    addEventListener(does, () => void (seen = new WeakMap()), { capture: true, passive: true });
  }
  const words = (node) => `${node.localName} ${node.getAttribute("aria-label") ?? node.textContent}`.trim().slice(0, 60);
  const apart = (one, other) => Math.max(Math.abs(one.x - other.x), Math.abs(one.y - other.y));
  const look = ({ startTime: at, sources }) => {
    for (const { node, previousRect: from, currentRect: to } of sources) {
      if (!tapped(node) || !from.width || !to.width) continue;
      const stood = (seen.get(node) ?? []).filter((one) => at - one.at < SOON_MS);
      seen.set(node, [...stood, { at, rect: from }]);
      const back = stood.some(({ rect }) => apart(rect, to) < 1) && apart(from, to) >= MISSED_PX;
      if (back) window.sprang(`${words(node)} at ${location.search}`);
    }
  };
  new PerformanceObserver((list) => list.getEntries().forEach(look)).observe({ type: "layout-shift", buffered: true });
}
