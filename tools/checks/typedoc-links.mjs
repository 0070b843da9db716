import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fromCommand } from '../support/outcome.mjs';
import { root } from '../support/root.mjs';
import { runInstalled } from '../support/run.mjs';

/** @returns {string[]} source files that the packages export */
function entryPoints() {
  return readdirSync(join(root, 'packages')).flatMap((name) => {
    /** @type {{ exports: Record<string, Record<string, string>> }} */
    const manifest = JSON.parse(readFileSync(join(root, 'packages', name, 'package.json'), 'utf8'));
    return Object.values(manifest.exports).flatMap((target) => target['@wallflow/source']?.replace('./', `packages/${name}/`) ?? []);
  });
}

/**
 * The site's API reference hides a dead `@link`. Here the comments are read once more, nothing is written, and any
 * warning fails.
 */
export async function typedocLinks() {
  const result = await runInstalled('typedoc', [
    ...entryPoints(),
    '--tsconfig',
    'tests/tsconfig.json',
    '--skipErrorChecking',
    '--disableSources',
    '--readme',
    'none',
    '--name',
    'Wallflow',
    '--emit',
    'none',
    '--treatWarningsAsErrors',
    '--validation.invalidLink',
    'true',
    '--validation.invalidPath',
    'true',
    '--validation.notExported',
    'true',
  ]);
  return fromCommand(result);
}
