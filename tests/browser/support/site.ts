import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContext, type BrowserContextOptions, chromium, type Locator, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect } from 'vitest';
import { serveFolder } from '../../../tools/support/serve-folder.mjs';

const build = fileURLToPath(new URL('../../../docs-site/build', import.meta.url));

/** The built site, served on a free port, in a browser that asks no other host for anything of its own. */
export interface Site {
  readonly url: string;
  /** A page in a context of its own; what goes wrong in it fails the test. */
  open(path: string, options?: BrowserContextOptions): Promise<Page>;
  /** Hosts other than ours that any page has asked. */
  readonly otherHosts: readonly string[];
}

/** Serve the site and start a browser for the tests of one file. */
export function useSite(): Site {
  let browser: Browser | undefined;
  let server: Awaited<ReturnType<typeof serveFolder>> | undefined;
  let contexts: BrowserContext[] = [];
  let problems: string[] = [];
  const otherHosts: string[] = [];

  beforeAll(async () => {
    if (!existsSync(join(build, 'index.html'))) throw new Error('docs-site/build is missing: build the site first');
    server = await serveFolder(build);
    browser = await chromium.launch({
      executablePath: process.env.CHROMIUM_PATH ?? '/usr/bin/chromium',
      args: ['--no-sandbox', '--disable-background-networking', '--disable-component-update', '--disable-sync'],
    });
  });

  afterEach(async () => {
    await Promise.all(contexts.map((context) => context.close()));
    contexts = [];
    const seen = problems;
    problems = [];
    expect(seen).toEqual([]);
  });

  afterAll(async () => {
    await browser?.close();
    await server?.close();
  });

  async function open(path: string, options: BrowserContextOptions = {}): Promise<Page> {
    if (browser === undefined || server === undefined) throw new Error('the browser has not started');
    const context = await browser.newContext({ serviceWorkers: 'block', reducedMotion: 'reduce', ...options });
    contexts.push(context);
    const own = new URL(server.url).host;
    context.on('request', (request) => {
      const { protocol, host } = new URL(request.url());
      if (protocol.startsWith('http') && host !== own) otherHosts.push(host);
    });
    const page = await context.newPage();
    page.on('pageerror', (error) => problems.push(`${path}: ${error.message}`));
    page.on('console', (message) => {
      if (message.type() === 'error' && !message.text().includes('ERR_INTERNET_DISCONNECTED')) problems.push(`${path}: ${message.text()}`);
    });
    await page.goto(new URL(path, server.url).href);
    if (options.javaScriptEnabled !== false) await ready(page);
    return page;
  }

  return {
    get url() {
      return server?.url ?? '';
    },
    open,
    otherHosts,
  };
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
