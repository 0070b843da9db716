import {
  correlation,
  coverageFactor,
  mean,
  propagateUncertainty,
  rootMeanSquare,
  standardDeviation,
  studentTQuantile,
  welchSatterthwaite,
} from '@wallflow/numerics';
import { fitLinear, predictLinear } from '@wallflow/numerics/fit';
import { simulateUncertainty } from '@wallflow/numerics/simulation';
import { describe, expect, it } from 'vitest';
import independent from './independent-code.json';
import { expectCase, halfLastDigit } from './numerics-case.js';
import {
  coverageFactors,
  dailyMeans,
  engineStatistics,
  fallingBall,
  fourInputs,
  freedoms,
  gaugeBlock,
  impedance,
  thermometer,
} from './uncertainty.cases.js';

describe('first-order propagation', () => {
  it(`${gaugeBlock.id}: ${gaugeBlock.title}`, () => {
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
    expectCase(gaugeBlock, {
      length: length!.value,
      standardUncertainty: length!.standardUncertainty,
      degreesOfFreedom,
      expandedUncertainty: length!.standardUncertainty * coverageFactor(0.99, degreesOfFreedom)!,
    });
  });

  it(`${impedance.id}: ${impedance.title}`, () => {
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
    expectCase(impedance, {
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
    });
  });

  it(`${thermometer.id}: ${thermometer.title}`, () => {
    const { temperature, correction } = thermometer.given;
    const fit = fitLinear(
      temperature.map((t) => [t - 20]),
      correction,
    );
    if (fit.status !== 'fitted') throw new Error(fit.status);
    const at30 = predictLinear(fit, [10]);
    const [s1, s2] = fit.standardErrors!;
    expectCase(thermometer, {
      intercept: fit.coefficients[0]!,
      slope: fit.coefficients[1]!,
      interceptUncertainty: s1!,
      slopeUncertainty: s2!,
      correlation: fit.covariance![0]![1]! / s1! / s2!,
      residualStandardDeviation: fit.residualStandardDeviation,
      at30: at30.value,
      uncertaintyAt30: at30.standardError,
    });
  });

  it(`${dailyMeans.id}: ${dailyMeans.title}`, () => {
    const { means, deviations } = dailyMeans.given;
    const deviationOfMeans = standardDeviation(means)!;
    const pooledDeviation = rootMeanSquare(deviations)!;
    expectCase(dailyMeans, {
      grandMean: mean(means),
      deviationOfMeans,
      pooledDeviation,
      varianceRatio: (5 * deviationOfMeans ** 2) / pooledDeviation ** 2,
      uncertaintyOfMean: deviationOfMeans / Math.sqrt(means.length),
    });
  });

  it.each(freedoms)('$id: $title', (reference) => {
    const { contributions, freedoms: each } = reference.given;
    expectCase(reference, { degreesOfFreedom: welchSatterthwaite(contributions, each) });
  });
});

describe('simulation', () => {
  it(`${fallingBall.id}: ${fallingBall.title}`, () => {
    const inputs = fallingBall.given.map(([value, standardUncertainty]) => ({ value, standardUncertainty }));
    const model = ([mc, rb, rm, rc, tm, tc]: number[]) => [((mc! * (rb! - rm!)) / (rb! - rc!)) * (tm! / tc!)];
    const [linear] = propagateUncertainty(model, inputs).outputs;
    const [simulated] = simulateUncertainty(model, inputs, { trials: 1_000_000 }).outputs;
    expectCase(fallingBall, {
      value: linear!.value,
      firstOrder: linear!.standardUncertainty,
      mean: simulated!.mean,
      deviation: simulated!.standardDeviation,
      lower: simulated!.symmetricInterval[0],
      upper: simulated!.symmetricInterval[1],
    });
  });

  it.each(fourInputs)('$id: $title', (reference) => {
    const input = { value: 0, standardUncertainty: 1, shape: reference.given };
    const sum = (x: number[]) => [x[0]! + x[1]! + x[2]! + x[3]!];
    const [output] = simulateUncertainty(sum, [input, input, input, input], { trials: 1_000_000 }).outputs;
    expectCase(reference, {
      deviation: output!.standardDeviation,
      lower: output!.symmetricInterval[0],
      upper: output!.symmetricInterval[1],
    });
  });
});

describe('statistics', () => {
  it(`${engineStatistics.id}: ${engineStatistics.title}`, () => {
    const values = engineStatistics.given;
    expectCase(engineStatistics, {
      mean: mean(values),
      standardDeviation: standardDeviation(values),
      rootMeanSquare: rootMeanSquare(values),
    });
  });

  it.each(coverageFactors)('$id: $title', (reference) => {
    for (const [probability, degreesOfFreedom, printed] of reference.given) {
      // The table's 68.27, 95.45 and 99.73 % are one, two and three standard deviations, rounded.
      const rounded: Record<number, number> = { 0.6827: 0.6826894921370859, 0.9545: 0.9544997361036416, 0.9973: 0.9973002039367398 };
      const ours = coverageFactor(rounded[probability] ?? probability, degreesOfFreedom)!;
      expect(Math.abs(ours - Number(printed)), `${probability}, ${degreesOfFreedom}: ${ours}`).toBeLessThanOrEqual(
        1.000001 * halfLastDigit(printed),
      );
    }
  });

  it('t quantiles agree with the incomplete beta function in 40-digit arithmetic', () => {
    expect(independent['student-t']).toHaveLength(45);
    for (const { probability, degreesOfFreedom, quantile } of independent['student-t']) {
      const ours = studentTQuantile(Number(probability), Number(degreesOfFreedom))!;
      // Near the middle the distance of the probability from one half is what carries the digits.
      const tolerance = probability === '0.501' ? 1e-12 : 1e-13;
      // 0.999999 as a double is off by up to 5.6e-17, which is 5.6e-11 of the tail, over ν of the quantile.
      const rounding = probability === '0.999999' ? 3e-10 : 0;
      expect(Math.abs(ours / Number(quantile) - 1), `${probability}, ${degreesOfFreedom}`).toBeLessThan(tolerance + rounding);
    }
  });
});
