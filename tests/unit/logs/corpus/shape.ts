import type { LogOptions, LogProblem, Question } from '@wallflow/logs';

/** One file of the corpus: how it is made, and what must come of it. */
export interface CorpusFile {
  readonly name: string;
  readonly content: () => string | Uint8Array;
  readonly options?: LogOptions;
  readonly expect: Expectation;
}

export interface Expectation {
  /** Speed, air, temperature and drop of each window; `undefined` where there must be none. Left away: the truth of the drive. */
  readonly windows?: readonly (readonly (number | undefined)[])[];
  /** What must be counted: reason, count, line, and the channel for single values. Left away: nothing. */
  readonly leftOut?: readonly (readonly [reason: string, count: number, firstLine: number, channel?: string])[];
  /** What must be asked: kind and column. Left away: nothing. */
  readonly asks?: readonly (readonly [ask: Question['ask'], column?: string])[];
  /** The file is no log at all. */
  readonly problem?: LogProblem['code'];
  readonly rows?: number;
}

export const utf16 = (text: string, mark = true, bigEndian = false): Uint8Array => {
  const bytes = new Uint8Array((text.length + (mark ? 1 : 0)) * 2);
  const view = new DataView(bytes.buffer);
  [...(mark ? '\ufeff' : ''), ...text].forEach((sign, index) => {
    view.setUint16(index * 2, sign.charCodeAt(0), !bigEndian);
  });
  return bytes;
};
export const latin1 = (text: string): Uint8Array => Uint8Array.from(text, (sign) => sign.charCodeAt(0));
export const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
/** Seconds after 14:00:10 as a clock. */
export const clock = (seconds: number): string => {
  const two = (part: number) => String(Math.floor(part)).padStart(2, '0');
  const whole = 14 * 3600 + 10 + seconds;
  return `${two(whole / 3600)}:${two((whole / 60) % 60)}:${two(whole % 60)}`;
};
