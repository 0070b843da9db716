import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { subjects } from '@wallflow/calculation';
import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';
import { jobSteps } from '../../../docs-site/src/data/job.js';
import { subjects as described } from '../../../docs-site/src/data/subjects.js';
import { allCalculations } from '../../support/calculations.js';

const site = fileURLToPath(new URL('../../../docs-site', import.meta.url));

describe('the guide', () => {
  it.each([...subjects])('has a page for %s that lists its calculators', (subject) => {
    const page = readFileSync(join(site, 'docs', `${subject}.mdx`), 'utf8');
    expect(page).toContain(`slug: /guide/${subject}`);
    expect(page).toContain(`<SubjectCalculations subject="${subject}" />`);
    expect(page.split(/\s+/).length).toBeGreaterThan(150);
  });

  it('describes the subjects that there are', () => {
    expect(described.map((subject) => subject.id)).toEqual([...subjects]);
  });

  it('links to calculators that exist', () => {
    const known = new Set(allCalculations.map((calculation) => calculation.id));
    for (const id of jobSteps.flatMap((step) => step.calculations)) expect(known, id).toContain(id);
  });

  it('and the steps on the first page lead to every test of the walk', () => {
    const walk = readFileSync(join(site, 'docs', 'the-job.mdx'), 'utf8');
    const [believed] = jobSteps;
    for (const id of ['sensor-zero-check', 'hose-swap-test', 'sensor-lag-test']) {
      expect(believed?.calculations).toContain(id);
      expect(walk.slice(walk.indexOf('## 2.'), walk.indexOf('## 3.'))).toContain(`/calculators/${id})`);
    }
    const steps = jobSteps.flatMap((step) => step.calculations);
    for (const id of [
      'filter-weighing',
      'thermal-bake',
      'cleaned-filter-acceptance',
      'cleaning-pass-plan',
      'exhaust-drop-shares',
      'regeneration-watch',
      'regeneration-quality',
      'fault-countdown',
    ]) {
      expect(steps).toContain(id);
      expect(walk).toContain(`/calculators/${id})`);
    }
  });

  it('shows code that builds and runs', async () => {
    const page = readFileSync(join(site, 'docs', 'embedding.mdx'), 'utf8');
    const blocks = [...page.matchAll(/```ts\n([\s\S]*?)```/g)].map((match) => match[1] ?? '');
    expect(blocks.length).toBeGreaterThan(1);
    for (const contents of blocks) {
      const bundle = await build({
        stdin: { contents, loader: 'ts', resolveDir: fileURLToPath(new URL('../../..', import.meta.url)) },
        bundle: true,
        write: false,
        format: 'esm',
        platform: 'node',
        conditions: ['@wallflow/source'],
        logLevel: 'silent',
      });
      const lines: unknown[] = [];
      const text = bundle.outputFiles[0]?.text ?? '';
      const run = new Function('console', text.replace(/^export \{[^}]*\};?$/gm, '')) as (console: unknown) => void;
      run({ log: (line: unknown) => lines.push(line) });
      expect(lines).toHaveLength(1);
      expect(lines[0]).not.toBeInstanceOf(Array);
    }
  });

  it('is complete: every file that the sidebar names is there', () => {
    for (const name of ['index', 'the-job', 'quantities', 'citing', 'offline', 'embedding']) {
      expect(existsSync(join(site, 'docs', `${name}.mdx`)), name).toBe(true);
    }
  });
});
