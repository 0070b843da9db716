import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { outputText, ready, settled, useSite, visibleText } from './support/site.js';

const site = useSite();
const withWorker = { serviceWorkers: 'allow' } as const;

async function controlled(page: Page): Promise<void> {
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
}

async function calculates(page: Page): Promise<void> {
  await ready(page);
  await page.locator('#input-temperature').fill('0');
  await settled(page);
  await expect.poll(() => outputText(page, 'density')).toBe('1.29 kg/m³');
}

describe('without signal', () => {
  it('a calculator that was used before still calculates', async () => {
    const page = await site.open('/calculators/gas-density', withWorker);
    await controlled(page);
    await calculates(page);
    await expect
      .poll(() =>
        page.evaluate(async () => (await caches.open('visited')).match('/calculators/gas-density').then((found) => found !== undefined)),
      )
      .toBe(true);
    // Time for what the page loaded late to be kept.
    await page.waitForTimeout(3000);
    await page.context().setOffline(true);
    await page.reload();
    await calculates(page);
  });

  it('the whole site works after it was stored', async () => {
    const page = await site.open('/guide/offline', withWorker);
    await controlled(page);
    await page.getByRole('button', { name: 'Keep everything on this device' }).click();
    await page.getByText('works without signal', { exact: false }).first().waitFor();
    await page.getByText('Everything but the reference').waitFor({ timeout: 50_000 });
    await page.context().setOffline(true);
    await page.goto(`${site.url}calculators/gas-density#version=1.0.0&pressure=101.3+kPa&temperature=250+°C`);
    await calculates(page);
    await page.goto(`${site.url}examples/clean-pressure-drop`);
    expect(await visibleText(page.locator('main'))).toContain('Working');
    await page.goto(site.url);
    await page.getByRole('link', { name: 'Judge a reading' }).click();
    await page.locator('#result-panel').waitFor();
    expect(await visibleText(page.locator('#result-panel'))).toContain('loaded');
  });

  it('the search works after the site was stored', async () => {
    const page = await site.open('/guide/offline', withWorker);
    await controlled(page);
    await page.getByRole('button', { name: 'Keep everything on this device' }).click();
    await page.getByText('Everything but the reference').waitFor({ timeout: 50_000 });
    await page.context().setOffline(true);
    await page.goto(`${site.url}search?q=viscosity`);
    await page
      .getByRole('link', { name: /viscosity/i })
      .first()
      .waitFor();
  });
});

describe('other hosts', () => {
  it('are never asked for anything', async () => {
    for (const path of [
      '/',
      '/calculators',
      '/calculators/gas-density',
      '/examples/gas-density',
      '/validation',
      '/guide/filter',
      '/api',
      '/search?q=soot',
    ]) {
      const page = await site.open(path);
      await page.close();
    }
    expect(site.otherHosts).toEqual([]);
  });
});
