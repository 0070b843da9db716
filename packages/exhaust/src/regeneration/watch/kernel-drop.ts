import { sampleBefore, type WatchLimits, type WatchSample } from './kernel.js';

/**
 * Share by which the pressure drop rose over the watching time at steady engine speed; undefined when it did not. The drop
 * is brought to one temperature by T^1.7, as viscosity over density of a gas goes at equal mass flow.
 */
export function risingDrop(log: readonly WatchSample[], index: number, { dropTime, steadySpeed }: WatchLimits): number | undefined {
  const before = sampleBefore(log, index, dropTime);
  const now = correctedDrop(log[index]!);
  const then = before === undefined ? undefined : correctedDrop(before);
  if (before === undefined || now === undefined || then === undefined || !(then > 0)) return undefined;
  let [slowest, fastest] = [Infinity, -Infinity];
  for (let i = index; i >= 0 && log[i]!.time >= before.time; i -= 1) {
    const speed = log[i]!.engineSpeed;
    if (speed === undefined) return undefined;
    slowest = Math.min(slowest, speed);
    fastest = Math.max(fastest, speed);
  }
  if (fastest > slowest * (1 + steadySpeed)) return undefined;
  return now > then ? now / then - 1 : undefined;
}

function correctedDrop({ pressureDrop, inlet, outlet }: WatchSample): number | undefined {
  const temperature = inlet !== undefined && outlet !== undefined ? (inlet + outlet) / 2 : (inlet ?? outlet);
  return pressureDrop === undefined || temperature === undefined ? undefined : pressureDrop * temperature ** -1.7;
}
