import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { pagesOf } from './support/pages.js';
import { settled, useSite } from './support/site.js';

const site = useSite();
const phone = { viewport: { width: 390, height: 844 } };
const screen = 844;

/** Screens before the working, less the words for those without scripts, which this page is opened without. */
async function screensBeforeWorking(page: Page): Promise<number> {
  const working = page.locator('details:has(> summary:text("The worked example"))');
  const top = await working.evaluate((element) => element.getBoundingClientRect().top + window.scrollY);
  const notice = await page
    .locator('noscript > *')
    .evaluateAll((all) => all.reduce((sum, one) => sum + one.getBoundingClientRect().height, 0));
  return (top - notice) / screen;
}

// What these ask is more than fits; the figures are what they are, so that they grow no further.
const longer: Readonly<Record<string, number>> = {
  'regeneration-permission': 7.2,
  'soot-mass-from-pressure-drop': 3.3,
  'reset-advice': 3.2,
  'next-regeneration': 3.1,
  'fault-countdown': 3.1,
};

describe('on a phone', () => {
  it('a calculator that nobody has filled in is at most three screens long before its working, but for a few', async () => {
    const page = await site.open('/', { ...phone, javaScriptEnabled: false });
    const long: string[] = [];
    for (const path of pagesOf('calculators')) {
      await page.goto(new URL(path, site.url).href);
      const screens = await screensBeforeWorking(page);
      if (screens > (longer[path.slice('/calculators/'.length)] ?? 3)) long.push(`${path}: ${screens.toFixed(2)} screens`);
    }
    expect(long).toEqual([]);
  });

  it('cautions are one line that opens', async () => {
    const page = await site.open('/calculators/filter-condition', phone);
    const cautions = page.getByRole('complementary', { name: 'Before you work' });
    expect((await cautions.boundingBox())?.height).toBeLessThan(60);
    await cautions.locator('summary').click();
    expect(await cautions.getByRole('listitem').count()).toBeGreaterThan(1);
  });

  it('symbols and ranges of the form come at one tap', async () => {
    const page = await site.open('/calculators/gas-density', phone);
    const range = page.getByText('More than 1 kPa');
    expect(await range.isVisible()).toBe(false);
    await page.getByRole('button', { name: 'Symbols, ranges and hints' }).click();
    expect(await range.isVisible()).toBe(true);
  });
});

describe('a picture', () => {
  it('says in words what it shows, and marks the band of the reading', async () => {
    const page = await site.openExample('/calculators/filter-condition', phone);
    const picture = page.locator('#result-panel [data-picture="gauge"]');
    // 94.4 mbar over the 11.3 mbar of the clean filter.
    expect(await picture.getByRole('img').getAttribute('aria-label')).toBe('Multiple of the clean filter: 8.35, loaded.');
    expect(await picture.locator('li[data-here]').textContent()).toContain('loaded, up to 10');
  });

  it('stands for before and after at equal flow', async () => {
    const page = await site.openExample('/calculators/before-after', phone);
    const bars = page.locator('#result-panel [data-picture="bars"] li');
    expect(await bars.count()).toBe(3);
    expect(await bars.nth(1).textContent()).toBe('After: 13.4 mbar');
  });
});

describe('scripts', () => {
  it.each([
    ['gas-density', 250],
    ['filter-condition', 275],
    ['loaded-pressure-drop', 283],
    // The calculation itself, with those that it rests on, is 53 of it.
    ['soot-mass-from-pressure-drop', 307],
  ])('of %s are at most %d kB packed, after typing', async (id, most) => {
    const page = await site.open('/', phone);
    const sizes = new Map<string, Promise<number>>();
    page.context().on('response', (response) => {
      if (new URL(response.url()).pathname.endsWith('.js'))
        sizes.set(
          response.url(),
          response.body().then((body) => gzipSync(body).length),
        );
    });
    await page.goto(new URL(`/calculators/${id}`, site.url).href);
    await page.getByRole('button', { name: 'Example', exact: true }).click();
    const field = page.locator('form input[inputmode]').first();
    await field.fill(`${await field.inputValue()}1`);
    await settled(page);
    const all = await Promise.all([...sizes.values()].map((size) => size.catch(() => 0)));
    expect(all.reduce((sum, size) => sum + size, 0) / 1000).toBeLessThanOrEqual(most);
  });
});
