/* Serves the program from this computer once it has been opened. STATE and FILES are put before this by the build. */
/* global STATE, FILES */

const KEPT = `loftseam-${STATE}`;
const PAGE = new URL('./', self.location.href).href;

self.addEventListener('install', (event) => {
  const keep = async () => {
    const cache = await caches.open(KEPT);
    // From the server itself: what the browser put by on its own may be of another version.
    await cache.addAll(FILES.map((file) => new Request(file, { cache: 'no-cache' })));
    await self.skipWaiting();
  };
  event.waitUntil(keep());
});

self.addEventListener('activate', (event) => {
  const dropOld = async () => {
    const names = (await caches.keys()).filter((name) => name.startsWith('loftseam-') && name !== KEPT);
    // The version before stays: pages opened with it go on, and ask for parts of theirs.
    for (const name of names.slice(0, -1)) await caches.delete(name);
    await self.clients.claim();
  };
  event.waitUntil(dropOld());
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== self.location.origin) return;
  const answer = async () => {
    const [address] = request.url.split(/[?#]/);
    const wanted = address === `${PAGE}index.html` ? PAGE : address;
    // Servers say that answers vary by origin; there is only one here.
    const how = { ignoreVary: true };
    const cache = await caches.open(KEPT);
    return (await cache.match(wanted, how)) ?? (await caches.match(wanted, how)) ?? (await fetch(request));
  };
  event.respondWith(answer());
});
