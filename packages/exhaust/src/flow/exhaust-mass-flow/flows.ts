import { type ComputeContext, type Constants, inconsistentInputs, known, missingInputs, type Refusal, say } from '@wallflow/calculation';
import { revolutionsPerCycle } from '../engine-fields.js';
import { speedDensityAirMolarFlow } from '../speed-density/kernel.js';
import type { ExhaustMassFlowInput } from './fields.js';
import { airMassFlowAtLambda, airMassFlowOfStrokes, fuelMassFlowAtLambda, fuelShareAtNoLoad } from './kernel.js';

type Context = Pick<ComputeContext<Constants>, 'assume' | 'method'>;

export interface Air {
  readonly usedAirMassFlow: number;
  readonly revolutionsPerCycle?: number;
  readonly airFromStrokes?: number;
  readonly airFromSpeedDensity?: number;
  readonly airFromFuel?: number;
}

export interface AirConstants {
  readonly gasConstant: number;
  readonly airMolarMass: number;
}

/** Fresh air by the chosen method. */
export function airFlow(input: ExhaustMassFlowInput, constants: AirConstants, context: Context): Air | Refusal {
  switch (input.airFrom) {
    case 'air-mass-signal':
      context.method('air-mass signal');
      return { usedAirMassFlow: known(input.airMassFlow) };
    case 'air-mass-per-stroke': {
      context.method('air mass per stroke');
      const revolutions = revolutionsPerCycle(known(input.strokes));
      const airFromStrokes = airMassFlowOfStrokes({
        airMassPerStroke: known(input.airMassPerStroke),
        cylinderCount: known(input.cylinderCount),
        engineSpeed: known(input.engineSpeed),
        revolutionsPerCycle: revolutions,
      });
      return { usedAirMassFlow: airFromStrokes, airFromStrokes, revolutionsPerCycle: revolutions };
    }
    case 'fuel-and-lambda': {
      context.method(say`fuel flow and lambda`);
      const airFromFuel = airOfFuel(input);
      return typeof airFromFuel === 'number' ? { usedAirMassFlow: airFromFuel, airFromFuel } : airFromFuel;
    }
    default: {
      context.method(say`speed and density`);
      const revolutions = revolutionsPerCycle(known(input.strokes));
      const engine = {
        displacement: known(input.displacement),
        engineSpeed: known(input.engineSpeed),
        manifoldPressure: known(input.manifoldPressure),
        manifoldTemperature: known(input.manifoldTemperature),
        volumetricEfficiency: known(input.volumetricEfficiency),
        exhaustGasRecirculation: known(input.exhaustGasRecirculation),
        revolutionsPerCycle: revolutions,
      };
      const airFromSpeedDensity = speedDensityAirMolarFlow(engine, constants.gasConstant) * constants.airMolarMass;
      return { usedAirMassFlow: airFromSpeedDensity, airFromSpeedDensity, revolutionsPerCycle: revolutions };
    }
  }
}

function airOfFuel({ fuelMassFlow, lambda, stoichiometricAirFuelRatio }: ExhaustMassFlowInput): number | Refusal {
  if (fuelMassFlow === undefined || lambda === undefined) {
    return missingInputs(...(fuelMassFlow === undefined ? ['fuelMassFlow'] : []), ...(lambda === undefined ? ['lambda'] : []));
  }
  if (fuelMassFlow === 0) return inconsistentInputs('without fuel, lambda says nothing about the air flow', ['fuelMassFlow'], ['airFrom']);
  return airMassFlowAtLambda(fuelMassFlow, lambda, stoichiometricAirFuelRatio);
}

export interface Fuel {
  readonly usedFuelMassFlow: number;
  readonly fuelFromLambda?: number;
  readonly fuelAssumed?: number;
}

/** Fuel as given, else by lambda, else the share of an engine without load, which the result then states. */
export function fuelFlow(input: ExhaustMassFlowInput, airMassFlow: number, context: Context): Fuel {
  if (input.fuelMassFlow !== undefined) return { usedFuelMassFlow: input.fuelMassFlow };
  if (input.lambda !== undefined) {
    const fuelFromLambda = fuelMassFlowAtLambda(airMassFlow, input.lambda, input.stoichiometricAirFuelRatio);
    return { usedFuelMassFlow: fuelFromLambda, fuelFromLambda };
  }
  const fuelAssumed = fuelShareAtNoLoad * airMassFlow;
  context.assume(
    'fuel_at_no_load',
    'Fuel flow and lambda unknown: fuel taken as 1.5 % of the air mass, as without load (common practice, no source). Under load it reaches 5 %, so the exhaust flow can be up to 4 % higher.',
  );
  return { usedFuelMassFlow: fuelAssumed, fuelAssumed };
}
