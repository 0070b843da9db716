import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { publint } from 'publint';
import { formatMessage } from 'publint/utils';
import { describe, expect, it } from 'vitest';
import { packedPackages } from './support/packed.js';

describe.each(packedPackages)('$name as packed', ({ home, tarball }) => {
  const files = execFileSync('tar', ['-tzf', tarball], { encoding: 'utf8' }).trim().split('\n');
  const manifestText = execFileSync('tar', ['-xzOf', tarball, 'package/package.json'], { encoding: 'utf8' });

  it('holds the built files, the manifest, the licence and a readme, and nothing else', () => {
    const others = files.filter((file) => !file.startsWith('package/dist/'));
    expect(others.sort()).toEqual(['package/LICENSE', 'package/README.md', 'package/package.json']);
    expect(files.filter((file) => file.startsWith('package/dist/')).length).toBeGreaterThan(1);
  });

  it('can be found by words, says where it comes from, and names no other address', () => {
    const manifest = JSON.parse(manifestText) as Record<string, unknown> & { keywords?: string[]; description?: string };
    for (const field of ['homepage', 'repository', 'bugs']) expect(JSON.stringify(manifest[field])).toContain('https://wallflow.example');
    expect(manifest.keywords?.length).toBeGreaterThan(2);
    expect(manifest.description?.length).toBeGreaterThan(10);
    expect(manifestText.replaceAll('https://wallflow.example', '')).not.toMatch(/https?:/);
  });

  it('has a source map with its sources for each script', () => {
    const scripts = files.filter((file) => file.endsWith('.js'));
    expect(scripts.filter((file) => !files.includes(`${file}.map`))).toEqual([]);
    const map = JSON.parse(execFileSync('tar', ['-xzOf', tarball, 'package/dist/index.js.map'], { encoding: 'utf8' })) as object;
    expect(map).toMatchObject({ sourcesContent: [expect.stringContaining('\n')] });
  });

  it('says nothing that only the workspace understands', () => {
    expect(manifestText).not.toMatch(/workspace:|catalog:|@wallflow\/source|\/src\//);
  });

  it('offers the same entries as in the workspace', () => {
    const offered = (text: string) => Object.keys((JSON.parse(text) as { exports: object }).exports);
    expect(offered(manifestText)).toEqual(offered(readFileSync(join(home, 'package.json'), 'utf8')));
  });

  it('has no fault that publint knows', async () => {
    const bytes = readFileSync(tarball);
    const packed = bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength);
    const { messages, pkg } = await publint({ pack: { tarball: packed }, strict: true, level: 'warning' });
    expect(messages.map((message) => formatMessage(message, pkg, { color: false }))).toEqual([]);
  });
});
