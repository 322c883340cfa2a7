// The build puts the names of all built files, and a version made from them, in place of these two.
const FILES = /** @type {string[]} */ (['%FILES%']);
const CACHE = 'paper-reef %VERSION%';

// The page's types know no service worker.
const worker = /** @type {any} */ (self);

/** Everything is fetched once, so that every page works with the cable out. */
worker.addEventListener('install', (/** @type {any} */ event) => {
  const fresh = FILES.map((file) => new Request(file, { cache: 'reload' }));
  event.waitUntil(caches.open(CACHE).then((cache) => cache.addAll(fresh)));
});

/** Takes over only when the reader asked for it, or when there was nothing before. */
worker.addEventListener('activate', (/** @type {any} */ event) => {
  const old = (/** @type {string} */ name) => name.startsWith('paper-reef ') && name !== CACHE;
  const cleared = caches
    .keys()
    .then((names) => Promise.all(names.filter(old).map((name) => caches.delete(name))));
  event.waitUntil(cleared.then(() => worker.clients.claim()));
});

worker.addEventListener('message', (/** @type {any} */ event) => {
  if (event.data === 'take over') worker.skipWaiting();
});

worker.addEventListener('fetch', (/** @type {any} */ event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== location.origin) return;
  const wanted = request.mode === 'navigate' ? './' : request;
  const answer = caches
    .open(CACHE)
    .then((cache) => cache.match(wanted, { ignoreSearch: true, ignoreVary: true }));
  event.respondWith(answer.then((found) => found ?? fetch(request)));
});
