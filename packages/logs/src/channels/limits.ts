import type { Channel } from './channel.js';
import { scaleOf } from './scale.js';

function toSI(channel: Channel, value: number): number {
  const scale = scaleOf(channel.kind, channel.units[0] ?? '');
  return scale === undefined ? value : (value + scale.offset) * scale.factor;
}

/** The limits of a channel in SI. */
export function limitsInSI(channel: Channel): readonly [least: number, greatest: number] {
  return [toSI(channel, channel.limits[0]), toSI(channel, channel.limits[1])];
}

/** The readings of a channel in SI that mean an open circuit. */
export function endStopsInSI(channel: Channel): number[] {
  return (channel.endStops ?? []).map((stop) => toSI(channel, stop));
}
