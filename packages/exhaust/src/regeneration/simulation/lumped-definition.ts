import { defineCalculation, isRefusal, noSolution } from '@wallflow/calculation';
import * as z from 'zod';
import { ashReview2019, bai2016, bissettShadman1985, uncoatedDisk2008 } from '../../soot/sources.js';
import { konstandopoulos2000, siBrochure } from '../../sources.js';
import { adiabaticBalance, airTable, carbonHeats, honeycombData, wrongWay2009 } from '../sources.js';
import { simulationConstants, simulationInputs } from './inputs.js';
import { solveAxialRegeneration } from './kernel-run.js';
import { simulationIntermediates, simulationOutputs } from './outputs.js';
import { prepareRun } from './prepare.js';
import { summarise } from './summary.js';
import { comparisonText, peakAdvice, simulationAssumptions, simulationCautions, simulationLimits } from './texts.js';

const inputs = z.strictObject(simulationInputs.omit({ cells: true, axialConductivity: true, oxygenTransport: true }).shape);

export const regenerationLumpedCalculation = defineCalculation({
  id: 'regeneration-lumped',
  version: '1.1.0',
  subject: 'regeneration',
  title: 'Simulated regeneration, filter as one piece',
  purpose: 'How does the soot burn off, and how warm does the filter get, if it had one temperature throughout?',
  usedBy: ['trainer', 'developer', 'technician'],
  keywords: ['simulation', 'burn-off', 'lumped', 'zero-dimensional'],
  method: 'heat and soot balance of the whole filter, Dormand–Prince with error control',
  inputs,
  intermediates: simulationIntermediates,
  outputs: simulationOutputs,
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
      tex: "V\\rho_b c_b\\frac{dT}{dt}=\\dot m\\,c_g\\,(T_{in}-T)+k\\,\\varphi\\,m'\\,V\\,\\Delta h,\\quad\\frac{dm'}{dt}=-k\\,\\varphi\\,m'",
      source: 'adiabaticBalance',
    },
    { gives: 'sootHeat', text: 'Burnt soot times heat of burning.', source: 'carbonHeats' },
    {
      gives: 'gasHeat',
      text: 'Flow times specific heat times the difference of gas temperature before and after the filter, over the run.',
    },
    { gives: 'burnOff', text: 'One minus the soot left over the soot at the start.' },
    { gives: 'aboveAdiabatic', text: 'Highest temperature of the course less the adiabatic estimate.' },
    { gives: 'peakTemperature', text: 'Highest temperature of the run.' },
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
  sources: {
    adiabaticBalance,
    konstandopoulos2000,
    bai2016,
    bissettShadman1985,
    uncoatedDisk2008,
    carbonHeats,
    airTable,
    honeycombData,
    ashReview2019,
    wrongWay2009,
    siBrochure,
  },
  precision: 1e-4,
  dimensional: 'time stepping with tolerances tied to the units',
  compute(input, context) {
    const whole = { ...input, cells: 'usual' as const, oxygenTransport: 'wall-flow' as const };
    const run = prepareRun(whole, 1, context);
    if (isRefusal(run)) return run;
    const solution = solveAxialRegeneration(run);
    if (!solution.finished) return noSolution('the steps in time became too short');
    const { values } = summarise(run, solution, whole);
    return { ...values, comparison: comparisonText(values.aboveAdiabatic, true) };
  },
  advise: ({ peakTemperature }, { substrate, scenario }) => peakAdvice(peakTemperature, substrate, scenario),
});
