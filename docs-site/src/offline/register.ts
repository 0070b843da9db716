import type { ClientModule } from '@docusaurus/types';
import { canKeep, keepVisited, start } from './keep.js';

const afterLoading = 1500;
let started = false;

/** Starts the service worker once and keeps every page that is visited. */
const module: ClientModule = {
  onRouteDidUpdate() {
    if (process.env.NODE_ENV !== 'production' || !canKeep()) return;
    setTimeout(() => {
      const ready = started ? Promise.resolve() : start();
      started = true;
      // Browsers refuse service workers in some private windows; the site works without.
      ready.then(keepVisited).catch(() => undefined);
    }, afterLoading);
  },
};

export default module;
