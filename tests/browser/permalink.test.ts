import { describe, expect, it } from 'vitest';
import { outputText, settled, useSite, visibleText } from './support/site.js';

const site = useSite();

describe('a link', () => {
  it('keeps inputs, units and version, and brings them back', async () => {
    const page = await site.open('/calculators/gas-density');
    await page.locator('#input-pressure').fill('1,2 bar');
    await page.locator('#input-temperature').fill('300 ± 5');
    await page.getByLabel('Unit of Density').selectOption('g/L');
    await settled(page);
    await expect.poll(() => new URL(page.url()).hash).toContain('temperature=300');
    const shown = await outputText(page, 'density');
    const { pathname, hash } = new URL(page.url());
    expect(decodeURI(hash)).toMatch(/^#version=\d+\.\d+\.\d+&pressure=1,2\+bar&temperature=300\+±\+5\+degC/);
    const again = await site.open(`${pathname}${hash}`);
    await settled(again);
    await expect.poll(() => outputText(again, 'density')).toBe(shown);
    expect(await again.locator('#input-pressure').inputValue()).toBe('1,2');
    expect(await again.getByLabel('Unit of Absolute pressure').inputValue()).toBe('bar');
    expect(await again.locator('#input-temperature').inputValue()).toBe('300 ± 5');
  });

  it('keeps what was refused', async () => {
    const page = await site.open('/calculators/gas-density');
    await page.locator('#input-pressure').fill('5 & 6 = ? kPa #');
    await expect.poll(() => page.url()).toContain('pressure=5');
    const { pathname, hash } = new URL(page.url());
    const again = await site.open(`${pathname}${hash}`);
    await expect.poll(() => again.locator('#input-pressure').inputValue()).toBe('5 & 6 = ? kPa #');
  });

  it('is copied with the results', async () => {
    const page = await site.open('/calculators/gas-density', { permissions: ['clipboard-read', 'clipboard-write'] });
    await page.getByRole('button', { name: 'Copy link' }).click();
    await page.getByText('Link copied').waitFor();
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    expect(decodeURI(copied)).toContain('result.density=0.675+kg/m³');
    expect(await page.getByLabel(/Link copied/).inputValue()).toBe(copied);
  });

  it('made with an older version says so, with what it stated and what comes out today', async () => {
    const page = await site.open('/calculators/gas-density#version=0.1.0&pressure=101.3+kPa&temperature=250+°C&result.density=0.700+kg/m³');
    const notice = page.getByRole('complementary', { name: 'About this link' });
    await notice.waitFor();
    const text = await visibleText(notice);
    expect(text).toContain('version 0.1.0');
    expect(text).toContain('the link states 0.700 kg/m³');
    await expect.poll(() => visibleText(notice)).toContain("today's version gives 0.675 kg/m³");
  });

  it('to a reference case fills the form with its inputs', async () => {
    const page = await site.open('/validation/gas');
    await page.locator('main summary').first().click();
    const link = page.getByRole('link', { name: 'Open in the calculator' }).first();
    const target = (await link.getAttribute('href')) ?? '';
    await link.click();
    await settled(page);
    expect(page.url()).toContain(target.split('#')[0]);
    const first = /&[^=]+=([^+&]+)/.exec(target)?.[1] ?? 'nothing';
    await expect
      .poll(() => page.locator('form input').evaluateAll((inputs) => inputs.map((input) => (input as HTMLInputElement).value)))
      .toContain(first);
  });
});
