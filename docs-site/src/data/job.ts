/** One question of the job, with the calculations that answer it. */
export interface JobStep {
  readonly question: string;
  readonly text: string;
  /** Ids of calculations; the build fails when one does not exist. */
  readonly calculations: readonly string[];
}

/** The job from the first reading to the proof. */
export const jobSteps: readonly JobStep[] = [
  {
    question: 'Can the readings be believed?',
    text: 'Zero with the engine off, sign, rise with engine speed. A hose or a sensor is cheaper than a filter.',
    calculations: ['sensor-zero-check', 'hose-swap-test', 'sensor-lag-test', 'filter-condition', 'air-mass-flow-speed-density'],
  },
  {
    question: 'Is the filter really blocked?',
    text: 'A pressure drop means nothing without the flow and the heat of the gas. Divide them out, then compare with a clean filter.',
    calculations: ['exhaust-mass-flow', 'exhaust-volume-flow', 'flow-resistance', 'clean-pressure-drop', 'exhaust-drop-shares'],
  },
  {
    question: 'Soot or ash, and how much?',
    text: 'Soot burns, ash stays. Grams, grams per litre and percent are three statements; percent of what is the question to ask.',
    calculations: ['soot-mass-from-pressure-drop', 'loaded-pressure-drop', 'soot-load'],
  },
  {
    question: 'Is it safe to burn off, and did it burn?',
    text: 'Every condition must be known and fulfilled. What is not known is not passed. Watch it while it runs, and judge it by the soot that went.',
    calculations: ['regeneration-permission', 'regeneration-watch', 'regeneration-quality'],
  },
  {
    question: 'Clean with what, and how much of it?',
    text: 'The mix, the volume for this filter, and what must not go down the drain. Weigh before and after; stop when a pass no longer helps.',
    calculations: ['cleaning-volumes', 'cleaning-pass-plan', 'thermal-bake', 'filter-weighing', 'cleaned-filter-acceptance'],
  },
  {
    question: 'Does the reductant side dose correctly?',
    text: 'Quality, quantity and conversion, each measured for itself, and how long until power is taken away.',
    calculations: ['reductant-concentration', 'dosing-test', 'nox-mass-flow', 'reductant-demand', 'fault-countdown'],
  },
  {
    question: 'Is it better than before?',
    text: 'Compare at comparable flow and temperature, or the proof proves only that the engine was cooler.',
    calculations: ['before-after', 'opacity-conversion'],
  },
  {
    question: 'What may be reset?',
    text: 'Only what the work has made untrue, only once it is proven, and the ash never to zero in a cleaned filter.',
    calculations: ['reset-advice'],
  },
];
