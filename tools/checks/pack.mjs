import { mkdir, readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { pnpm } from '../pnpm.mjs';
import { fromCommand } from '../support/outcome.mjs';
import { root } from '../support/root.mjs';

/** Pack every package as it would be published, into `out/packed`, for the tests in `tests/packages`. */
export async function pack() {
  const folder = join(root, 'out', 'packed');
  await rm(folder, { recursive: true, force: true });
  await mkdir(folder, { recursive: true });
  const result = await pnpm(['--recursive', '--filter', './packages/*', '--fail-if-no-match', 'pack', '--pack-destination', folder]);
  const packed = await readdir(folder);
  return { ...fromCommand(result), note: `${packed.length} packages` };
}
