import type { FormValues } from '../data/types.js';
import type { Logs } from './messages.js';

/** A job as the device keeps it; the logs themselves lie elsewhere. */
export interface Slot {
  readonly values: FormValues;
  /** Names of the logs that take the place of typed readings. */
  readonly logs: { readonly before?: string; readonly after?: string };
  /** When it was last changed, in milliseconds since 1970. */
  readonly changed: number;
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}

function areValues(value: unknown): value is FormValues {
  return isRecord(value) && Object.values(value).every(isEntry);
}

function isEntry(value: unknown): boolean {
  if (!isRecord(value)) return false;
  if ('rows' in value) return Array.isArray(value.rows) && value.rows.every(areValues);
  return typeof value.text === 'string' && typeof value.unit === 'string';
}

function isLog(value: unknown): boolean {
  return value === undefined || (isRecord(value) && typeof value.name === 'string' && typeof value.text === 'string');
}

function isOptionalText(value: unknown): boolean {
  return value === undefined || typeof value === 'string';
}

function parsed(text: string | undefined): unknown {
  try {
    return text === undefined ? undefined : JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** What is usable of a job that was stored; anything else counts as nothing. */
export function usableSlot(text: string | undefined): Slot | undefined {
  const found = parsed(text);
  if (!isRecord(found) || !areValues(found.values) || !isRecord(found.logs) || typeof found.changed !== 'number') return undefined;
  if (!isOptionalText(found.logs.before) || !isOptionalText(found.logs.after)) return undefined;
  return found as unknown as Slot;
}

/** The one job that older pages kept, with its logs in it. */
export function usableOldJob(text: string | undefined): { readonly values: FormValues; readonly logs: Logs } | undefined {
  const found = parsed(text);
  if (!isRecord(found) || !areValues(found.values) || !isRecord(found.logs)) return undefined;
  const { values, logs } = found;
  return isLog(logs.before) && isLog(logs.after) ? { values, logs: logs as Logs } : undefined;
}
