import { molarGasConstant, molarMassOfDryAir } from '../../gas/constants.js';

export interface SweptVolumeFlowInput {
  /** Swept volume of all cylinders in m³. */
  readonly displacement: number;
  /** Crankshaft revolutions per second. */
  readonly engineSpeed: number;
  /** Crankshaft revolutions per working cycle: 2 for a four-stroke, 1 for a two-stroke engine. */
  readonly revolutionsPerCycle: number;
}

/** Volume that the pistons sweep for the charge per second in m³/s, UN Regulation 24 Annex 4 paragraph 4.1. */
export function sweptVolumeFlow({ displacement, engineSpeed, revolutionsPerCycle }: SweptVolumeFlowInput): number {
  return (displacement * engineSpeed) / revolutionsPerCycle;
}

export interface SpeedDensityInput extends SweptVolumeFlowInput {
  /** Charge drawn in over the swept volume at manifold density. */
  readonly volumetricEfficiency: number;
  /** Absolute pressure in the intake manifold in Pa. */
  readonly manifoldPressure: number;
  /** Temperature in the intake manifold in K. */
  readonly manifoldTemperature: number;
  /** Recirculated exhaust as a share of the moles of the charge, 0 to below 1. */
  readonly exhaustGasRecirculation?: number;
}

/** Fresh air in mol/s by speed and density, 40 CFR 1065.602(l)(1) with the recirculated share taken off. */
export function speedDensityAirMolarFlow(input: SpeedDensityInput, gasConstant = molarGasConstant): number {
  const { volumetricEfficiency, manifoldPressure, manifoldTemperature, exhaustGasRecirculation = 0 } = input;
  const charge = (volumetricEfficiency * manifoldPressure * sweptVolumeFlow(input)) / (gasConstant * manifoldTemperature);
  return charge * (1 - exhaustGasRecirculation);
}

/** Fresh air in kg/s by speed and density; Heywood 1988, Eq. 2.27 solved for the mass flow. */
export function speedDensityAirMassFlow(input: SpeedDensityInput, molarMass = molarMassOfDryAir, gasConstant = molarGasConstant): number {
  return molarMass * speedDensityAirMolarFlow(input, gasConstant);
}
