/* Serves the program from this computer once it has been opened. STATE and FILES are put before this by the build. */
/* global STATE, FILES */

const KEPT = `loftseam-${STATE}`;

self.addEventListener('install', (event) => {
  event.waitUntil(caches.open(KEPT).then((cache) => cache.addAll(FILES)));
});

self.addEventListener('activate', (event) => {
  const dropOld = async () => {
    for (const name of await caches.keys()) {
      if (name.startsWith('loftseam-') && name !== KEPT) await caches.delete(name);
    }
    await self.clients.claim();
  };
  event.waitUntil(dropOld());
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== self.location.origin) return;
  const answer = async () => {
    const cache = await caches.open(KEPT);
    // Servers say that answers vary by origin; there is only one here.
    const kept = await cache.match(request.mode === 'navigate' ? './' : request, { ignoreVary: true });
    return kept ?? fetch(request);
  };
  event.respondWith(answer());
});
