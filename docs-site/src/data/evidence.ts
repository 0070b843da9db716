import type { EstimateView } from './estimate-evidence.js';
import type { PlotView } from './types.js';

/** What the pages of the validation know: plain data made from the reference data when the site is built. */

/** One input of the models that a measured curve is compared with. */
export interface CurveInput {
  readonly label: string;
  readonly text: string;
  /** Where the value comes from, or why it was assumed. */
  readonly from: string;
  /** Names of the models, where not all of them take it. */
  readonly models?: string;
}

export interface CurveModel {
  readonly name: string;
  readonly calculation: string;
  readonly title: string;
  /** Link hash that fills the form with the last point. */
  readonly hash: string;
  /** Smallest and largest difference from the measurement. */
  readonly differences: string;
  /** What the calculation warns of along the curve, and at which points. */
  readonly warnings: readonly string[];
}

export interface CurvePoint {
  readonly at: string;
  /** As printed, where the table beside it holds ratios. */
  readonly printed?: string;
  readonly measured: string;
  readonly models: readonly { readonly value: string; readonly difference: string; readonly warns: boolean }[];
  /** What the authors state for the point themselves. */
  readonly published: readonly string[];
}

export interface CurveView {
  readonly id: string;
  readonly title: string;
  readonly source: string;
  readonly mark: string;
  readonly reading: string;
  readonly variable: string;
  readonly measuredLabel: string;
  readonly unit: string;
  readonly inputs: readonly CurveInput[];
  readonly models: readonly CurveModel[];
  readonly publishedColumns: readonly string[];
  readonly points: readonly CurvePoint[];
  readonly plot?: PlotView;
  readonly findings: readonly string[];
  readonly notComputable?: string;
  /** What the tests hold the models to. */
  readonly checks: readonly string[];
}

export interface MisprintView {
  readonly subject: string;
  readonly source: string;
  readonly mark: string;
  readonly printed: string;
  readonly used: string;
  readonly reason: string;
  readonly calculations: readonly { readonly id: string; readonly title: string }[];
}

/** A reference case that must not agree, and why. */
export interface DisagreementView {
  readonly title: string;
  readonly source: string;
  readonly mark: string;
  readonly reason: string;
  readonly values: readonly { readonly label: string; readonly expected: string; readonly ours: string }[];
  /** The calculation that it belongs to; none for units and numerics. */
  readonly calculation?: { readonly id: string; readonly title: string };
}

/** One published value beside ours. */
export interface CheckRow {
  readonly label: string;
  readonly locator?: string;
  readonly expected: string;
  readonly ours: string;
  readonly difference: string;
  readonly tolerance: string;
  readonly agrees: boolean;
  /** Why the source says something else. */
  readonly disagreement?: string;
}

/** Published values of one source or one case. */
export interface CheckGroup {
  readonly id: string;
  readonly title: string;
  readonly source: string;
  readonly mark: string;
  readonly origin: string;
  readonly rows: readonly CheckRow[];
  readonly note?: string;
}

export interface Evidence {
  readonly measured: readonly CurveView[];
  readonly misprints: readonly MisprintView[];
  readonly disagreements: readonly DisagreementView[];
  readonly units: readonly CheckGroup[];
  readonly numerics: readonly CheckGroup[];
  readonly estimate: EstimateView;
}
