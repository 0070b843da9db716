import type { AnyCalculation, ExplainedStep, OutputField, Step } from '@wallflow/calculation';
import { expect, it } from 'vitest';
import { allCalculations } from '../../support/calculations.js';
import { notYetCarriedOver } from '../../support/not-yet-carried-over.js';
import { recompute } from '../../support/recompute.js';

type Spec = AnyCalculation['spec'];

/** Every name that a step may rest on: inputs, constants, and what steps before it give. */
function namesIn(value: unknown): string[] {
  if (typeof value !== 'object' || value === null) return [];
  const { type, key, calculation: _, ...others } = value as { type?: string; key?: string; calculation?: unknown };
  // The columns of a table name each other, and a search shows how its sides come about afterwards.
  if (type === 'rows' || type === 'solved' || type === 'found') return [];
  return type === 'name' && key !== undefined ? [key] : Object.values(others).flatMap(namesIn);
}

function isNumber(spec: Spec, key: string): boolean {
  const field = ({ ...spec.intermediates, ...spec.outputs } as Record<string, OutputField>)[key];
  return field?.type === 'quantity' || field?.type === 'count';
}

/** Counted anew here, apart from the check that runs when a definition is made. */
function faultsOf(calculation: AnyCalculation) {
  const { spec, id } = calculation;
  const steps: readonly Step[] = spec.steps;
  const explained = calculation.explain(calculation.example);
  const lines: readonly ExplainedStep[] = explained.ok ? explained.steps : [];
  const given = [...Object.keys(spec.inputs._zod.def.shape), ...Object.keys(spec.constants), 'pi'];
  const results = Object.keys({ ...spec.intermediates, ...spec.outputs });
  const names = steps.map(({ gives, how }, at) => {
    const before = [...given, ...steps.slice(0, at).map((step) => step.gives)];
    return { gives, unknown: namesIn(how).filter((name) => !before.includes(name)) };
  });
  const where = (keys: readonly string[]) => keys.map((key) => `${id}: ${key}`);
  return {
    withoutFormula: where(steps.filter(({ gives, how }) => how === undefined && isNumber(spec, gives)).map(({ gives }) => gives)),
    withoutResidual: where(lines.filter(({ how, residual }) => how === 'solved' && residual === undefined).map(({ gives }) => gives)),
    outOfOrder: where(names.filter(({ unknown }) => unknown.some((name) => results.includes(name))).map(({ gives }) => gives)),
    rawLetters: where(names.filter(({ unknown }) => unknown.some((name) => !results.includes(name))).map(({ gives }) => gives)),
    wrong: where(explained.ok ? [recompute(calculation, calculation.example)].flat() : ['the example is refused']),
  };
}

it('the working of every definition is whole, in order, in known names, and comes out as printed', () => {
  const all = allCalculations.filter(({ id }) => !notYetCarriedOver.includes(id)).map(faultsOf);
  const sum = (kind: keyof ReturnType<typeof faultsOf>) => all.flatMap((faults) => faults[kind]);
  expect({
    withoutFormula: sum('withoutFormula'),
    withoutResidual: sum('withoutResidual'),
    outOfOrder: sum('outOfOrder'),
    rawLetters: sum('rawLetters'),
    wrong: sum('wrong'),
  }).toEqual({ withoutFormula: [], withoutResidual: [], outOfOrder: [], rawLetters: [], wrong: [] });
});
