// The page that stands in for one that is not on the device. It needs no other file, since none can be asked for.

const mostListed = 60;

function escaped(text) {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}

/** Title and path of every page that a cache holds. */
async function pagesIn(cache) {
  const pages = [];
  for (const request of await cache.keys()) {
    const { pathname } = new URL(request.url);
    if (/\.(?!html$)\w+$/.test(pathname)) continue;
    const response = await cache.match(request);
    if (!response?.headers.get('content-type')?.includes('text/html')) continue;
    const title = /<title[^>]*>([^<]*)</.exec(await response.text())?.[1] ?? pathname;
    // The title comes out of a page, where it is escaped already.
    pages.push({ path: pathname.replace(/index\.html$/, '').replace(/(.)\/$/, '$1'), title: title.replace(/ \| [^|]*$/, '') });
  }
  return pages;
}

async function keptPages() {
  const names = await caches.keys();
  const found = (await Promise.all(names.map(async (name) => pagesIn(await caches.open(name))))).flat();
  return [...new Map(found.map((page) => [page.path, page])).values()].sort((a, b) => (a.title < b.title ? -1 : 1));
}

const style = `
  :root { color-scheme: light dark; }
  body { font: 1.1rem/1.5 system-ui, sans-serif; margin: 0 auto; padding: 1.5rem 1rem; max-width: 40rem; background: #f1f4f2; color: #13211f; }
  a { color: #0b5c64; display: inline-flex; align-items: center; min-height: 44px; }
  h1 { border-bottom: 4px solid #c99700; padding-bottom: .5rem; }
  ul { list-style: none; padding: 0; }
  @media (prefers-color-scheme: dark) { body { background: #0e1617; color: #e6efed; } a { color: #7dd0d2; } }
`;

exports.notKeptPage = async function notKeptPage() {
  const pages = await keptPages().catch(() => []);
  const listed = pages.slice(0, mostListed).map(({ path, title }) => `<li><a href="${escaped(path)}">${title}</a></li>`);
  const more = pages.length > mostListed ? `<p>And ${pages.length - mostListed} more.</p>` : '';
  const list = pages.length === 0 ? '<p>No page is kept yet.</p>' : `<ul>${listed.join('')}</ul>${more}`;
  const text = `<!doctype html>
<html lang="en-GB"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width,initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'">
<title>Not on this device | Wallflow</title><style>${style}</style></head><body><main>
<h1>This page is not on this device</h1>
<p>There is no signal, and this page was not opened here before. Try again when the signal is back. To have all pages next time, store the
whole site under <a href="/guide/offline">Without signal</a>.</p>
<h2>Pages that work now</h2>${list}</main></body></html>`;
  return new Response(text, { headers: { 'content-type': 'text/html; charset=utf-8' } });
};
