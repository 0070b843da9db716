import { createReadStream } from 'node:fs';
import { realpath, stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, resolve, sep } from 'node:path';

/** @type {Readonly<Record<string, string>>} */
const types = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.xml': 'application/xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.md': 'text/markdown; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.ico': 'image/x-icon',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
  '.ttf': 'font/ttf',
  '.pdf': 'application/pdf',
};

/** @param {string} path */
async function isFile(path) {
  return (await stat(path).catch(() => undefined))?.isFile() ?? false;
}

/**
 * The file that a request means: the file itself, the index of a folder, or a page without its ending.
 *
 * @param {string} folder real path
 * @param {string} url
 * @returns {Promise<string | undefined>} undefined when there is none, or when it lies outside the folder
 */
async function fileFor(folder, url) {
  let path;
  try {
    path = decodeURIComponent(new URL(`http://localhost${url}`).pathname);
  } catch {
    return undefined;
  }
  if (path.includes('\0')) return undefined;
  const target = resolve(folder, `.${sep}${path}`);
  for (const candidate of [target, join(target, 'index.html'), `${target}.html`]) {
    if (!(await isFile(candidate))) continue;
    // A symbolic link may lead out of the folder even when the path does not.
    const real = await realpath(candidate);
    return real.startsWith(folder + sep) ? real : undefined;
  }
  return undefined;
}

/**
 * Serve a folder of static files on this machine only. Port 0 takes a free one.
 *
 * @param {string} folder
 * @param {{ port?: number }} [options]
 * @returns {Promise<{ url: string, close: () => Promise<void> }>}
 */
export async function serveFolder(folder, options = {}) {
  const real = await realpath(folder);
  const server = createServer(async (request, response) => {
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response.writeHead(405, { allow: 'GET, HEAD' }).end();
      return;
    }
    const found = await fileFor(real, request.url ?? '/');
    const page = join(real, '404.html');
    const file = found ?? ((await isFile(page)) ? page : undefined);
    const type = file === undefined ? 'text/plain; charset=utf-8' : (types[extname(file)] ?? 'application/octet-stream');
    response.writeHead(found === undefined ? 404 : 200, {
      'content-type': type,
      'x-content-type-options': 'nosniff',
      // The name of such a file changes with its content.
      ...(found?.startsWith(join(real, 'assets') + sep) ? { 'cache-control': 'public, max-age=31536000, immutable' } : {}),
    });
    if (request.method === 'HEAD') response.end();
    else if (file === undefined) response.end('Not found\n');
    else
      createReadStream(file)
        .on('error', () => response.destroy())
        .pipe(response);
  });
  await new Promise((listening, failed) => {
    server.once('error', failed);
    server.listen(options.port ?? 0, '127.0.0.1', () => listening(undefined));
  });
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  return {
    url: `http://localhost:${port}/`,
    close: () =>
      new Promise((closed) => {
        server.close(() => closed());
        server.closeAllConnections();
      }),
  };
}
