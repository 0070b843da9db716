import { expect, it } from 'vitest';
import { usableJob } from '../../../docs-site/src/job/usable-job.js';

const job = { values: { about: { rows: [{ vehicle: { text: 'van', unit: '' } }] } }, logs: { before: { name: 'a.csv', text: 'x' } } };

it('takes a stored job back as it was', () => {
  expect(usableJob(JSON.stringify(job))).toEqual(job);
  expect(usableJob(null)).toBeUndefined();
});

it.each([
  ['no record', '5'],
  ['no values', JSON.stringify({ logs: {} })],
  ['no logs', JSON.stringify({ values: {} })],
  ['an entry without a text', JSON.stringify({ ...job, values: { about: { rows: [{ vehicle: { unit: '' } }] } } })],
  ['rows that are none', JSON.stringify({ ...job, values: { about: { rows: 'many' } } })],
  ['a log without a text', JSON.stringify({ ...job, logs: { after: { name: 'b.csv' } } })],
])('counts as nothing when what is stored has %s', (_, text) => {
  expect(usableJob(text)).toBeUndefined();
});
