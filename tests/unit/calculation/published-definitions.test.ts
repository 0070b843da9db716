import { subjects } from '@wallflow/calculation';
import * as exhaust from '@wallflow/exhaust/calculations';
import * as workshop from '@wallflow/workshop';
import { describe, expect, it } from 'vitest';
import { allCalculations } from '../../support/calculations.js';

const subjectEntries = import.meta.glob('../../../packages/exhaust/src/calculations/*.ts', { eager: true }) as Record<
  string,
  Record<string, unknown>
>;

describe('the entries of the packages', () => {
  it('export every calculation by a name of its own', () => {
    const named = new Set<unknown>([...Object.values(exhaust), ...Object.values(workshop)]);
    expect(allCalculations.filter((calculation) => !named.has(calculation)).map(({ id }) => id)).toEqual([]);
  });

  it('are one for each subject, which exports and lists those of its subject and no others', () => {
    const found = Object.entries(subjectEntries).map(([path, entry]) => [path.split('/').at(-1)?.replace('.ts', '') ?? '', entry] as const);
    expect(found.map(([subject]) => subject).sort()).toEqual(subjects.filter((subject) => subject !== 'workshop').sort());
    for (const [subject, entry] of found) {
      const own = allCalculations.filter((calculation) => calculation.subject === subject);
      const named = Object.entries(entry).filter(([name]) => name.endsWith('Calculation'));
      expect(new Set(named.map(([, value]) => value))).toEqual(new Set(own));
      expect(entry[`${subject}Calculations`]).toEqual(own);
    }
  });
});
