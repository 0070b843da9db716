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

/** One goal, and whether it was met. */
export interface GoalView {
  readonly goal: string;
  readonly seen: string;
  readonly met: boolean;
}

export interface EstimateView {
  readonly version: number;
  readonly cases: number;
  readonly firstVehicle: number;
  readonly lastVehicle: number;
  /** Vehicles up to this number were looked at while estimate and vehicles were made. */
  readonly lookedAtTo: number;
  readonly goals: readonly GoalView[];
  readonly readings: AnswersView;
  readonly trials: AnswersView;
  readonly plansThatHeat: number;
  readonly damagedPlans: number;
  readonly allowedByLoad: number;
  readonly damagedByLoad: number;
  /** Share of the filters allowed by their load that could be damaged all the same, where none was seen to be: 95 % sure that it is less. */
  readonly damagedAtMost: string;
  readonly failures: readonly { readonly seed: number; readonly hidden: string; readonly said: string }[];
}
