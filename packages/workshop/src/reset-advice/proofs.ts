import type { ResetInput } from './inputs.js';
import type { Answers } from './kernel.js';

/** Words for a proof that is missing. */
interface ProofWords {
  /** What must be true, in a few words. */
  readonly wanted: string;
  /** What to do when the answer is no. */
  readonly repair: string;
  /** How to find out when the answer is not known. */
  readonly find: string;
}

const weigh = 'Weigh the filter hot and baked free of soot, and take off its weight when new.';

/** Everything that may have to be proven, with what to do about it. */
export const proofWords = {
  complete: {
    wanted: 'all emission parts fitted and working',
    repair: 'Fit or repair every emission part first. Without them nothing is reset.',
    find: 'Check that filter, catalysts, sensors, recirculation and dosing are all fitted, approved and working.',
  },
  saved: {
    wanted: 'codes, counters and learned values saved',
    repair: 'Save codes, freeze frames, counters and learned values first.',
    find: 'Find out whether codes, freeze frames, counters and learned values are saved.',
  },
  power: {
    wanted: 'battery charger connected',
    repair: 'Connect a battery charger first.',
    find: 'Check the battery voltage and connect a charger.',
  },
  workKnown: {
    wanted: 'work on the filter known',
    repair: 'Find out what was done to the filter.',
    find: 'Find out what was done to the filter.',
  },
  cause: {
    wanted: 'cause of the fault repaired and tested',
    repair: 'Repair the cause of the fault and test the repair.',
    find: 'Find the cause of the fault, and prove by a test that it is gone.',
  },
  regeneration: {
    wanted: 'complete regeneration after the work',
    repair: 'Check that a regeneration is permitted, do it completely, and verify it.',
    find: 'Find out whether a complete regeneration was verified after the work.',
  },
  sootFree: {
    wanted: 'filter free of soot',
    repair: 'Bake the filter free of soot and weigh it, or verify a complete regeneration after the work.',
    find: 'Find out whether the filter was baked free of soot and weighed, or regenerated completely after the work.',
  },
  drop: {
    wanted: 'pressure drop lower at comparable flow',
    repair: 'The pressure drop has not fallen enough: look for ash, a blocked face or a restriction elsewhere.',
    find: 'Compare the pressure drop before and after at comparable flow and temperature.',
  },
  ash: {
    wanted: 'ash weighed',
    repair: 'An estimate is not enough. Weigh the filter hot and baked free of soot, and take off its weight when new.',
    find: weigh,
  },
  sensors: {
    wanted: 'sensors plausible',
    repair: 'Repair sensor, hose or wiring first.',
    find: 'Check the sensors with the ignition on and the engine off and cold.',
  },
  dosing: {
    wanted: 'dosing test passed',
    repair: 'Repair what failed the dosing test, then test again.',
    find: 'Do a dosing test: quantity, spray, no dripping.',
  },
  reductant: {
    wanted: 'reductant in order',
    repair: 'Drain the reductant and fill in good reductant.',
    find: 'Measure the reductant, and look for oil, fuel and coolant in it.',
  },
} as const satisfies Record<string, ProofWords>;

export type Proof = keyof typeof proofWords;

/** Whatever is written to the vehicle needs these. */
export const alwaysNeeded = ['complete', 'saved', 'power'] as const satisfies readonly Proof[];

/** Answers from the inputs; what was left out stays not known. */
export function proofAnswers(input: ResetInput): Answers<Proof> {
  const weighed = input.ashBasis === 'weighed' && input.residualAsh !== undefined;
  return {
    complete: input.emissionComplete,
    saved: input.saved,
    power: input.batterySupport,
    workKnown: input.filterWork === 'unknown' ? undefined : true,
    cause: input.causeRepaired,
    regeneration: input.regenerationVerified,
    sootFree: weighed || input.regenerationVerified,
    drop: input.dropVerified,
    ash: weighed || (input.ashBasis === 'estimated' ? false : undefined),
    sensors: input.sensorsPlausible,
    dosing: input.dosingTestPassed,
    reductant: input.reductantInOrder,
  };
}
