import { findRoot } from '@wallflow/numerics';
import { molarGasConstant } from '../../gas/constants.js';
import { type SootKinetics, sootOxidationRate } from '../oxidation/kernel.js';

export interface BalanceTemperatureInput {
  readonly kinetics: SootKinetics;
  /** Soot in the filter in kg. */
  readonly sootMass: number;
  /** Engine-out soot, in kg/s. */
  readonly sootFlow: number;
  /** Mole fraction of oxygen. */
  readonly oxygen: number;
  /** Mole fraction of nitrogen dioxide. */
  readonly nitrogenDioxide: number;
  /** Temperatures in K between which to look. */
  readonly between: readonly [number, number];
}

/**
 * Temperature in K at which as much soot burns as comes in: k(T) m = ṁ_in. Undefined when it lies outside the range
 * searched, as without soot, without oxidant or without inflow.
 */
export function balanceTemperature(input: BalanceTemperatureInput, gasConstant = molarGasConstant): number | undefined {
  const { kinetics, sootMass, sootFlow, oxygen, nitrogenDioxide, between } = input;
  if (!(sootMass > 0 && sootFlow > 0)) return undefined;
  const wanted = Math.log(sootFlow / sootMass);
  // The logarithm of the rate against 1/T is nearly straight, which the root finder likes.
  const excess = (inverse: number) =>
    Math.log(sootOxidationRate(kinetics, { temperature: 1 / inverse, oxygen, nitrogenDioxide }, gasConstant).total) - wanted;
  const root = findRoot(excess, 1 / between[1], 1 / between[0]);
  return root.status === 'converged' ? 1 / root.root : undefined;
}
