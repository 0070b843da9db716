// A new calculation: `npm run new -- flow my-id`. Writes kernel, definition and reference cases, and lists them. What comes out loads and
// runs; the tests then fail where somebody must think: texts that still say TODO, and cases from a source.
import { existsSync } from 'node:fs';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { root } from './support/root.mjs';
import { runInstalled } from './support/run.mjs';

const [subject = '', id = ''] = process.argv.slice(2);
const home = join(root, 'packages', 'exhaust', 'src', subject);
const folder = join(home, id.startsWith(`${subject}-`) ? id.slice(subject.length + 1) : id);
const casesFile = join(root, 'tests', 'reference', 'cases', subject, `${id}.json`);

/** @param {string} why */
function stop(why) {
  process.stderr.write(`${why}\nUsage: npm run new -- <subject> <id>\n`);
  process.exit(2);
}

if (subject === '' || !existsSync(join(home, 'definitions.ts'))) stop(`There is no subject "${subject}".`);
if (!/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id)) stop('An id is made of lower-case words with hyphens between them.');
if (existsSync(folder) || existsSync(casesFile)) stop(`There is a calculation ${id} already.`);

const name = id.replace(/-(\w)/g, (_, letter) => letter.toUpperCase());
const constant = `${name}Calculation`;
const path = folder.slice(home.length + 1);

const kernel = `/** TODO: what it gives, with unit, range and equation number. SI numbers in, SI numbers out. */
export function ${name}(reading: number): number {
  return reading;
}
`;

const definition = `import * as wf from '@wallflow/calculation';
import { ratio } from '@wallflow/units';
import { ${name} } from './kernel.js';

export const ${constant} = wf.defineCalculation({
  id: '${id}',
  subject: '${subject}',
  title: 'TODO: what it is',
  purpose: 'TODO: the question that it answers?',
  keywords: ['TODO: words by which people search'],
  method: 'TODO: how, in a few words',
  inputs: {
    ${name}Reading: wf.quantity(ratio, {
      symbol: 'x',
      label: 'TODO: what is read',
      description: 'TODO: where to get it.',
      range: '0 <= x <= 1',
      example: '0.5',
    }),
  },
  outputs: {
    ${name}Result: wf.quantityOutput(ratio, { symbol: 'y', label: 'TODO: what comes out' }),
  },
  steps: [wf.formula('${name}Result', '${name}Reading', wf.commonPractice('TODO: the source'))],
  limits: { todo: 'TODO: where it does not hold.' },
  compute: (input) => ({ ${name}Result: ${name}(input.${name}Reading) }),
});
`;

const cases = `${JSON.stringify({ calculation: id, cases: [] }, undefined, 2)}\n`;

/** @param {string} file @param {(text: string) => string} change */
async function edit(file, change) {
  await writeFile(file, change(await readFile(file, 'utf8')));
}

await mkdir(folder, { recursive: true });
await writeFile(join(folder, 'kernel.ts'), kernel);
await writeFile(join(folder, 'definition.ts'), definition);
await writeFile(casesFile, cases);
await edit(join(home, 'kernels.ts'), (text) => `${text}export { ${name} } from './${path}/kernel.js';\n`);
await edit(join(home, 'definitions.ts'), (text) =>
  text
    .replace(/^(import .*\n)/m, `$1import { ${constant} } from './${path}/definition.js';\n`)
    .replace(/(: readonly AnyCalculation\[\] = \[[^\]]*)\]/, `$1  ${constant},\n]`)
    .replace(/^export \{/m, `export {\n  ${constant},`),
);
const { code, output } = await runInstalled('biome', ['check', '--config-path=tools', '--write', home]);
if (code !== 0) process.stderr.write(output);
process.stdout.write(`${[join(folder, 'kernel.ts'), join(folder, 'definition.ts'), casesFile].map((file) => file.slice(root.length + 1)).join('\n')}
Now: the cases first, from the source; then kernel and definition, until
npm test -- --only lint,layers,types,unit,reference,properties
finds nothing more. npm run record writes down its texts and its result.
`);
