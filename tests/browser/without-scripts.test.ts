import { describe, expect, it } from 'vitest';
import { pagesOf } from './support/pages.js';
import { useSite, visibleText } from './support/site.js';

const site = useSite();
const plain = { javaScriptEnabled: false };

describe('without scripts', () => {
  it('a worked example is complete', async () => {
    const page = await site.open('/examples/gas-density', plain);
    const text = await visibleText(page.locator('main'));
    for (const part of ['Given', '108.1 kPa', 'Working', 'ideal gas law', 'Result', '0.786 kg/m³', 'Assumptions', 'Sources'])
      expect(text).toContain(part);
    expect(await page.locator('main .katex').count()).toBeGreaterThan(2);
    expect(await page.locator('main math').first().innerHTML()).toContain('<mi');
  });

  it('a calculator shows its example and says that it cannot calculate', async () => {
    const page = await site.open('/calculators/gas-density', plain);
    expect(await visibleText(page.locator('#result-panel'))).not.toContain('kg/m³');
    await page.getByText('The worked example: given, result and working').click();
    const text = await visibleText(page.locator('main'));
    for (const part of ['0.786 kg/m³', '108.1 kPa', 'Working of the example']) expect(text).toContain(part);
    expect(text).toContain('Without scripts the form cannot calculate');
  });

  it('there is a worked example for every calculator', () => {
    expect(pagesOf('examples').map((path) => path.replace('/examples/', ''))).toEqual(
      pagesOf('calculators').map((path) => path.replace('/calculators/', '')),
    );
  });

  it('a drawn table has its drawing, and the numbers beside it', async () => {
    const page = await site.open('/examples/regeneration-axial', plain);
    const drawing = page.locator('main figure svg[role=img]').first();
    expect(await drawing.locator('title').textContent()).not.toBe('');
    expect(await drawing.locator('path[d^="M"]').count()).toBeGreaterThan(0);
    expect(await page.locator('main details table').count()).toBeGreaterThan(0);
  });

  it('the validation pages list cases with source, expected, ours, difference and tolerance', async () => {
    const page = await site.open('/validation/filter', plain);
    const heads = await page.locator('main article table').first().locator('thead th').allTextContents();
    expect(heads).toEqual(['Value', 'Source says', 'We give', 'Difference', 'Tolerance']);
    expect(await page.locator('main article').count()).toBeGreaterThan(50);
  });
});
