import siteConfig from '@generated/docusaurus.config';
import { store, stored } from '../storage/guarded.js';
import { loadedFiles } from './loaded-files.js';

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
  return stored(slot) === 'everything' ? 'everything' : 'visited';
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

/** How many bytes the whole site takes on the device, as the build counted them; undefined without signal. */
export async function sizeOfAll(): Promise<number | undefined> {
  try {
    const response = await fetch(`${siteConfig.baseUrl}kept-size.json`);
    const { bytes } = (await response.json()) as { bytes?: unknown };
    return typeof bytes === 'number' ? bytes : undefined;
  } catch {
    return undefined;
  }
}

/** Store the whole site on the device, or go back to the visited pages; resolves when it is done. */
export async function keep(kept: 'everything' | 'visited'): Promise<void> {
  // Asked for here only: a browser under pressure may otherwise clear what was stored, days later and unseen.
  if (kept === 'everything') await navigator.storage?.persist?.().catch(() => false);
  const registration = await register(kept);
  const coming = registration.installing ?? registration.waiting;
  if (coming !== null) {
    const worker = await settled(coming);
    if (worker.state === 'installed') worker.postMessage({ type: 'SKIP_WAITING' });
  }
  // Where pages may not store, the choice lasts for this visit.
  store(slot, kept);
}

/** Start the service worker as the visitor chose before, and watch for newer versions of the site. */
export async function start(): Promise<void> {
  const kept = wanted();
  const registration = await register(kept);
  const look = async (worker: ServiceWorker | null) => {
    if (worker === null || navigator.serviceWorker.controller === null) return;
    // A change of what is kept is no newer version: it was asked for here, and is taken into use at once.
    if (worker.scriptURL !== navigator.serviceWorker.controller.scriptURL) return;
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

/** Keep files of this site on the device; resolves with whether they are all there. */
export async function keepFiles(paths: readonly string[]): Promise<boolean> {
  if (process.env.NODE_ENV !== 'production' || !canKeep()) return false;
  const { active } = await navigator.serviceWorker.ready;
  if (active === null) return false;
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => resolve(data === true);
    active.postMessage({ type: 'KEEP', paths }, [port2]);
  });
}

/** Keep the page that is open, with what it has loaded and what it loads later. */
export function keepVisited(): void {
  void keepFiles([window.location.pathname, ...loadedFiles()]).catch(() => undefined);
}

/** Files that are loaded late, as when one begins to type, are kept as well. */
export function keepLateFiles(): void {
  // The list of what was loaded is short by default, and would fill up in a long visit.
  performance.setResourceTimingBufferSize(2000);
  new PerformanceObserver((list) => {
    const urls = list.getEntries().map((entry) => new URL(entry.name));
    const own = urls.filter((url) => url.origin === window.location.origin && url.pathname.includes('/assets/'));
    if (own.length > 0) void keepFiles(own.map((url) => url.pathname)).catch(() => undefined);
  }).observe({ type: 'resource' });
}
