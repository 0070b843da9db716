import { checkInputs, list, optional, quantity } from '@wallflow/calculation';
import { differentialPressure, type Kind, type KindName, massFlow, rotationalSpeed, temperature } from '@wallflow/units';
import * as z from 'zod/mini';
import { type ChannelName, channelNames, channelRange, channels } from './channels.js';
import { givenNumber } from './given.js';
import type { JobIssue } from './job-issue.js';
import type { SteadyReading } from './steady.js';

/** One steady reading as a person writes it down; `0 rpm` is the reading with the engine off. */
export const readingFields = z.strictObject({
  engineSpeed: quantity(rotationalSpeed, {
    symbol: 'n',
    label: 'Engine speed',
    description: '0 rpm is the engine off: its pressure drop is the zero of the sensor.',
    range: channelRange('engineSpeed'),
    example: '2200 rpm',
    units: ['rpm'],
  }),
  pressureDrop: quantity(differentialPressure, {
    symbol: '\\Delta p',
    label: 'Pressure drop over the filter',
    range: channelRange('pressureDrop'),
    example: '95 mbar',
    units: ['mbar', 'kPa', 'hPa', 'bar', 'psi'],
  }),
  gasTemperature: optional(
    quantity(temperature, {
      symbol: 'T',
      label: 'Gas temperature before the filter',
      description: 'Needed while the engine runs.',
      range: channelRange('gasTemperature'),
      example: '206 °C',
    }),
  ),
  airMassFlow: optional(
    quantity(massFlow, {
      symbol: '\\dot m_a',
      label: 'Air mass flow',
      description: 'From the air-mass signal; left out, it is worked out from displacement and speed.',
      range: channelRange('airMassFlow'),
      example: '300 kg/h',
      units: ['kg/h', 'g/s'],
    }),
  ),
  coolantTemperature: optional(
    quantity(temperature, {
      symbol: 'T_c',
      label: 'Coolant temperature',
      range: channelRange('coolantTemperature'),
      example: '88 °C',
    }),
  ),
});

/** The readings of one side of the job as an input of a form. */
export const readingList = list(readingFields, {
  label: 'Readings',
  description: 'One with the engine off, one at warm idle, one or more at 2500 rpm and above, each held for half a minute.',
  min: 1,
  max: 50,
  example: [
    { engineSpeed: '0 rpm', pressureDrop: '0.6 mbar' },
    { engineSpeed: '2200 rpm', pressureDrop: '95 mbar', gasTemperature: '206 °C', airMassFlow: '300 kg/h' },
  ],
});

type Readings = { readonly ok: true; readonly steady: SteadyReading[] } | { readonly ok: false; readonly issues: JobIssue[] };

/** Check readings that were typed in; a channel that was left out is absent, never zero. */
export function typedReadings(raw: readonly unknown[], where: string): Readings {
  const checked = checkInputs(z.strictObject({ readings: readingList }), { readings: raw });
  if (!checked.ok) {
    const inRow = (path: readonly (string | number)[]) => path.slice(1);
    return { ok: false, issues: checked.issues.map((issue) => ({ code: 'input', where, issue: { ...issue, path: inRow(issue.path) } })) };
  }
  return {
    ok: true,
    steady: checked.input.readings.map((reading, index) => {
      const given = channelNames.filter((name) => name !== 'time' && reading[name] !== undefined);
      const typed = raw[index] as Readonly<Record<string, unknown>>;
      const of = <T>(value: (name: ChannelName) => T | undefined) =>
        Object.fromEntries(given.flatMap((name) => (value(name) === undefined ? [] : [[name, value(name)]])));
      return {
        from: 0,
        to: 0,
        samples: 1,
        mean: of((name) => (name === 'time' ? undefined : reading[name])),
        uncertainty: of((name) =>
          name === 'time' ? undefined : givenNumber(channels[name].kind as unknown as Kind<KindName>, typed[name])?.uncertainty,
        ),
        typed: of((name) => asTyped(typed[name])),
        restless: [],
        lost: [],
      };
    }),
  };
}

/** What a person typed, as a person reads it. */
export function asTyped(given: unknown): string | undefined {
  if (typeof given === 'string') return given.trim();
  if (typeof given !== 'object' || given === null) return undefined;
  const { value, unit, uncertainty } = given as Readonly<Record<'value' | 'unit' | 'uncertainty', unknown>>;
  if ((typeof value !== 'number' && typeof value !== 'string') || typeof unit !== 'string') return undefined;
  const off = typeof uncertainty === 'number' || typeof uncertainty === 'string' ? ` ± ${uncertainty}` : '';
  return `${String(value).trim()}${off} ${unit}`.trim();
}
