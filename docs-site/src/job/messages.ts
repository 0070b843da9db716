import type { Mapping } from '@wallflow/logs';
import type { FieldData, FormValues, IssueView } from '../data/types.js';

/** A log that was opened from the device. */
export interface LogFile {
  readonly name: string;
  readonly text: string;
  /** Answers to what its titles leave open. */
  readonly mapping?: Mapping;
}

export interface Logs {
  readonly before?: LogFile;
  readonly after?: LogFile;
}

/** Opens a job file in the worker, where a strange one can do no harm to the page. */
export interface JobToOpen {
  readonly open: unknown;
  readonly fields: readonly FieldData[];
}

/** What the page asks of the worker: one sheet. */
export interface JobQuestion {
  readonly turn: number;
  readonly fields: readonly FieldData[];
  readonly input: Readonly<Record<string, unknown>>;
  readonly logs: Logs;
}

export interface MadeSheet {
  readonly title: string;
  /** The whole sheet as one page that needs nothing else. */
  readonly html: string;
  /** What the sheet rests on, as a file of its own. */
  readonly annex: string;
  /** The job as a file, for another day or another program. */
  readonly job: string;
}

export type SheetView = { readonly ok: true; readonly sheet: MadeSheet } | { readonly ok: false; readonly issues: readonly IssueView[] };
export type JobAnswer =
  | { readonly turn: number; readonly view: SheetView }
  | { readonly turn: number; readonly failed: true }
  | { readonly loaded: readonly string[] }
  /** What a job file fills the form with; without values it is no job that the form can hold. */
  | { readonly opened: { readonly values: FormValues } | undefined };
