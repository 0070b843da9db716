import type { AnyCalculation, OutputField } from '@wallflow/calculation';
import { pathText } from '@wallflow/calculation';
import type { ReferenceCase } from './reference-case.js';

export interface Comparison {
  readonly key: string;
  readonly expected: string;
  readonly ours: string;
  readonly difference?: number;
  readonly tolerance?: number;
  readonly agrees: boolean;
}

interface Found {
  readonly field: OutputField;
  readonly value: unknown;
}

/** Look up `massFlow`, or `profile[2].velocity` in a table. */
function find(calculation: AnyCalculation, values: Readonly<Record<string, unknown>>, key: string): Found {
  const fields: Record<string, OutputField> = { ...calculation.spec.intermediates, ...calculation.spec.outputs };
  const table = /^(\w+)\[(-?\d+)\]\.(\w+)$/.exec(key);
  if (table === null) {
    const field = fields[key];
    if (field === undefined) throw new Error(`${calculation.id} has no output ${key}`);
    return { field, value: values[key] };
  }
  const [, name = '', row = '', column = ''] = table;
  const field = fields[name];
  if (field?.type !== 'table' || field.columns[column] === undefined) throw new Error(`${calculation.id} has no table cell ${key}`);
  const rows = values[name] as readonly Record<string, unknown>[];
  return { field: field.columns[column], value: rows.at(Number(row))?.[column] };
}

/** Half a unit in the last printed digit of a number such as `1.20e-3`. */
function halfLastDigit(printed: string): number {
  const number = /[-+−]?\d+(?:[.,](\d+))?(?:e([-+]?\d+))?/i.exec(printed);
  const decimals = number?.[1]?.length ?? 0;
  return 0.5 * 10 ** (Number(number?.[2] ?? 0) - decimals);
}

function compareQuantity(
  found: Found,
  key: string,
  printed: string,
  given: NonNullable<ReferenceCase['tolerance']>[string] | undefined,
): Comparison {
  if (found.field.type !== 'quantity') throw new Error(`${key} is not a quantity`);
  const { kind } = found.field;
  const parsed = kind.parse(printed);
  if (!parsed.ok) throw new Error(`expected ${key}: "${printed}" is not a ${kind.label} (${parsed.issue.code})`);
  if (typeof found.value !== 'number') return { key, expected: printed, ours: 'no value', agrees: false };
  const ours = kind.in(kind.si(found.value), parsed.unit);
  let tolerance = halfLastDigit(printed);
  if (given?.relative !== undefined) tolerance = given.relative * Math.abs(parsed.value);
  else if (given?.absolute !== undefined) {
    const absolute = /^\s*([\d.e+-]+)/i.exec(given.absolute);
    const unit = given.absolute.replace(/^\s*[\d.e+-]+\s*/i, '');
    if (absolute === null || (unit !== '' && !printed.trim().endsWith(unit))) {
      throw new Error(`${key}: the tolerance "${given.absolute}" is not in the unit of "${printed}"`);
    }
    tolerance = Number(absolute[1]);
  }
  const difference = ours - parsed.value;
  const rounding = 1e-12 * Math.abs(parsed.value);
  const agrees = Math.abs(difference) <= tolerance + rounding;
  return { key, expected: printed, ours: kind.format(kind.si(found.value), parsed.unit, { digits: 8 }), difference, tolerance, agrees };
}

/** Run a case and compare every expected value; the comparisons are also what the site publishes. */
export function compareCase(calculation: AnyCalculation, reference: ReferenceCase): readonly Comparison[] {
  const result = calculation.run(reference.inputs);
  const wanted = reference.expectedIssue;
  if (wanted !== undefined) {
    const codes = result.ok ? [] : result.issues;
    const hit = codes.some((issue) => issue.code === wanted.code && (wanted.path === undefined || pathText(issue.path) === wanted.path));
    const ours = result.ok ? 'accepted' : codes.map((issue) => `${issue.code} ${pathText(issue.path)}`).join(', ');
    return [{ key: 'issue', expected: `${wanted.code} ${wanted.path ?? ''}`.trim(), ours, agrees: hit }];
  }
  if (reference.expected === undefined) throw new Error(`${reference.id} expects nothing`);
  if (!result.ok) {
    const ours = result.issues.map((issue) => `${issue.code} ${pathText(issue.path)}`).join(', ');
    return Object.entries(reference.expected).map(([key, expected]) => ({ key, expected: String(expected), ours, agrees: false }));
  }
  const values = { ...result.intermediates, ...result.outputs };
  return Object.entries(reference.expected).map(([key, expected]) => {
    const found = find(calculation, values, key);
    if (found.field.type === 'quantity') return compareQuantity(found, key, String(expected), reference.tolerance?.[key]);
    return { key, expected: String(expected), ours: String(found.value), agrees: String(found.value) === String(expected) };
  });
}
