import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, realpathSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { type PackedPackage, packedPackages } from './packed.js';

export interface Manifest {
  readonly name: string;
  readonly exports: Readonly<Record<string, string | Readonly<Record<string, string>>>>;
  readonly bin?: Readonly<Record<string, string>>;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly peerDependencies?: Readonly<Record<string, string>>;
}

/** A project of somebody else, with the packed packages in its `node_modules`. */
export interface Consumer {
  readonly folder: string;
  manifest(name: string): Manifest;
  write(file: string, text: string): void;
  remove(): void;
}

function unpack(packed: PackedPackage, modules: string): Manifest {
  const target = join(modules, packed.name);
  mkdirSync(target, { recursive: true });
  execFileSync('tar', ['-xzf', packed.tarball, '-C', target, '--strip-components=1']);
  return JSON.parse(readFileSync(join(target, 'package.json'), 'utf8')) as Manifest;
}

/** Link what a package declares from elsewhere; what it does not declare cannot be found. */
function linkDependencies(packed: PackedPackage, { dependencies, peerDependencies }: Manifest, modules: string): void {
  for (const name of Object.keys({ ...dependencies, ...peerDependencies })) {
    if (packedPackages.some((other) => other.name === name)) continue;
    const link = join(modules, name);
    mkdirSync(dirname(link), { recursive: true });
    rmSync(link, { force: true });
    symlinkSync(realpathSync(join(packed.home, 'node_modules', name)), link, 'dir');
  }
}

/**
 * Lay out a project as an installation of the packed packages would, without a registry.
 *
 * @param chosen folders in place of the versions that the workspace uses, by the name of the package
 */
export function createConsumer(chosen: Readonly<Record<string, string>> = {}): Consumer {
  const folder = mkdtempSync(join(tmpdir(), 'wallflow-consumer-'));
  const modules = join(folder, 'node_modules');
  const manifests = new Map<string, Manifest>();
  for (const packed of packedPackages) {
    const manifest = unpack(packed, modules);
    manifests.set(packed.name, manifest);
    linkDependencies(packed, manifest, modules);
  }
  for (const [name, target] of Object.entries(chosen)) {
    rmSync(join(modules, name));
    symlinkSync(realpathSync(target), join(modules, name), 'dir');
  }
  writeFileSync(join(folder, 'package.json'), JSON.stringify({ name: 'consumer', private: true, type: 'module' }));
  return {
    folder,
    manifest(name) {
      const manifest = manifests.get(name);
      if (manifest === undefined) throw new Error(`${name} is not packed`);
      return manifest;
    },
    write: (file, text) => writeFileSync(join(folder, file), text),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

/** What a user can import from a package: its name, or its name and a path. */
export function specifiers(manifest: Manifest): string[] {
  return Object.keys(manifest.exports)
    .filter((path) => !path.endsWith('.json'))
    .map((path) => manifest.name + path.slice(1));
}
