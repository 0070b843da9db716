import { count, defineCalculation, isRefusal, optional, quantity, quantityOutput, tableOutput } from '@wallflow/calculation';
import { length, mass, massConcentration, massPerDistance, time, volume } from '@wallflow/units';
import * as z from 'zod';
import { siBrochure } from '../../sources.js';
import { kineticsConstants, kineticsInputs } from '../oxidation/inputs.js';
import { bai2016, bissettShadman1985, drivingPractice, uncoatedDisk2008, wholeFilterBalance } from '../sources.js';
import { drivingPatternInput, stretchesOf } from './inputs.js';
import { type DrivenState, drivePattern, patternMap, settledMass } from './kernel.js';

export const sootDrivingPatternCalculation = defineCalculation({
  id: 'soot-driving-pattern',
  version: '1.1.0',
  subject: 'soot',
  title: 'Soot over a driving pattern',
  purpose: 'How does the soot in the filter rise and fall when this pattern is driven again and again, and where does it settle?',
  usedBy: ['technician', 'trainer', 'developer'],
  keywords: ['driving pattern', 'soot load over time', 'short trips'],
  method: 'closed form of the soot balance, stretch by stretch',
  inputs: z.strictObject({
    initialMass: quantity(mass, { symbol: 'm_0', label: 'Soot at the start', min: '0 g', max: '5 kg', example: '3 g', units: ['g', 'kg'] }),
    filterVolume: quantity(volume, {
      symbol: 'V',
      label: 'Filter volume',
      min: '0.1 L',
      max: '200 L',
      example: '5.79 L',
      units: ['L', 'm3'],
    }),
    repeats: count({ label: 'Times the pattern is driven', symbol: 'N', min: 1, max: 200, example: 30 }),
    pattern: drivingPatternInput,
    ...kineticsInputs,
  }),
  intermediates: {
    patternDuration: quantityOutput(time, { symbol: 't_p', label: 'Duration of one pattern', digits: 4, units: ['min', 'h'] }),
    patternDistance: quantityOutput(length, { symbol: 'd_p', label: 'Distance of one pattern', digits: 4, units: ['km', 'mi'] }),
  },
  outputs: {
    finalMass: quantityOutput(mass, { symbol: 'm', label: 'Soot at the end', digits: 4, units: ['g'] }),
    finalLoad: quantityOutput(massConcentration, { symbol: "m'", label: 'Soot load at the end', digits: 4, units: ['g/L'] }),
    netPerDistance: optional(
      quantityOutput(massPerDistance, { symbol: 'r', label: 'Net gain of soot per distance', digits: 3, units: ['g/km', 'mg/km'] }),
    ),
    settledMass: optional(
      quantityOutput(mass, { symbol: 'm_{eq}', label: 'Soot at which the pattern settles, before each pass', digits: 3, units: ['g'] }),
    ),
    series: tableOutput({
      label: 'Soot over time',
      columns: {
        time: quantityOutput(time, { symbol: 't', label: 'Time', digits: 4, units: ['h', 'min'] }),
        distance: quantityOutput(length, { symbol: 'd', label: 'Distance', digits: 4, units: ['km', 'mi'] }),
        mass: quantityOutput(mass, { symbol: 'm', label: 'Soot', digits: 4, units: ['g'] }),
        load: quantityOutput(massConcentration, { symbol: "m'", label: 'Soot load', digits: 4, units: ['g/L'] }),
      },
      plot: { x: 'distance', y: ['mass'] },
    }),
  },
  constants: kineticsConstants,
  steps: [
    { gives: 'patternDuration', text: 'Sum of the durations.' },
    { gives: 'patternDistance', text: 'Sum of duration times speed.' },
    {
      gives: 'series',
      text: 'Soot balance in closed form over every stretch, [[repeats]] times the pattern.',
      source: 'wholeFilterBalance',
    },
    { gives: 'settledMass', text: 'Mass that one pass of the pattern leaves as it was.', source: 'wholeFilterBalance' },
    { gives: 'netPerDistance', tex: '[[netPerDistance]] = \\frac{[[finalMass]]-[[initialMass]]}{N\\,[[patternDistance]]}' },
    { gives: 'finalLoad', tex: '[[finalLoad]] = \\frac{[[finalMass]]}{[[filterVolume]]}' },
    { gives: 'finalMass', text: 'Last value of the series.' },
  ],
  assumptions: [
    {
      code: 'steady_stretches',
      text: 'Every stretch has its own steady temperature, gas and soot flow; warming up needs stretches of its own.',
    },
    { code: 'all_captured', text: 'All soot that comes in stays in the filter until it burns.' },
  ],
  limits: [{ code: 'no_active', text: 'No active regeneration takes place during the pattern.' }],
  cautions: [],
  sources: { wholeFilterBalance, bai2016, bissettShadman1985, uncoatedDisk2008, drivingPractice, siBrochure },
  compute(input, { constants }) {
    const chosen = stretchesOf(input, constants);
    if (isRefusal(chosen)) return chosen;
    const { stretches } = chosen;
    const { duration, distance } = patternMap(stretches);
    const states: DrivenState[] = [{ time: 0, distance: 0, mass: input.initialMass }];
    for (let pass = 0; pass < input.repeats; pass += 1) states.push(...drivePattern(stretches, states.at(-1) as DrivenState).slice(1));
    const finalMass = (states.at(-1) as DrivenState).mass;
    const driven = input.repeats * distance;
    return {
      patternDuration: duration,
      patternDistance: distance,
      finalMass,
      finalLoad: finalMass / input.filterVolume,
      netPerDistance: driven > 0 ? (finalMass - input.initialMass) / driven : undefined,
      settledMass: settledMass(stretches),
      series: states.map((state) => ({ ...state, load: state.mass / input.filterVolume })),
    };
  },
});
