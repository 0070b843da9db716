import { NumericsError, requireArgument } from '../errors.js';
import { DenseOutput } from './dense-output.js';
import type { Tolerances } from './error-norm.js';
import { EventWatcher } from './event.js';
import { chooseInitialStep } from './initial-step.js';
import { StepController } from './step-controller.js';
import type { Stepper } from './stepper.js';
import type { IntegrationOptions, IntegrationProblem, IntegrationResult, IntegrationStatus } from './types.js';

/** Runs a one-step method from start to end: step control, dense output, events, limits. */
export function drive(
  problem: IntegrationProblem,
  stepper: Stepper,
  tolerances: Tolerances,
  options: IntegrationOptions,
): IntegrationResult {
  const { from, to } = problem;
  const { maxSteps = 100_000, maxStep = Infinity, dense = true } = options;
  requireArgument(maxSteps >= 0, 'maxSteps must not be negative');
  requireArgument(maxStep > 0, 'maxStep must be above zero');
  requireArgument(!((options.initialStep ?? 1) <= 0), 'initialStep must be above zero');

  let y = Float64Array.from(problem.initial);
  let next = new Float64Array(y.length);
  let t = from;
  let acceptedSteps = 0;
  let rejectedSteps = 0;
  const solution = new DenseOutput(y, from, dense ? 64 : 2);
  const end = (status: IntegrationStatus): IntegrationResult => ({
    status,
    t,
    y,
    statistics: { acceptedSteps, rejectedSteps, ...stepper.counts },
    times: dense ? solution.times() : new Float64Array(0),
    at: (time, out) => {
      if (!dense) throw new NumericsError('outside_solution', 'the solution was made with dense: false');
      return solution.at(time, out);
    },
  });

  if (!Number.isFinite(from) || !Number.isFinite(to) || !y.every(Number.isFinite)) return end('not_finite');
  const watcher = options.stopWhen && new EventWatcher(options.stopWhen, options.stopDirection ?? 'any', from, y);
  if (watcher && !watcher.isFinite) return end('not_finite');
  if (!stepper.start(t, y)) return end('not_finite');
  if (from === to) return end('finished');

  const direction = to > from ? 1 : -1;
  const span = Math.abs(to - from);
  const firstStep = options.initialStep ?? chooseInitialStep(stepper, t, y, direction * Math.min(span, maxStep), tolerances);
  let length = Math.min(firstStep, maxStep, span);
  const controller = new StepController(stepper.control);

  for (;;) {
    if (acceptedSteps + rejectedSteps >= maxSteps) return end('max_steps');
    const remaining = Math.abs(to - t);
    const last = remaining <= 1.01 * length && remaining <= maxStep;
    if (last) length = remaining;
    const h = last ? to - t : direction * length;
    if (t + 0.1 * h === t) return end('step_too_small');

    const error = stepper.attempt(t, y, h, next);
    if (!(error <= 1)) {
      rejectedSteps += 1;
      length *= controller.rejected(error);
      if (Number.isNaN(error) && t + 0.1 * direction * length === t) return end('not_finite');
      continue;
    }

    const tNext = last ? to : t + h;
    const tBefore = t;
    if (!dense) solution.restart();
    if (dense || watcher) {
      const room = solution.reserve(t);
      stepper.writePolynomial(y, next, h, room.array, room.offset);
      solution.commit(tNext);
    }
    acceptedSteps += 1;
    t = tNext;
    [y, next] = [next, y];

    if (watcher?.crossed(t, y)) {
      const crossing = watcher.locate(tBefore, t, solution);
      if (crossing === undefined) return end('not_finite');
      t = crossing;
      solution.at(t, y);
      solution.cut(t);
      return end('stopped_by_event');
    }
    if (watcher && !watcher.isFinite) return end('not_finite');
    if (last) return end('finished');
    if (!stepper.accept(t, y)) return end('not_finite');

    length = Math.min(maxStep, length * controller.accepted(error, length));
  }
}
