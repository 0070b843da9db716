import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { useSite, visibleText } from './support/site.js';

const site = useSite();

interface IndexPart {
  readonly documents?: readonly { readonly u?: string; readonly t?: string }[];
}

function indexed(file: string): readonly { readonly u?: string; readonly t?: string }[] {
  const parts = JSON.parse(readFileSync(new URL(`../../docs-site/build/${file}`, import.meta.url), 'utf8')) as readonly IndexPart[];
  return parts.flatMap(({ documents = [] }) => documents);
}

/** Addresses that the search page finds, best first. */
async function found(page: Page, query: string): Promise<string[]> {
  await page.goto(new URL(`/search?q=${encodeURIComponent(query)}`, site.url).href);
  await page.getByText(/documents? found|No documents were found/).waitFor();
  return page.locator('main section a').evaluateAll((links) => links.map((link) => (link as HTMLAnchorElement).pathname));
}

describe('the search', () => {
  // The plugin leaves out pages that it takes for documents of no docs plugin, and says nothing.
  it('knows calculators, guide and validation, and the reference apart from them', () => {
    const pages = new Set(indexed('search-index.json').map(({ u }) => u));
    for (const page of ['/calculators/filter-condition', '/calculators/oil-dilution', '/guide/the-job', '/validation']) {
      expect(pages).toContain(page);
    }
    expect([...pages].filter((page) => page?.startsWith('/api'))).toEqual([]);
    expect(indexed('search-index-api.json').some(({ u }) => u?.startsWith('/api'))).toBe(true);
  });

  it('holds no formula', () => {
    expect(indexed('search-index.json').filter(({ t = '' }) => /\\[a-z]+\{|\d?m3m_3m3/.test(t))).toEqual([]);
  });

  it.each(['backpressure', 'back pressure', 'dpf', 'sensor stuck', 'regen'])('finds calculators by "%s" first', async (query) => {
    const page = await site.open('/search');
    const links = await found(page, query);
    expect(
      links.slice(0, 3).every((link) => /^\/(calculators|guide)\//.test(link)),
      links.slice(0, 5).join(' '),
    ).toBe(true);
    expect(links.some((link) => link.startsWith('/calculators/'))).toBe(true);
  });

  it('finds the sensor tests by "sensor stuck" and nothing by nonsense', async () => {
    const page = await site.open('/search');
    expect((await found(page, 'sensor stuck')).slice(0, 6)).toEqual(
      expect.arrayContaining(['/calculators/sensor-zero-check', '/calculators/hose-swap-test']),
    );
    expect(await found(page, 'zzzz')).toEqual([]);
  });

  it('shows on a calculator by which words it is found', async () => {
    const page = await site.open('/calculators/hose-swap-test');
    expect(await visibleText(page.getByText(/^Also looked for as/))).toContain('sensor stuck');
  });

  it('never takes the focus from a field, however late its index arrives', async () => {
    const page = await site.open('/calculators/soot-mass-from-pressure-drop');
    let arrive = () => {};
    const late = new Promise<void>((resolve) => {
      arrive = resolve;
    });
    await page.route('**/search-index*.json*', async (route) => {
      await late;
      await route.continue();
    });
    // Its role changes with the index.
    const search = page.locator('.navbar__search-input');
    await search.focus();
    await page.locator('#input-pressureDrop').focus();
    await page.keyboard.press('Control+A');
    await page.keyboard.type('3');
    const loaded = page.waitForResponse(/search-index.*\.json/);
    arrive();
    await loaded;
    await expect.poll(() => search.getAttribute('role')).toBe('combobox');
    await page.keyboard.type('60');
    expect(await page.locator('#input-pressureDrop').inputValue()).toBe('360');
    expect(await search.inputValue()).toBe('');
  });

  it('keeps the focus of who waits for its index', async () => {
    const page = await site.open('/guide');
    const search = page.locator('.navbar__search-input');
    await search.click();
    await page.keyboard.type('viscosity');
    await page.getByRole('option').first().waitFor();
    expect(await search.evaluate((input) => input === document.activeElement)).toBe(true);
  });
});
