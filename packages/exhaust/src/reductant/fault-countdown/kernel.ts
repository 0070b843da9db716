import type { CountdownStage, CountdownStageName } from './profiles.js';

/** What is known of a fault. Anything may be unknown. SI units; the level is a share of the tank. */
export interface CountdownState {
  readonly distance?: number | undefined;
  readonly engineTime?: number | undefined;
  readonly level?: number | undefined;
  readonly range?: number | undefined;
}

export interface CountdownResult {
  readonly stage: CountdownStageName;
  readonly effect: string;
  readonly next: CountdownStage | undefined;
  /** What is left until the next stage, on each axis that it counts on and that is known. */
  readonly left: CountdownState;
  /** Axes that the stages count on and that are not known; the true stage may be a later one. */
  readonly unknown: readonly (keyof CountdownState)[];
}

const axes = [
  { state: 'distance', stage: 'distance' },
  { state: 'engineTime', stage: 'engineTime' },
  { state: 'level', stage: 'levelAtMost' },
  { state: 'range', stage: 'rangeAtMost' },
] as const;

/** How much is left until a stage on one axis: distance and time count up, level and range count down. */
function leftOnAxis(axis: (typeof axes)[number], stage: CountdownStage, state: CountdownState): number | undefined {
  const limit = stage[axis.stage];
  const value = state[axis.state];
  if (limit === undefined || value === undefined) return undefined;
  return axis.state === 'level' || axis.state === 'range' ? value - limit : limit - value;
}

/** The stage reached and the next one. Stages are in the order of their severity. */
export function faultCountdown(stages: readonly CountdownStage[], state: CountdownState): CountdownResult {
  const unknown = axes.filter((axis) => state[axis.state] === undefined && stages.some((stage) => stage[axis.stage] !== undefined));
  const reached = stages.findLastIndex((stage) => axes.some((axis) => (leftOnAxis(axis, stage, state) ?? 1) <= 0));
  const current = stages[reached];
  const next = stages[reached + 1];
  const left = next === undefined ? {} : Object.fromEntries(axes.map((axis) => [axis.state, leftOnAxis(axis, next, state)]));
  return { stage: current?.stage ?? 'none', effect: current?.effect ?? 'none', next, left, unknown: unknown.map((axis) => axis.state) };
}
