import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { readMeasuredCurves } from '../support/measured-curve.js';
import { readMisprints } from '../support/misprint.js';
import { violationsEverywhere } from './support/axe.js';
import { outputText, settled, useSite, visibleText } from './support/site.js';

const site = useSite();
const pages = ['/validation/measured', '/validation/misprints', '/validation/units', '/validation/numerics', '/validation/estimate'];
const plain = { javaScriptEnabled: false };

async function sidewaysScroll(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
}

async function unfold(page: Page): Promise<void> {
  await page.locator('main details').evaluateAll((all) => {
    for (const element of all) (element as HTMLDetailsElement).open = true;
  });
}

describe.each(pages)('%s', (path) => {
  it('has no violation that axe can find, in light and dark, at 320 px and 1280 px', async () => {
    const page = await site.open(path);
    await unfold(page);
    expect(await violationsEverywhere(page)).toEqual([]);
  });

  it.each([true, false])('does not scroll sideways, folded or not; with scripts: %s', async (javaScriptEnabled) => {
    const page = await site.open(path, { viewport: { width: 320, height: 800 }, javaScriptEnabled });
    expect(await sidewaysScroll(page)).toBe(0);
    await unfold(page);
    expect(await sidewaysScroll(page)).toBe(0);
    await page.setViewportSize({ width: 1280, height: 800 });
    expect(await sidewaysScroll(page)).toBe(0);
  });

  it('is reached from the validation page, and asks no other host', async () => {
    const page = await site.open('/validation');
    await page.locator(`main nav a[href="${path}"]`).click();
    await page.waitForURL(`**${path}`);
    await page.locator('main h1').waitFor();
    expect(site.otherHosts).toEqual([]);
  });
});

it('a model opens in the calculator with the last point of the curve filled in', async () => {
  const page = await site.open('/validation/measured');
  await page.locator('section[aria-labelledby="ex-47"]').getByRole('link', { name: 'with the last point filled in' }).first().click();
  await expect.poll(() => page.locator('#input-sootMass').inputValue()).toBe('77.9');
  await settled(page);
  expect(await outputText(page, 'pressureDrop')).toMatch(/^84\.4 mbar|^8\.44 kPa/);
});

describe('on paper', () => {
  it('the measured curves become a tagged PDF without controls, unfolded', async () => {
    const page = await site.open('/validation/measured', { colorScheme: 'dark' });
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    expect(await page.locator('main button:visible').count()).toBe(0);
    expect(await page.evaluate(() => getComputedStyle(document.querySelector('main tbody th') as Element).backgroundColor)).toBe(
      'rgb(255, 255, 255)',
    );
    const pdf = (await page.pdf({ format: 'A4', tagged: true })).toString('latin1');
    expect(pdf).toContain('/StructTreeRoot');
  });
});

it('the drawings say what they show upwards', async () => {
  const page = await site.open('/validation/measured');
  const drawing = page.locator('section[aria-labelledby="ex-47"] figure > svg[role=img]');
  await expect.poll(() => drawing.locator('text').allTextContents()).toContain('Pressure drop (kPa)');
});

describe('without scripts', () => {
  it('every measured curve is there with its findings, its plot, its inputs and its points', async () => {
    const page = await site.open('/validation/measured', plain);
    for (const curve of readMeasuredCurves()) {
      const section = page.locator(`section[aria-labelledby="${curve.id}"]`);
      const text = await visibleText(section);
      for (const part of [curve.title, curve.source.title, ...curve.findings, ...curve.points.map(({ at }) => at)])
        expect(text).toContain(part);
      if (curve.notComputable !== undefined) {
        expect(text).toContain(curve.notComputable);
        continue;
      }
      const drawing = section.locator('figure > svg[role=img]');
      expect(await drawing.locator('circle').count(), curve.id).toBe(curve.points.length);
      expect(await drawing.locator('path').count(), curve.id).toBe(curve.models.length);
      const dashes = await drawing.locator('path').evaluateAll((lines) => lines.map((line) => line.getAttribute('stroke-dasharray')));
      expect(new Set(dashes).size, curve.id).toBe(curve.models.length);
      const points = section.getByRole('group', { name: `Points of ${curve.title}` });
      expect(await points.locator('tbody tr').count()).toBe(curve.points.length);
      expect(await points.locator('thead th', { hasText: 'Difference' }).count()).toBe(curve.models.length);
    }
  });

  it('every misprint is there with the value used and the reason', async () => {
    const page = await site.open('/validation/misprints', plain);
    const text = await visibleText(page.locator('main'));
    for (const { printed, used, reason } of readMisprints().flatMap(({ entries }) => entries)) {
      for (const part of [printed, used, reason]) expect(text).toContain(part);
    }
  });

  it.each(['/validation/units', '/validation/numerics'])('%s states source, expected, ours, difference and tolerance', async (path) => {
    const page = await site.open(path, plain);
    const heads = await page.locator('main table').first().locator('thead th').allTextContents();
    expect(heads.slice(0, 6)).toEqual(['Value', 'Source says', 'We give', 'Difference', 'Tolerance', 'Outcome']);
    expect(await page.locator('main tbody tr').count()).toBeGreaterThan(100);
  });
});
