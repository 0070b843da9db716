import { UnitError } from '@wallflow/units';
import type * as z from 'zod/mini';
import { computing, constantValues } from '../compute.js';
import { type Calculation, type Constants, type Failure, isRefusal, type Refusal, type Success } from '../definition.js';
import { fieldOf } from '../field.js';
import type { Assumption, Warning } from '../issue.js';
import { withExample } from '../issues-from-zod.js';
import { withLabels } from '../labels.js';
import { declared, type OutputField, type Outputs } from '../outputs.js';
import { shapeOf } from '../walk.js';
import { type ColumnOptions, columnResult, type RowValues } from './columns.js';
import { rulingOf } from './ruling.js';
import { type Slot, slotsOf, unsettled } from './slots.js';
import type { ColumnResult, InputColumns, InputUnits, ResultUnits, Row, RowResult, RowSuccess } from './types.js';

type Values = Readonly<Record<string, unknown>>;

/** What is the same for all rows. */
export interface PrepareOptions<U, G> {
  /** The unit of each input that comes as a bare number. */
  readonly units?: U;
  /** Inputs of all rows alike, as `run` takes them; a row may still bring its own. */
  readonly given?: G;
}

/** A calculation that was made ready for many rows. */
export interface Prepared<I extends z.core.$ZodObject, O extends Outputs, M extends Outputs, U, G> {
  readonly definition: { readonly id: string; readonly version: string };
  /** What every row takes for granted; single rows may take more. */
  readonly assumptions: readonly Assumption[];
  /** One row; never throws on data. */
  row(row: Row<I, U, G>): RowResult<O, M>;
  /** The same for a row of unknown origin. */
  rowUnknown(row: unknown): RowResult<O, M>;
  /** Row by row, as they come. */
  rows(rows: Iterable<Row<I, U, G>>): Generator<RowResult<O, M>, void, undefined>;
  /** Columns to columns. All are as long as the longest; a value that is missing counts as left out. */
  columns<const K extends keyof (O & M) & string = keyof O & string>(
    columns: InputColumns<I, U, G>,
    options?: { readonly results?: readonly K[]; readonly units?: ResultUnits<O & M> },
  ): ColumnResult<Pick<O & M, K>>;
}

function withMore(said: readonly Warning[], more: readonly Warning[]): readonly Warning[] {
  if (more.length === 0) return said;
  return said.length === 0 ? more : [...said, ...more];
}

function assertUnits(inputs: z.core.$ZodObject, units: Readonly<Record<string, string | undefined>>): void {
  const fields = new Map(shapeOf(inputs).map(([key, child]) => [key, fieldOf(child)] as const));
  for (const [key, unit] of Object.entries(units)) {
    const field = fields.get(key);
    if (field?.type !== 'quantity') throw new TypeError(`${key} is no quantity that this calculation asks for`);
    if (unit === undefined || !(field.units as readonly string[]).concat(field.kind.units).includes(unit)) {
      const candidates = field.kind.units.slice(0, 6);
      throw new UnitError({ code: 'unknown_unit', text: String(unit), unit: String(unit), candidates });
    }
  }
}

/**
 * Make a calculation ready for many rows: units are looked up once, and a row costs little more than `evaluate`. Every row gets
 * the checks of `run`, and the same results, warnings and issues; a row with a ± among its values is worked out with it. Lists and
 * groups belong into `given`: one that changes from row to row, or whose entries have rules of their own, costs
 * what `run` costs.
 *
 * @throws `UnitError` or `TypeError` if `units` names a unit or an input that does not exist
 */
export function prepare<
  I extends z.core.$ZodObject,
  O extends Outputs,
  M extends Outputs,
  C extends Constants,
  const U extends InputUnits<I> = Record<never, never>,
  const G extends Partial<z.input<I>> = Record<never, never>,
