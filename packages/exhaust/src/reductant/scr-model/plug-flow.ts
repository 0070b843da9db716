import { integrate } from '@wallflow/numerics';
import { ammoniaPerNox, reactionShares } from '../reductant-demand/stoichiometry.js';
import { ammoniaCoverage, arrhenius, noxRate, type ScrModel, teachingScrModel } from './teaching-model.js';

export interface ScrPlugFlowInput {
  /** K */
  readonly temperature: number;
  /** 1/s at 0 °C and 101.325 kPa. */
  readonly spaceVelocity: number;
  /** Mole fraction of NOx at the inlet. */
  readonly noxMoleFraction: number;
  /** Moles of ammonia per mole of NOx at the inlet. */
  readonly dosedRatio: number;
  readonly nitrogenDioxideShare: number;
}

export interface ScrPlugFlowResult {
  /** Mole fractions at positions from 0 (inlet) to 1 (outlet). */
  readonly profile: readonly { readonly position: number; readonly nox: number; readonly ammonia: number; readonly coverage: number }[];
  readonly nox: number;
  readonly ammonia: number;
  readonly burnt: number;
}

/** Steady plug flow without back-mixing, isothermal; undefined when the integration fails. */
export function scrPlugFlow(input: ScrPlugFlowInput, points = 11, model: ScrModel = teachingScrModel): ScrPlugFlowResult | undefined {
  const { temperature, spaceVelocity, noxMoleFraction: inlet } = input;
  if (inlet === 0) return emptyResult(points);
  const shares = reactionShares(input.nitrogenDioxideShare);
  const perNox = ammoniaPerNox(input.nitrogenDioxideShare);
  const burning = arrhenius(model.oxidation, temperature);
  // States relative to the inlet NOx, so that tolerances are the same for any concentration.
  const solution = integrate(
    {
      from: 0,
      to: 1,
      initial: [1, input.dosedRatio, 0],
      derivative: (_, [nox = 0, ammonia = 0], slope) => {
        const converted = noxRate(temperature, ammoniaCoverage(temperature, ammonia * inlet, model), shares, model) * Math.max(0, nox);
        const burnt = burning * Math.max(0, ammonia);
        slope[0] = -converted / spaceVelocity;
        slope[1] = -(perNox * converted + burnt) / spaceVelocity;
        slope[2] = burnt / spaceVelocity;
      },
    },
    { relativeTolerance: 1e-8, absoluteTolerance: 1e-10, maxSteps: 20_000 },
  );
  if (solution.status !== 'finished') return undefined;
  const at = (position: number) => {
    const [nox = 0, ammonia = 0] = solution.at(position);
    const left = Math.max(0, ammonia) * inlet;
    return { position, nox: Math.max(0, nox) * inlet, ammonia: left, coverage: ammoniaCoverage(temperature, left, model) };
  };
  const profile = Array.from({ length: points }, (_, index) => at(index / (points - 1)));
  const [nox = 0, ammonia = 0, burnt = 0] = solution.y;
  return { profile, nox: Math.max(0, nox) * inlet, ammonia: Math.max(0, ammonia) * inlet, burnt: burnt * inlet };
}

function emptyResult(points: number): ScrPlugFlowResult {
  const profile = Array.from({ length: points }, (_, index) => ({ position: index / (points - 1), nox: 0, ammonia: 0, coverage: 0 }));
  return { profile, nox: 0, ammonia: 0, burnt: 0 };
}
