import { describe, expect, it } from 'vitest';
import { registry } from '../support/calculations.js';
import { readMisprints } from '../support/misprint.js';

describe.each(readMisprints())('misprints of $subject', ({ entries }) => {
  it('name calculations that exist', () => {
    const unknown = entries.flatMap((entry) => entry.calculations).filter((id) => registry.get(id) === undefined);
    expect(unknown).toEqual([]);
  });
});
