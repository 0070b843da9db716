import type { Batch, ChannelName } from '@wallflow/logs';
import {
  changePoint,
  driveResistance,
  type FlowBlock,
  FlowBlocks,
  fitLineBothErrors,
  lagAndSign,
  nextService,
  RegenerationFinder,
  sensorZero,
  smoothSeries,
} from '@wallflow/logs/analysis';
import { describe, expect, it } from 'vitest';
import { log, reading } from './drive.js';

/** Even numbers between 0 and 1, and normal ones, the same in every run. */
function luck(seed: number) {
  // mulberry32: the products of a plain congruence lose digits in doubles.
  let state = seed;
  const even = () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return (((mixed ^ (mixed >>> 14)) >>> 0) + 0.5) / 4_294_967_296;
  };
  return { even, normal: () => Math.sqrt(-2 * Math.log(even())) * Math.cos(2 * Math.PI * even()) };
}

const batch = (rows: readonly { readonly time: number; readonly [channel: string]: number }[]): Batch => ({
  rows: rows.length,
  time: Float64Array.from(rows, ({ time }) => time),
  lines: Float64Array.from(rows, (_, index) => index + 2),
  values: new Map(
    Object.keys(rows[0] ?? {})
      .filter((key) => key !== 'time')
      .map((key) => [key as ChannelName, Float64Array.from(rows, (row) => row[key] ?? Number.NaN)]),
  ),
});

describe('the zero of the sensor', () => {
  it('is the mean with the engine off, and says how it is known', () => {
    const zero = sensorZero(reading(log()).windows);
    expect(zero?.zero).toBeCloseTo(60, 0);
    expect(zero).toMatchObject({ stretches: 1, drift: 0, confidence: 'one stretch' });
  });

  it('is confirmed by a second stretch, or contradicted', () => {
    const [off] = reading(log()).windows;
    const shifted = (by: number) => ({
      ...off!,
      values: { ...off!.values, pressureDrop: { ...off!.values.pressureDrop!, mean: off!.values.pressureDrop!.mean + by } },
    });
    expect(sensorZero([off!, shifted(5)])).toMatchObject({ stretches: 2, confidence: 'confirmed' });
    expect(sensorZero([off!, shifted(400)])).toMatchObject({ confidence: 'stretches disagree', drift: expect.closeTo(400, 6) });
  });

  it('is unknown where the engine never stands', () => {
    expect(sensorZero(reading(log()).windows.slice(1))).toBeUndefined();
  });
});

describe('lag and sign', () => {
  const times = Array.from({ length: 1200 }, (_, index) => index / 10);
  const speed = times.map((time) => 20 + 12 * Math.sin(time / 7) + 5 * Math.sin(time / 2.3));
  const late = (by: number, factor: number) =>
    times.map((time) => factor * (20 + 12 * Math.sin((time - by) / 7) + 5 * Math.sin((time - by) / 2.3)));

  it.each([0, 0.4, 1.25, 3])('finds a lag of %s s', (by) => {
    const found = lagAndSign(times, speed, late(by, 100));
    expect(found?.lag).toBeCloseTo(by, 1);
    expect(found?.sign).toBe('same');
  });

  it('sees hoses that were swapped', () => {
    expect(lagAndSign(times, speed, late(0.5, -100))).toMatchObject({ sign: 'opposite' });
  });

  it('tells nothing where nothing is to be told', () => {
    const { normal } = luck(3);
    expect(
      lagAndSign(
        times,
        speed,
        times.map(() => normal()),
      )?.sign,
    ).toBe('none');
    expect(
      lagAndSign(
        times,
        times.map(() => 20),
        late(0, 1),
      ),
    ).toBeUndefined();
    expect(lagAndSign([0, 1], [1, 2], [1, 2])).toBeUndefined();
  });
});

describe('a line with errors in both coordinates', () => {
  // Pearson's data with York's weights: 5.47991022 and -0.480533407 with 0.294970735 and 0.0579850090 (D. York et al., Am. J. Phys. 72
  // (2004) 367, table II; from memory).
  it('is that of Pearson’s data with York’s weights', () => {
    const x = [0, 0.9, 1.8, 2.6, 3.3, 4.4, 5.2, 6.1, 6.5, 7.4];
    const y = [5.9, 5.4, 4.4, 4.6, 3.5, 3.7, 2.8, 2.8, 2.4, 1.5];
    const weightX = [1000, 1000, 500, 800, 200, 80, 60, 20, 1.8, 1];
    const weightY = [1, 1.8, 4, 8, 20, 20, 70, 70, 100, 500];
    const fit = fitLineBothErrors(
      x.map((value, i) => ({ x: value, y: y[i]!, uncertaintyX: weightX[i]! ** -0.5, uncertaintyY: weightY[i]! ** -0.5 })),
    );
    expect(fit?.intercept).toBeCloseTo(5.47991022, 7);
    expect(fit?.slope).toBeCloseTo(-0.480533407, 8);
    expect(fit?.interceptUncertainty).toBeCloseTo(0.294970735, 6);
    expect(fit?.slopeUncertainty).toBeCloseTo(0.057985009, 7);
  });

  it('is none for points of one place or without uncertainty', () => {
    const point = { x: 1, y: 1, uncertaintyX: 0.1, uncertaintyY: 0.1 };
    expect(fitLineBothErrors([point, point, point])).toBeUndefined();
    expect(fitLineBothErrors([{ ...point, uncertaintyX: 0, uncertaintyY: 0 }, point, { ...point, x: 2 }])).toBeUndefined();
  });
});

