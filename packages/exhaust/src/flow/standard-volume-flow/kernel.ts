import { molarGasConstant } from '../../gas/constants.js';

/** Reference pressure of every standard state here, in Pa. */
export const referencePressure = 101325;

/** Temperature in K of the state that `standardVolumeFlow` of the units counts in: 0 °C, the normal cubic metre. */
export const normalTemperature = 273.15;

/** Moles per second of a mass flow in kg/s. */
export function molarFlowOfMass(massFlow: number, molarMass: number): number {
  return massFlow / molarMass;
}

export interface ActualFlowInput {
  /** m³/s at its own temperature and pressure. */
  readonly volumeFlow: number;
  /** K. */
  readonly temperature: number;
  /** Absolute, Pa. */
  readonly pressure: number;
}

/** Moles per second of an actual volume flow, 40 CFR 1065.640(a). */
export function molarFlowOfVolume({ volumeFlow, temperature, pressure }: ActualFlowInput, gasConstant = molarGasConstant): number {
  return (pressure * volumeFlow) / (gasConstant * temperature);
}

/** Volume flow in m³/s that a molar flow has at a reference temperature in K and pressure in Pa. */
export function standardVolumeFlowOfMoles(
  molarFlow: number,
  temperature = normalTemperature,
  pressure = referencePressure,
  gasConstant = molarGasConstant,
): number {
  return (molarFlow * gasConstant * temperature) / pressure;
}
