import { describe, expect, it } from 'vitest';
import { usableOldJob, usableSlot } from '../../../docs-site/src/job/usable-job.js';

const slot = {
  values: { about: { rows: [{ vehicle: { text: 'bus', unit: '' } }] } },
  logs: { before: 'a.csv' },
  changed: 5,
};

describe('a kept job', () => {
  it('is taken back as it was', () => {
    expect(usableSlot(JSON.stringify(slot))).toEqual(slot);
    expect(usableSlot(undefined)).toBeUndefined();
  });

  it.each([
    ['no JSON', '{"values":'],
    ['no record', '5'],
    ['no values', JSON.stringify({ ...slot, values: undefined })],
    ['no logs', JSON.stringify({ ...slot, logs: undefined })],
    ['no time', JSON.stringify({ ...slot, changed: 'today' })],
    ['an entry without a text', JSON.stringify({ ...slot, values: { about: { rows: [{ vehicle: { unit: '' } }] } } })],
    ['rows that are none', JSON.stringify({ ...slot, values: { about: { rows: 'many' } } })],
    ['a log without a name', JSON.stringify({ ...slot, logs: { after: { name: 'b.csv' } } })],
  ])('counts as nothing when what is stored has %s', (_, text) => {
    expect(usableSlot(text)).toBeUndefined();
  });
});

it('the one job that older pages kept is taken back with its logs', () => {
  const old = { values: slot.values, logs: { before: { name: 'a.csv', text: 'x' } } };
  expect(usableOldJob(JSON.stringify(old))).toEqual(old);
  expect(usableOldJob(JSON.stringify({ ...old, logs: { before: { name: 'a.csv' } } }))).toBeUndefined();
});
