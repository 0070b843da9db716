/** Air over fuel by mass in a complete mixture for diesel fuel, as handbooks round it. */
export const stoichiometricAirFuelRatioOfDiesel = 14.5;

/** Fuel over air by mass that stands in for an unknown fuel flow at no load. */
export const fuelShareAtNoLoad = 0.015;

/** Exhaust in kg/s: all air and all fuel leave by the exhaust. */
export function exhaustMassFlow(airMassFlow: number, fuelMassFlow: number): number {
  return airMassFlow + fuelMassFlow;
}

/** Fuel in kg/s that this air in kg/s burns at a lambda. */
export function fuelMassFlowAtLambda(
  airMassFlow: number,
  lambda: number,
  stoichiometricAirFuelRatio = stoichiometricAirFuelRatioOfDiesel,
): number {
  return airMassFlow / (lambda * stoichiometricAirFuelRatio);
}

/** Air in kg/s that this fuel in kg/s leaves at a lambda. */
export function airMassFlowAtLambda(
  fuelMassFlow: number,
  lambda: number,
  stoichiometricAirFuelRatio = stoichiometricAirFuelRatioOfDiesel,
): number {
  return fuelMassFlow * lambda * stoichiometricAirFuelRatio;
}

export interface AirPerStrokeInput {
  /** Air that one cylinder draws in one intake stroke, in kg. */
  readonly airMassPerStroke: number;
  readonly cylinderCount: number;
  /** Crankshaft revolutions per second. */
  readonly engineSpeed: number;
  /** Crankshaft revolutions per working cycle: 2 for a four-stroke, 1 for a two-stroke engine. */
  readonly revolutionsPerCycle: number;
}

/** Air in kg/s from the air of one intake stroke: each cylinder draws once per working cycle. */
export function airMassFlowOfStrokes({ airMassPerStroke, cylinderCount, engineSpeed, revolutionsPerCycle }: AirPerStrokeInput): number {
  return (airMassPerStroke * cylinderCount * engineSpeed) / revolutionsPerCycle;
}

/** Air ratio of an air and a fuel flow in kg/s; infinite without fuel. */
export function lambdaOfFlows(
  airMassFlow: number,
  fuelMassFlow: number,
  stoichiometricAirFuelRatio = stoichiometricAirFuelRatioOfDiesel,
): number {
  return airMassFlow / (fuelMassFlow * stoichiometricAirFuelRatio);
}
