import { type ComputeContext, type Constants, inconsistentInputs, missingInputs, type Refusal } from '@wallflow/calculation';
import type * as z from 'zod';
import { revolutionsPerCycle } from '../engine-fields.js';
import { speedDensityAirMolarFlow } from '../speed-density/kernel.js';
import type { exhaustMassFlowInputs } from './fields.js';
import { airMassFlowAtLambda, airMassFlowOfStrokes, fuelMassFlowAtLambda, fuelShareAtNoLoad } from './kernel.js';

type Input = z.output<typeof exhaustMassFlowInputs>;
type Context = Pick<ComputeContext<Constants>, 'assume' | 'method'>;

export interface Flows {
  readonly airMassFlow: number;
  readonly revolutionsPerCycle?: number;
  readonly airFromStrokes?: number;
  readonly airFromSpeedDensity?: number;
  readonly airFromFuel?: number;
}

export interface AirConstants {
  readonly gasConstant: number;
  readonly airMolarMass: number;
}

/** Fresh air by the chosen method, or what is missing for it. */
export function airFlow(input: Input, constants: AirConstants, context: Context): Flows | Refusal {
  switch (input.airFrom) {
    case 'air-mass-signal':
      context.method('air-mass signal');
      return input.airMassFlow === undefined ? missingInputs('airMassFlow') : { airMassFlow: input.airMassFlow };
    case 'air-mass-per-stroke':
      context.method('air mass per stroke');
      return airOfStrokes(input);
    case 'fuel-and-lambda':
      context.method('fuel flow and lambda');
      return airOfFuel(input);
    default:
      context.method('speed and density');
      return airBySpeedDensity(input, constants);
  }
}

function airOfStrokes(input: Input): Flows | Refusal {
  const { airMassPerStroke, cylinderCount, engineSpeed } = input;
  if (airMassPerStroke === undefined || cylinderCount === undefined || engineSpeed === undefined) {
    return missingOf(input, 'airMassPerStroke', 'cylinderCount', 'engineSpeed');
  }
  const revolutions = revolutionsPerCycle(input.strokes);
  const airFromStrokes = airMassFlowOfStrokes({ airMassPerStroke, cylinderCount, engineSpeed, revolutionsPerCycle: revolutions });
  return { airMassFlow: airFromStrokes, airFromStrokes, revolutionsPerCycle: revolutions };
}

function airOfFuel(input: Input): Flows | Refusal {
  const { fuelMassFlow, lambda } = input;
  if (fuelMassFlow === undefined || lambda === undefined) return missingOf(input, 'fuelMassFlow', 'lambda');
  if (fuelMassFlow === 0) return inconsistentInputs('without fuel, lambda says nothing of the air flow', ['fuelMassFlow'], ['airFrom']);
  const airFromFuel = airMassFlowAtLambda(fuelMassFlow, lambda, input.stoichiometricAirFuelRatio);
  return { airMassFlow: airFromFuel, airFromFuel };
}

function airBySpeedDensity(input: Input, { gasConstant, airMolarMass }: AirConstants): Flows | Refusal {
  const { displacement, engineSpeed, manifoldPressure, manifoldTemperature } = input;
  if (displacement === undefined || engineSpeed === undefined || manifoldPressure === undefined || manifoldTemperature === undefined) {
    return missingOf(input, 'displacement', 'engineSpeed', 'manifoldPressure', 'manifoldTemperature');
  }
  const revolutions = revolutionsPerCycle(input.strokes);
  const engine = { ...input, displacement, engineSpeed, manifoldPressure, manifoldTemperature, revolutionsPerCycle: revolutions };
  const airFromSpeedDensity = speedDensityAirMolarFlow(engine, gasConstant) * airMolarMass;
  return { airMassFlow: airFromSpeedDensity, airFromSpeedDensity, revolutionsPerCycle: revolutions };
}

/** Refuse for those of the named inputs that are unknown. */
function missingOf(input: Input, ...keys: readonly (keyof Input)[]): Refusal {
  return missingInputs(...keys.filter((key) => input[key] === undefined));
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
