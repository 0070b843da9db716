import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Download, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { ready, useSite } from './support/site.js';

const site = useSite();
const demo = (name: string) => fileURLToPath(new URL(`../../examples/demo-job/${name}`, import.meta.url));

/** What a download holds; the browser may run elsewhere, so that its file is asked for. */
async function savedText(download: Download): Promise<string> {
  const parts: Buffer[] = [];
  for await (const part of await download.createReadStream()) parts.push(part as Buffer);
  return Buffer.concat(parts).toString('utf8');
}

/** The words of the sheet once it is made. */
async function sheetText(page: Page): Promise<string> {
  await page.locator('[data-sheet][aria-busy="false"]').waitFor();
  const frame = page.frameLocator('iframe[title]');
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
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('input-about-vehicle');
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
    await expect.poll(() => page.locator('#input-readingsBefore-0-pressureDrop').inputValue()).toBe('');
    await page.reload();
    await page.getByText('Other jobs on this device: 1').waitFor();
    expect(await page.locator('#input-readingsBefore-0-pressureDrop').inputValue()).toBe('');
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
    const job = JSON.parse(await savedText(await saved));
    expect(job).toMatchObject({ format: 'wallflow-job/2', logs: { before: 'before.csv', after: 'after.csv' } });
    expect(job.title).toBe(JSON.parse(readFileSync(demo('job.json'), 'utf8')).title);
    await page.reload();
    await expect.poll(() => page.getByText('Taken from the log').count()).toBe(2);
    await sheetText(page);
  });

  it('says of a strange job file that it cannot be read, and goes on', async () => {
    const page = await site.open('/job-sheet');
    const files = page.getByLabel('Open a job file, with its logs');
    const text = '{"format":"wallflow-job/2","complaint":{"toString":null}}';
    await files.setInputFiles([{ name: 'job.json', mimeType: 'application/json', buffer: Buffer.from(text) }]);
    await page.getByText(/This job file cannot be read|The job file is open/).waitFor();
    await page.locator('#input-about-vehicle').fill('Bus');
    await page.getByRole('button', { name: /to complete or correct/ }).waitFor();
  });

  it('never shows an older sheet beside newer readings', async () => {
    const page = await site.open('/job-sheet');
    await page.getByRole('button', { name: 'Fill in the demo job' }).click();
    await sheetText(page);
    const seen = await page.evaluate(async () => {
      const input = document.querySelector<HTMLInputElement>('#input-readingsBefore-2-pressureDrop');
      if (input === null) throw new Error('no input');
      Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(input, '12');
      input.dispatchEvent(new Event('input', { bubbles: true }));
      await Promise.resolve();
      const frame = document.querySelector('iframe');
      return frame === null ? 'gone' : getComputedStyle(frame).visibility;
    });
    expect(seen).not.toBe('visible');
  });
});

describe('jobs on this device', () => {
  const vehicle = (page: Page) => page.locator('#input-about-vehicle');

  /** A page beside another, with the same storage. */
  async function beside(page: Page): Promise<Page> {
    const other = await page.context().newPage();
    await other.goto(page.url());
    await ready(other);
    return other;
  }

  it('of two tabs are two jobs, and both are there after a reload', async () => {
    const first = await site.open('/job-sheet');
    await vehicle(first).fill('Bus A');
    const second = await beside(first);
    await second.getByText('“Bus A” is open in another tab. This tab begins a new job; both are kept.').waitFor();
    await vehicle(second).fill('Bus B');
    await first.getByText('Other jobs on this device: 1').waitFor();
    await first.reload();
    await second.reload();
    await expect.poll(() => vehicle(first).inputValue()).toBe('Bus A');
    await expect.poll(() => vehicle(second).inputValue()).toBe('Bus B');
    await second.getByText('Other jobs on this device: 1').click();
    await second.getByRole('button', { name: 'Bus A', exact: true }).click();
    await second.getByText('“Bus A” is open in another tab. Go on there').waitFor();
    expect(await vehicle(second).inputValue()).toBe('Bus B');
  });

  it('hold what was typed a moment before a reload, are taken up again, and are deleted in two taps', async () => {
    const page = await site.open('/job-sheet');
    await vehicle(page).fill('Bus A');
    await page.reload();
    await expect.poll(() => vehicle(page).inputValue()).toBe('Bus A');
    await page.getByRole('button', { name: 'New job' }).click();
    await expect.poll(() => vehicle(page).inputValue()).toBe('');
    await vehicle(page).fill('Bus B');
    await page.getByText('Other jobs on this device: 1').click();
    await page.getByRole('button', { name: 'Bus A', exact: true }).click();
    await expect.poll(() => vehicle(page).inputValue()).toBe('Bus A');
    await page.getByRole('button', { name: 'Delete Bus B' }).click();
    await page.getByRole('button', { name: 'Yes, delete it for good' }).click();
    await page.getByText('“Bus B” is deleted.').waitFor();
    expect(await page.getByText(/Other jobs on this device/).count()).toBe(0);
  });

  it('keep a log that no small store would take', async () => {
    const page = await site.open('/job-sheet');
    await vehicle(page).fill('Bus A');
    const large = `${readFileSync(demo('before.csv'), 'utf8')}${'#'.repeat(6_000_000)}`;
    await page.locator('#log-before').setInputFiles([{ name: 'large.csv', mimeType: 'text/csv', buffer: Buffer.from(large) }]);
    await page.getByText('Taken from the log').waitFor();
    await expect
      .poll(() =>
        page.evaluate(
          () =>
            new Promise((resolve) => {
              const opening = indexedDB.open('wallflow');
              opening.onsuccess = () => {
                const counting = opening.result.transaction('logs').objectStore('logs').count();
                counting.onsuccess = () => resolve(counting.result);
              };
            }),
        ),
      )
      .toBe(1);
    await page.reload();
    await page.getByText('Taken from the log').waitFor();
    expect(await vehicle(page).inputValue()).toBe('Bus A');
  });

  it('say that a log is gone when the device could not keep it', async () => {
    const page = await site.open('/job-sheet');
    await vehicle(page).fill('Bus A');
    await page.evaluate(() => {
      for (const name of Object.keys(localStorage).filter((one) => one.startsWith('wallflow-job:'))) {
        const job = JSON.parse(localStorage.getItem(name) ?? '');
        localStorage.setItem(name, JSON.stringify({ ...job, logs: { before: 'yard.csv' } }));
      }
    });
    await page.reload();
    await page.getByText('The device could not keep the log yard.csv: choose it again.').waitFor();
  });

  it.each([
    ['full', 'QuotaExceededError', 'The storage of this browser is full'],
    ['closed', 'SecurityError', 'This browser lets no page store anything'],
  ])('say so when the storage is %s', async (_, name, said) => {
    const page = await site.open('/job-sheet');
    await page.evaluate((error) => {
      Storage.prototype.setItem = () => {
        throw new DOMException('no', error);
      };
    }, name);
    await vehicle(page).fill('Bus A');
    const alert = page.getByRole('alert').filter({ hasText: said });
    await alert.waitFor();
    expect(await alert.textContent()).toContain('Save the job file');
  });
});
