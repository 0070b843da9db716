import type { Claiming } from './claims.js';

/** A job sheet as blocks; each renderer turns the same blocks into its own form. */
export type Tone = 'good' | 'bad' | 'open';

/** A question and its answer, as the sheet begins with. */
export interface VerdictLine extends Claiming {
  readonly question: string;
  readonly answer: string;
  readonly tone: Tone;
}

/** One line or row of marks in a plot. */
export interface PlotSeries {
  readonly label: string;
  readonly role: 'before' | 'after' | 'clean';
  /** x in m³/h at the reference viscosity, y in mbar. */
  readonly points: readonly { readonly x: number; readonly y: number; readonly label: string }[];
  /** Slope of the line through zero, mbar per m³/h. */
  readonly slope: number;
}

/** One part of a sheet, told apart by `type`; beside its words it may say as a value what they claim. */
export type Block = Claiming & Words;

type Words =
  | { readonly type: 'heading'; readonly text: string }
  | { readonly type: 'paragraph'; readonly text: string }
  | { readonly type: 'facts'; readonly rows: readonly (readonly [string, string])[] }
  | { readonly type: 'verdicts'; readonly lines: readonly VerdictLine[] }
  | { readonly type: 'table'; readonly caption: string; readonly head: readonly string[]; readonly rows: readonly (readonly string[])[] }
  | { readonly type: 'list'; readonly items: readonly string[]; readonly tone?: 'caution' }
  | { readonly type: 'page-end' }
  | {
      readonly type: 'plot';
      readonly title: string;
      readonly description: string;
      readonly xLabel: string;
      readonly yLabel: string;
      readonly series: readonly PlotSeries[];
    };

/** A job sheet before it is written as text, Markdown or HTML. */
export interface Sheet {
  readonly title: string;
  /** The whole sheet; it begins with the page for the customer. */
  readonly blocks: readonly Block[];
}

/** The first page alone, for the customer. */
export function customerPage({ title, blocks }: Sheet): Sheet {
  const end = blocks.findIndex((block) => block.type === 'page-end');
  return { title, blocks: end === -1 ? blocks : blocks.slice(0, end) };
}
