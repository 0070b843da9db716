import { describe, expect, it } from 'vitest';
import { outputText, ready, settled, useSite, visibleText } from './support/site.js';

const site = useSite();

describe('a link', () => {
  it('keeps inputs, units and version, and brings them back', async () => {
    const page = await site.open('/calculators/gas-density');
    await page.locator('#input-gasPressure').fill('1,2 bar');
    await page.locator('#input-gasTemperature').fill('300 ± 5');
    await page.getByLabel('Unit of Density').selectOption('g/L');
    await settled(page);
    await expect.poll(() => new URL(page.url()).hash).toContain('gasTemperature=300');
    // The unit of the result gets into the address a moment after what was typed.
    await expect.poll(() => new URL(page.url()).hash).toMatch(/density[^&]*g(?:\/|%2F)L/);
    const shown = await outputText(page, 'density');
    const { pathname, hash } = new URL(page.url());
    expect(decodeURI(hash)).toMatch(/^#version=\d+\.\d+\.\d+&gasPressure=1,2\+bar&gasTemperature=300\+±\+5\+degC/);
    const again = await site.open(`${pathname}${hash}`);
    await settled(again);
    await expect.poll(() => outputText(again, 'density')).toBe(shown);
    expect(await again.locator('#input-gasPressure').inputValue()).toBe('1,2');
    expect(await again.getByLabel('Unit of Absolute pressure').inputValue()).toBe('bar');
    expect(await again.locator('#input-gasTemperature').inputValue()).toBe('300 ± 5');
  });

  it('holds what was typed a moment before a reload', async () => {
    const page = await site.open('/calculators/gas-density');
    await page.locator('#input-gasPressure').fill('444 kPa');
    await page.reload();
    await ready(page);
    await expect.poll(() => page.locator('#input-gasPressure').inputValue()).toBe('444');
    await page.locator('#input-gasPressure').fill('555 kPa');
    await page.reload();
    await ready(page);
    await expect.poll(() => page.locator('#input-gasPressure').inputValue()).toBe('555');
    // A link that is opened counts for itself.
    await page.locator('#input-gasPressure').fill('666 kPa');
    await page.goto(new URL('/calculators/gas-density?again#version=1.0.0&gasPressure=101.3+kPa', site.url).href);
    await ready(page);
    await expect.poll(() => page.locator('#input-gasPressure').inputValue()).toBe('101.3');
  });

  it('of a megabyte is refused with a word, and the form still calculates', async () => {
    const page = await site.open(`/calculators/gas-density#version=1.0.0&gasPressure=${'9'.repeat(1_000_000)}`);
    await page.getByText('This link is too long to be read.').waitFor();
    await page.locator('#input-gasPressure').fill('101.3 kPa');
    await page.locator('#input-gasTemperature').fill('250');
    await settled(page);
    expect(await outputText(page, 'density')).toBe('0.675 kg/m³');
  });

  it('keeps what was refused', async () => {
    const page = await site.open('/calculators/gas-density');
    await page.locator('#input-gasPressure').fill('5 & 6 = ? kPa #');
    await expect.poll(() => page.url()).toContain('gasPressure=5');
    const { pathname, hash } = new URL(page.url());
    const again = await site.open(`${pathname}${hash}`);
    await expect.poll(() => again.locator('#input-gasPressure').inputValue()).toBe('5 & 6 = ? kPa #');
  });

  it('is copied with the results', async () => {
    const page = await site.openExample('/calculators/gas-density', { permissions: ['clipboard-read', 'clipboard-write'] });
    await page.getByRole('button', { name: 'Copy link' }).click();
    await page.getByText('Link copied').waitFor();
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    expect(decodeURI(copied)).toContain('result.density=0.786+kg/m³');
    expect(await page.getByLabel(/Link copied/).inputValue()).toBe(copied);
  });

  it('made with an older version says so, with what it stated and what comes out today', async () => {
    const page = await site.open(
      '/calculators/gas-density#version=0.1.0&gasPressure=101.3+kPa&gasTemperature=250+°C&result.density=0.700+kg/m³',
    );
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
    await page.locator('#result-panel').waitFor();
    await settled(page);
    expect(page.url()).toContain(target.split('#')[0]);
    const first = /&[^=]+=([^+&]+)/.exec(target)?.[1] ?? 'nothing';
    await expect
      .poll(() => page.locator('form input').evaluateAll((inputs) => inputs.map((input) => (input as HTMLInputElement).value)))
      .toContain(first);
  });
});
