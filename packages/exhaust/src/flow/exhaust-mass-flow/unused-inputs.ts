import { type ComputeContext, type Constants, fieldOf } from '@wallflow/calculation';
import type * as z from 'zod';
import { exhaustMassFlowInputs } from './fields.js';

type Input = z.output<typeof exhaustMassFlowInputs>;

/** What each way to the air mass flow takes. Fuel and lambda count in all of them, for the fuel. */
const taken: Readonly<Record<Input['airFrom'], readonly (keyof Input)[]>> = {
  'air-mass-signal': ['airMassFlow'],
  'air-mass-per-stroke': ['airMassPerStroke', 'cylinderCount', 'engineSpeed'],
  'speed-density': ['displacement', 'engineSpeed', 'manifoldPressure', 'manifoldTemperature'],
  'fuel-and-lambda': [],
};

const anyOf = [...new Set(Object.values(taken).flat())];

function labelOf(key: keyof Input): string {
  return fieldOf(exhaustMassFlowInputs.shape[key])?.label ?? '';
}

/** Say of every value that was given and that the chosen way does not take that the result does not hang on it. */
export function warnOfUnused(input: Input, { warn }: Pick<ComputeContext<Constants>, 'warn'>): void {
  const origin = fieldOf(exhaustMassFlowInputs.shape.airFrom);
  const words = origin?.type === 'choice' ? origin.options[input.airFrom] : undefined;
  for (const key of anyOf) {
    if (input[key] === undefined || taken[input.airFrom].includes(key)) continue;
    warn('input_not_used', `${labelOf(key)} is not used: ${labelOf('airFrom').toLowerCase()} “${words}” was chosen.`, [key]);
  }
}
