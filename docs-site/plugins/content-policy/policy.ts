import { createHash } from 'node:crypto';

/** Inline scripts of a page that a browser would run; data, such as descriptions for search engines, is none. */
function inlineScripts(html: string): string[] {
  return [...html.matchAll(/<script\b([^>]*)>([\s\S]*?)<\/script>/gi)].flatMap(([, attributes = '', text = '']) => {
    const type = /\btype=["']?([^"'\s>]+)/i.exec(attributes)?.[1] ?? 'text/javascript';
    const runs = !/\bsrc=/i.test(attributes) && /javascript|^module$/i.test(type);
    return runs ? [text] : [];
  });
}

function hashOf(script: string): string {
  return `'sha256-${createHash('sha256').update(script).digest('base64')}'`;
}

/**
 * What a page may load and run: files of its own site, and its own inline scripts by their hash. Styles may stand in the
 * page, since formulas place their signs by them; they cannot ask another host for anything either.
 */
export function contentPolicy(html: string): string {
  const scripts = [...new Set(inlineScripts(html).map(hashOf))].sort();
  return [
    "default-src 'self'",
    ["script-src 'self'", ...scripts].join(' '),
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' data: blob:",
    "object-src 'none'",
    "base-uri 'self'",
    "form-action 'self'",
  ].join('; ');
}

/** The page with its policy, as the first thing in its head, before anything could be loaded. */
export function withContentPolicy(html: string): string {
  const head = /<head\b[^>]*>/i.exec(html);
  if (head === null) throw new Error('a page without a head');
  const end = head.index + head[0].length;
  return `${html.slice(0, end)}<meta http-equiv="Content-Security-Policy" content="${contentPolicy(html)}">${html.slice(end)}`;
}
