import { readdir, readFile } from 'node:fs/promises';
import { extname, join, relative } from 'node:path';
import { fromFindings } from '../support/outcome.mjs';
import { root } from '../support/root.mjs';

const site = join(root, 'docs-site', 'build');

/**
 * What a build can contain without failing: broken maths (KaTeX prints it in red and goes on) and anything that makes
 * a browser ask another host. Links that a reader follows, canonical addresses and social cards load nothing.
 *
 * @type {readonly { what: string, pattern: RegExp, in: readonly string[] }[]}
 */
const silentFailures = [
  { what: 'broken maths', pattern: /katex-error|#?cc0000/gi, in: ['.html'] },
  {
    what: 'loads from another host',
    pattern:
      /<(?:script|img|iframe|source|video|audio|embed|object|input|track)\b[^>]*?\s(?:src|srcset|data|poster)=["']?(?:https?:)?\/\/[^\s"'>]+/gi,
    in: ['.html'],
  },
  {
    what: 'links a resource of another host',
    pattern:
      /<link\b(?=[^>]*\brel=["']?(?:stylesheet|preload|prefetch|modulepreload|preconnect|dns-prefetch|icon|apple-touch-icon|manifest|mask-icon))[^>]*\shref=["']?(?:https?:)?\/\/[^\s"'>]+/gi,
    in: ['.html'],
  },
  { what: 'loads from another host', pattern: /(?:url\(\s*["']?|@import\s+["'])(?:https?:)?\/\/[^\s"')]+/gi, in: ['.css', '.html'] },
];

/**
 * @param {string} text
 * @param {string} extension
 * @returns {string[]}
 */
export function silentFailuresIn(text, extension) {
  return silentFailures
    .filter((failure) => failure.in.includes(extension))
    .flatMap((failure) => [...text.matchAll(failure.pattern)].map(([match]) => `${failure.what}: ${match.slice(0, 160)}`));
}

/**
 * What a file of the site must hold, or must not: a content security policy in every page, and no path of the machine
 * that built it, which would name its user and make builds differ.
 *
 * @param {string} text
 * @param {string} extension
 * @param {string} folder where the site was built
 * @returns {string[]}
 */
export function safetyFailuresIn(text, extension, folder) {
  const open = extension === '.html' && !/<meta http-equiv=["']?Content-Security-Policy/i.test(text);
  return [...(open ? ['no content security policy'] : []), ...(text.includes(folder) ? [`holds the path of its builder, ${folder}`] : [])];
}

/**
 * Whether a script carries a number that the bundler drew for it. Two that draw the same get different ones in an order that hangs on the
 * folder of the build, so that one commit makes two sites. (The names that Docusaurus gives have eight digits.)
 *
 * @param {string} file relative to the site
 */
export function hasDrawnNumber(file) {
  return /^assets[\\/]js[\\/]\d{1,6}\./.test(file);
}

/** Search the built site for failures that leave the build green. */
export async function builtPages() {
  const files = await readdir(site, { recursive: true });
  const findings = [];
  let pages = 0;
  for (const file of files) {
    const extension = extname(file);
    if (!['.html', '.css', '.js', '.json'].includes(extension)) continue;
    if (extension === '.html') pages += 1;
    const path = join(site, file);
    if (hasDrawnNumber(file)) findings.push(`${relative(root, path)}: is named by a number that may differ with the folder of the build`);
    const text = await readFile(path, 'utf8');
    const failures = new Set([...silentFailuresIn(text, extension), ...safetyFailuresIn(text, extension, root)]);
    for (const failure of failures) findings.push(`${relative(root, path)}: ${failure}`);
  }
  if (pages === 0) findings.push('docs-site/build holds no page');
  return { ...fromFindings(findings), note: `${pages} pages` };
}
