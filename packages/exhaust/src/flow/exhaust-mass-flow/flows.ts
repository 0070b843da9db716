import { type ComputeContext, type Constants, inconsistentInputs, type Refusal } from '@wallflow/calculation';
import type * as z from 'zod';
import { revolutionsPerCycle } from '../engine-fields.js';
import { missingInputs } from '../missing.js';
import { speedDensityAirMolarFlow } from '../speed-density/kernel.js';
import type { exhaustMassFlowInputs } from './fields.js';
import { airMassFlowAtLambda, fuelMassFlowAtLambda, fuelShareAtNoLoad } from './kernel.js';

type Input = z.output<typeof exhaustMassFlowInputs>;
type Context = Pick<ComputeContext<Constants>, 'assume' | 'method'>;

export interface Flows {
  readonly airMassFlow: number;
  readonly airFromSpeedDensity?: number;
  readonly airFromFuel?: number;
}

export interface AirConstants {
  readonly gasConstant: number;
  readonly airMolarMass: number;
}

/** Fresh air by the chosen method, or what is missing for it. */
export function airFlow(input: Input, { gasConstant, airMolarMass }: AirConstants, context: Context): Flows | Refusal {
  if (input.airFrom === 'air-mass-signal') {
    if (input.airMassFlow === undefined) return missingInputs('airMassFlow');
    context.method('air-mass signal');
    return { airMassFlow: input.airMassFlow };
  }
  if (input.airFrom === 'fuel-and-lambda') {
    const { fuelMassFlow, lambda } = input;
    if (fuelMassFlow === undefined || lambda === undefined) {
      return missingInputs(...(['fuelMassFlow', 'lambda'] as const).filter((key) => input[key] === undefined));
    }
    if (fuelMassFlow === 0) return inconsistentInputs('without fuel, lambda says nothing of the air flow', ['fuelMassFlow'], ['airFrom']);
    context.method('fuel flow and lambda');
    const airFromFuel = airMassFlowAtLambda(fuelMassFlow, lambda, input.stoichiometricAirFuelRatio);
    return { airMassFlow: airFromFuel, airFromFuel };
  }
  const { displacement, engineSpeed, manifoldPressure, manifoldTemperature } = input;
  if (displacement === undefined || engineSpeed === undefined || manifoldPressure === undefined || manifoldTemperature === undefined) {
    const needed = ['displacement', 'engineSpeed', 'manifoldPressure', 'manifoldTemperature'] as const;
    return missingInputs(...needed.filter((key) => input[key] === undefined));
  }
  context.method('speed and density');
  const engine = { ...input, displacement, engineSpeed, manifoldPressure, manifoldTemperature };
  const molarFlow = speedDensityAirMolarFlow({ ...engine, revolutionsPerCycle: revolutionsPerCycle(input.strokes) }, gasConstant);
  const airFromSpeedDensity = molarFlow * airMolarMass;
  return { airMassFlow: airFromSpeedDensity, airFromSpeedDensity };
}

export interface Fuel {
  readonly fuelMassFlow: number;
  readonly fuelFromLambda?: number;
  readonly fuelAssumed?: number;
}

/** Fuel as given, else by lambda, else the share of an engine without load, which the result then states. */
export function fuelFlow(input: Input, airMassFlow: number, context: Context): Fuel {
  if (input.fuelMassFlow !== undefined) return { fuelMassFlow: input.fuelMassFlow };
  if (input.lambda !== undefined) {
    const fuelFromLambda = fuelMassFlowAtLambda(airMassFlow, input.lambda, input.stoichiometricAirFuelRatio);
    return { fuelMassFlow: fuelFromLambda, fuelFromLambda };
  }
  const fuelAssumed = fuelShareAtNoLoad * airMassFlow;
  context.assume(
    'fuel_at_no_load',
    'Fuel flow and lambda unknown: fuel taken as 1.5 % of the air mass, as without load (common practice, no source). Under load it reaches 5 %, so the exhaust flow can be up to 4 % higher.',
  );
  return { fuelMassFlow: fuelAssumed, fuelAssumed };
}
