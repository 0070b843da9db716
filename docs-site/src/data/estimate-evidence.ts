/** Answers to generated cases, as texts for the page. */
export interface AnswersView {
  readonly first: string;
  readonly statedFirst: string;
  readonly firstTwo: string;
  readonly brier: string;
  readonly sootCovered: string;
  readonly ashCovered: string;
  readonly aboveSeen: string;
  readonly aboveStated: string;
  readonly permittedCases: number;
  readonly permittedSeen: string;
  readonly permittedStated: string;
  readonly fewDraws: string;
  readonly reliability: readonly ReliabilityView[];
  readonly confusion: readonly ConfusionView[];
}

export interface ReliabilityView {
  readonly range: string;
  readonly count: number;
  /** From 0 to 1, for the drawing. */
  readonly stated: number;
  readonly seen: number;
  readonly statedText: string;
  readonly seenText: string;
}

export interface ConfusionView {
  readonly hidden: string;
  readonly cases: number;
  readonly right: string;
  /** What came first instead, and how often. */
  readonly taken: readonly string[];
}

export interface EstimateView {
  readonly version: number;
  readonly cases: number;
  readonly readings: AnswersView;
  readonly trials: AnswersView;
  readonly plansThatHeat: number;
  readonly damagedPlans: number;
  readonly allowedByLoad: number;
  readonly damagedByLoad: number;
  readonly failures: readonly { readonly seed: number; readonly hidden: string; readonly said: string }[];
}
