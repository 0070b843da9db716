import { readFileSync } from 'node:fs';
import * as numerics from '@wallflow/numerics';
import * as fit from '@wallflow/numerics/fit';
import * as sampling from '@wallflow/numerics/sampling';
import { transform } from 'esbuild';
import { expect, it } from 'vitest';

const readme = readFileSync(new URL('../../../packages/numerics/README.md', import.meta.url), 'utf8');
const blocks = (language: string) =>
  [...readme.matchAll(new RegExp(`^\`\`\`${language}\\n([\\s\\S]*?)^\`\`\`$`, 'gm'))].map(([, text]) => text ?? '');

it('the example in the README prints what the README says', async () => {
  const [example = ''] = blocks('ts');
  const [printed = ''] = blocks('text');
  const modules: Record<string, object> = {
    '@wallflow/numerics': numerics,
    '@wallflow/numerics/fit': fit,
    '@wallflow/numerics/sampling': sampling,
  };
  const { code } = await transform(example, { loader: 'ts', format: 'cjs' });
  const lines: string[] = [];
  const log = (...values: unknown[]) => lines.push(values.join(' '));
  new Function('require', 'console', 'module', code)((name: string) => modules[name], { log }, {});
  expect(`${lines.join('\n')}\n`).toBe(printed);
});

it('the README names everything that the entries export', () => {
  const functions = Object.keys({ ...numerics, ...fit, ...sampling }).filter((name) => !['NumericsError', 'rodas4p2'].includes(name));
  expect(functions.filter((name) => !readme.includes(`\`${name}\``))).toEqual([]);
});
