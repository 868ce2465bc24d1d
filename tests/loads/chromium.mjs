// A Chromium that may be ended without warning: in a process group of its own, on a profile of our choosing, driven
// over its debugging port. A script of ours watches the page from outside: which lines were handed to storage, and
// when the page said "kept". The program itself has no hooks for this.
import { spawn } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { chromium } from "playwright-core";

const FLAGS = [
  "--headless=new", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
  "--disable-component-update", "--disable-sync", "--disable-breakpad", "--disable-dev-shm-usage", "--remote-debugging-port=0",
  "--window-size=360,640",
];

/** Waits until a condition holds; says what it waited for when it does not. */
export async function until(what, holds, milliseconds = 20000) {
  const end = Date.now() + milliseconds;
  for (;;) {
    const value = await holds();
    if (value) return value;
    if (Date.now() > end) throw new Error(`waited in vain: ${what}`);
    await pause(20);
  }
}

/**
 * Opens the app on a profile. `onKept(lines, text)` is called at each confirmation with all lines handed to storage
 * so far. `relaxed` takes the strictness out of every write, as a program without it would run.
 */
export async function open(profile, url, { onKept = () => {}, relaxed = false } = {}) {
  mkdirSync(profile, { recursive: true });
  const port = join(profile, "DevToolsActivePort");
  rmSync(port, { force: true });
  const child = spawn(process.env.BENCHSLATE_CHROMIUM || "chromium", [...FLAGS, `--user-data-dir=${profile}`, "about:blank"], {
    detached: true,
    stdio: "ignore",
  });
  await until("the browser's debugging port", () => existsSync(port) && readFileSync(port, "utf8").includes("\n"));
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${readFileSync(port, "utf8").split("\n")[0]}`);
  const context = browser.contexts()[0];
  await context.exposeBinding("saidKept", (_, { lines, text }) => onKept(lines, text));
  await context.addInitScript(watch, relaxed);
  const page = context.pages()[0] ?? (await context.newPage());
  await page.setViewportSize({ width: 360, height: 640 });
  await page.goto(url);
  const signal = (name) => {
    try {
      process.kill(-child.pid, name);
      return true;
    } catch {
      return false;
    }
  };
  return {
    page,
    /** Stops the whole group where it stands: nothing of it runs on. */
    freeze: () => signal("SIGSTOP"),
    /** Ends the whole group at once, as the system does when it wants the memory. */
    kill: () => signal("SIGKILL"),
    gone: () => until("the end of the browser", () => !signal(0)),
    async close() {
      await browser.close().catch(() => {});
      signal("SIGTERM");
      await until("the end of the browser", () => !signal(0));
    },
  };
}

/** Runs in the page before the program: it only looks on. */
function watch(relaxed) {
  if (window.top !== window) return;
  const handed = [];
  for (const verb of ["add", "put"]) {
    const own = IDBObjectStore.prototype[verb];
    IDBObjectStore.prototype[verb] = function (value, ...rest) {
      if (this.name === "revisions") handed.push(value.line);
      return own.call(this, value, ...rest);
    };
  }
  if (relaxed) {
    const own = IDBDatabase.prototype.transaction;
    IDBDatabase.prototype.transaction = function (names, mode) {
      return own.call(this, names, mode, { durability: "relaxed" });
    };
  }
  let said = "";
  const look = () => {
    const status = document.querySelector(".mark [role=status]");
    const state = status?.querySelector(".state");
    // A mark that is pending or failed says other words in its place.
    const kept = state?.textContent.trim() === "kept" && !state.classList.contains("pending");
    const text = kept ? `${handed.length} ${document.querySelector(".mark").textContent}` : "";
    if (text && text !== said && handed.length > 0) window.saidKept({ lines: [...handed], text });
    said = text;
  };
  new MutationObserver(look).observe(document, { subtree: true, childList: true, characterData: true, attributes: true });
}

/** The lines that are on the disk, read in the page past the program. */
export function keptLines(page) {
  return page.evaluate(
    () =>
      new Promise((done, failed) => {
        const opened = indexedDB.open("benchslate");
        opened.onerror = () => failed(opened.error);
        opened.onsuccess = () => {
          const all = opened.result.transaction("revisions").objectStore("revisions").getAll();
          all.onerror = () => failed(all.error);
          all.onsuccess = () => {
            opened.result.close();
            done(all.result.map((row) => row.line));
          };
        };
      }),
  );
}
