import { type Kind, type KindName, numbersToSI } from '@wallflow/units';
import * as z from 'zod/mini';
import { fieldOf, type InputField, type QuantityField } from '../field.js';
import { readGiven, usualWarning } from '../given.js';
import type { Warning } from '../issue.js';
import { parseQuantityInput, type UncheckedQuantity } from '../quantity-input.js';
import { shapeOf } from '../walk.js';

/** A value that the fast way does not take: its row goes through the whole check. */
export const unsettled = Symbol('unsettled');

/** A number in a known unit between two bounds needs no look at anything else. */
export interface Bounds {
  readonly toSI: (value: number) => number;
  /** In SI; beyond them, or at them, there is a limit or a warning to look at. */
  readonly above: number;
  readonly below: number;
}

interface Reading {
  readonly bounds?: Bounds;
  /** What `run` is to be given for a value of a row. */
  whole(raw: unknown): unknown;
  /** The checked value, or `unsettled`. */
  read(raw: unknown): unknown;
  /** Warnings of a value that was read. */
  warnings(raw: unknown, value: unknown): readonly Warning[];
}

/** One input, ready to read the value of any row. */
export interface Slot extends Reading {
  readonly key: string;
  /** What stands in where nothing is given; `unsettled` where something must be. */
  readonly standard: unknown;
  /** Whether every input that is accepted has it. */
  readonly always: boolean;
  /** Whether its value can decide which other inputs count. */
  readonly decides: boolean;
}

const none: readonly Warning[] = [];
const asItIs = (raw: unknown) => raw;

/** What was read last, as many rows repeat it; not of objects, which can change meanwhile. */
function lastRead<T>(read: (raw: unknown) => T): (raw: unknown) => T {
  let last: { readonly raw: unknown; readonly found: T } | undefined;
  return (raw) => {
    if (last !== undefined && last.raw === raw) return last.found;
    const found = read(raw);
    if (typeof raw !== 'object') last = { raw, found };
    return found;
  };
}

function isInside({ limits }: QuantityField, value: number): boolean {
  const slack = 1e-12 * Math.max(Math.abs(value), 1e-300);
  return (
    (limits.minInclusive ? value >= limits.min - slack : value > limits.min) &&
    (limits.maxInclusive ? value <= limits.max + slack : value < limits.max)
  );
}

/** A text, a number, or a record without a ±: what has one goes the whole way. */
function isReadable(raw: unknown): boolean {
  if (typeof raw !== 'object') return typeof raw === 'string' || typeof raw === 'number';
  if (raw === null || Object.keys(raw).some((key) => key !== 'value' && key !== 'unit')) return false;
  const { value, unit } = raw as { value?: unknown; unit?: unknown };
  return (typeof value === 'number' || typeof value === 'string') && typeof unit === 'string';
}

function quantityReading(key: string, field: QuantityField, unit: string | undefined): Reading {
  const kind = field.kind as Kind<KindName>;
  const whole = (raw: unknown) => (unit !== undefined && (typeof raw === 'number' || typeof raw === 'string') ? { value: raw, unit } : raw);
  const typed = lastRead((raw) => {
    const given = whole(raw);
    const parsed = isReadable(given) ? parseQuantityInput(field, given as UncheckedQuantity) : undefined;
    if (parsed?.ok !== true || parsed.uncertainty !== undefined) return { value: unsettled, unit: '' };
    return { value: parsed.quantity, unit: parsed.unit };
  });
  const known = unit === undefined ? undefined : { toSI: numbersToSI(kind, unit as never), unit };
  const hasFloor = !kind.parse(-1, kind.baseUnit).ok;
  const [low, high] = field.usual ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  const { min, max } = field.limits;
  return {
    ...(known === undefined
      ? {}
      : { bounds: { toSI: known.toSI, above: Math.max(min, low, hasFloor ? 0 : min), below: Math.min(max, high) } }),
    whole,
    read(raw) {
      if (known === undefined || typeof raw !== 'number') return typed(raw).value;
      const value = known.toSI(raw);
      return isInside(field, value) && !(hasFloor && value < 0) ? value : unsettled;
    },
    warnings(raw, value) {
      const si = value as number;
      if (si >= low && si <= high) return none;
      const shownIn = known === undefined || typeof raw !== 'number' ? typed(raw).unit : known.unit;
      const warning = usualWarning(field, si, shownIn, whole(raw), [key]);
      return warning === undefined ? none : [warning];
    },
  };
}

/** Whether a value is what the field asks for, without any change. */
function isPlain(field: InputField, raw: unknown): boolean {
  if (field.type === 'choice') return typeof raw === 'string' && Object.hasOwn(field.options, raw);
  if (field.type === 'count') return Number.isSafeInteger(raw) && (raw as number) >= field.min && (raw as number) <= field.max;
  return field.type === 'flag' && typeof raw === 'boolean';
}

function plainReading(field: InputField, schema: z.core.$ZodType): Reading {
  const checked = lastRead((raw) => {
    const parsed = z.safeParse(schema, raw);
    return parsed.success ? parsed.data : unsettled;
  });
  return { whole: asItIs, read: (raw) => (isPlain(field, raw) ? raw : checked(raw)), warnings: () => none };
}

/** Lists and groups: read once where they are the same for all rows, else the whole way. */
function recordReading(key: string, inputs: z.core.$ZodObject, schema: z.core.$ZodType, given: unknown): Reading {
  const parsed = given === undefined ? undefined : z.safeParse(schema, given);
  const notes = parsed?.success === true ? readGiven(inputs, { [key]: given }) : undefined;
  const settled = parsed?.success === true && notes?.uncertain.length === 0;
  return {
    whole: asItIs,
    read: (raw) => (settled && raw === given ? parsed.data : unsettled),
    warnings: () => notes?.warnings ?? none,
  };
}

/** The inputs of a calculation in the order of their definition. */
export function slotsOf(
  inputs: z.core.$ZodObject,
  units: Readonly<Record<string, string | undefined>>,
  given: Readonly<Record<string, unknown>>,
): readonly Slot[] {
  return shapeOf(inputs).map(([key, child]): Slot => {
    const field = fieldOf(child);
    if (field === undefined) throw new Error(`${key}: made without one of the field functions`);
    const schema = child as z.core.$ZodType;
    const left = z.safeParse(schema, undefined);
    const reading =
      field.type === 'quantity'
        ? quantityReading(key, field, units[key])
        : field.type === 'list' || field.type === 'group'
          ? recordReading(key, inputs, schema, given[key])
          : plainReading(field, schema);
    return {
      key,
      standard: left.success ? left.data : unsettled,
      always: field.rules?.when === undefined && (!left.success || left.data !== undefined),
      decides: field.type === 'choice' || field.type === 'count' || field.type === 'flag',
      ...reading,
    };
  });
}