describe('the resistance over a drive', () => {
  const truth = { zero: 60, viscous: 2.4e9, inertial: 9e4 };
  /** Blocks of flows from 0.02 to 0.12 m³/s, each with its own error of the flow and the drop. */
  function blocks(seed: number, flowError: number, dropError: number, { zero, viscous, inertial } = truth): FlowBlock[] {
    const { even, normal } = luck(seed);
    return Array.from({ length: 150 }, () => {
      const flow = 0.02 + 0.1 * even();
      const [mu, rho] = [2.4e-5 + 4e-6 * even(), 0.9 - 0.2 * even()];
      const drop = zero + viscous * mu * flow + inertial * rho * flow ** 2 + dropError * normal();
      const seen = flow * (1 + flowError * normal());
      return { viscous: mu * seen, inertial: rho * seen ** 2, drop, scatter: 0 };
    });
  }

  it('is found exactly where nothing is wrong', () => {
    const found = driveResistance(blocks(1, 0, 0));
    if (!found.ok) throw new Error(found.problem);
    expect(found.resistance.viscous / truth.viscous).toBeCloseTo(1, 8);
    expect(found.resistance.inertial / truth.inertial).toBeCloseTo(1, 8);
    expect(found.resistance.zero).toBeCloseTo(truth.zero, 4);
  });

  it('lies within twice its uncertainty about as often as it should, with errors in flow and drop', () => {
    const far: number[] = [];
    for (let seed = 1; seed <= 60; seed += 1) {
      const found = driveResistance(blocks(seed, 0.03, 30));
      if (!found.ok) throw new Error(found.problem);
      far.push((found.resistance.viscous - truth.viscous) / found.resistance.uncertainty.viscous);
      expect(found.resistance.reducedChiSquare).toBeGreaterThan(0.5);
      expect(found.resistance.reducedChiSquare).toBeLessThan(1.6);
    }
    // 95 % of 60 is 57; fewer than 50 within twice, or all within one, has a chance below one in a thousand.
    expect(far.filter((value) => Math.abs(value) < 2).length).toBeGreaterThanOrEqual(50);
    expect(far.filter((value) => Math.abs(value) < 1).length).toBeLessThan(56);
  });

  it('sets a part that may as well be nothing to nothing, and refuses a drop that falls', () => {
    const found = driveResistance(blocks(5, 0.01, 40, { zero: 0, viscous: 2.4e9, inertial: 0 }));
    expect(found.ok ? found.resistance.inertial : -1).toBeGreaterThanOrEqual(0);
    expect(driveResistance(blocks(5, 0.01, 10, { zero: 0, viscous: -2.4e9, inertial: 0 }))).toEqual({ ok: false, problem: 'not_physical' });
  });

  it('is not told by one flow or a few blocks', () => {
    expect(driveResistance(blocks(1, 0, 0).slice(0, 5))).toEqual({ ok: false, problem: 'too_few_blocks' });
    const [one] = blocks(1, 0, 0);
    expect(driveResistance(Array.from({ length: 20 }, () => one!))).toEqual({ ok: false, problem: 'one_flow_only' });
  });

  it('takes its blocks from quiet seconds of the rows, as air at the temperature of the gas', () => {
    const flows = new FlowBlocks();
    flows.add(
      batch(
        Array.from({ length: 20 }, (_, time) => ({
          time,
          airMassFlow: time < 10 ? 0.05 : 0.05 * (1 + (time - 10) / 5),
          gasTemperature: 473.15,
          pressureDrop: 4000,
        })),
      ),
    );
    const found = flows.end();
    expect(found).toHaveLength(2);
    // Air at 200 °C: 2.571e-5 Pa s by Sutherland's law; 0.7460 kg/m³ at one atmosphere by the gas law, so 0.06702 m³/s.
    expect(found[0]!.viscous).toBeCloseTo(2.571e-5 * 0.06702, 9);
    expect(found[0]!.inertial).toBeCloseTo(0.746 * 0.06702 ** 2, 6);
  });
});

