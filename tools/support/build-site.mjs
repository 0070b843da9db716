import { pnpm } from '../pnpm.mjs';
import { isStale } from './freshness.mjs';

/** Build the documentation site into `docs-site/build`. */
export function buildSite() {
  return pnpm(['--filter', 'docs-site', '--fail-if-no-match', 'run', 'build']);
}

/** Whether anything that the site shows changed since it was built. */
export function siteIsStale() {
  return isStale(
    ['docs-site/build/index.html'],
    ['docs-site', 'packages', 'examples', 'tests/reference', 'tests/support', 'pnpm-lock.yaml'],
  );
}
