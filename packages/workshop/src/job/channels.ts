import { kinds } from '@wallflow/units';

/** What a log column can hold: the name in the header and the kind of its unit. */
export const channels = {
  time: { kind: kinds.time, label: 'time' },
  engineSpeed: { kind: kinds.rotationalSpeed, label: 'engine speed' },
  airMassFlow: { kind: kinds.massFlow, label: 'air mass flow' },
  gasTemperature: { kind: kinds.temperature, label: 'gas temperature before the filter' },
  pressureDrop: { kind: kinds.differentialPressure, label: 'pressure drop over the filter' },
  coolantTemperature: { kind: kinds.temperature, label: 'coolant temperature' },
} as const;

export type ChannelName = keyof typeof channels;

/** One row of a log in SI; a channel without a value in that row is absent, never zero. */
export type LogRow = { readonly [K in ChannelName]?: number };
