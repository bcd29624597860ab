/* global self, caches, version, files */
// Keeps the pages of the book on the device, so that it opens in the walk-in without a signal. Records are not its
// business: they go through the outbox. The build writes `version`, the name of this version, and `files` (all of it) above.

/** A network that hangs is worse than none: after this long the kept page is shown. */
const timeoutMs = 4000;

self.addEventListener('install', (event) => {
  event.waitUntil(caches.open(version).then((cache) => cache.addAll(files)));
});

// A new version takes over once no page of the old one is open: an open page never loses the files it was built with.
self.addEventListener('activate', (event) => {
  event.waitUntil(dropOldVersions().then(() => self.clients.claim()));
});

self.addEventListener('fetch', (event) => {
  const { method, mode, url } = event.request;
  const { origin, pathname } = new URL(url);
  if (method !== 'GET' || origin !== self.location.origin || pathname.startsWith('/api/')) return;
  event.respondWith(mode === 'navigate' ? page(event.request) : file(event.request));
});

async function page(request) {
  try {
    return await fetch(request, { signal: AbortSignal.timeout(timeoutMs) });
  } catch {
    return (await kept('/')) ?? Response.error();
  }
}

const file = async (request) => (await kept(request)) ?? fetch(request);

const kept = async (request) => (await caches.open(version)).match(request);

async function dropOldVersions() {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith('pages-') && name !== version).map((name) => caches.delete(name)));
}
