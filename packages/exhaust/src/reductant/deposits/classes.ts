import { celsiusToKelvin } from './celsius.js';

export type DepositClassId = 'film' | 'urea' | 'biuret' | 'cyanuric-acid' | 'fused' | 'clear';

/** What a wall of a certain temperature collects, as data with the temperatures that are published. */
export interface DepositClass {
  readonly id: DepositClassId;
  /** Lowest wall temperature in K of the class. */
  readonly from: number;
  readonly name: string;
  readonly risk: 'very-high' | 'high' | 'medium' | 'low' | 'least';
}

/** In rising order of wall temperature; the limits are those of the papers, the grading into risks is ours. */
export const depositClasses: readonly [DepositClass, ...DepositClass[]] = [
  { id: 'film', from: 0, name: 'wet film, dries to urea crystals', risk: 'very-high' },
  { id: 'urea', from: celsiusToKelvin(132.7), name: 'molten urea, turning to biuret', risk: 'very-high' },
  { id: 'biuret', from: celsiusToKelvin(193), name: 'urea, biuret and first cyanuric acid', risk: 'high' },
  { id: 'cyanuric-acid', from: celsiusToKelvin(250), name: 'cyanuric acid', risk: 'medium' },
  { id: 'fused', from: celsiusToKelvin(335), name: 'cyanuric acid and fused rings, slowly burning off', risk: 'low' },
  { id: 'clear', from: celsiusToKelvin(430), name: 'deposits turn to gas', risk: 'least' },
];

export function depositClassAt(wallTemperature: number, classes = depositClasses): DepositClass {
  return classes.findLast((row) => wallTemperature >= row.from) ?? classes[0];
}
