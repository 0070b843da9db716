import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serveFolder } from '../../../tools/support/serve-folder.mjs';

const outside = mkdtempSync(join(tmpdir(), 'wallflow-serve-'));
const folder = join(outside, 'site');
let server: Awaited<ReturnType<typeof serveFolder>>;

beforeAll(async () => {
  mkdirSync(join(folder, 'filter'), { recursive: true });
  mkdirSync(join(outside, 'site-of-others'));
  writeFileSync(join(folder, 'index.html'), 'home');
  writeFileSync(join(folder, '404.html'), 'no such page');
  writeFileSync(join(folder, 'filter', 'index.html'), 'filter');
  writeFileSync(join(folder, 'search.html'), 'search');
  writeFileSync(join(folder, 'pièce jointe.svg'), '<svg/>');
  writeFileSync(join(outside, 'secret.txt'), 'secret');
  writeFileSync(join(outside, 'site-of-others', 'index.html'), 'secret');
  symlinkSync(join(outside, 'secret.txt'), join(folder, 'link.txt'));
  server = await serveFolder(folder);
});
afterAll(async () => {
  await server.close();
  rmSync(outside, { recursive: true });
});

/** A request exactly as written; `fetch` would tidy the path before sending it. */
function raw(target: string): Promise<string> {
  return new Promise((resolve, reject) => {
    const socket = connect(Number(new URL(server.url).port), '127.0.0.1');
    let answer = '';
    socket.setEncoding('utf8').on('data', (text) => {
      answer += text;
    });
    socket.on('error', reject).on('close', () => resolve(answer));
    socket.write(`GET ${target} HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n`);
  });
}

describe('serveFolder', () => {
  it.each([
    ['', 'home', 'text/html; charset=utf-8'],
    ['filter', 'filter', 'text/html; charset=utf-8'],
    ['filter/', 'filter', 'text/html; charset=utf-8'],
    ['search?q=soot', 'search', 'text/html; charset=utf-8'],
    ['pi%C3%A8ce%20jointe.svg', '<svg/>', 'image/svg+xml'],
  ])('answers /%s', async (path, text, type) => {
    const response = await fetch(server.url + path);
    expect(response.status).toBe(200);
    expect(response.headers.get('content-type')).toBe(type);
    expect(await response.text()).toBe(text);
  });

  it.each(['nothing', 'filter/nothing.js', '%E0%A4%A'])('answers /%s with the page for missing pages', async (path) => {
    const response = await fetch(server.url + path);
    expect(response.status).toBe(404);
    expect(await response.text()).toBe('no such page');
  });

  it.each([
    '/../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
    '/..%5csecret.txt',
    '/filter/../../secret.txt',
    '/../site-of-others/',
    '/link.txt',
    '/%00',
    '//secret.txt',
  ])('gives nothing from outside the folder for %s', async (target) => {
    const answer = await raw(target);
    expect(answer).toMatch(/^HTTP\/1\.1 404 /);
    expect(answer).not.toContain('secret');
  });

  it('refuses what is not a reading request', async () => {
    const response = await fetch(server.url, { method: 'POST', body: 'x' });
    expect(response.status).toBe(405);
  });
});
