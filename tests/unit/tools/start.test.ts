import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { install, isInstalled, markInstalled } from '../../../tools/support/install.mjs';
import { root } from '../../../tools/support/root.mjs';

describe('an installation', () => {
  let home = '';
  const write = (file: string, content: unknown) => {
    mkdirSync(dirname(join(home, file)), { recursive: true });
    writeFileSync(join(home, file), typeof content === 'string' ? content : JSON.stringify(content));
  };

  beforeEach(() => {
    home = mkdtempSync(join(tmpdir(), 'wallflow-install-'));
    write('pnpm-lock.yaml', 'lockfileVersion: 9.0\n');
    write('pnpm-workspace.yaml', 'packages: [packages/*]\n');
    write('package.json', { name: 'workspace' });
    write('packages/one/package.json', { name: 'one', dependencies: { two: '1.0.0' } });
    write('packages/one/node_modules/two/package.json', { name: 'two' });
    mkdirSync(join(home, 'node_modules'));
  });
  afterEach(() => rmSync(home, { recursive: true, force: true }));

  it('is there once it was made, and not before', () => {
    expect(isInstalled(home)).toBe(false);
    markInstalled(home);
    expect(isInstalled(home)).toBe(true);
  });

  it.each([
    ['the lock file', () => write('pnpm-lock.yaml', 'lockfileVersion: 9.1\n')],
    ['the settings of the workspace', () => write('pnpm-workspace.yaml', 'packages: []\n')],
    ['a manifest', () => write('packages/one/package.json', { name: 'one', dependencies: {} })],
    ['a new package', () => write('packages/three/package.json', { name: 'three' })],
    ['a folder that was removed', () => rmSync(join(home, 'packages/one/node_modules'), { recursive: true })],
    ['all that was removed', () => rmSync(join(home, 'node_modules'), { recursive: true })],
  ])('is made again after a change of %s', (_, change) => {
    markInstalled(home);
    change();
    expect(isInstalled(home)).toBe(false);
  });
});

describe('an installation without the site', () => {
  it('is enough for the packages alone, and is not taken for a whole one', () => {
    const home = mkdtempSync(join(tmpdir(), 'wallflow-install-'));
    const write = (file: string, content: string) => {
      mkdirSync(dirname(join(home, file)), { recursive: true });
      writeFileSync(join(home, file), content);
    };
    for (const file of ['pnpm-lock.yaml', 'pnpm-workspace.yaml']) write(file, '');
    for (const file of ['package.json', 'packages/one/package.json']) write(file, '{}');
    write('docs-site/package.json', '{ "dependencies": { "two": "1.0.0" } }');
    mkdirSync(join(home, 'node_modules'));
    markInstalled(home, 'without-site');
    expect(isInstalled(home, 'without-site')).toBe(true);
    expect(isInstalled(home)).toBe(false);
    write('docs-site/package.json', '{ "dependencies": {} }');
    expect(isInstalled(home, 'without-site')).toBe(false);
    rmSync(home, { recursive: true });
  });
});

describe('npm start', () => {
  it('needs neither network nor a home that can be written to, once all is installed', async () => {
    expect((await install()).code).toBe(0);
    const nowhere = { HOME: '/dev/null', USERPROFILE: '/dev/null', npm_config_registry: 'http://127.0.0.1:9', npm_config_offline: 'false' };
    const { PATH } = process.env;
    const started = spawnSync('npm', ['start', '--silent'], { cwd: root, encoding: 'utf8', env: { PATH, ...nowhere } });
    expect(started.stderr).toBe('');
    expect(started.status).toBe(0);
    expect(started.stdout).toContain('job-sheet.html');
    // The customer's page, on one screen or two.
    expect(started.stdout).toContain('WHAT NEXT');
    expect(started.stdout.split('\n').length).toBeLessThan(80);
  });
});
