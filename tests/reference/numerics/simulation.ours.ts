import { propagateUncertainty } from '@wallflow/numerics';
import { simulateUncertainty } from '@wallflow/numerics/simulation';
import type { Ours } from './numerics-case.js';
import { fallingBall, type fourInputs } from './uncertainty.cases.js';

export function fallingBallOurs(): Ours {
  const inputs = fallingBall.given.map(([value, standardUncertainty]) => ({ value, standardUncertainty }));
  const model = ([mc, rb, rm, rc, tm, tc]: number[]) => [((mc! * (rb! - rm!)) / (rb! - rc!)) * (tm! / tc!)];
  const [linear] = propagateUncertainty(model, inputs).outputs;
  const [simulated] = simulateUncertainty(model, inputs, { trials: 1_000_000 }).outputs;
  return {
    value: linear!.value,
    firstOrder: linear!.standardUncertainty,
    mean: simulated!.mean,
    deviation: simulated!.standardDeviation,
    lower: simulated!.symmetricInterval[0],
    upper: simulated!.symmetricInterval[1],
  };
}

export function fourInputsOurs(reference: (typeof fourInputs)[number]): Ours {
  const input = { value: 0, standardUncertainty: 1, shape: reference.given };
  const sum = (x: number[]) => [x[0]! + x[1]! + x[2]! + x[3]!];
  const [output] = simulateUncertainty(sum, [input, input, input, input], { trials: 1_000_000 }).outputs;
  return {
    deviation: output!.standardDeviation,
    lower: output!.symmetricInterval[0],
    upper: output!.symmetricInterval[1],
  };
}
