import { molarMassOfDryAir } from '../../gas/constants.js';
import { molarMassOfWater } from '../constants.js';

export const molarMassOfHydrogen = 0.00100794;
export const molarMassOfOxygenAtom = 0.0159994;

export interface DryWetInput {
  /** Fuel mass per dry air mass. */
  readonly fuelToAirRatio: number;
  /** Water mass per dry air mass in the intake air. */
  readonly intakeHumidity: number;
  /** Mass fraction of hydrogen in the fuel. */
  readonly hydrogenFraction: number;
  /** Mass fraction of oxygen in the fuel. */
  readonly oxygenFraction: number;
}

/**
 * Dry-to-wet factor by UN Regulation No. 49 of 2008, 5.2, without the factor for water left after the cooler.
 * The source takes humidity in g/kg and fractions in per cent; here both are ratios.
 */
export function dryWetR49(input: DryWetInput): number {
  const { fuelToAirRatio: r, intakeHumidity, hydrogenFraction, oxygenFraction } = input;
  const dryGasOfFuel = 5.5594 * hydrogenFraction + 0.70046 * oxygenFraction;
  const water = 1244.2 * intakeHumidity + 11119 * hydrogenFraction * r;
  return 1 - water / (773.4 + 1244.2 * intakeHumidity + 1000 * dryGasOfFuel * r);
}

/** Factor that UN R49 of 2008 takes for the water that is left after the cooler of the analyser. */
export const residualWaterFactor = 1.008;

/** The same with the water that a cooler of known pressure leaves: division by 1 − p_r/p_b. Pressures in Pa. */
export function dryWetR49WithCooler(input: DryWetInput, vapourPressure: number, barometricPressure: number): number {
  return dryWetR49(input) / (1 - vapourPressure / barometricPressure);
}

export interface DryWetFromCarbonInput {
  /** Mole fractions of carbon dioxide and carbon monoxide in the dried gas. */
  readonly carbonDioxide: number;
  readonly carbonMonoxide: number;
  /** Atoms of hydrogen per atom of carbon in the fuel. */
  readonly hydrogenToCarbon: number;
  readonly intakeHumidity: number;
}

/** Dry-to-wet factor by UN R49 of 2008 from the carbon gases, with 1.008; the source takes them in per cent. */
export function dryWetFromCarbon(input: DryWetFromCarbonInput): number {
  const { carbonDioxide, carbonMonoxide, hydrogenToCarbon, intakeHumidity } = input;
  const intakeWater = (1.608 * intakeHumidity) / (1 + 1.608 * intakeHumidity);
  return (1 / (1 + 0.5 * hydrogenToCarbon * (carbonDioxide + carbonMonoxide)) - intakeWater) * residualWaterFactor;
}

/** Dry-to-wet factor by Directive 1999/96/EC and 2005/55/EC: 1 − F G_fuel/G_air,dry − k_w2. Made for one fuel, CH1.85. */
export function dryWetDirective({ fuelToAirRatio: r, intakeHumidity }: Pick<DryWetInput, 'fuelToAirRatio' | 'intakeHumidity'>): number {
  const fuelFactor = 1.969 / (1 + r / (1 + intakeHumidity));
  const intakeWater = (1.608 * intakeHumidity) / (1 + 1.608 * intakeHumidity);
  return 1 - fuelFactor * r - intakeWater;
}

/**
 * Dry-to-wet factor by counting moles after complete lean combustion: carbon turns O2 into as many CO2, four H take
 * up one O2 and give two H2O.
 */
export function dryWetByWaterBalance({ fuelToAirRatio: r, intakeHumidity, hydrogenFraction, oxygenFraction }: DryWetInput): number {
  const hydrogen = (r * hydrogenFraction) / molarMassOfHydrogen;
  const oxygen = (r * oxygenFraction) / molarMassOfOxygenAtom;
  const dry = 1 / molarMassOfDryAir - hydrogen / 4 + oxygen / 2;
  const water = intakeHumidity / molarMassOfWater + hydrogen / 2;
  return dry / (dry + water);
}
