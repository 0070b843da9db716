import siteConfig from '@generated/docusaurus.config';

/** How much of the site stays on the device. */
export type Kept = 'visited' | 'everything' | 'nothing';

const slot = 'wallflow.keep';
const listeners = new Set<() => void>();
let updateWaiting: ServiceWorker | undefined;

export function canKeep(): boolean {
  return 'serviceWorker' in navigator;
}

export function wanted(): Kept {
  if (!canKeep()) return 'nothing';
  try {
    return localStorage.getItem(slot) === 'everything' ? 'everything' : 'visited';
  } catch {
    return 'visited';
  }
}

function remember(kept: Kept): void {
  try {
    localStorage.setItem(slot, kept);
  } catch {
    // Private windows may refuse; the choice then lasts for this visit.
  }
}

/** Called when a newer version of the site has been fetched and waits to be used. */
export function onUpdate(listener: () => void): () => void {
  listeners.add(listener);
  if (updateWaiting !== undefined) listener();
  return () => void listeners.delete(listener);
}

/** Use the version that waits; the page is loaded anew. */
export function applyUpdate(): void {
  navigator.serviceWorker.addEventListener('controllerchange', () => window.location.reload(), { once: true });
  updateWaiting?.postMessage({ type: 'SKIP_WAITING' });
}

function settled(worker: ServiceWorker): Promise<ServiceWorker> {
  return new Promise((resolve, reject) => {
    const check = () => {
      if (worker.state === 'installed' || worker.state === 'activated') resolve(worker);
      else if (worker.state === 'redundant') reject(new Error('the files could not be stored'));
    };
    worker.addEventListener('statechange', check);
    check();
  });
}

async function register(kept: Kept): Promise<ServiceWorkerRegistration> {
  const params = encodeURIComponent(JSON.stringify({ offlineMode: kept === 'everything', debug: false }));
  return navigator.serviceWorker.register(`${siteConfig.baseUrl}sw.js?params=${params}`);
}

/** Store the whole site on the device, or go back to the visited pages; resolves when it is done. */
export async function keep(kept: 'everything' | 'visited'): Promise<void> {
  const registration = await register(kept);
  const coming = registration.installing ?? registration.waiting;
  if (coming !== null) {
    const worker = await settled(coming);
    if (worker.state === 'installed') worker.postMessage({ type: 'SKIP_WAITING' });
  }
  remember(kept);
}

/** Start the service worker as the visitor chose before, and watch for newer versions of the site. */
export async function start(): Promise<void> {
  const kept = wanted();
  const registration = await register(kept);
  const look = async (worker: ServiceWorker | null) => {
    if (worker === null || navigator.serviceWorker.controller === null) return;
    await settled(worker);
    if (worker.state !== 'installed') return;
    // Visited pages come from the network first anyway; only a stored site must be changed as a whole.
    if (wanted() === 'visited') return worker.postMessage({ type: 'SKIP_WAITING' });
    updateWaiting = worker;
    for (const listener of listeners) listener();
  };
  registration.addEventListener('updatefound', () => void look(registration.installing).catch(() => undefined));
  await look(registration.waiting);
}

/** Keep the page that is open, with what it loaded. */
export async function keepVisited(): Promise<void> {
  const registration = await navigator.serviceWorker.ready;
  const loaded = performance.getEntriesByType('resource').map((entry) => new URL(entry.name));
  const own = loaded.filter((url) => url.origin === window.location.origin).map((url) => url.pathname);
  registration.active?.postMessage({ type: 'KEEP', paths: [window.location.pathname, ...own] });
}
