// After the build: how much the whole site takes on a device that keeps it, for saying so before it is loaded.
import { readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const build = fileURLToPath(new URL('build/', import.meta.url));

/** Paths that the service worker stores when everything is to be kept. */
const kept = [...readFileSync(join(build, 'sw.js'), 'utf8').matchAll(/["']?url["']?\s*:\s*(["'`])(.*?)\1/g)].flatMap(
  ([, , path]) => path ?? [],
);
if (kept.length < 100) throw new Error('sw.js does not list the files of the site as expected');

const bytes = kept.reduce((sum, path) => sum + statSync(join(build, path)).size, 0);
writeFileSync(join(build, 'kept-size.json'), `${JSON.stringify({ files: kept.length, bytes })}\n`);
