/* global self, caches, shelf, files */
// Keeps the pages of the book on the device, so that it opens in the walk-in without a signal. Records are not its
// business: they go through the outbox. The build writes `shelf` (this version) and `files` (all of it) above.

/** A network that hangs is worse than none: after this long the kept page is shown. */
const patienceMs = 4000;

self.addEventListener('install', (event) => {
  event.waitUntil(caches.open(shelf).then((cache) => cache.addAll(files)));
});

// A new version takes over once no page of the old one is open: an open page never loses the files it was built with.
self.addEventListener('activate', (event) => {
  event.waitUntil(dropOldShelves().then(() => self.clients.claim()));
});

self.addEventListener('fetch', (event) => {
  const { method, mode, url } = event.request;
  const { origin, pathname } = new URL(url);
  if (method !== 'GET' || origin !== self.location.origin || pathname.startsWith('/api/')) return;
  event.respondWith(mode === 'navigate' ? page(event.request) : file(event.request));
});

async function page(request) {
  try {
    return await fetch(request, { signal: AbortSignal.timeout(patienceMs) });
  } catch {
    return (await kept('/')) ?? Response.error();
  }
}

const file = async (request) => (await kept(request)) ?? fetch(request);

const kept = async (request) => (await caches.open(shelf)).match(request);

async function dropOldShelves() {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith('pages-') && name !== shelf).map((name) => caches.delete(name)));
}
