import { correlation, coverageFactor, mean, propagateUncertainty, standardDeviation, welchSatterthwaite } from '@wallflow/numerics';
import { fitLinear, predictLinear } from '@wallflow/numerics/fit';
import type { Ours } from './numerics-case.js';
import { type freedoms, gaugeBlock, impedance, thermometer } from './uncertainty.cases.js';

export function gaugeBlockOurs(): Ours {
  const inputs = Object.values(gaugeBlock.given).map(([value, standardUncertainty, degreesOfFreedom = Infinity]) => ({
    value,
    standardUncertainty,
    degreesOfFreedom,
  }));
  const result = propagateUncertainty(
    ([ls, d, d1, d2, dAlpha, theta, dTheta, alpha]) => [ls! + d! + d1! + d2! - ls! * (dAlpha! * theta! + alpha! * dTheta!)],
    inputs,
  );
  const [length] = result.outputs;
  const degreesOfFreedom = Math.floor(length!.degreesOfFreedom!);
  return {
    length: length!.value,
    standardUncertainty: length!.standardUncertainty,
    degreesOfFreedom,
    expandedUncertainty: length!.standardUncertainty * coverageFactor(0.99, degreesOfFreedom)!,
  };
}

export function impedanceOurs(): Ours {
  const { voltage, current, phase } = impedance.given;
  const readings = [voltage, current, phase];
  const inputs = readings.map((list) => ({
    value: mean(list)!,
    standardUncertainty: standardDeviation(list)! / Math.sqrt(list.length),
  }));
  const matrix = readings.map((one) => readings.map((other) => correlation(one, other)!));
  const { outputs, covariance } = propagateUncertainty(
    ([v, i, phi]) => [(v! / i!) * Math.cos(phi!), (v! / i!) * Math.sin(phi!), v! / i!],
    inputs,
    { correlation: matrix },
  );
  const u = outputs.map((output) => output.standardUncertainty);
  const r = (k: number, l: number) => covariance[k]![l]! / u[k]! / u[l]!;
  return {
    meanVoltage: inputs[0]!.value,
    meanCurrent: inputs[1]!.value,
    meanPhase: inputs[2]!.value,
    voltageUncertainty: inputs[0]!.standardUncertainty,
    currentUncertainty: inputs[1]!.standardUncertainty,
    phaseUncertainty: inputs[2]!.standardUncertainty,
    correlationVI: matrix[0]![1]!,
    correlationVPhi: matrix[0]![2]!,
    correlationIPhi: matrix[1]![2]!,
    resistance: outputs[0]!.value,
    reactance: outputs[1]!.value,
    impedance: outputs[2]!.value,
    resistanceUncertainty: u[0]!,
    reactanceUncertainty: u[1]!,
    impedanceUncertainty: u[2]!,
    correlationRX: r(0, 1),
    correlationRZ: r(0, 2),
    correlationXZ: r(1, 2),
  };
}

export function thermometerOurs(): Ours {
  const { temperature, correction } = thermometer.given;
  const fit = fitLinear(
    temperature.map((t) => [t - 20]),
    correction,
  );
  if (fit.status !== 'fitted') throw new Error(fit.status);
  const at30 = predictLinear(fit, [10]);
  const [s1, s2] = fit.standardErrors!;
  return {
    intercept: fit.coefficients[0]!,
    slope: fit.coefficients[1]!,
    interceptUncertainty: s1!,
    slopeUncertainty: s2!,
    correlation: fit.covariance![0]![1]! / s1! / s2!,
    residualStandardDeviation: fit.residualStandardDeviation,
    at30: at30.value,
    uncertaintyAt30: at30.standardError,
  };
}

export function freedomsOurs(reference: (typeof freedoms)[number]): Ours {
  const { contributions, freedoms: each } = reference.given;
  return { degreesOfFreedom: welchSatterthwaite(contributions, each) };
}
