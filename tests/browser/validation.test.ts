import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { readMeasuredCurves } from '../support/measured-curve.js';
import { readMisprints } from '../support/misprint.js';
import { useSite, visibleText } from './support/site.js';

const site = useSite();
const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const pages = ['/validation', '/validation/measured', '/validation/misprints', '/validation/units', '/validation/numerics'];
const plain = { javaScriptEnabled: false };

interface Axe {
  run(): Promise<{ violations: { id: string; nodes: { html: string; failureSummary?: string }[] }[] }>;
}

async function violations(page: Page): Promise<string[]> {
  await page.evaluate(axeSource);
  return page.evaluate(async () => {
    const found = await (window as unknown as { axe: Axe }).axe.run();
    return found.violations.flatMap(({ id, nodes }) =>
      nodes.map((node) => `${id}: ${node.html.slice(0, 160)} ${node.failureSummary ?? ''}`),
    );
  });
}

async function sidewaysScroll(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
}

async function unfold(page: Page): Promise<void> {
  await page.locator('main details').evaluateAll((all) => {
    for (const element of all) (element as HTMLDetailsElement).open = true;
  });
}

describe.each(pages.slice(1))('%s', (path) => {
  it.each([
    ['light', 320],
    ['light', 1280],
    ['dark', 320],
    ['dark', 1280],
  ] as const)('%s at %i px has no violation that axe can find, unfolded too', async (colorScheme, width) => {
    const page = await site.open(path, { colorScheme, viewport: { width, height: 800 } });
    await unfold(page);
    expect(await violations(page)).toEqual([]);
  });

  it.each([320, 1280])('does not scroll sideways at %i px, folded or not, with and without scripts', async (width) => {
    for (const javaScriptEnabled of [true, false]) {
      const page = await site.open(path, { viewport: { width, height: 800 }, javaScriptEnabled });
      expect(await sidewaysScroll(page)).toBe(0);
      if (javaScriptEnabled) await unfold(page);
      else for (const summary of await page.locator('main summary').all()) await summary.click();
      expect(await sidewaysScroll(page)).toBe(0);
    }
  });

  it('is reached from the validation page, and from no page that asks another host', async () => {
    const page = await site.open('/validation');
    await page.locator(`main nav a[href="${path}"]`).click();
    await page.waitForURL(`**${path}`);
    await page.locator('main h1').waitFor();
    expect(site.otherHosts).toEqual([]);
  });

  it('becomes a tagged PDF with its controls left out', async () => {
    const page = await site.open(path);
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('main button:visible').count()).toBe(0);
    const pdf = (await page.pdf({ format: 'A4', tagged: true })).toString('latin1');
    expect(pdf).toContain('/StructTreeRoot');
  });
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
