// Runs inside the service worker of the site. Pages that were visited stay readable without signal. When the visitor
// has asked to keep everything, the precache of the whole site serves instead and this part stands aside.

const cacheName = 'visited';
const mostEntries = 400;

/** Files whose name changes with their content never need to be asked for again. */
function isHashed(url) {
  return url.pathname.includes('/assets/');
}

async function trim(cache) {
  const keys = await cache.keys();
  await Promise.all(keys.slice(0, Math.max(0, keys.length - mostEntries)).map((key) => cache.delete(key)));
}

function cacheKey(url) {
  return url.origin + url.pathname;
}

async function fetchAndKeep(request, url) {
  const response = await fetch(request);
  if (response.ok && response.type === 'basic') {
    const cache = await caches.open(cacheName);
    await cache.put(cacheKey(url), response.clone());
    await trim(cache);
  }
  return response;
}

async function answer(request, url) {
  const cache = await caches.open(cacheName);
  const kept = await cache.match(cacheKey(url));
  if (kept !== undefined && isHashed(url)) return kept;
  try {
    return await fetchAndKeep(request, url);
  } catch (error) {
    if (kept !== undefined) return kept;
    throw error;
  }
}

async function keep(paths) {
  const cache = await caches.open(cacheName);
  for (const path of paths) {
    const url = new URL(path, self.location.origin);
    if (url.origin !== self.location.origin || (await cache.match(cacheKey(url))) !== undefined) continue;
    try {
      await fetchAndKeep(url.href, url);
    } catch {
      // Without signal nothing can be added; what is kept stays.
      return;
    }
  }
}

module.exports = function keepVisited({ offlineMode }) {
  self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));
  if (offlineMode) return;
  self.addEventListener('fetch', (event) => {
    const url = new URL(event.request.url);
    if (event.request.method !== 'GET' || url.origin !== self.location.origin) return;
    event.respondWith(answer(event.request, url));
  });
  self.addEventListener('message', (event) => {
    if (event.data?.type === 'KEEP') event.waitUntil(keep(event.data.paths));
  });
};
