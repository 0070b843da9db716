import { checkInputs, list, quantity } from '@wallflow/calculation';
import { differentialPressure, massFlow, rotationalSpeed, temperature } from '@wallflow/units';
import * as z from 'zod';
import { channels, type LogRow } from './channels.js';
import type { JobIssue } from './job-issue.js';
import type { SteadyReading } from './steady.js';

/** One steady reading as a person writes it down; `0 rpm` is the reading with the engine off. */
export const readingFields = z.strictObject({
  engineSpeed: quantity(rotationalSpeed, {
    symbol: 'n',
    label: 'Engine speed',
    description: '0 rpm is the engine off: its pressure drop is the zero of the sensor.',
    min: '0 rpm',
    max: '6000 rpm',
    example: '2200 rpm',
    units: ['rpm'],
  }),
  pressureDrop: quantity(differentialPressure, {
    symbol: '\\Delta p',
    label: 'Pressure drop over the filter',
    min: '-200 mbar',
    max: '2000 mbar',
    example: '95 mbar',
    units: ['mbar', 'kPa', 'hPa', 'bar', 'psi'],
  }),
  gasTemperature: quantity(temperature, {
    symbol: 'T',
    label: 'Gas temperature before the filter',
    description: 'Needed while the engine runs.',
    min: '-40 °C',
    max: '1000 °C',
    example: '206 °C',
  }).optional(),
  airMassFlow: quantity(massFlow, {
    symbol: '\\dot m_a',
    label: 'Air mass flow',
    description: 'From the air-mass signal; left out, it is worked out from displacement and speed.',
    min: '0 kg/h',
    max: '5000 kg/h',
    example: '300 kg/h',
    units: ['kg/h', 'g/s'],
  }).optional(),
  coolantTemperature: quantity(temperature, {
    symbol: 'T_c',
    label: 'Coolant temperature',
    min: '-40 °C',
    max: '150 °C',
    example: '88 °C',
  }).optional(),
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
    steady: checked.input.readings.map((reading) => {
      const given = Object.keys(channels).filter((name) => reading[name as keyof typeof reading] !== undefined);
      const mean: LogRow = Object.fromEntries(given.map((name) => [name, reading[name as keyof typeof reading]]));
      return { from: 0, to: 0, samples: 1, mean, deviation: {} };
    }),
  };
}
