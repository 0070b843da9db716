import type { FeedPoint } from './kernel-feed.js';

/** Gas at the inlet without its time. */
export type FeedState = Omit<FeedPoint, 'time'>;

/** The same gas all the time. */
export function steadyFeed(gas: FeedState): FeedPoint[] {
  return [{ time: 0, ...gas }];
}

/** From one inlet temperature in K to that of the gas in a time in s, then steady. */
export function rampFeed(gas: FeedState, from: number, duration: number): FeedPoint[] {
  return [
    { time: 0, ...gas, temperature: from },
    { time: duration, ...gas },
  ];
}

/** A feed that at a time in s jumps to another gas and stays there: the drop to idle. */
export function dropFeed(feed: readonly FeedPoint[], at: number, idle: FeedState): FeedPoint[] {
  const before = feed.filter((point) => point.time < at);
  const last = feedAt(feed, at);
  return [...before, { ...last, time: at }, { time: at, ...idle }];
}

/** The feed at a time, linear between its points. */
export function feedAt(feed: readonly FeedPoint[], time: number): FeedPoint {
  const after = feed.findIndex((point) => point.time >= time);
  const next = feed[after];
  const previous = feed[after - 1];
  if (next === undefined) return { ...feed.at(-1)!, time };
  if (previous === undefined || next.time === previous.time) return { ...next, time };
  const share = (time - previous.time) / (next.time - previous.time);
  const mix = (key: keyof FeedState) => previous[key] + share * (next[key] - previous[key]);
  return {
    time,
    massFlow: mix('massFlow'),
    temperature: mix('temperature'),
    oxygen: mix('oxygen'),
    nitrogenDioxide: mix('nitrogenDioxide'),
  };
}
