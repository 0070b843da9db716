import { pnpm } from '../pnpm.mjs';

/** Install exactly what the lock file says. */
export function install() {
  return pnpm(['install', '--frozen-lockfile', '--reporter=append-only']);
}