describe('regenerations', () => {
  const gas = (minutes: readonly (readonly [minutes: number, celsius: number])[]) => {
    const rows: { time: number; gasTemperature: number; sootMass: number }[] = [];
    let burnt = 0;
    for (const [length, celsius] of minutes) {
      for (let second = 0; second < length * 60; second += 1) {
        if (celsius >= 550) burnt += 1;
        rows.push({ time: rows.length, gasTemperature: celsius + 273.15, sootMass: Math.max(0.002, 0.03 - burnt * 5e-5) });
      }
    }
    const finder = new RegenerationFinder();
    finder.add(batch(rows));
    return finder.end();
  };

  it('are found with their length, temperature and soot', () => {
    const [found, ...more] = gas([
      [10, 250],
      [12, 600],
      [10, 300],
    ]);
    expect(more).toEqual([]);
    expect(found).toMatchObject({ from: 600, to: 1320, quality: 'whole', sootBefore: expect.closeTo(0.03, 6), sootAfter: 0.002 });
    expect(found!.peak - 273.15).toBeCloseTo(600, 9);
    expect(Math.abs(found!.burning - 720)).toBeLessThan(2);
  });

  it('are short, or cut off by the log', () => {
    expect(
      gas([
        [5, 250],
        [5, 600],
        [10, 300],
      ]),
    ).toMatchObject([{ quality: 'short' }]);
    expect(
      gas([
        [5, 250],
        [5, 600],
      ]),
    ).toMatchObject([{ quality: 'cut off by the log' }]);
  });

  it('are not made of a short pull or of a pause', () => {
    expect(
      gas([
        [5, 250],
        [0.3, 600],
        [5, 250],
      ]),
    ).toEqual([]);
    expect(
      gas([
        [5, 250],
        [6, 600],
        [0.5, 400],
        [6, 600],
        [5, 250],
      ]),
    ).toHaveLength(1);
  });
});

describe('a trend', () => {
  // NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4: weight 0.3, start 50, s 2.0539 (from memory).
  const nist = [52, 47, 53, 49.3, 50.1, 47, 51, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];

  it('is smoothed as the handbook does, with its limits', () => {
    const { values, upper, lower, alarm } = smoothSeries(nist, 50, 2.0539);
    const printed = [
      50.6, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33, 50.11, 49.36, 49.52, 50.05, 49.38, 49.92, 50.73, 51.23, 51.94,
      51.99,
    ];
    for (const [index, value] of printed.entries()) expect(Math.abs(values[index]! - value)).toBeLessThan(0.0051);
    expect(upper).toBeCloseTo(52.5884, 4);
    expect(lower).toBeCloseTo(47.4115, 3);
    expect(alarm).toBeUndefined();
    expect(smoothSeries([...nist, 58, 58, 58], 50, 2.0539).alarm).toBe(20);
  });

  it('changes where its mean does, and not by chance', () => {
    const { normal } = luck(9);
    const flat = Array.from({ length: 30 }, () => 10 + normal());
    expect(changePoint(flat)).toBeUndefined();
    expect(changePoint(flat.map((value, index) => (index < 18 ? value : value + 5)))).toMatchObject({ at: 18 });
    expect(changePoint([1, 2, 3])).toBeUndefined();
  });

  it('reaches a limit where its line does', () => {
    expect(nextService([0, 1, 2, 3], [10, 12, 14, 16], 30)).toMatchObject({
      due: expect.closeTo(10, 9),
      earliest: expect.closeTo(10, 6),
      latest: expect.closeTo(10, 6),
    });
    expect(nextService([0, 1, 2, 3], [16, 14, 12, 10], 30)).toBeUndefined();
    expect(nextService([0, 1], [1, 2], 30)).toBeUndefined();
  });

  it('has an interval that holds the true day as often as it says', () => {
    let [held, open] = [0, 0];
    for (let seed = 1; seed <= 400; seed += 1) {
      const { normal } = luck(seed * 77);
      const times = Array.from({ length: 12 }, (_, index) => index * 30);
      const found = nextService(
        times,
        times.map((time) => 10 + 0.02 * time + 1.2 * normal()),
        30,
      );
      if (found === undefined || found.latest === undefined) open += 1;
      if (found !== undefined && found.earliest <= 1000 && (found.latest ?? Infinity) >= 1000) held += 1;
    }
    // 380 of 400; below 360 or above 396 has a chance of less than one in a thousand.
    expect(held + 0).toBeGreaterThanOrEqual(360);
    expect(held).toBeLessThanOrEqual(396);
    expect(open).toBeLessThan(100);
  });
});
