import { type AnyCalculation, checkInputs } from '@wallflow/calculation';
import { prepare } from '@wallflow/calculation/prepare';
import { flowResistanceCalculation } from '@wallflow/exhaust/calculations/filter';
import { gasDensityCalculation } from '@wallflow/exhaust/calculations/gas';
import { bench, describe } from 'vitest';

// What counts is the ratio to `evaluate` within one run: a prepared row may take three times as long.

interface Compared {
  readonly calculation: AnyCalculation;
  /** By input: unit, first and last value. */
  readonly ranges: Readonly<Record<string, readonly [unit: string, from: number, to: number]>>;
}

const compared: readonly Compared[] = [
  { calculation: gasDensityCalculation, ranges: { gasPressure: ['bar', 1, 1.3], gasTemperature: ['degC', 100, 600] } },
  {
    calculation: flowResistanceCalculation,
    ranges: { pressureDrop: ['mbar', 20, 200], exhaustVolumeFlow: ['m3/h', 200, 600], gasTemperature: ['degC', 150, 450] },
  },
];

const count = 1000;

describe.each(compared.map((one) => [one.calculation.id, one] as const))('%s, 1000 rows', (_, { calculation, ranges }) => {
  const entries = Object.entries(ranges);
  const valueAt = (index: number, from: number, to: number) => from + ((to - from) * index) / count;
  const indices = Array.from({ length: count }, (_, index) => index);
  const numbers = indices.map((index) => Object.fromEntries(entries.map(([key, [, from, to]]) => [key, valueAt(index, from, to)])));
  const records = numbers.map((row) => Object.fromEntries(entries.map(([key, [unit]]) => [key, { value: row[key], unit }])));
  const texts = numbers.map((row) => Object.fromEntries(entries.map(([key, [unit]]) => [key, `${row[key]?.toFixed(2)} ${unit}`])));
  const checked = records.map((record) => {
    const found = checkInputs(calculation.spec.inputs, record);
    if (!found.ok) throw new Error('a row of the benchmark is refused');
    return found.input;
  });
  const columns = Object.fromEntries(entries.map(([key]) => [key, Float64Array.from(numbers, (row) => row[key] ?? Number.NaN)]));
  const prepared = prepare(calculation, { units: Object.fromEntries(entries.map(([key, [unit]]) => [key, unit])) });

  bench('evaluate', () => {
    for (const input of checked) calculation.evaluate(input);
  });
  bench('prepared, row by row', () => {
    for (const row of numbers) prepared.rowUnknown(row);
  });
  bench('prepared, columns', () => {
    prepared.columns(columns);
  });
  bench('run, records', () => {
    for (const record of records) calculation.runUnknown(record);
  });
  bench('run, texts', () => {
    for (const text of texts) calculation.runUnknown(text);
  });
});
