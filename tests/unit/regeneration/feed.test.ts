import { dropFeed, type FeedPoint, feedAt, feedSegments, rampFeed, steadyFeed } from '@wallflow/exhaust';
import { describe, expect, it } from 'vitest';

const gas = { massFlow: 0.04, temperature: 900, oxygen: 0.08, nitrogenDioxide: 0 };
const idle = { massFlow: 0.01, temperature: 500, oxygen: 0.16, nitrogenDioxide: 0 };

function temperatures(points: readonly FeedPoint[], duration: number, times: readonly number[]): number[] {
  const segments = feedSegments(points, duration);
  return times.map((time) => {
    const segment = segments.find((part) => time <= part.to);
    segment?.at(time);
    return segment?.temperature ?? Number.NaN;
  });
}

describe('feed of a regeneration', () => {
  it('stays as it is before the first and after the last point', () => {
    const points = [
      { time: 10, ...idle },
      { time: 20, ...gas },
    ];
    expect(temperatures(points, 40, [0, 10, 15, 20, 40])).toEqual([500, 500, 700, 900, 900]);
  });

  it('makes one segment of steady gas, and cuts a ramp that is longer than the run', () => {
    expect(feedSegments(steadyFeed(gas), 100).map(({ from, to }) => [from, to])).toEqual([[0, 100]]);
    const segments = feedSegments(rampFeed(gas, 300, 200), 100);
    expect(segments.map(({ from, to }) => [from, to])).toEqual([[0, 100]]);
    expect(temperatures(rampFeed(gas, 300, 200), 100, [50, 100])).toEqual([450, 600]);
  });

  it('jumps where two points have one time: what ends there keeps its value', () => {
    const points = dropFeed(rampFeed(gas, 300, 200), 100, idle);
    expect(points.map(({ time, temperature }) => [time, temperature])).toEqual([
      [0, 300],
      [100, 600],
      [100, 500],
    ]);
    expect(temperatures(points, 300, [50, 100, 100.001, 300])).toEqual([450, 600, 500, 500]);
    expect(feedSegments(points, 300)).toHaveLength(2);
  });

  it('leaves out what lies behind the end, also a drop that never comes', () => {
    expect(feedSegments(dropFeed(steadyFeed(gas), 100, idle), 60)).toHaveLength(1);
    expect(temperatures(dropFeed(steadyFeed(gas), 100, idle), 60, [60])).toEqual([900]);
  });

  it('reads a feed between its points', () => {
    const ramp = rampFeed(gas, 300, 200);
    expect(feedAt(ramp, 0).temperature).toBe(300);
    expect(feedAt(ramp, 100).temperature).toBe(600);
    expect(feedAt(ramp, 500).temperature).toBe(900);
  });
});
