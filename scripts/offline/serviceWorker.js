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

/**
 * Takes over only when the reader asked for it, or when there was nothing before. The build before it
 * stays: another window may still show that one, and fetches its pieces when they are first looked at.
 */
worker.addEventListener('activate', (/** @type {any} */ event) => {
  const cleared = caches.keys().then((names) => {
    const old = names.filter((name) => name.startsWith('paper-reef ') && name !== CACHE);
    return Promise.all(old.slice(0, -1).map((name) => caches.delete(name)));
  });
  event.waitUntil(cleared.then(() => worker.clients.claim()));
});

worker.addEventListener('message', (/** @type {any} */ event) => {
  if (event.data === 'take over') worker.skipWaiting();
});

/**
 * Whether this is the file that the build had under this name. Its name says its contents, except for
 * the page's own, which may be a newer one by now; a server may answer with it for one that is gone.
 * @param {string} file @param {Response} response
 */
async function isAsBuilt(file, response) {
  const isPage = (response.headers.get('content-type') ?? '').includes('html');
  if (!response.ok || isPage !== (file === './')) return false;
  const named = isPage ? (await response.clone().text()).match(/assets\/[\w.-]+/g) : [];
  return (named ?? []).every((one) => FILES.includes(one));
}

let isRefilling = false;

/** What a browser has thrown out of the cache is kept again. @param {Cache} cache */
async function refill(cache) {
  if (isRefilling) return;
  isRefilling = true;
  for (const file of FILES) {
    if (await cache.match(file, { ignoreVary: true })) continue;
    const response = await fetch(file, { cache: 'reload' }).catch(() => undefined);
    // No room for it: the network has it.
    if (response && (await isAsBuilt(file, response)))
      await cache.put(file, response).catch(() => {});
  }
  isRefilling = false;
}

worker.addEventListener('fetch', (/** @type {any} */ event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== location.origin) return;
  const wanted = request.mode === 'navigate' ? './' : request;
  const answer = caches.open(CACHE).then(async (cache) => {
    const looked = { ignoreSearch: true, ignoreVary: true };
    const found =
      (await cache.match(wanted, looked)) ??
      // A piece of the build before: its name says its contents.
      (wanted === request ? await caches.match(request, looked) : undefined);
    if (found) return found;
    const response = await fetch(request);
    event.waitUntil(refill(cache));
    return response;
  });
  event.respondWith(answer);
});
