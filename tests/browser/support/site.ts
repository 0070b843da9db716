import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Locator,
  type Page,
  type Request,
} from 'playwright-core';
import { afterEach, beforeAll, expect, inject } from 'vitest';

/** The built site, in a browser that asks no other host for anything of its own. */
export interface Site {
  readonly url: string;
  /** A page that remembers nothing of other tests; what goes wrong in it fails the test. */
  open(path: string, options?: BrowserContextOptions): Promise<Page>;
  /** A calculator filled with its example. */
  openExample(path: string, options?: BrowserContextOptions): Promise<Page>;
  /** Hosts other than ours that any page has asked. */
  readonly otherHosts: readonly string[];
}

/** What a browser says of itself where there is no signal: a file, or the newer service worker that it looks for, is not to be had. */
const withoutSignal = /ERR_INTERNET_DISCONNECTED|An unknown error occurred when fetching the script/;

// Waiting is for a state; this only ends what never comes, on the slowest of machines.
const never = 240_000;

interface Pooled {
  readonly context: BrowserContext;
  readonly options: string;
}

// One connection and a few contexts for all test files of a worker. Tests with the same options share a context, one after
// the other, so that scripts are fetched and compiled once; what a page stored is cleared in between.
let connection: Promise<Browser> | undefined;
const pool: Pooled[] = [];

function connected(): Promise<Browser> {
  connection ??= chromium.connect(inject('site').browser);
  return connection;
}

async function emptied(context: BrowserContext, origin: string): Promise<void> {
  const [kept, ...others] = context.pages();
  await Promise.all(others.map((page) => page.close()));
  const page = kept ?? (await context.newPage());
  const session = await context.newCDPSession(page);
  await session.send('Storage.clearDataForOrigin', { origin, storageTypes: 'local_storage,indexeddb,cookies' });
  await session.detach();
  await page.close();
}

/** The site for the tests of one file. */
export function useSite(): Site {
  let taken: Pooled[] = [];
  let problems: string[] = [];
  const otherHosts: string[] = [];
  const { url } = inject('site');
  const { host, origin } = new URL(url);

  beforeAll(connected);

  afterEach(async () => {
    for (const { context, options } of taken) {
      context.off('request', noteHost);
      // What may keep files for use without signal, or was cut off, is never used twice.
      if (options.includes('"serviceWorkers":"allow"') || options.includes('"permissions"')) await context.close();
      else {
        await emptied(context, origin);
        pool.push({ context, options });
      }
    }
    taken = [];
    const seen = problems;
    problems = [];
    expect(seen).toEqual([]);
  });

  function noteHost(request: Request): void {
    const asked = new URL(request.url());
    if (asked.protocol.startsWith('http') && asked.host !== host) otherHosts.push(asked.host);
  }

  async function contextFor(given: BrowserContextOptions): Promise<BrowserContext> {
    const options = JSON.stringify(given);
    const at = pool.findIndex((one) => one.options === options);
    const [found] = at < 0 ? [] : pool.splice(at, 1);
    const context =
      found?.context ?? (await (await connected()).newContext({ serviceWorkers: 'block', reducedMotion: 'reduce', ...given }));
    context.setDefaultTimeout(never);
    context.setDefaultNavigationTimeout(never);
    taken.push({ context, options });
    context.on('request', noteHost);
    return context;
  }

  async function open(path: string, options: BrowserContextOptions = {}): Promise<Page> {
    const page = await (await contextFor(options)).newPage();
    page.on('pageerror', (error) => problems.push(`${path}: ${error.message}`));
    page.on('console', (message) => {
      if (message.type() === 'error' && !withoutSignal.test(message.text())) problems.push(`${path}: ${message.text()}`);
    });
    await page.goto(new URL(path, url).href);
    if (options.javaScriptEnabled !== false) await ready(page);
    return page;
  }

  async function openExample(path: string, options: BrowserContextOptions = {}): Promise<Page> {
    const page = await open(path, options);
    await page.getByRole('button', { name: 'Example', exact: true }).click();
    await page.getByRole('heading', { name: 'Result of the example' }).waitFor();
    return page;
  }

  return { url, open, openExample, otherHosts };
}

/** What a person can read of an element, which leaves out what is hidden. */
export async function visibleText(element: Locator): Promise<string> {
  // biome-ignore lint/performance/useDomNodeTextContent: hidden text must not count
  return (await element.innerText()).trim();
}

/** The value that a result shows under its name. */
export async function outputText(page: Page, key: string): Promise<string> {
  return visibleText(page.locator(`#result-panel [data-output="${key}"] dd span`).first());
}

/** Wait until the page has come to life, and a calculator can calculate. */
export async function ready(page: Page): Promise<void> {
  await page.locator('html[data-has-hydrated="true"]').waitFor();
  const copy = page.getByRole('button', { name: 'Copy link' });
  if ((await copy.count()) > 0)
    await page.waitForFunction(() => document.querySelectorAll('#result-panel ~ div button:disabled').length === 0);
}

/** Wait until what was typed has been calculated. */
export async function settled(page: Page): Promise<void> {
  await page.waitForFunction(() => document.querySelector('#result-panel')?.getAttribute('aria-busy') === 'false');
}
