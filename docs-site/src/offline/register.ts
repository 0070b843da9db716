import type { ClientModule } from '@docusaurus/types';
import { canKeep, keepLateFiles, keepVisited, start } from './keep.js';

const afterLoading = 1500;
let started: Promise<void> | undefined;

function startOnce(): Promise<void> {
  started ??= start().then(keepLateFiles);
  return started;
}

/** Starts the service worker once and keeps every page that is visited. */
const module: ClientModule = {
  onRouteDidUpdate() {
    if (process.env.NODE_ENV !== 'production' || !canKeep()) return;
    // Browsers refuse service workers in some private windows; the site works without.
    setTimeout(() => void startOnce().then(keepVisited, () => undefined), afterLoading);
  },
};

export default module;
