// Runs before the program: theme and hand without a flash, whether the first sheet is painted, and the service worker with its offer of a newer version.
//
// What the page and this script say to each other, all on `window`:
//   benchslate-update       a newer version waits. Also on view as <html data-update="waiting">, for a
//                           program that starts listening later.
//   benchslate-take-update  the page asks for it. Nothing else ever swaps versions under a running page.
//   benchslate-started      the program is here, or could not be started.
//   benchslate-reload       the newer version has taken over, in all tabs. This tab reloads at once, unless the
//                           event is cancelled (preventDefault): then the page reloads when it has kept its drafts.
"use strict";
(() => {
  const root = document.documentElement;
  try {
    const theme = JSON.parse(localStorage.getItem("benchslate.theme"));
    if (theme === "light" || theme === "dark") root.dataset.theme = theme;
    if (JSON.parse(localStorage.getItem("benchslate.hand")) === "left") root.dataset.hand = "left";
    // The page paints the first sheet of all: not over a journal that is there, nor for another sheet.
    if (localStorage.getItem("benchslate.begun")) root.dataset.begun = "";
  } catch {
    // No storage, or not ours to read: the device's own theme holds.
  }
  if (!["", "?at=bench"].includes(location.search)) root.dataset.begun = "";

  const workers = navigator.serviceWorker;
  if (!workers) return;
  let registration;
  // The first worker of all takes the page over too; that is no newer version.
  let ruled = Boolean(workers.controller);
  let reloading = false;

  const offer = () => {
    if (!registration.waiting || !workers.controller) return;
    root.dataset.update = "waiting";
    dispatchEvent(new CustomEvent("benchslate-update"));
  };

  workers.addEventListener("controllerchange", () => {
    if (!ruled) return void (ruled = true);
    if (reloading) return;
    reloading = true;
    if (dispatchEvent(new CustomEvent("benchslate-reload", { cancelable: true }))) location.reload();
  });

  addEventListener("benchslate-take-update", () => registration?.waiting?.postMessage("take"));

  // Not before the program is here, so that it is fetched once and not twice side by side.
  addEventListener("benchslate-started", async () => {
    try {
      registration = await workers.register("sw.js", { updateViaCache: "none" });
    } catch {
      return; // A private window or a plain http address: everything works but for offline.
    }
    if (!registration) return;
    offer();
    registration.addEventListener("updatefound", () => {
      const next = registration.installing;
      next?.addEventListener("statechange", () => next.state === "installed" && offer());
    });
    // A page that stays open for days asks when it is looked at again.
    document.addEventListener("visibilitychange", () => {
      if (document.visibilityState === "visible") registration.update().catch(() => {});
    });
  });
})();
