import { usualRule } from '@wallflow/logs';
import { describe, expect, it } from 'vitest';
import { summarise } from '../../../packages/logs/src/steady/summary.js';
import { reading } from './drive.js';

describe('the mean of a stretch', () => {
  it('is the plain mean and deviation where nothing is wild', () => {
    // CFR 40 part 1065.602: 10.60, 11.91, 11.09 have the mean 11.20 and the standard deviation 0.6619.
    const { mean, deviation, wild } = summarise([10.6, 11.91, 11.09])!;
    expect(mean).toBeCloseTo(11.2, 12);
    expect(deviation).toBeCloseTo(0.6619, 4);
    expect(wild).toEqual([]);
  });

  it('leaves wild values out and says which', () => {
    const values = Array.from({ length: 40 }, (_, index) => 18 + [-0.1, 0, 0.1][index % 3]!);
    const spoiled = values.map((value, index) => (index % 8 === 0 ? 500 : value));
    expect(summarise(spoiled)?.wild).toEqual([0, 8, 16, 24, 32]);
    expect(summarise(spoiled)?.mean).toBeCloseTo(18, 2);
  });

  it('keeps the last digit of a signal that mostly stands on one value', () => {
    const values = Array.from({ length: 50 }, (_, index) => (index % 3 === 0 ? 0.1 : 0));
    expect(summarise(values)).toMatchObject({ samples: 50, wild: [] });
    expect(summarise([...new Array(49).fill(18), 1500])).toMatchObject({ mean: 18, deviation: 0, wild: [49] });
  });
});

describe('a steady stretch', () => {
  const stretch = (from: number, seconds: number, speed: number) =>
    Array.from({ length: seconds }, (_, index) => `${from + index},${speed},5`);
  const windows = (lines: readonly string[]) =>
    reading(`Time [s],Engine speed [rpm],DPF dp [mbar]\n${lines.join('\n')}\n`).windows.map(({ from, to }) => [from, to]);

  it('is cut where the speed changes and leaves the settling time out', () => {
    expect(windows([...stretch(0, 60, 800), ...stretch(60, 60, 3000)])).toEqual([
      [10, 59],
      [70, 119],
    ]);
  });

  it('is dropped when it is too short', () => {
    expect(windows(stretch(0, usualRule.settling + usualRule.shortest, 800))).toEqual([]);
    expect(windows(stretch(0, usualRule.settling + usualRule.shortest + 1, 800))).toHaveLength(1);
  });

  it('has a ± of its resolution where the signal does not move', () => {
    const lines = [...stretch(0, 60, 800), ...stretch(60, 60, 3000)].map((line, index) =>
      line.replace(/5$/, index < 60 ? '5' : index % 2 === 0 ? '41' : '43'),
    );
    const [still] = reading(`Time [s],Engine speed [rpm],DPF dp [mbar]\n${lines.join('\n')}\n`).windows;
    // A step of 2 mbar: 200 Pa over the square root of 12.
    expect(still?.values.pressureDrop?.plusMinus).toBeCloseTo(200 / Math.sqrt(12), 6);
  });
});