>(calculation: Calculation<I, O, M, C>, options: PrepareOptions<U, G> = {}): Prepared<I, O, M, U, G> {
  const { spec } = calculation;
  const units = (options.units ?? {}) as Readonly<Record<string, string | undefined>>;
  const given = (options.given ?? {}) as Readonly<Record<string, unknown>>;
  assertUnits(spec.inputs, units);
  const definition = { id: spec.id, version: spec.version };
  const slots = slotsOf(spec.inputs, units, given);
  const places = new Map(slots.map(({ key }, at) => [key, at]));
  const common = slots.map(({ key }) => (Object.hasOwn(given, key) ? given[key] : undefined));
  const ruling = rulingOf(spec.inputs, slots);
  // Most rows have what must be there, and an object that is copied with its keys is made faster than one that grows.
  const template = Object.fromEntries(slots.flatMap(({ key, always, standard }) => (always ? [[key, standard]] : [])));
  const compute = computing(spec);
  const constants = constantValues(spec.constants);
  const outputKeys = Object.keys(spec.outputs);
  const intermediateKeys = Object.keys(spec.intermediates);

  /** The whole check, as for a single run; what it refuses it refuses in the same words. */
  function wholeWay(input: unknown): RowResult<O, M> {
    const result = calculation.runUnknown(input);
    return result.ok ? fromRun(result) : result;
  }

  function fromRun({ outputs, intermediates, warnings, method, uncertainty }: Success<O, M>): RowSuccess<O, M> {
    return { ok: true, outputs, intermediates, warnings, method, ...(uncertainty === undefined ? {} : { uncertainty }) };
  }

  function together(raws: readonly unknown[]): Record<string, unknown> {
    const input: Record<string, unknown> = {};
    for (const [at, slot] of slots.entries()) if (raws[at] !== undefined) input[slot.key] = slot.whole(raws[at]);
    return input;
  }

  function pick(fields: Outputs, keys: readonly string[], values: Values): never {
    const picked: Record<string, unknown> = {};
    for (let at = 0; at < keys.length; at += 1) {
      const key = keys[at] as string;
      picked[key] = declared(fields[key] as OutputField, values[key]);
    }
    return picked as never;
  }

  let said: readonly Warning[] = [];
  /** The checked input of a row, with what its rules and ranges warn of in `said`; nothing where it has to go the whole way. */
  function checked(raws: readonly unknown[]): Values | undefined {
    const ruled = ruling(raws);
    if (ruled === undefined) return undefined;
    const { counts } = ruled;
    const input: Record<string, unknown> = { ...template };
    said = ruled.warnings;
    for (let at = 0; at < slots.length; at += 1) {
      const slot = slots[at] as Slot;
      const raw = raws[at];
      if (typeof raw === 'number' && slot.bounds !== undefined && counts[at] === true) {
        const { toSI, above, below } = slot.bounds;
        const si = toSI(raw);
        if (si > above && si < below) {
          input[slot.key] = si;
          continue;
        }
      }
      const value = raw === undefined ? slot.standard : slot.read(raw);
      if (value === unsettled) return undefined;
      if (value === undefined || counts[at] !== true) continue;
      input[slot.key] = value;
      if (raw !== undefined) said = withMore(said, slot.warnings(raw, value));
    }
    return input;
  }

  function refused({ refused }: Refusal): Failure {
    return { ok: false, issues: refused.map((issue) => withLabels(spec.inputs, withExample(spec.inputs, issue))), definition };
  }

  function rowResult(raws: readonly unknown[]): RowResult<O, M> {
    const input = checked(raws);
    if (input === undefined) return wholeWay(together(raws));
    const evaluation = compute(input as z.output<I>, constants);
    if (isRefusal(evaluation)) return refused(evaluation);
    return {
      ok: true,
      outputs: pick(spec.outputs, outputKeys, evaluation.values),
      intermediates: pick(spec.intermediates, intermediateKeys, evaluation.values),
      warnings: withMore(said, evaluation.warnings),
      method: evaluation.method,
    };
  }

  /** The same for columns, which take their values themselves. */
  function rowValues(raws: readonly unknown[]): RowValues | Failure {
    const input = checked(raws);
    if (input === undefined) {
      const result = wholeWay(together(raws));
      return result.ok ? { ok: true, values: { ...result.intermediates, ...result.outputs }, warnings: result.warnings } : result;
    }
    const evaluation = compute(input as z.output<I>, constants);
    if (isRefusal(evaluation)) return refused(evaluation);
    return { ok: true, values: evaluation.values, warnings: withMore(said, evaluation.warnings) };
  }

  const raws = [...common];
  function rowUnknown(row: unknown): RowResult<O, M> {
    if (typeof row !== 'object' || row === null || Array.isArray(row)) return wholeWay(row);
    const values = row as Values;
    let named = 0;
    for (const key in values) if (values[key] !== undefined || !places.has(key)) named += 1;
    for (let at = 0; at < slots.length; at += 1) {
      const value = values[(slots[at] as Slot).key];
      if (value !== undefined) named -= 1;
      raws[at] = value === undefined ? common[at] : value;
    }
    // A key that is no input is refused, and named.
    return named === 0 ? rowResult(raws) : wholeWay(wholeRow(values));
  }

  function wholeRow(row: Values): Record<string, unknown> {
    const input: Record<string, unknown> = Object.assign(Object.create(null), given);
    for (const [key, value] of Object.entries(row)) {
      const at = places.get(key);
      input[key] = at === undefined ? value : slots[at]?.whole(value);
    }
    return { ...input };
  }

  return {
    definition,
    assumptions: spec.assumptions,
    row: rowUnknown,
    rowUnknown,
    *rows(rows) {
      for (const row of rows) yield rowUnknown(row);
    },
    columns(columns, wanted = {}) {
      const lists = columns as Readonly<Record<string, ArrayLike<unknown>>>;
      const unknown = Object.keys(lists).find((key) => !places.has(key));
      if (unknown !== undefined) throw new TypeError(`${unknown} is no input of this calculation`);
      const sources = slots.map(({ key }) => (Object.hasOwn(lists, key) ? lists[key] : undefined));
      const length = Math.max(0, ...sources.map((list) => list?.length ?? 0));
      return columnResult(
        { ...spec.intermediates, ...spec.outputs },
        length,
        { results: outputKeys, ...wanted } as ColumnOptions,
        (row) => {
          for (let at = 0; at < raws.length; at += 1) raws[at] = sources[at]?.[row] ?? common[at];
          return rowValues(raws);
        },
      ) as never;
    },
  };
}
