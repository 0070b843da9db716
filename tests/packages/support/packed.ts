import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const repository = fileURLToPath(new URL('../../..', import.meta.url));

/** A package as `npm test` has packed it. */
export interface PackedPackage {
  readonly name: string;
  /** Folder in the repository. */
  readonly home: string;
  readonly tarball: string;
}

function packedPackage(folder: string): PackedPackage {
  const home = join(repository, 'packages', folder);
  const { name, version } = JSON.parse(readFileSync(join(home, 'package.json'), 'utf8')) as { name: string; version: string };
  const tarball = join(repository, 'out', 'packed', `${name.replace('@', '').replace('/', '-')}-${version}.tgz`);
  return { name, home, tarball };
}

/** All packages, in no particular order. */
export const packedPackages: readonly PackedPackage[] = readdirSync(join(repository, 'packages')).map(packedPackage);

const missing = packedPackages.filter(({ tarball }) => !existsSync(tarball));
if (missing.length > 0) {
  throw new Error(`not packed: ${missing.map(({ name }) => name).join(', ')}; "npm test -- --only packages" builds and packs first`);
}
