// Keeps one whole version of Benchslate on the device and answers from it, with or without a network.
// `cargo xtask finish` fills in the line below; unfinished, as in a debug round, this worker does nothing.
const BUILD = { version: "", hashed: [], plain: [] };

const KEPT = "benchslate-" + BUILD.version;
const PAGE = "index.html";
const address = (name) => new URL(name, self.registration.scope).href;

self.addEventListener("install", (event) => event.waitUntil(keep()));
self.addEventListener("activate", (event) => event.waitUntil(settle()));
self.addEventListener("message", (event) => {
  if (event.data === "take") self.skipWaiting();
});
self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (!BUILD.version || request.method !== "GET") return;
  const url = new URL(request.url);
  if (url.origin !== location.origin) return;
  event.respondWith(answer(request, url));
});

// All or nothing: a file that is missing fails the install, and the old version stays.
async function keep() {
  if (!BUILD.version) return self.skipWaiting();
  const cache = await caches.open(KEPT);
  // A name with a hash never changes its content: what the page has just fetched will do.
  const hashed = BUILD.hashed.map((name) => store(cache, name, "default"));
  const plain = BUILD.plain.map((name) => store(cache, name, "no-cache"));
  await Promise.all([...hashed, ...plain]);
}

async function store(cache, name, mode) {
  const answer = await fetch(new Request(address(name), { cache: mode, credentials: "same-origin" }));
  if (!answer.ok || answer.redirected) throw new Error(name + ": " + answer.status);
  // In the middle of an upload the page may be of another version than this worker.
  if (name === PAGE && !(await answer.clone().text()).includes(BUILD.version)) throw new Error("mixed versions");
  await cache.put(address(name), answer);
}

// The first worker takes the open page at once; a later one only comes here when it was asked to take over.
async function settle() {
  for (const name of await caches.keys()) {
    if (name.startsWith("benchslate-") && name !== KEPT) await caches.delete(name);
  }
  await self.clients.claim();
}

async function answer(request, url) {
  const cache = await caches.open(KEPT);
  const place = url.origin + url.pathname;
  // Every address is the one page with another ?at=…
  const page = request.mode === "navigate" && (place === self.registration.scope || place === address(PAGE));
  const stored = await cache.match(page ? address(PAGE) : place);
  return stored ?? fetch(request);
}
