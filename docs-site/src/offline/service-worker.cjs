// Runs inside the service worker of the site. Pages that were visited stay readable without signal. When the visitor
// has asked to keep everything, the precache of the whole site serves instead and this part stands aside.

const { notKeptPage } = require('./not-kept-page.cjs');

const cacheName = 'visited';
// More than the files of the whole site, so that a common file is never the oldest one that goes.
const mostEntries = 2000;

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
    if (request.mode === 'navigate') return notKeptPage();
    throw error;
  }
}

/** Whether all these files are kept in the end. */
async function keep(paths) {
  const cache = await caches.open(cacheName);
  let all = true;
  for (const path of paths) {
    const url = new URL(path, self.location.origin);
    if (url.origin !== self.location.origin || (await cache.match(cacheKey(url))) !== undefined) continue;
    try {
      all = (await fetchAndKeep(url.href, url)).ok && all;
    } catch {
      // Without signal nothing can be added; what is kept stays.
      return false;
    }
  }
  return all;
}

/**
 * In a stored site the precache answers first; what is not in it has a page of its own. The precache begins to listen a
 * few turns after this module was called, and of two listeners the first one that answers counts.
 */
async function listenAfterThePrecache() {
  for (let turn = 0; turn < 20; turn += 1) await undefined;
  self.addEventListener('fetch', (event) => {
    if (event.request.mode === 'navigate') event.respondWith(fetch(event.request).catch(() => notKeptPage()));
  });
}

module.exports = function keepVisited({ offlineMode }) {
  self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));
  self.addEventListener('message', (event) => {
    if (event.data?.type !== 'KEEP') return;
    // A stored site holds every file of its pages.
    const kept = offlineMode ? Promise.resolve(true) : keep(event.data.paths).catch(() => false);
    event.waitUntil(kept.then((all) => event.ports[0]?.postMessage(all)));
  });
  if (offlineMode) return void listenAfterThePrecache();
  self.addEventListener('fetch', (event) => {
    const url = new URL(event.request.url);
    if (event.request.method !== 'GET' || url.origin !== self.location.origin) return;
    event.respondWith(answer(event.request, url));
  });
};
