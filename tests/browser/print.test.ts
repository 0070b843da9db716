import { describe, expect, it } from 'vitest';
import { settled, useSite, visibleText } from './support/site.js';

const site = useSite();

function pageCount(pdf: Buffer): number {
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
}

describe('on paper', () => {
  it('a calculator becomes a sheet with its inputs, result and working, and without its controls', async () => {
    const page = await site.openExample('/calculators/gas-density');
    await page.locator('#input-gasTemperature').fill('100');
    await settled(page);
    await page.emulateMedia({ media: 'print' });
    const text = await visibleText(page.locator('main'));
    expect(text).toContain('100 °C');
    expect(text).toContain('1.01 kg/m³');
    expect(await page.locator('form input:visible, form select:visible, main button:visible').count()).toBe(0);
    expect(await page.locator('nav.navbar:visible, footer:visible').count()).toBe(0);
    const colours = await page.evaluate(() => {
      const style = getComputedStyle(document.querySelector('#result-panel') as Element);
      return [style.color, style.backgroundColor];
    });
    expect(colours).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)']);
  });

  it('a sheet says where it comes from, when it was printed, and by which version', async () => {
    const page = await site.openExample('/calculators/gas-density');
    await page.locator('#input-gasTemperature').fill('100');
    await settled(page);
    await page.emulateMedia({ media: 'print' });
    const from = page.locator('.printed-from');
    await expect.poll(() => visibleText(from)).toContain('Printed on');
    const text = await visibleText(from);
    expect(text).toMatch(/definition gas-density, version \d+\.\d+\.\d+/);
    expect(text).toContain(String(new Date().getFullYear()));
    const address = /http\S+/.exec(text)?.[0] ?? '';
    const again = await site.open(address.replace(site.url.replace(/\/$/, ''), ''));
    await expect.poll(() => again.locator('#input-gasTemperature').inputValue()).toBe('100');
  });

  it('a sheet leaves out what was not given and may stay open', async () => {
    const page = await site.openExample('/calculators/soot-mass-from-pressure-drop');
    await page.emulateMedia({ media: 'print' });
    const given = page.locator('form .given');
    expect(await visibleText(given)).not.toContain('not given');
    expect(await visibleText(page.locator('form'))).toMatch(/Not given: \d+ optional inputs left blank/);
  });

  it.each([
    // Thirty-eight steps, each with its formula and its numbers.
    ['soot-mass-from-pressure-drop', 10],
    ['filter-condition', 6],
    ['gas-density', 2],
  ])('%s is printed on at most %d pages', async (id, most) => {
    const page = await site.openExample(`/calculators/${id}`);
    expect(pageCount(await page.pdf({ format: 'A4' }))).toBeLessThanOrEqual(most);
  });

  it.each(['light', 'dark'] as const)('%s: the worked example is a tagged PDF of a few pages', async (colorScheme) => {
    const page = await site.open('/examples/loaded-pressure-drop', { colorScheme });
    const pdf = await page.pdf({ format: 'A4', tagged: true, printBackground: true });
    const raw = pdf.toString('latin1');
    expect(raw.startsWith('%PDF-')).toBe(true);
    expect(raw).toContain('/StructTreeRoot');
    expect(raw).toMatch(/\/Lang\s*\(en/);
    expect(pageCount(pdf)).toBeGreaterThanOrEqual(1);
    expect(pageCount(pdf)).toBeLessThanOrEqual(8);
  });

  it('what is folded is opened for printing', async () => {
    const page = await site.openExample('/calculators/filter-condition');
    await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
    expect(await page.locator('main details:not([open])').count()).toBe(0);
    await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
    expect(await page.locator('main details:not([open])').count()).toBeGreaterThan(0);
  });
});
