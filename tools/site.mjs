// npm run site: build the documentation site when something changed, and serve it on this machine.
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { buildSite, siteIsStale } from './support/build-site.mjs';
import { install } from './support/install.mjs';
import { root } from './support/root.mjs';
import { serveFolder } from './support/serve-folder.mjs';
import { step } from './support/step.mjs';

const { values } = parseArgs({ options: { port: { type: 'string', default: '0' } } });

await step('Installing', install);
if (await siteIsStale()) await step('Building the site', buildSite);
const { url } = await serveFolder(join(root, 'docs-site', 'build'), { port: Number(values.port) });
process.stdout.write(`\nOpen ${url}\nStop with Ctrl+C.\n`);
