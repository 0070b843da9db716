/**
 * A record of one run that can be kept, read by other programs, and worked out again later.
 *
 * @module
 */
import { applyRules } from './apply-rules.js';
import type { AnyCalculation, Failure, Success } from './definition.js';
import { givenData } from './given-data.js';
import { type Path, pathText } from './issue.js';
import type { Outputs } from './outputs.js';
import { visitInputs } from './walk.js';

/** An input that was not given, and what stood in for it. */
export interface UsedDefault {
  readonly path: Path;
  readonly value: string | number | boolean | readonly [];
  readonly reason?: string;
}

/** One run as plain data: what went in, what stood in, with which versions, what came out. */
export interface AuditRecord {
  readonly format: 'wallflow-audit/1';
  readonly calculation: { readonly id: string; readonly version: string; readonly title: string };
  /** Versions of programs and packages that took part, as the caller names them. */
  readonly versions: Readonly<Record<string, string>>;
  /** When, as the caller says; nothing here looks at a clock. */
  readonly at?: string;
  /** The input as it was given. */
  readonly input: unknown;
  readonly defaults: readonly UsedDefault[];
  readonly result: Success<Outputs, Outputs> | Failure;
}

/** What the caller knows of a run. */
export interface AuditOptions {
  /** Such as `{ '@wallflow/exhaust': '0.1.0', node: process.version }`. */
  readonly versions?: Readonly<Record<string, string>>;
  /** A time in ISO 8601. */
  readonly at?: string;
}

function defaultsOf(calculation: AnyCalculation, input: unknown): UsedDefault[] {
  const { raw, idle } = applyRules(calculation.spec.inputs, input);
  const used: UsedDefault[] = [];
  visitInputs(calculation.spec.inputs, raw, (field, value, path) => {
    if (value !== undefined || idle.has(pathText(path)) || !('default' in field) || field.default === undefined) return;
    const reason = 'defaultReason' in field ? field.defaultReason : undefined;
    used.push({ path, value: field.default, ...(reason === undefined ? {} : { reason }) });
  });
  return used;
}

/** Data as JSON keeps it: what is undefined is left out. */
function plain<T>(value: T): T {
  return JSON.parse(JSON.stringify(value)) as T;
}

/** Whether JSON gives back what it was given. */
function isPlain(value: unknown): boolean {
  try {
    return JSON.stringify(value) !== undefined && Number.isFinite(JSON.stringify(value).length);
  } catch {
    return false;
  }
}

/**
 * Run a calculation and keep a record of it. The input stands in it as it was given where JSON can hold it, else cut as in an issue; a
 * refused run is a record too.
 */
export function audit(calculation: AnyCalculation, input: unknown, options: AuditOptions = {}): AuditRecord {
  const result = calculation.runUnknown(input);
  return plain({
    format: 'wallflow-audit/1',
    calculation: { id: calculation.id, version: calculation.version, title: calculation.title },
    versions: options.versions ?? {},
    ...(options.at === undefined ? {} : { at: options.at }),
    input: isPlain(input) ? input : givenData(input),
    defaults: defaultsOf(calculation, input),
    result,
  } satisfies AuditRecord);
}

/** A place at which a run differs from its record. */
export interface AuditDifference {
  readonly path: Path;
  readonly recorded: unknown;
  readonly now: unknown;
}

/** What running a record again shows. */
export type Replay =
  | { readonly same: true; readonly version: VersionPair }
  | { readonly same: false; readonly version: VersionPair; readonly differences: readonly AuditDifference[] }
  | { readonly same: false; readonly reason: 'not_a_record' | 'unknown_calculation'; readonly differences: readonly [] };

/** Version of the definition in the record, and today. */
export interface VersionPair {
  readonly recorded: string;
  readonly now: string;
}

/** How a record is compared. */
export interface ReplayOptions {
  /** Relative difference of numbers that counts as none, as two machines may round their last bits differently; default 1e-9. */
  readonly within?: number;
}

const mostDifferences = 100;

function differencesOf(recorded: unknown, now: unknown, within: number, path: Path, found: AuditDifference[]): void {
  if (found.length >= mostDifferences || Object.is(recorded, now)) return;
  if (typeof recorded === 'number' && typeof now === 'number') {
    if (Math.abs(recorded - now) <= within * Math.max(Math.abs(recorded), Math.abs(now))) return;
  } else if (isRecord(recorded) && isRecord(now) && Array.isArray(recorded) === Array.isArray(now)) {
    for (const key of new Set([...Object.keys(recorded), ...Object.keys(now)])) {
      const step = Array.isArray(recorded) ? Number(key) : key;
      differencesOf(own(recorded, key), own(now, key), within, [...path, step], found);
    }
    return;
  }
  found.push({ path, recorded: recorded ?? null, now: now ?? null });
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}

function own(record: Readonly<Record<string, unknown>>, key: string): unknown {
  return Object.hasOwn(record, key) ? record[key] : undefined;
}

/** What of a run counts: results, ±, codes; sentences may be written better, and the version is told apart. */
function essence(result: unknown): unknown {
  if (!isRecord(result)) return result;
  const coded = (list: unknown) =>
    Array.isArray(list) ? list.map((one) => (isRecord(one) ? { code: one.code, path: one.path } : one)) : list;
  const { ok, outputs, intermediates, uncertainty, warnings, issues, method } = result;
  return plain({ ok, outputs, intermediates, uncertainty, method, warnings: coded(warnings), issues: coded(issues) });
}

/**
 * Run a record again, and say whether the same comes out: numbers within a hair's breadth, choices, and the codes of warnings and
 * issues. Takes a record of unknown origin, as a file brings it, and never throws on it.
 *
 * @param find - the calculation of an id, as `get` of a registry gives it
 */
export function replay(record: unknown, find: (id: string) => AnyCalculation | undefined, options: ReplayOptions = {}): Replay {
  if (!isRecord(record) || record.format !== 'wallflow-audit/1' || !isRecord(record.calculation) || !isRecord(record.result)) {
    return { same: false, reason: 'not_a_record', differences: [] };
  }
  const calculation = find(String(record.calculation.id));
  if (calculation === undefined) return { same: false, reason: 'unknown_calculation', differences: [] };
  const version = { recorded: String(record.calculation.version), now: calculation.version };
  const differences: AuditDifference[] = [];
  differencesOf(essence(record.result), essence(calculation.runUnknown(record.input)), options.within ?? 1e-9, [], differences);
  return differences.length === 0 ? { same: true, version } : { same: false, version, differences };
}
