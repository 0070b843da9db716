import { defineCalculation, isRefusal, noSolution } from '@wallflow/calculation';
import { ashReview2019, bai2016, bissettShadman1985, uncoatedDisk2008 } from '../../soot/sources.js';
import { konstandopoulos2000, siBrochure } from '../../sources.js';
import { adiabaticBalance, airTable, bissett1984, carbonHeats, honeycombData, squareDuctHeat, wrongWay2009 } from '../sources.js';
import { cellCounts, simulationConstants, simulationInputs } from './inputs.js';
import { solveAxialRegeneration } from './kernel-run.js';
import { axialOutputs, simulationIntermediates, simulationOutputs } from './outputs.js';
import { prepareRun } from './prepare.js';
import { profile, summarise } from './summary.js';
import { comparisonText, peakAdvice, simulationAssumptions, simulationCautions, simulationLimits } from './texts.js';

/** Relative accuracy of a step: what it leaves is far below what cells and rate laws leave. */
const relativeTolerance = 4e-6;

/** Every point of a course starts the time stepping anew: with many of them fewer cells do, at least a dozen. */
function cellsForCourse(cells: number, points: number): number {
  return points <= 40 ? cells : Math.min(cells, Math.max(12, Math.floor(2400 / points)));
}

export const regenerationAxialCalculation = defineCalculation({
  id: 'regeneration-axial',
  version: '1.1.0',
  subject: 'regeneration',
  title: 'Simulated regeneration along the filter',
  purpose: 'How hot does which place of the filter get, and how fast does the soot burn, when the gas before it runs a given course?',
  usedBy: ['technician', 'trainer', 'developer'],
  keywords: ['simulation', 'peak temperature', 'runaway', 'drop to idle', 'one-dimensional'],
  method: 'two-channel heat and soot balance along the filter, error control, conduction implicit where it is stiff',
  inputs: simulationInputs,
  intermediates: simulationIntermediates,
  outputs: { ...simulationOutputs, ...axialOutputs },
  constants: simulationConstants,
  steps: [
    {
      gives: 'adiabaticRise',
      tex: '[[adiabaticRise]] = \\frac{[[sootLoad]]\\,\\left((1-f_{CO})\\,[[heatToDioxide]]+f_{CO}\\,[[heatToMonoxide]]\\right)}{[[carbonMolarMass]]\\,\\rho_b\\,c_b}',
      source: 'adiabaticBalance',
    },
    { gives: 'hottestFeed', text: 'Highest gas temperature before the filter during the run, or that of the filter at the start.' },
    { gives: 'adiabaticPeak', tex: '[[adiabaticPeak]] = [[hottestFeed]]+[[adiabaticRise]]', source: 'adiabaticBalance' },
    {
      gives: 'series',
      tex: "\\rho_b c_b\\frac{\\partial T}{\\partial t}=\\lambda_b\\frac{\\partial^2 T}{\\partial z^2}+h\\,a\\,(T_1-T)+h\\,a\\,(T_2-T)+\\frac{\\dot m\\,c_g}{V}(T_1-T)+k\\,\\varphi\\,m'\\,\\Delta h",
      source: 'bissett1984',
      locator: 'energy of the wall, restated per filter volume',
    },
    { gives: 'sootHeat', text: 'Burnt soot times heat of burning.', source: 'carbonHeats' },
    {
      gives: 'gasHeat',
      text: 'Flow times specific heat times the difference of gas temperature before and after the filter, over the run.',
    },
    {
      gives: 'profile',
      text: 'Soot burns by the law with the oxidant in its layer: what the gas carries there and what diffuses out of the channel, less what is used; the channel gas loses what diffuses. Without diffusion the rate falls by (1 − e^(−x))/x, x being the oxidant needed over that carried.',
      source: 'konstandopoulos2000',
      locator: 'Eq. A55',
    },
    { gives: 'burnOff', text: 'One minus the mean soot left over the soot at the start.' },
    { gives: 'peakPosition', text: 'Middle of the cell with the highest temperature of all.' },
    { gives: 'aboveAdiabatic', text: 'Highest temperature of the course less the adiabatic estimate.' },
    { gives: 'peakTemperature', text: 'Highest wall temperature of all cells and times.' },
  ],
  assumptions: simulationAssumptions,
  limits: simulationLimits,
  cautions: simulationCautions,
  sources: {
    bissett1984,
    konstandopoulos2000,
    bai2016,
    bissettShadman1985,
    uncoatedDisk2008,
    adiabaticBalance,
    carbonHeats,
    squareDuctHeat,
    airTable,
    honeycombData,
    ashReview2019,
    wrongWay2009,
    siBrochure,
  },
  precision: 1e-4,
  mostEvaluations: 4,
  dimensional: 'time stepping with tolerances tied to the units',
  compute(input, context) {
    const points = input.scenario === 'own' ? (input.course?.length ?? 0) : 0;
    const cells = cellsForCourse(cellCounts[input.cells], points);
    if (cells < cellCounts[input.cells])
      context.assume(
        'fewer_cells',
        `A course of ${points} points is run in ${cells} cells, to save time: the peak comes out up to 15 K lower.`,
      );
    const run = prepareRun(input, cells, context);
    if (isRefusal(run)) return run;
    const solution = solveAxialRegeneration({ ...run, relativeTolerance });
    if (!solution.finished) return noSolution('the steps in time became too short; take fewer cells or a lower axial conductivity');
    const { peak, values } = summarise(run, solution, input);
    return {
      ...values,
      comparison: comparisonText(values.aboveAdiabatic, false),
      peakPosition: ((peak.cell + 0.5) / solution.model.cells) * input.filterLength,
      profile: profile(run, solution, peak),
    };
  },
  advise: ({ peakTemperature }, { substrate, scenario }) => peakAdvice(peakTemperature, substrate, scenario),
});
