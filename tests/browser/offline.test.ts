import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { outputText, ready, settled, useSite, visibleText } from './support/site.js';

const site = useSite();
const withWorker = { serviceWorkers: 'allow' } as const;

/** Wait until the page says that it, and all that calculates in it, is on the device. */
async function kept(page: Page): Promise<void> {
  await page.locator('[data-kept]').waitFor();
}

async function calculates(page: Page): Promise<void> {
  await ready(page);
  await page.locator('#input-gasPressure').fill('101.3 kPa');
  await page.locator('#input-gasTemperature').fill('0');
  await settled(page);
  await expect.poll(() => outputText(page, 'density')).toBe('1.29 kg/m³');
}

async function keepEverything(): Promise<Page> {
  const page = await site.open('/guide/offline', withWorker);
  await page.getByRole('button', { name: 'Keep everything on this device' }).click();
  await page.getByText('Everything but the reference').waitFor();
  await page.waitForFunction(() => navigator.serviceWorker.controller?.scriptURL.includes('true'));
  return page;
}

describe('without signal, after one visit', () => {
  it('a calculator calculates in which nothing was typed before, working included', async () => {
    const page = await site.open('/calculators/gas-density', withWorker);
    await kept(page);
    await page.context().setOffline(true);
    await page.reload();
    await calculates(page);
    await page.locator('#working').click();
    await page
      .getByRole('group', { name: /numbers in SI units/ })
      .first()
      .locator('.katex')
      .waitFor();
  });

  it('the job sheet is made', async () => {
    const page = await site.open('/job-sheet', withWorker);
    await kept(page);
    await page.context().setOffline(true);
    await page.reload();
    await page.getByRole('button', { name: 'Fill in the demo job' }).click();
    await page.frameLocator('iframe[title^="Job sheet"]').locator('h1').waitFor();
  });

  it('a page that is not kept says so, and lists those that are', async () => {
    const page = await site.open('/calculators/gas-density', withWorker);
    await kept(page);
    await page.context().setOffline(true);
    await page.goto(new URL('/calculators/dilution', site.url).href);
    expect(await visibleText(page.locator('h1'))).toBe('This page is not on this device');
    await page.getByRole('link', { name: 'Density of exhaust gas' }).click();
    await calculates(page);
  });
});

describe('keeping everything', () => {
  it('says its size first, on a button for a thumb', async () => {
    const page = await site.open('/guide/offline', { ...withWorker, viewport: { width: 390, height: 844 } });
    const button = page.getByRole('button', { name: /^Keep everything on this device \(\d+ MB\)$/ });
    await button.waitFor();
    expect((await button.boundingBox())?.height).toBeGreaterThanOrEqual(44);
    const said = Number(/\((\d+) MB\)/.exec(await visibleText(button))?.[1]);
    const listed = (await (await fetch(new URL('/sw.js', site.url))).text()).match(/revision/g)?.length ?? 0;
    expect(listed).toBeGreaterThan(500);
    expect(said).toBeGreaterThan(5);
  });

  it('has calculators, examples and search without signal, and a page of its own for the rest', async () => {
    const page = await keepEverything();
    await page.context().setOffline(true);
    await page.goto(`${site.url}calculators/gas-density#version=1.0.0&gasPressure=101.3+kPa&gasTemperature=250+°C`);
    await calculates(page);
    await page.goto(`${site.url}examples/clean-pressure-drop`);
    expect(await visibleText(page.locator('main'))).toContain('Working');
    await page.goto(site.url);
    await page.getByRole('link', { name: 'Judge a reading' }).click();
    await page.locator('#result-panel').getByRole('button', { name: 'Fill in the example' }).click();
    await page.locator('#result-panel [data-output]').first().waitFor();
    await page.goto(`${site.url}search?q=viscosity`);
    await page
      .getByRole('link', { name: /viscosity/i })
      .first()
      .waitFor();
    await page.goto(`${site.url}api/exhaust`);
    expect(await visibleText(page.locator('h1'))).toBe('This page is not on this device');
    expect(await page.getByRole('link', { name: 'Density of exhaust gas' }).count()).toBeGreaterThan(0);
  });
});

describe('other hosts', () => {
  it('are never asked for anything', async () => {
    const page = await site.open('/');
    for (const path of [
      '/calculators',
      '/calculators/gas-density',
      '/examples/gas-density',
      '/validation',
      '/guide/filter',
      '/api',
      '/search?q=soot',
    ]) {
      await page.goto(new URL(path, site.url).href);
      await ready(page);
    }
    expect(site.otherHosts).toEqual([]);
  });
});
