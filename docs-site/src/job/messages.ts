import type { FieldData, IssueView } from '../data/types.js';

/** A log that was opened from the device. */
export interface LogFile {
  readonly name: string;
  readonly text: string;
}

export interface Logs {
  readonly before?: LogFile;
  readonly after?: LogFile;
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
  /** The job as a file, for another day or another program. */
  readonly job: string;
}

export type SheetView = { readonly ok: true; readonly sheet: MadeSheet } | { readonly ok: false; readonly issues: readonly IssueView[] };
export type JobAnswer = { readonly turn: number; readonly view: SheetView } | { readonly turn: number; readonly failed: true };
