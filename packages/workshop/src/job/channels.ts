import { kinds } from '@wallflow/units';

/**
 * What a log column can hold: the name in the header, the kind of its unit, the limits within which a reading makes sense, typed or
 * logged, and how far a sound sensor may scatter about the middle of a steady stretch (as a share, and at least by that much).
 */
export const channels = {
  time: { kind: kinds.time, label: 'time' },
  engineSpeed: { kind: kinds.rotationalSpeed, label: 'engine speed', min: '0 rpm', max: '6000 rpm', scatter: { share: 0.1, floor: 2 } },
  airMassFlow: { kind: kinds.massFlow, label: 'air mass flow', min: '0 kg/h', max: '5000 kg/h', scatter: { share: 0.2, floor: 0.002 } },
  gasTemperature: {
    kind: kinds.temperature,
    label: 'gas temperature before the filter',
    min: '-40 °C',
    max: '1000 °C',
    scatter: { share: 0, floor: 40 },
  },
  pressureDrop: {
    kind: kinds.differentialPressure,
    label: 'pressure drop over the filter',
    min: '-200 mbar',
    max: '2000 mbar',
    scatter: { share: 0.3, floor: 500 },
  },
  coolantTemperature: {
    kind: kinds.temperature,
    label: 'coolant temperature',
    min: '-40 °C',
    max: '150 °C',
    scatter: { share: 0, floor: 10 },
  },
} as const;

export type ChannelName = keyof typeof channels;

/** The limits of a channel as an input of its own has them. */
export function channelRange(name: Exclude<ChannelName, 'time'>): string {
  const { min, max } = channels[name];
  return `${min} <= x <= ${max}`;
}

/** The names in the order of the table. */
export const channelNames = Object.keys(channels) as ChannelName[];

/** One row of a log in SI; a channel without a value in that row is absent, never zero. */
export type LogRow = { readonly [K in ChannelName]?: number } & {
  /** Line of the file, for what has to be said of the row. */
  readonly line?: number;
};
