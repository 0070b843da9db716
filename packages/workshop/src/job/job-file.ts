import * as z from 'zod';

const words = z.string().max(2000);
const short = z.string().max(200);
/** Inputs that are handed to a calculation, which checks them itself and names what is wrong. */
const inputs = z.record(short, z.unknown());

/** Trials of a technician, as the estimate of the filter takes them. */
const trials = z.strictObject({
  hoses: z.enum(['tight', 'leaking', 'blocked', 'swapped']).optional(),
  tailPipe: z.enum(['clean', 'sooty']).optional(),
  gaugeBeside: z.enum(['agrees', 'differs']).optional(),
  backPressureLost: z.enum(['across-filter', 'before-filter', 'behind-filter', 'nowhere']).optional(),
  rod: z.enum(['full-length', 'short']).optional(),
});

/**
 * One job: what came in, what was measured, what is planned. Quantities are text with units. Sections that are inputs
 * of a calculation carry that calculation's input names.
 */
export const jobFile = z.strictObject({
  format: z.literal('wallflow-job/1'),
  title: short,
  reference: short.optional(),
  date: z.iso.date(),
  vehicle: z.strictObject({ description: short, odometer: short.optional() }),
  technician: short.optional(),
  complaint: words,
  history: z.array(words).max(50).optional(),
  faultCodes: z.strictObject({ before: z.array(short).max(100).optional(), after: z.array(short).max(100).optional() }).optional(),
  ambient: z.strictObject({ pressure: short, temperature: short.optional() }),
  /** Inputs of `exhaust-mass-flow` that the log does not give. */
  engine: inputs,
  /** Geometry and material: inputs of `filter-condition` and `soot-mass-from-pressure-drop`. */
  filter: inputs,
  sensor: z.strictObject({ zeroUncertainty: short.optional(), flowUncertainty: short.optional() }).optional(),
  /** Files beside the job, one for each side. */
  logs: z.strictObject({ before: short.optional(), after: short.optional() }).optional(),
  /** Steady readings written down by hand, for a side without a log: see `readingFields`. */
  readings: z.strictObject({ before: z.array(inputs).max(50).optional(), after: z.array(inputs).max(50).optional() }).optional(),
  /** Inputs of `regeneration-permission` known before and after the work. */
  permission: z.strictObject({ before: inputs, after: inputs.optional() }),
  /** Inputs of `cleaning-volumes`. */
  cleaning: inputs.optional(),
  /** Inputs of reductant calculations, by calculation. */
  reductant: z.record(short, inputs).optional(),
  /** Inputs of `reset-advice`: the work done and what is proven; the proof of the drop comes from the readings. */
  reset: inputs.optional(),
  /** What was seen in trials before and after the work; a trial that was not made is left out. */
  trials: z.strictObject({ before: trials.optional(), after: trials.optional() }).optional(),
  rootCause: words.optional(),
  resets: z.array(words).max(50).optional(),
  advice: z.array(words).max(50).optional(),
  nextCheck: words.optional(),
});

/** A job file whose structure was checked; the inputs of its sections are checked by the calculations. */
export type JobFile = z.infer<typeof jobFile>;
