import type { AnyCalculation } from '@wallflow/calculation';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { twinInput } from '../support/arbitrary-input.js';
import { allCalculations } from '../support/calculations.js';
import { notYetCarriedOver } from '../support/not-yet-carried-over.js';
import { recompute } from '../support/recompute.js';

const runs = 50;

function hasFormulas(calculation: AnyCalculation): boolean {
  return calculation.spec.steps.some((step: { readonly how?: unknown }) => step.how !== undefined);
}

const carriedOver = allCalculations.filter(hasFormulas);

describe('the working of every definition', () => {
  it('is made of formulas, but for those that are still to be carried over', () => {
    const others = allCalculations.filter((calculation) => !hasFormulas(calculation)).map(({ id }) => id);
    expect(others.filter((id) => !notYetCarriedOver.includes(id))).toEqual([]);
    // What has been carried over leaves the list, so that it only gets shorter.
    expect(notYetCarriedOver.filter((id) => !others.includes(id))).toEqual([]);
  });
});

describe.each(carriedOver.map((calculation) => [calculation.id, calculation] as const))('%s', (_, calculation) => {
  it('prints lines in its example that come out as printed, with formulas that agree with the kernel', () => {
    expect(recompute(calculation, calculation.example)).toEqual([]);
  });

  it('prints such lines for any input', () => {
    let accepted = 0;
    fc.assert(
      fc.property(twinInput(calculation), ({ other }) => {
        const faults = recompute(calculation, other);
        if (faults === 'refused') return;
        accepted += 1;
        expect(faults).toEqual([]);
      }),
      { numRuns: runs },
    );
    expect(accepted, 'too few random inputs were accepted to prove anything').toBeGreaterThan(runs / 20);
  });
});
