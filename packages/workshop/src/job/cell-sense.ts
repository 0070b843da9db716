import type { Kind, KindName } from '@wallflow/units';
import { type ChannelName, channels } from './channels.js';

/** Why a cell that is a number is no reading. */
export type SenselessCell = 'lost_signal' | 'beyond_limits';

interface Limits {
  readonly min: number;
  readonly max: number;
}

function limitOf(kind: Kind<KindName>, text: string): number {
  const parsed = kind.parse(text);
  if (!parsed.ok) throw new Error(`no limit ${text}`);
  return parsed.quantity;
}

/** The limits of typed readings, for the cells of a log. Time has none. */
const limits: Readonly<Partial<Record<ChannelName, Limits>>> = Object.fromEntries(
  Object.entries(channels).flatMap(([name, channel]) => {
    if (!('min' in channel)) return [];
    const kind = channel.kind as unknown as Kind<KindName>;
    return [[name, { min: limitOf(kind, channel.min), max: limitOf(kind, channel.max) }]];
  }),
);

/**
 * All ones in 16 bits, signed or not, in any decimal scale: 65535, 6553.5, 655.35, and the same from -40 on for temperatures.
 * That is how a network or a tool shows a signal that is lost (common practice, no source).
 */
function isAllOnes(text: string): boolean {
  const digits = text.replace(/^[+-]/, '').replace(/[.,]/, '').replace(/^0+/, '');
  return digits === '65535' || digits === '32767' || digits === '32768';
}

/**
 * Temperatures are sent from -40 on: nothing at all reads -40, all ones 6513.5 or 65495 °C. All ones in 8 bits are 215 °C, which a
 * gas may well have, so that counts for the coolant only.
 */
const withoutSignal: Readonly<Partial<Record<ChannelName, readonly number[]>>> = {
  gasTemperature: [-40, 6513.5, 65495],
  coolantTemperature: [-40, 215, 6513.5, 65495],
};

function isTemperatureWithoutSignal(name: ChannelName, kelvin: number): boolean {
  return (withoutSignal[name] ?? []).some((celsius) => Math.abs(kelvin - 273.15 - celsius) < 1e-6);
}

/** Why a number cannot be a reading of its channel; undefined when it can. */
export function senseless(name: ChannelName, text: string, value: number): SenselessCell | undefined {
  if (name === 'time') return undefined;
  if (isAllOnes(text) || isTemperatureWithoutSignal(name, value)) return 'lost_signal';
  const range = limits[name];
  const slack = range === undefined ? 0 : 1e-9 * Math.max(Math.abs(range.min), Math.abs(range.max));
  return range !== undefined && (value < range.min - slack || value > range.max + slack) ? 'beyond_limits' : undefined;
}
