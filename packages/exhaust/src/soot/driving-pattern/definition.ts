import * as wf from '@wallflow/calculation';
import { length, mass, massConcentration, massPerDistance, time, volume } from '@wallflow/units';
import { kineticsConstants, kineticsInputs, oneLaw } from '../oxidation/inputs.js';
import { drivingPractice, wholeFilterBalance } from '../sources.js';
import { drivingPatternInput, stretchesOf } from './inputs.js';
import { type DrivenState, drivePattern, settledSootMass } from './kernel.js';
import { passValues, passWorking } from './working.js';

export const sootDrivingPatternCalculation = wf.defineCalculation({
  id: 'soot-driving-pattern',
  subject: 'soot',
  title: 'Soot over a driving pattern',
  purpose: 'How does the soot in the filter rise and fall when this pattern is driven again and again, and where does it settle?',
  keywords: 'driving pattern, soot load over time, short trips, DPF',
  method: 'closed form of the soot balance, stretch by stretch',
  inputs: {
    startSootMass: wf.quantity(mass, {
      symbol: 'm_0',
      label: 'Soot at the start',
      range: '0 g <= x <= 5 kg',
      example: '3 g',
      units: ['g', 'kg'],
    }),
    filterVolume: wf.quantity(volume, {
      symbol: 'V',
      label: 'Filter volume',
      range: '0.1 <= x <= 200 L',
      example: '5.79 L',
      units: ['L', 'm3'],
    }),
    repeats: wf.count({ label: 'Times the pattern is driven', symbol: 'N', min: 1, max: 200, example: 30 }),
    pattern: drivingPatternInput,
    ...kineticsInputs,
  },
  intermediates: passWorking.intermediates,
  outputs: {
    finalSootMass: wf.quantityOutput(mass, { symbol: 'm', label: 'Soot at the end', digits: 4, units: ['g'] }),
    finalSootLoad: wf.quantityOutput(massConcentration, { symbol: "m'", label: 'Soot load at the end', digits: 4, units: ['g/L'] }),
    netSootPerDistance: wf.optional(
      wf.quantityOutput(massPerDistance, { symbol: 'r', label: 'Net gain of soot per distance', digits: 3, units: ['g/km', 'mg/km'] }),
    ),
    settledSootMass: wf.optional(
      wf.quantityOutput(mass, { symbol: 'm_{eq}', label: 'Soot at which the pattern settles, before each pass', digits: 3, units: ['g'] }),
    ),
    series: wf.tableOutput({
      label: 'Soot over time',
      columns: {
        time: wf.quantityOutput(time, { symbol: 't', label: 'Time', digits: 4, units: ['h', 'min'] }),
        distance: wf.quantityOutput(length, { symbol: 'd', label: 'Distance', digits: 4, units: ['km', 'mi'] }),
        mass: wf.quantityOutput(mass, { symbol: 'm', label: 'Soot', digits: 4, units: ['g'] }),
        load: wf.quantityOutput(massConcentration, { symbol: "m'", label: 'Soot load', digits: 4, units: ['g/L'] }),
      },
      plot: { x: 'distance', y: ['mass'] },
    }),
  },
  constants: kineticsConstants,
  answer: 'finalSootMass',
  steps: [
    ...passWorking.steps,
    wf.statement(
      'series',
      'Soot after every stretch, [[repeats]] times the pattern: the share that stays, and what is added.',
      wholeFilterBalance,
    ),
    wf.formula('finalSootMass', 'last(series.mass)'),
    wf.formula('finalSootLoad', 'finalSootMass / filterVolume'),
    wf.formula('netSootPerDistance', '(finalSootMass - startSootMass) / (repeats * patternDistance)'),
    wf.solved('settledSootMass', 'settledSootMass = settledSootMass * patternKept + patternGain', {}, wholeFilterBalance),
  ],
  assumptions: {
    steady_stretches: 'Every stretch has its own steady temperature, gas and soot flow; warming up needs stretches of its own.',
    all_captured: 'All engine-out soot stays in the filter until it burns.',
  },
  limits: { ...oneLaw, no_active: 'No active regeneration takes place during the pattern.' },
  sources: [drivingPractice],
  // Twenty-four parts of a pattern repeated two hundred times take 5 ms, and each part has seven readings that can carry a ±.
  mostEvaluations: 60,
  compute(input, { constants }) {
    const { stretches } = stretchesOf(input, constants);
    const pass = passValues(stretches);
    const states: DrivenState[] = [{ time: 0, distance: 0, mass: input.startSootMass }];
    for (let count = 0; count < input.repeats; count += 1) states.push(...drivePattern(stretches, states.at(-1) as DrivenState).slice(1));
    const finalSootMass = (states.at(-1) as DrivenState).mass;
    const driven = input.repeats * pass.patternDistance;
    return {
      ...pass,
      finalSootMass,
      finalSootLoad: finalSootMass / input.filterVolume,
      netSootPerDistance: driven > 0 ? (finalSootMass - input.startSootMass) / driven : undefined,
      settledSootMass: settledSootMass(stretches),
      series: states.map((state) => ({ ...state, load: state.mass / input.filterVolume })),
    };
  },
});
