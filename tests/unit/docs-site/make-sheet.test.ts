import { readFileSync } from 'node:fs';
import { jobForm } from '@wallflow/workshop';
import { describe, expect, it } from 'vitest';
import { fieldsData } from '../../../docs-site/plugins/calculations/field-data.js';
import { toInput } from '../../../docs-site/src/calculator/form-input.js';
import { makeSheet } from '../../../docs-site/src/job/make-sheet.js';
import { openJob } from '../../../docs-site/src/job/open-job.js';

const fields = fieldsData(jobForm);
const demo = (name: string) => readFileSync(new URL(`../../../examples/demo-job/${name}`, import.meta.url), 'utf8');
const log = (name: string, as = name) => ({ name: as, text: demo(name) });
const opened = openJob(fields, JSON.parse(demo('job.json')));
if (opened === undefined) throw new Error('the demo job is refused');
const input = toInput(fields, opened.values);

function html(before: string, after: string): string {
  const view = makeSheet(fields, input, { before: log('before.csv', before), after: log('after.csv', after) });
  if (!view.ok) throw new Error(view.issues.map(({ text }) => text).join('\n'));
  return view.sheet.html;
}

describe('the sheet', () => {
  it('takes two logs of one name for two logs', () => {
    const verdicts = (text: string) => /<ul class="verdicts">.*?<\/ul>/s.exec(text)?.[0];
    expect(verdicts(html('log.csv', 'log.csv'))).toBe(verdicts(html('before.csv', 'after.csv')));
  });

  it('forbids everything but its own style', () => {
    const policy = /<meta http-equiv="Content-Security-Policy" content="([^"]*)">/.exec(html('before.csv', 'after.csv'))?.[1];
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toContain('script-src');
  });

  it('keeps the title of the job file', () => {
    const view = makeSheet(fields, input, { before: log('before.csv'), after: log('after.csv') });
    expect(view.ok && JSON.parse(view.sheet.job).title).toBe(JSON.parse(demo('job.json')).title);
  });
});

describe('a job file', () => {
  it.each([
    ['an object whose text cannot be had', { complaint: { toString: null } }],
    ['an object in a reading', { readings: { before: [{ pressureDrop: { value: { toString: null } } }] } }],
    ['lists that are none', { readings: { before: 5 }, history: {} }],
    ['nothing', null],
  ])('with %s never throws', (_, job) => {
    expect(() => openJob(fields, typeof job === 'object' && job !== null ? { format: 'wallflow-job/1', ...job } : job)).not.toThrow();
  });
});
