import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fromFindings } from '../support/outcome.mjs';
import { root } from '../support/root.mjs';

/**
 * Nothing that is installed may be tied to one registry host: no download address in the lock file, no host in an
 * `.npmrc` of the repository. Texts such as a deprecation note may contain links.
 */
export async function lockFile() {
  const lines = (await readFile(join(root, 'pnpm-lock.yaml'), 'utf8')).split('\n');
  const findings = lines.flatMap((line, index) =>
    /^\s*(resolution:.*|tarball:|registry:).*https?:\/\//.test(line) ? [`pnpm-lock.yaml:${index + 1}: ${line.trim()}`] : [],
  );
  const settings = join(root, '.npmrc');
  if (existsSync(settings) && /https?:\/\//.test(await readFile(settings, 'utf8'))) findings.push('.npmrc: names a host');
  return fromFindings(findings);
}
