import { fileURLToPath } from 'node:url';

/** Folder of the repository, without a trailing separator. */
export const root = fileURLToPath(new URL('../..', import.meta.url)).replace(/[\\/]$/, '');
