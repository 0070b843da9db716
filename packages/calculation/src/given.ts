import type * as z from 'zod/mini';
import type { InputField, QuantityField } from './field.js';
import { type Assumption, type Path, pathText, type Warning } from './issue.js';
import { isInverted, limitInUnit } from './limit.js';
import { parseQuantityInput, type UncheckedQuantity } from './quantity-input.js';
import { readable } from './readable.js';
import { reasonOfSide } from './usual-reason.js';
import { visitInputs } from './walk.js';
import { say } from './words/say.js';

export interface UncertainInput {
  readonly path: Path;
  readonly uncertainty: number;
}

/** The number and unit as they were typed, of a default too. */
export interface TypedInput {
  readonly path: Path;
  readonly value: number;
  readonly unit: string;
}

export interface Given {
  readonly typed: readonly TypedInput[];
  readonly uncertain: readonly UncertainInput[];
  readonly warnings: readonly Warning[];
  readonly defaults: readonly Assumption[];
  readonly significantDigits: number;
}

/** Read from the raw input what the checked one no longer shows: units, digits, uncertainties, defaults that were used. */
export function readGiven(schema: z.core.$ZodObject, raw: unknown, idle: ReadonlySet<string> = new Set()): Given {
  const typed: TypedInput[] = [];
  const uncertain: UncertainInput[] = [];
  const warnings: Warning[] = [];
  const defaults: Assumption[] = [];
  let significantDigits = 12;
  visitInputs(schema, raw, (field, value, path) => {
    if (idle.size > 0 && idle.has(pathText(path))) return;
    if (value === undefined) {
      const note = defaultNote(field, path);
      if (note !== undefined) defaults.push(note);
      if (field.type === 'quantity' && field.default !== undefined) typed.push(...typedOf(field, field.default, path));
      return;
    }
    if (field.type !== 'quantity') return;
    const read = parseQuantityInput(field, value as UncheckedQuantity);
    if (!read.ok) return;
    typed.push(...typedOf(field, value as UncheckedQuantity, path));
    if (read.alternatives !== undefined) defaults.push(unitNote(field, read.unit, read.alternatives, path));
    significantDigits = Math.min(significantDigits, read.significantDigits);
    if (read.uncertainty !== undefined && read.uncertainty > 0) uncertain.push({ path, uncertainty: read.uncertainty });
    const warning = usualWarning(field, read.quantity, read.unit, value, path);
    if (warning !== undefined) warnings.push(warning);
  });
  return { typed, uncertain, warnings, defaults, significantDigits };
}

function typedOf(field: QuantityField, given: UncheckedQuantity, path: Path): TypedInput[] {
  const read = parseQuantityInput(field, given);
  if (!read.ok) return [];
  const value = field.kind.in(read.quantity, read.unit as never);
  return [{ path, value: Number(value.toPrecision(12)), unit: read.unit }];
}

/** A default as a person reads it. */
function defaultText(field: Exclude<InputField, { type: 'list' | 'group' | 'text' }>): string {
  const value = field.default;
  if (typeof value === 'boolean') return value ? say`yes` : say`no`;
  if (field.type === 'choice') return field.options[String(value)] ?? String(value);
  return readable(String(value));
}

function defaultNote(field: InputField, path: Path): Assumption | undefined {
  if (!('default' in field) || field.default === undefined) return undefined;
  if (field.type === 'list') return { code: 'default_assumed', path, text: say`${field.label}: none, as none is given` };
  const shown = defaultText(field);
  const { label, defaultReason: reason } = field;
  const text = reason === undefined ? say`${label}: ${shown} assumed` : say`${label}: ${shown} assumed (${reason})`;
  return { code: 'default_assumed', path, text };
}

function unitNote({ kind, label }: QuantityField, unit: string, alternatives: readonly string[], path: Path): Assumption {
  const symbol = (id: string) => kind.symbol(id as never) || id;
  const text = say`${label}: read in ${symbol(unit)}; the unit as written can also mean ${alternatives.map(symbol).join(say` or `)}, which differs by less than the digits entered`;
  return { code: 'unit_assumed', path, text };
}

export function usualWarning(field: QuantityField, value: number, unit: string, given: unknown, path: Path): Warning | undefined {
  const usual = field.usual;
  if (usual === undefined) return undefined;
  const slack = 1e-12 * Math.abs(value);
  const low = value < usual[0] - slack;
  if (!low && value <= usual[1] + slack) return undefined;
  const lower = limitInUnit(field.kind, { si: usual[0], end: 'min', inclusive: true }, unit);
  const upper = limitInUnit(field.kind, { si: usual[1], end: 'max', inclusive: true }, unit);
  const limit = low ? lower : upper;
  const reason = reasonOfSide(field.usualReason, low ? 'below' : 'above');
  // One reason for both sides speaks of the range, so that the range has to be named.
  const shared = typeof field.usualReason === 'string' && usual[0] > field.limits.min && usual[1] < field.limits.max;
  const inverted = isInverted(field.kind, unit);
  const range = inverted ? [upper, lower] : [lower, upper];
  const [from, to] = range.map((end) => end.text) as [string, string];
  const passed = shared ? say`the usual ${from} to ${to}` : limit.text;
  const isBelow = low !== inverted;
  const found = isBelow ? say`${field.label} is below ${passed}` : say`${field.label} is above ${passed}`;
  return {
    code: 'outside_usual_range',
    path,
    given,
    bound: low ? 'min' : 'max',
    limit,
    text: reason === undefined ? found : say`${found}: ${reason}`,
  };
}
