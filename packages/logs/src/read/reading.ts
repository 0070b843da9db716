import type { ChannelName } from '../channels/channels.js';
import type { LeftOut } from '../clean/left-out.js';
import type { SteadyWindow } from '../steady/windows.js';
import type { OtherFile } from '../text/encoding.js';
import type { Sureness } from './plan.js';
import type { Question } from './question.js';

/** How one column was understood. */
export interface ChannelReading {
  /** Its title; in a log with one value a line the name of the value. */
  readonly column: string;
  readonly channel: ChannelName;
  /** Id of the unit. */
  readonly unit: string;
  /** In a sentence how that was found out. */
  readonly how: string;
  readonly sure: Sureness;
}

/** A log as it was understood. Numbers are SI. */
export interface LogReading {
  readonly ok: true;
  readonly channels: readonly ChannelReading[];
  /** Rows that were used. */
  readonly rows: number;
  readonly leftOut: readonly LeftOut[];
  readonly windows: readonly SteadyWindow[];
  /** What is open; the columns that it concerns were not used. */
  readonly questions: readonly Question[];
  /** Columns that are in the file but not used, and why. */
  readonly unused: readonly { readonly column: string; readonly why: string }[];
  /** Titles in their order: the shape of the log for a mapping. */
  readonly titles: readonly string[];
  /** Lines above the titles. */
  readonly above: readonly string[];
  /** First and last time in s; undefined without rows. */
  readonly time: { readonly from: number; readonly to: number; readonly begins?: string } | undefined;
  /** How often the time started anew. */
  readonly restarts: number;
}

/** Why a file cannot be read as a log. */
export type LogProblem =
  | { readonly code: 'empty' }
  | { readonly code: 'no_table'; readonly begins: string }
  | { readonly code: 'not_text'; readonly what: OtherFile }
  | { readonly code: 'cancelled' };

/** What reading a log gives. */
export type LogResult = LogReading | { readonly ok: false; readonly problem: LogProblem };

const other: Readonly<Record<OtherFile, string>> = {
  spreadsheet: 'This is a spreadsheet file. Open it in the spreadsheet program and save the sheet as CSV, then read that file.',
  'measurement-data': 'This is a measurement file (MDF). Read it with the reader for measurement files, or export it as CSV.',
  parquet: 'This is a Parquet file. Read it with the reader for Parquet files, or export it as CSV.',
  compressed: 'This file is compressed. Unpack it first, then read the file inside.',
  binary: 'This file is not text. Export the log as CSV from the program that made it.',
  'web-page': 'This is a web page, not a log. Perhaps the download asked for a login.',
  json: 'This is a JSON file. Export the log as CSV from the program that made it.',
  document: 'This is a PDF document. Export the log as CSV from the program that made it.',
};

/** A problem in words, with what to do. */
export function logProblemText(problem: LogProblem): string {
  switch (problem.code) {
    case 'empty':
      return 'The file is empty.';
    case 'no_table':
      return `No table of values was found. The file begins with “${problem.begins}”. A log has a line of titles and one line for each moment.`;
    case 'not_text':
      return other[problem.what];
    case 'cancelled':
      return 'Reading was cancelled.';
  }
}
