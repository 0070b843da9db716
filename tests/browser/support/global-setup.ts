import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import type { TestProject } from 'vitest/node';
import { serveFolder } from '../../../tools/support/serve-folder.mjs';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Where the built site is served, and where the browser is reached. */
    site: { readonly url: string; readonly browser: string };
  }
}

const build = fileURLToPath(new URL('../../../docs-site/build', import.meta.url));

/** One browser and one served site for all test files; to start them for each file took a part of the whole time. */
export default async function serveTheSite(project: TestProject): Promise<() => Promise<void>> {
  if (!existsSync(join(build, 'index.html'))) throw new Error('docs-site/build is missing: build the site first');
  const server = await serveFolder(build);
  const browser = await chromium.launchServer({
    executablePath: process.env.CHROMIUM_PATH ?? '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-background-networking', '--disable-component-update', '--disable-sync', '--disable-gpu'],
  });
  project.provide('site', { url: server.url, browser: browser.wsEndpoint() });
  return async () => {
    await browser.close();
    await server.close();
  };
}
