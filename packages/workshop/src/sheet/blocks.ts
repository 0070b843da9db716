/** A job sheet as blocks; each renderer turns the same blocks into its own form. */
export type Tone = 'good' | 'bad' | 'open';

export interface VerdictLine {
  readonly question: string;
  readonly answer: string;
  readonly tone: Tone;
}

export interface PlotSeries {
  readonly label: string;
  readonly role: 'before' | 'after' | 'clean';
  /** x in m³/h at the reference viscosity, y in mbar. */
  readonly points: readonly { readonly x: number; readonly y: number; readonly label: string }[];
  /** Slope of the line through zero, mbar per m³/h. */
  readonly slope: number;
}

export type Block =
  | { readonly type: 'heading'; readonly text: string }
  | { readonly type: 'paragraph'; readonly text: string }
  | { readonly type: 'facts'; readonly rows: readonly (readonly [string, string])[] }
  | { readonly type: 'verdicts'; readonly lines: readonly VerdictLine[] }
  | { readonly type: 'table'; readonly caption: string; readonly head: readonly string[]; readonly rows: readonly (readonly string[])[] }
  | { readonly type: 'list'; readonly items: readonly string[]; readonly tone?: 'caution' }
  | {
      readonly type: 'plot';
      readonly title: string;
      readonly description: string;
      readonly xLabel: string;
      readonly yLabel: string;
      readonly series: readonly PlotSeries[];
    };

export interface Sheet {
  readonly title: string;
  readonly blocks: readonly Block[];
}
