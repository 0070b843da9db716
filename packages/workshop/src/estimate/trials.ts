import type { HypothesisId } from './causes.js';
import type { Trials } from './evidence-input.js';

type Likelihoods<Outcome extends string> = Readonly<Record<Outcome, number>>;

/** A trial with a few outcomes: how likely each is for each cause, and what it takes. */
export interface DiscreteTrial<Outcome extends string = string> {
  readonly key: keyof Trials;
  readonly title: string;
  readonly question: string;
  /** Time on a warm vehicle, minutes (common practice, no source). */
  readonly minutes: number;
  readonly outcomes: Readonly<Record<Outcome, string>>;
  /** For causes that are not named in `special`. */
  readonly usual: Likelihoods<Outcome>;
  readonly special: Readonly<Partial<Record<HypothesisId, Likelihoods<Outcome>>>>;
}

const define = <const Outcome extends string>(trial: DiscreteTrial<Outcome>) => trial as DiscreteTrial;

const hoseFault = { agrees: 0.1, differs: 0.9 };

/** Chances are common practice, no source, and deliberately wide; a trial never excludes a cause. */
export const discreteTrials: readonly DiscreteTrial[] = [
  define({
    key: 'hoses',
    title: 'Test the hoses of the pressure sensor',
    question: 'Does each hose hold pressure with its far end shut, and open freely into the exhaust?',
    minutes: 10,
    outcomes: { tight: 'tight and open', leaking: 'one leaks', blocked: 'one is blocked', swapped: 'they are swapped' },
    usual: { tight: 0.93, leaking: 0.035, blocked: 0.025, swapped: 0.01 },
    special: {
      'hose-leaking': { tight: 0.1, leaking: 0.85, blocked: 0.04, swapped: 0.01 },
      'hose-plugged': { tight: 0.1, leaking: 0.04, blocked: 0.85, swapped: 0.01 },
      'hoses-swapped': { tight: 0.08, leaking: 0.01, blocked: 0.01, swapped: 0.9 },
    },
  }),
  define({
    key: 'tailPipe',
    title: 'Look into the tail pipe',
    question: 'Is there dry black soot inside the tail pipe?',
    minutes: 2,
    outcomes: { clean: 'clean', sooty: 'black soot' },
    usual: { clean: 0.95, sooty: 0.05 },
    special: { 'core-damaged': { clean: 0.15, sooty: 0.85 } },
  }),
  define({
    key: 'gaugeBeside',
    title: 'Put a gauge beside the sensor',
    question: 'At raised speed, does a gauge on the same taps agree with the sensor within a fifth?',
    minutes: 15,
    outcomes: { agrees: 'agrees', differs: 'differs' },
    usual: { agrees: 0.96, differs: 0.04 },
    special: {
      'sensor-zero': { agrees: 0.2, differs: 0.8 },
      'sensor-dead': { agrees: 0.04, differs: 0.96 },
      'hose-leaking': hoseFault,
      'hose-plugged': hoseFault,
      'hoses-swapped': { agrees: 0.03, differs: 0.97 },
    },
  }),
  define({
    key: 'backPressureLost',
    title: 'Measure the back-pressure along the exhaust',
    question: 'With a gauge at one tap after the other: where is most of the pressure lost?',
    minutes: 20,
    outcomes: {
      'across-filter': 'across the filter',
      'before-filter': 'before the filter',
      'behind-filter': 'behind the filter',
      nowhere: 'nowhere: it is low all along',
    },
    usual: { 'across-filter': 0.1, 'before-filter': 0.03, 'behind-filter': 0.03, nowhere: 0.84 },
    special: {
      soot: { 'across-filter': 0.92, 'before-filter': 0.02, 'behind-filter': 0.02, nowhere: 0.04 },
      'ash-layer': { 'across-filter': 0.92, 'before-filter': 0.02, 'behind-filter': 0.02, nowhere: 0.04 },
      'ash-plug': { 'across-filter': 0.88, 'before-filter': 0.02, 'behind-filter': 0.02, nowhere: 0.08 },
      'wet-after-wash': { 'across-filter': 0.85, 'before-filter': 0.02, 'behind-filter': 0.02, nowhere: 0.11 },
      'restriction-before': { 'across-filter': 0.04, 'before-filter': 0.9, 'behind-filter': 0.03, nowhere: 0.03 },
      'restriction-behind': { 'across-filter': 0.04, 'before-filter': 0.03, 'behind-filter': 0.9, nowhere: 0.03 },
    },
  }),
  define({
    key: 'rod',
    title: 'Probe the inlet channels with a rod',
    question: 'With the filter off: is the rod stopped more than a twentieth short of full length in most channels?',
    minutes: 45,
    outcomes: { 'full-length': 'goes to the end', short: 'stops short' },
    usual: { 'full-length': 0.95, short: 0.05 },
    special: { 'ash-plug': { 'full-length': 0.15, short: 0.85 }, 'ash-layer': { 'full-length': 0.75, short: 0.25 } },
  }),
];

/** ln of the chance of all discrete outcomes that were seen, for one explanation. */
export function trialLogLikelihood(id: HypothesisId, trials: Trials): number {
  let sum = 0;
  for (const { key, usual, special } of discreteTrials) {
    const seen = trials[key];
    if (typeof seen === 'string') sum += Math.log((special[id] ?? usual)[seen] ?? 1);
  }
  return sum;
}
