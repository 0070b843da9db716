import { defineCalculation, formula, fromTable, isRefusal, noSolution, statement } from '@wallflow/calculation';
import { ashReview2019, bai2016, bissettShadman1985, uncoatedDisk2008 } from '../../soot/sources.js';
import { konstandopoulos2000, siBrochure } from '../../sources.js';
import { adiabaticBalance, airTable, wrongWay2009 } from '../sources.js';
import { filterInputs, scenarioInputs, simulationConstants } from './inputs.js';
import { solveAxialRegeneration } from './kernel-run.js';
import { courseSteps, extremeSteps, heatBalanceStep, simulationIntermediates, simulationOutputs, startSteps } from './outputs.js';
import { onePiece, prepareRun } from './prepare.js';
import { summarise } from './summary.js';
import { comparisonText, peakAdvice, simulationAssumptions, simulationCautions, simulationLimits } from './texts.js';

export const regenerationLumpedCalculation = defineCalculation({
  id: 'regeneration-lumped',
  subject: 'regeneration',
  title: 'Simulated regeneration, filter as one piece',
  purpose: 'How does the soot burn off, and how warm does the filter get, if it had one temperature throughout?',
  keywords: 'simulation, burn-off, lumped, zero-dimensional, DPF, regen',
  method: 'heat and soot balance of the whole filter, Dormand–Prince with error control',
  inputs: { ...filterInputs, ...scenarioInputs },
  intermediates: simulationIntermediates,
  outputs: simulationOutputs,
  constants: simulationConstants,
  answer: 'peakTemperature',
  steps: [
    ...startSteps,
    statement(
      'series',
      'Stepped in time: what the filter takes up is what the gas brings, mass flow times specific heat times the difference between gas and filter, and what the soot gives, its rate of burning times its heat. The soot burns by the law with the oxygen that the gas carries; as that runs short, the rate falls by (1 − e^(−x))/x, x being the oxygen needed over that carried.',
      konstandopoulos2000,
      'Eq. A55',
    ),
    ...courseSteps,
    formula('endTemperature', 'last(series.hottest)'),
    heatBalanceStep,
    fromTable('peakTemperature', ['duration'], undefined, undefined, 'The highest temperature of this time, also between the steps.'),
    ...extremeSteps,
  ],
  assumptions: [
    { code: 'one_temperature', text: 'The whole filter has one temperature, and the gas leaves with it.' },
    ...simulationAssumptions,
  ],
  limits: [
    {
      code: 'no_hot_spot',
      text: 'Heat carried downstream is not seen: the real peak near the outlet is higher. Use the simulation along the filter.',
    },
    ...simulationLimits,
  ],
  cautions: simulationCautions,
  precision: 1e-4,
  dimensional: 'time stepping with tolerances tied to the units',
  sources: [adiabaticBalance, bai2016, bissettShadman1985, uncoatedDisk2008, airTable, ashReview2019, wrongWay2009, siBrochure],
  compute(input, context) {
    const run = prepareRun(input, onePiece, 1, context);
    if (isRefusal(run)) return run;
    const solution = solveAxialRegeneration(run);
    if (!solution.finished) return noSolution('the steps in time became too short');
    const { values } = summarise(run, solution, input);
    return { ...values, comparison: comparisonText(values.aboveAdiabatic, true) };
  },
  advise: ({ peakTemperature }, { substrate, scenario }) => peakAdvice(peakTemperature, substrate, scenario),
});
