import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { useSite } from './support/site.js';

const site = useSite();
const demo = (name: string) => new URL(`../../examples/demo-job/${name}`, import.meta.url).pathname;

/** The words of the sheet once it is made. */
async function sheetText(page: Page): Promise<string> {
  const frame = page.frameLocator('iframe[title^="Job sheet"]');
  await frame.locator('h1').waitFor();
  return (await frame.locator('body').textContent()) ?? '';
}

describe('the job sheet', () => {
  it('says what it still needs, and leads to the field', async () => {
    const page = await site.open('/job-sheet');
    const missing = page.getByRole('button', { name: /^Vehicle and complaint: Vehicle is missing/ });
    await missing.waitFor();
    expect(await page.locator('iframe').count()).toBe(0);
    await missing.click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('input-about-0-vehicle');
  });

  it('is made of the demo job, with the verdicts first', async () => {
    const page = await site.open('/job-sheet');
    await page.getByRole('button', { name: 'Fill in the demo job' }).click();
    const text = await sheetText(page);
    expect(text).toMatch(/Filter before\s*loaded/);
    expect(text).toMatch(/Filter after\s*clean/);
    expect(text).toContain('14 °C');
  });

  it('follows what is typed, refuses it at the field, and keeps it over a reload', async () => {
    const page = await site.open('/job-sheet');
    await page.getByRole('button', { name: 'Fill in the demo job' }).click();
    await sheetText(page);
    const drop = page.locator('#input-readingsBefore-2-pressureDrop');
    await drop.fill('9000');
    const error = page.locator('#input-readingsBefore-2-pressureDrop-error');
    await error.waitFor();
    expect(await error.textContent()).toContain('at most 2000 mbar');
    expect(await page.locator('iframe').count()).toBe(0);
    await drop.fill('300');
    await sheetText(page);
    await page.reload();
    await page.getByText('This is the job that the device kept.').waitFor();
    expect(await page.locator('#input-readingsBefore-2-pressureDrop').inputValue()).toBe('300');
    await page.getByRole('button', { name: 'New job' }).click();
    expect(await page.locator('#input-readingsBefore-0-pressureDrop').inputValue()).toBe('');
    await page.reload();
    expect(await page.getByText('This is the job that the device kept.').count()).toBe(0);
  });

  it('opens a job file with its logs, and saves the job again', async () => {
    const page = await site.open('/job-sheet');
    const files = page.getByLabel('Open a job file, with its logs');
    await files.setInputFiles([demo('job.json')]);
    await page.getByText('before.csv, after.csv is missing').waitFor();
    await files.setInputFiles([demo('job.json'), demo('before.csv'), demo('after.csv')]);
    const text = await sheetText(page);
    expect(text).toMatch(/Filter before\s*loaded/);
    const saved = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save the job file' }).click();
    const job = JSON.parse(readFileSync(await (await saved).path(), 'utf8'));
    expect(job).toMatchObject({ format: 'wallflow-job/1', logs: { before: 'before.csv', after: 'after.csv' } });
    await page.getByRole('button', { name: 'New job' }).click();
    expect(await page.getByText('Taken from the log').count()).toBe(0);
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await page.getByText('Taken from the log').count()).toBe(2);
    await sheetText(page);
  });
});
