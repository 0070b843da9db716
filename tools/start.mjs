// npm start: from a fresh clone to the job sheet of the demo vehicle.
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { buildScripts, scriptsAreStale } from './support/build-packages.mjs';
import { demoJob, runDemoJob } from './support/demo-job.mjs';
import { installWithoutSite } from './support/install.mjs';
import { root } from './support/root.mjs';
import { step } from './support/step.mjs';

await step('Installing', installWithoutSite);
// Declarations are for programmers; nothing that runs here reads them.
if (await scriptsAreStale()) await step('Building the packages', buildScripts);
const sheet = await step(`Running ${demoJob}`, () => runDemoJob('out'));

// The customer's page; a line of dashes ends it. The rest fills screens.
const [page = ''] = sheet.stdout.split(/^-+$/m);
process.stdout.write(`\n${page.trimEnd()}\n\n`);
process.stdout.write(`For the workshop, with every reading and source: ${sheet.html.replace(/html$/, 'txt')}\n`);
process.stdout.write(`All of it as a page, ${sheet.html}: ${pathToFileURL(join(root, sheet.html)).href}\n`);
process.stdout.write('Calculators, worked examples and the reference: npm run site\n');
