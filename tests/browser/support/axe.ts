import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const source = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** The rules that the colours of a page decide. Everything else is the same in light and dark. */
const ofColours = ['color-contrast', 'link-in-text-block'];

interface Axe {
  run(options: object): Promise<{ violations: { id: string; help: string; nodes: { html: string; failureSummary?: string }[] }[] }>;
}

/** What axe finds, one line for each place; by the named rules, or by all. */
export async function violations(page: Page, rules?: readonly string[]): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(source);
  return page.evaluate(async (only) => {
    // Of what passes, axe would describe every place as well.
    const options = { resultTypes: ['violations'], ...(only === undefined ? {} : { runOnly: { type: 'rule', values: only } }) };
    const found = await (window as unknown as { axe: Axe }).axe.run(options);
    return found.violations.flatMap((violation) =>
      violation.nodes.map((node) => `${violation.id}: ${node.html.slice(0, 160)} ${node.failureSummary ?? ''}`),
    );
  }, rules);
}

/** Contrast of what stands on the page now. */
export const faintTexts = (page: Page): Promise<string[]> => violations(page, ['color-contrast']);

/** Violations in light and dark, on a small phone and a desktop: all rules in light, those of colours in dark as well. */
export async function violationsEverywhere(page: Page): Promise<string[]> {
  const found: string[] = [];
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await page.locator(`html[data-theme="${colorScheme}"]`).waitFor();
    for (const width of [320, 1280]) {
      await page.setViewportSize({ width, height: 800 });
      const lines = await violations(page, colorScheme === 'dark' ? ofColours : undefined);
      found.push(...lines.map((line) => `${colorScheme}, ${width} px: ${line}`));
    }
  }
  return found;
}
