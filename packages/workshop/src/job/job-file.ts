import * as z from 'zod/mini';

const words = z.string().check(z.maxLength(2000));
const short = z.string().check(z.maxLength(200));
/** Inputs that are handed to a calculation, which checks them itself and names what is wrong. */
const inputs = z.record(short, z.unknown());

/** Trials of a technician, as the estimate of the filter takes them. */
const trials = z.strictObject({
  hoses: z.optional(z.enum(['tight', 'leaking', 'blocked', 'swapped'])),
  tailPipe: z.optional(z.enum(['clean', 'sooty'])),
  gaugeBeside: z.optional(z.enum(['agrees', 'differs'])),
  backPressureLost: z.optional(z.enum(['across-filter', 'before-filter', 'behind-filter', 'nowhere'])),
  rod: z.optional(z.enum(['full-length', 'short'])),
});

/**
 * One job: what came in, what was measured, what is planned. Quantities are text with units. Sections that are inputs
 * of a calculation carry that calculation's input names.
 */
export const jobFile = z.strictObject({
  format: z.literal('wallflow-job/1'),
  title: short,
  reference: z.optional(short),
  date: z.iso.date(),
  vehicle: z.strictObject({ description: short, odometer: z.optional(short) }),
  technician: z.optional(short),
  complaint: words,
  history: z.optional(z.array(words).check(z.maxLength(50))),
  faultCodes: z.optional(
    z.strictObject({
      before: z.optional(z.array(short).check(z.maxLength(100))),
      after: z.optional(z.array(short).check(z.maxLength(100))),
    }),
  ),
  ambient: z.strictObject({ pressure: short, temperature: z.optional(short) }),
  /** Inputs of `exhaust-mass-flow` that the log does not give. */
  engine: inputs,
  /** Geometry and material: inputs of `filter-condition` and `soot-mass-from-pressure-drop`. */
  filter: inputs,
  sensor: z.optional(z.strictObject({ zeroUncertainty: z.optional(short), flowUncertainty: z.optional(short) })),
  /** Files beside the job, one for each side. */
  logs: z.optional(z.strictObject({ before: z.optional(short), after: z.optional(short) })),
  /** Steady readings written down by hand, for a side without a log: see `readingFields`. */
  readings: z.optional(
    z.strictObject({
      before: z.optional(z.array(inputs).check(z.maxLength(50))),
      after: z.optional(z.array(inputs).check(z.maxLength(50))),
    }),
  ),
  /** Inputs of `regeneration-permission` known before and after the work. */
  permission: z.strictObject({ before: inputs, after: z.optional(inputs) }),
  /** Inputs of `cleaning-volumes`. */
  cleaning: z.optional(inputs),
  /** Inputs of reductant calculations, by calculation. */
  reductant: z.optional(z.record(short, inputs)),
  /** Inputs of `reset-advice`: the work done and what is proven; the proof of the drop comes from the readings. */
  reset: z.optional(inputs),
  /** What was seen in trials before and after the work; a trial that was not made is left out. */
  trials: z.optional(z.strictObject({ before: z.optional(trials), after: z.optional(trials) })),
  rootCause: z.optional(words),
  resets: z.optional(z.array(words).check(z.maxLength(50))),
  advice: z.optional(z.array(words).check(z.maxLength(50))),
  nextCheck: z.optional(words),
});

/** A job file whose structure was checked; the inputs of its sections are checked by the calculations. */
export type JobFile = z.infer<typeof jobFile>;
