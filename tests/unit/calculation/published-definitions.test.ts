import { subjects } from '@wallflow/calculation';
import * as exhaust from '@wallflow/exhaust/calculations';
import * as cleaning from '@wallflow/exhaust/calculations/cleaning';
import * as filter from '@wallflow/exhaust/calculations/filter';
import * as flow from '@wallflow/exhaust/calculations/flow';
import * as gas from '@wallflow/exhaust/calculations/gas';
import * as reductant from '@wallflow/exhaust/calculations/reductant';
import * as regeneration from '@wallflow/exhaust/calculations/regeneration';
import * as smoke from '@wallflow/exhaust/calculations/smoke';
import * as soot from '@wallflow/exhaust/calculations/soot';
import * as workshop from '@wallflow/workshop';
import { describe, expect, it } from 'vitest';
import { allCalculations } from '../../support/calculations.js';

const subjectEntries: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  cleaning,
  filter,
  flow,
  gas,
  reductant,
  regeneration,
  smoke,
  soot,
};

describe('the entries of the packages', () => {
  it('export every calculation by a name of its own', () => {
    const named = new Set<unknown>([...Object.values(exhaust), ...Object.values(workshop)]);
    expect(allCalculations.filter((calculation) => !named.has(calculation)).map(({ id }) => id)).toEqual([]);
  });

  it('are one for each subject, which exports and lists those of its subject and no others', () => {
    expect(Object.keys(subjectEntries)).toEqual(subjects.filter((subject) => subject !== 'workshop').sort());
    for (const [subject, entry] of Object.entries(subjectEntries)) {
      const own = allCalculations.filter((calculation) => calculation.subject === subject);
      const named = Object.entries(entry).filter(([name]) => name.endsWith('Calculation'));
      expect(new Set(named.map(([, value]) => value))).toEqual(new Set(own));
      expect(entry[`${subject}Calculations`]).toEqual(own);
    }
  });
});
