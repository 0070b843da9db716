import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const build = fileURLToPath(new URL('../../docs-site/build', import.meta.url));

/** Pages for developers, where a program's words belong. */
const forDevelopers = /^(?:api\b|guide\/embedding\b)/;

function pages(): string[] {
  return readdirSync(build, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.html') && !forDevelopers.test(file));
}

/** What a person reads of a page: no code, no formula, nothing that only a program looks at. */
function readText(html: string): string {
  const main = /<main\b.*?<\/main>/s.exec(html)?.[0] ?? html;
  return main.replaceAll(/<(code|pre|script|style|math|svg)\b.*?<\/\1>/gs, ' ').replaceAll(/<[^>]+>/g, ' ');
}

/** `soot_load_upper` and `exhaustMassFlow`; neither a symbol such as c_g nor a unit such as kWh. */
const programWord = /(?<![\w./])[a-z]{2,}(?:_[a-z0-9]{2,})+\b|(?<!\w)[a-z]{2,}[A-Z][a-z]{2,}\w*\b|\b[\w-]+\.(?:py|ts|mjs)\b/g;

describe('what a person reads', () => {
  it('knows a program word when it sees one', () => {
    const html = '<main><p>soot_load and airMassFlow, but c_g, kWh, mmHg, <code>a_code</code></p></main>';
    expect(readText(html).match(programWord)).toEqual(['soot_load', 'airMassFlow']);
  });

  it('holds no key and no code on any page', () => {
    const found = new Map<string, string>();
    const all = pages();
    expect(all.length).toBeGreaterThan(200);
    for (const page of all) {
      for (const [word] of readText(readFileSync(join(build, page), 'utf8')).matchAll(programWord)) {
        if (!found.has(word)) found.set(word, relative('', page));
      }
    }
    expect(Object.fromEntries(found)).toEqual({});
  });
});
