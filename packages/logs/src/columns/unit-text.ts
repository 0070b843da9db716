import { getKind } from '@wallflow/units';
import type { Channel } from '../channels/channel.js';
import { type Scale, scaleOf } from '../channels/scale.js';

/** Unit of a column as it was understood. */
export interface ColumnUnit {
  /** Id of the unit in the channel's kind. */
  readonly id: string;
  readonly scale: Scale;
  /** Several units are spelled like this; this is the conventional one, and the others differ by less than a reading shows. */
  readonly conventional?: true;
}

// Spellings that tools write and that no other text has: German words, lost degree signs, letters that were run together.
const spellings: Readonly<Record<string, string>> = {
  'grad c': 'degC',
  grad: 'degC',
  'grad celsius': 'degC',
  '?c': 'degC',
  '\ufffdc': 'degC',
  'grad f': 'degF',
  '?f': 'degF',
  '\ufffdf': 'degF',
  upm: 'rpm',
  umin: 'rpm',
  'u/m': 'rpm',
  'umdr/min': 'rpm',
  sek: 's',
  sekunde: 's',
  sekunden: 's',
  secs: 's',
  msec: 'ms',
  msek: 'ms',
  millis: 'ms',
  milliseconds: 'ms',
  millisekunden: 'ms',
  minuten: 'min',
  std: 'h',
  stunden: 'h',
  hrs: 'h',
  'kg/std': 'kg/h',
  kgph: 'kg/h',
  'kg/hr': 'kg/h',
  'gm/s': 'g/s',
  gps: 'g/s',
  'l/std': 'L/h',
  'ltr/h': 'L/h',
  mb: 'mbar',
  prozent: '%',
  percent: '%',
  '1/ccm': '1/cm3',
  '#/ccm': '1/cm3',
  'p/ccm': '1/cm3',
  gramm: 'g',
  grams: 'g',
};

// A capital H is the German stroke, a small one the hour.
const perStroke =
  /\s*(?:\/|\bper\b|\bpro\b)\s*(?:[Ss](?:TROKES?|trokes?|TR|tr|TK|tk)|HUB|[Hh]ub|H|[Aa]sp|ASP|[Cc]yc(?:le)?|CYC|[Cc]yl|CYL|[Zz]yl|ZYL)\.?$/;

function known(channel: Channel, text: string): ColumnUnit | undefined {
  const kind = getKind(channel.kind);
  if (kind === undefined) return undefined;
  const parsed = kind.parse(1, text);
  if (parsed.ok) {
    const scale = scaleOf(channel.kind, parsed.unit);
    return scale && { id: parsed.unit, scale };
  }
  if (parsed.issue.code !== 'ambiguous_unit') return undefined;
  // Inches of water at 4 °C, at 60 °F, by convention: half a percent apart, less than a column of readings tells.
  const usual = parsed.issue.candidates.find((id) => id.endsWith('_conventional'));
  const scale = usual === undefined ? undefined : scaleOf(channel.kind, usual);
  return scale && usual !== undefined ? { id: usual, scale, conventional: true } : undefined;
}

/** The unit that a text means for a channel; undefined where it means none of its kind. */
export function unitOfText(channel: Channel, text: string): ColumnUnit | undefined {
  let given = text.trim().replace(/\s+/g, ' ');
  if (given === '' && channel.kind !== 'ratio') return undefined;
  if (channel.perStroke === true) {
    if (!perStroke.test(given)) return undefined;
    given = given.replace(perStroke, '');
  }
  const folded = given.toLowerCase().replace(/[.]$/, '');
  const own = Object.hasOwn(spellings, folded) ? spellings[folded] : undefined;
  const found = known(channel, given) ?? (own === undefined ? undefined : known(channel, own));
  if (found !== undefined) return found;
  // A title in capitals has its unit in capitals.
  return given === given.toUpperCase() && given !== folded ? known(channel, folded) : undefined;
}

/** The reading `1` has no unit: a state, a ratio. */
export function unitOne(channel: Channel): ColumnUnit | undefined {
  const scale = channel.kind === 'ratio' ? scaleOf('ratio', '1') : undefined;
  return scale && { id: '1', scale };
}
