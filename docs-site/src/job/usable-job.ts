import type { FormValues } from '../data/types.js';
import type { Logs } from './messages.js';

export interface KeptJob {
  readonly values: FormValues;
  readonly logs: Logs;
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

/** What is usable of a text that was stored, perhaps by an older page; anything else counts as nothing. */
export function usableJob(text: string | null): KeptJob | undefined {
  const stored: unknown = text === null ? undefined : JSON.parse(text);
  if (!isRecord(stored) || !areValues(stored.values) || !isRecord(stored.logs)) return undefined;
  const { values, logs } = stored;
  return isLog(logs.before) && isLog(logs.after) ? { values, logs } : undefined;
}
