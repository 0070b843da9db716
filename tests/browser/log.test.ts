import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { violationsEverywhere } from './support/axe.js';
import { useSite } from './support/site.js';

const site = useSite();
const demo = readFileSync(fileURLToPath(new URL('../../examples/demo-job/before.csv', import.meta.url)), 'utf8');
/** The demo log as another tool would title it; one title does not say where its temperature is measured. */
const unclear = demo.replace(/^.*\n/, 'Time (s),Engine RPM,MAF (kg/h),EGT (°C),DPF Diff. Press. (hPa),Coolant temp (°C)\n');

async function dropIn(page: Page, text: string, name = 'yard.csv'): Promise<void> {
  await page.locator('#log-before').setInputFiles([{ name, mimeType: 'text/csv', buffer: Buffer.from(text) }]);
  await page.locator('[data-log-look]').waitFor();
}

describe('a log on the job page', () => {
  it('shows what was understood, asks what is open, takes a tap for the answer, and keeps it for the next log', async () => {
    const page = await site.open('/job-sheet');
    await dropIn(page, unclear);
    const look = page.locator('[data-log-look]');
    await look.getByText('hPa').first().waitFor();
    await look
      .getByRole('group', { name: /What is “EGT \(°C\)”/ })
      .getByRole('button', { name: 'gas temperature before the filter in °C' })
      .click();
    await look.getByText('nothing open').waitFor();
    expect(await look.getByRole('row', { name: /EGT/ }).textContent()).toContain('as the mapping says');
    await page.getByRole('button', { name: 'Take the log out' }).click();
    await dropIn(page, unclear, 'next.csv');
    await look.getByText('nothing open').waitFor();
    await page.reload();
    await look.getByText('nothing open').waitFor();
  });

  it('says what was left out by reason and first line, and makes a column that is not used one that is', async () => {
    const page = await site.open('/job-sheet');
    await dropIn(page, demo.replace(/\n70,[^\n]*/, '\n70,700,6553.5,118,18.9,85').replace('coolantTemperature [°C]', 'note'));
    const look = page.locator('[data-log-look]');
    await look.getByText('Left out: 1').click();
    await look.getByText('air mass flow: the value that stands for a lost signal, once, in line 72').waitFor();
    await look.getByText('Columns that are not used: 1').click();
    await look.getByLabel(/^note:/).selectOption('coolant temperature in °C');
    await look.getByRole('row', { name: /note/ }).getByText('coolant temperature in °C').waitFor();
  });

  it('draws it over time, with a cursor for the keyboard and a table, by a library that no other page asks for', async () => {
    const page = await site.open('/job-sheet');
    const scripts = () => page.evaluate(() => performance.getEntriesByType('resource').filter(({ name }) => name.endsWith('.js')).length);
    const before = await scripts();
    await dropIn(page, demo);
    await page.locator('[data-log-plot] canvas').waitFor();
    expect(await scripts()).toBeGreaterThan(before);
    const plot = page.getByRole('slider', { name: /yard\.csv over time/ });
    await plot.focus();
    await page.keyboard.press('End');
    await page.keyboard.press('Home');
    await page.keyboard.press('ArrowRight');
    expect(await plot.getAttribute('aria-valuetext')).toMatch(/^\d+ s: engine speed .* rpm; pressure drop across the filter .* mbar/);
    await page.getByText('The same as a table').click();
    expect(await page.getByRole('columnheader', { name: 'pressure drop across the filter, least and greatest, in mbar' }).count()).toBe(1);
    expect(await violationsEverywhere(page)).toEqual([]);
  });

  it('can be stopped while it is read, and refuses a spreadsheet with what to do', async () => {
    const page = await site.open('/job-sheet');
    // A worker that never answers stands for a log without end.
    await page.evaluate(() => {
      const Real = window.Worker;
      window.Worker = class extends Real {
        override postMessage(message: unknown): void {
          if (!(typeof message === 'object' && message !== null && 'mappings' in message)) super.postMessage(message);
        }
      };
    });
    await page.locator('#log-before').setInputFiles([{ name: 'long.csv', mimeType: 'text/csv', buffer: Buffer.from(demo) }]);
    await page.getByRole('button', { name: 'Stop reading' }).click();
    await page.getByText('Reading was stopped.').waitFor();
    await page.reload();
    await page.getByRole('button', { name: 'Take the log out' }).click();
    await page.locator('#log-before').setInputFiles([{ name: 'a.csv', mimeType: 'text/csv', buffer: Buffer.from('PK\u0003\u0004xx') }]);
    await page
      .getByText(/spreadsheet program and save the sheet as CSV/)
      .first()
      .waitFor();
  });
});
