import { choice, defineCalculation, formula, fromTable, isRefusal, noSolution, say, statement } from '@wallflow/calculation';
import { ashReview2019, bai2016, bissettShadman1985, uncoatedDisk2008 } from '../../soot/sources.js';
import { konstandopoulos2000, siBrochure } from '../../sources.js';
import { airTable, bissett1984, wrongWay2009 } from '../sources.js';
import { channelConstants, channelInputs, filterInputs, scenarioInputs, simulationConstants } from './inputs.js';
import { solveAxialRegeneration } from './kernel-run.js';
import {
  axialOutputs,
  channelIntermediates,
  channelSteps,
  courseSteps,
  extremeSteps,
  heatBalanceStep,
  simulationIntermediates,
  simulationOutputs,
  startSteps,
} from './outputs.js';
import { channelsOf, prepareRun } from './prepare.js';
import { profile, summarise } from './summary.js';
import { comparisonText, peakAdvice, simulationAssumptions, simulationCautions, simulationLimits } from './texts.js';

/** Relative accuracy of a step: what it leaves is far below what cells and rate laws leave. */
const relativeTolerance = 4e-6;

/** Number of cells of a choice. */
const cellCounts = { coarse: 20, usual: 40, fine: 60 } as const;

/** Every point of a course starts the time stepping anew: with many of them fewer cells do, at least a dozen. */
function cellsForCourse(cells: number, points: number): number {
  return points <= 40 ? cells : Math.min(cells, Math.max(12, Math.floor(2400 / points)));
}

export const regenerationAxialCalculation = defineCalculation({
  id: 'regeneration-axial',
  subject: 'regeneration',
  title: 'Simulated regeneration along the filter',
  purpose: 'How hot does each place of the filter get, and how fast does the soot burn, when the gas before it runs a given course?',
  keywords: 'simulation, peak temperature, runaway, drop to idle, one-dimensional, DPF, regen, burn-off',
  method: 'two-channel heat and soot balance along the filter, error control, conduction implicit where it is stiff',
  inputs: {
    ...filterInputs,
    ...channelInputs,
    ...scenarioInputs,
    cells: choice({
      label: 'Cells along the length',
      options: { coarse: '20', usual: '40', fine: '60' },
      default: ['usual', 'twice as many change the peak by about 1 K to 2 K'],
    }),
  },
  intermediates: { ...simulationIntermediates, ...channelIntermediates },
  outputs: { ...simulationOutputs, ...axialOutputs },
  constants: { ...simulationConstants, ...channelConstants },
  answer: 'peakTemperature',
  steps: [
    ...startSteps,
    ...channelSteps,
    statement(
      'series',
      'Stepped in time, cell by cell along the filter: what a piece of wall takes up is what is conducted along the filter, what the gas of the inlet and of the outlet channel gives, what the gas brings that flows through it, and what its soot gives, the rate of burning times its heat.',
      bissett1984,
      'energy of the wall, restated per filter volume',
    ),
    statement(
      'profile',
      'Soot burns by the law with the oxygen in its layer: what the gas carries there and what diffuses out of the channel, less what is used; the channel gas loses what diffuses. Without diffusion the rate falls by (1 − e^(−x))/x, x being the oxygen needed over that carried.',
      konstandopoulos2000,
      'Eq. A55',
    ),
    ...courseSteps,
    formula('endTemperature', 'mean(profile.atEnd)'),
    heatBalanceStep,
    formula('peakTemperature', 'max(profile.highest)'),
    fromTable('peakPosition', ['peakTemperature'], undefined, undefined, 'Middle of the cell that gets this hot.'),
    ...extremeSteps,
  ],
  assumptions: simulationAssumptions,
  limits: simulationLimits,
  cautions: simulationCautions,
  precision: 1e-4,
  mostEvaluations: 4,
  dimensional: 'time stepping with tolerances tied to the units',
  sources: [bai2016, bissettShadman1985, uncoatedDisk2008, airTable, ashReview2019, wrongWay2009, siBrochure],
  compute(input, context) {
    const points = input.course?.length ?? 0;
    const cells = cellsForCourse(cellCounts[input.cells], points);
    if (cells < cellCounts[input.cells])
      context.assume(
        'fewer_cells',
        say`A course of ${points} points is run in ${cells} cells, to save time: the peak comes out up to 15 K lower.`,
      );
    const filter = channelsOf(input, context.constants);
    if (isRefusal(filter)) return filter;
    const run = prepareRun(input, filter.channels, cells, context);
    if (isRefusal(run)) return run;
    const solution = solveAxialRegeneration({ ...run, relativeTolerance });
    if (!solution.finished) return noSolution('the steps in time became too short; take fewer cells or a lower conductivity');
    const { peak, values } = summarise(run, solution, input);
    return {
      ...values,
      ...filter.shown,
      comparison: comparisonText(values.aboveAdiabatic, false),
      peakPosition: ((peak.cell + 0.5) / solution.model.cells) * input.filterLength,
      profile: profile(run, solution, peak),
    };
  },
  advise: ({ peakTemperature }, { substrate, scenario }) => peakAdvice(peakTemperature, substrate, scenario),
});
