import * as wf from '@wallflow/calculation';
import { mass, molarEnergy, ratio, reactionRate, temperature, temperatureDifference } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { chosenKinetics, kineticsConstants, kineticsInputs } from '../../soot/oxidation/inputs.js';
import { sootOxidationRate } from '../../soot/oxidation/kernel.js';
import { ashReview2019, bai2016, bissettShadman1985, uncoatedDisk2008 } from '../../soot/sources.js';
import { siBrochure } from '../../sources.js';
import { airMolarMass } from '../../vocabulary/constants.js';
import { honeycombConstants, honeycombIntermediates, honeycombOf, honeycombSteps } from '../honeycomb.js';
import { ownLaw, oxygenRateAt } from '../oxygen-rate.js';
import { filterInputs, gasHeatInput, idleMassFlowInput, idleOxygenInput, massFlowInput, oxygenInput } from '../simulation/inputs.js';
import { adiabaticRise, sootHeat } from '../simulation/kernel-adiabatic.js';
import { regenerationLumpedCalculation } from '../simulation/lumped-definition.js';
import { adiabaticRiseOutput, adiabaticRiseStep, heatConstants, heatOfCombustionOutput, heatOfCombustionStep } from '../soot-heat.js';
import { adiabaticBalance, airTable, carbonHeats, semenov1928 } from '../sources.js';
import { criticalRise, oxygenRise, runawayIndex } from './kernel.js';
import { hotStartPeak } from './kernel-hot-start.js';

interface Found {
  readonly index: number;
  readonly idleIndex: number;
  /** Mean temperatures in K that the filter reaches before its soot has run out. */
  readonly peak: number;
  readonly idlePeak: number;
}

function verdictOf({ index, idleIndex, peak, idlePeak }: Found, bearable: number) {
  if (Math.max(index, idleIndex) <= 1) return 'stable' as const;
  if (peak > bearable) return 'critical' as const;
  return idlePeak > bearable ? ('idle-critical' as const) : ('bounded' as const);
}

const rise = (symbol: string, label: string, digits: number) =>
  wf.quantityOutput(temperatureDifference, { symbol, label, digits, units: ['K'] });
const rate = (symbol: string, label: string) => wf.quantityOutput(reactionRate, { symbol, label, digits: 3, units: ['1/s', '1/min'] });
const degrees = (symbol: string, label: string, digits: number) =>
  wf.quantityOutput(temperature, { symbol, label, digits, units: ['degC', 'K', 'degF'] });
const index = (symbol: string, label: string) => wf.quantityOutput(ratio, { symbol, label, digits: 3, units: ['1'] });

/** The same filter, stepped in time as one piece from a hot start. */
const peakOf = <const Key extends string>(gives: Key, exhaustMassFlow: string, oxygen: string) =>
  wf.nested(
    gives,
    regenerationLumpedCalculation,
    {
      substrate: 'substrate',
      bulkDensity: 'bulkDensity',
      specificHeat: 'specificHeat',
      filterVolume: 'filterVolume',
      sootLoad: 'sootLoad',
      carbonMonoxideShare: 'carbonMonoxideShare',
      scenario: { is: 'steady' },
      exhaustMassFlow,
      gasTemperature: 'filterTemperature',
      startTemperature: 'filterTemperature',
      oxygen,
      duration: { is: '1 h' },
      gasHeatCapacity: 'gasHeatCapacity',
      kinetics: 'kinetics',
      ...ownLaw,
    },
    'peakTemperature',
    'Unlike the index this lets the soot and the oxygen run out.',
  );

const hotter = 'exp(activationEnergy / gasConstant * (1 / filterTemperature - 1 / criticalTemperature))';

export const runawayIndexCalculation = wf.defineCalculation({
  id: 'runaway-index',
  subject: 'regeneration',
  title: 'Runaway index: how near to burning out of control',
  purpose: 'Can the gas still carry away the heat of the burning soot, now and if the engine dropped to idle?',
  keywords: 'runaway, drop to idle, Semenov, thermal explosion, soot limit, DPF, regen',
  method: 'heat release against heat removal of a well mixed filter',
  inputs: {
    ...filterInputs,
    filterTemperature: wf.quantity(temperature, {
      symbol: 'T',
      label: 'Filter temperature',
      description: 'The gas before the filter is taken to be as hot.',
      range: '200 <= x <= 900 °C',
      usual: ['400 °C', '700 °C', { below: 'colder soot hardly burns with oxygen', above: 'at this temperature it has already run away' }],
      example: '600 °C',
      units: ['degC', 'K', 'degF'],
    }),
    exhaustMassFlow: massFlowInput,
    oxygen: oxygenInput,
    idleMassFlow: idleMassFlowInput,
    idleOxygen: idleOxygenInput,
    gasHeatCapacity: gasHeatInput,
    ...kineticsInputs,
  },
  intermediates: {
    ...honeycombIntermediates,
    sootMass: wf.quantityOutput(mass, { symbol: 'm_s', label: 'Soot in the filter', digits: 3, units: ['g'] }),
    heatOfCombustion: heatOfCombustionOutput,
    activationEnergy: wf.quantityOutput(molarEnergy, { symbol: 'E', label: 'Activation energy of the law', digits: 4, units: ['kJ/mol'] }),
    criticalRise: rise('\\Delta T_c', 'Temperature rise that steady burning does not survive', 3),
    criticalTemperature: degrees('T_c', 'Filter temperature after that rise', 4),
    burnRate: rate('k', 'Rate of burning, share per time'),
    idleBurnRate: rate('k_i', 'Rate of burning at the filter temperature, at idle'),
    adiabaticRise: adiabaticRiseOutput,
    oxygenRise: rise('\\Delta T_{O_2}', 'Temperature rise of the gas at idle if all its oxygen burnt', 4),
  },
  outputs: {
    index: index('I', 'Runaway index now (above 1 it would speed up if the soot did not run out)'),
    idleIndex: index('I_i', 'Runaway index after a drop to idle'),
    worstTemperature: degrees('T_w', 'Filter temperature if all the soot burnt without cooling', 4),
    peak: degrees('T_1', 'Highest mean temperature before the soot runs out, at this flow', 3),
    idlePeak: degrees('T_2', 'Highest mean temperature before the soot runs out, after a drop to idle', 3),
    verdict: wf.choiceOutput({
      label: 'Verdict',
      options: {
        stable: 'stable: the flow carries the heat away, also at idle',
        bounded: 'speeds up, but the soot runs out before the filter reaches 800 °C in the mean',
        'idle-critical': 'safe at this flow only: after a drop to idle it gets above 800 °C before the soot runs out',
        critical: 'critical: above 800 °C even at this flow before the soot runs out',
      },
    }),
  },
  constants: {
    ...kineticsConstants,
    ...heatConstants,
    ...honeycombConstants,
    airMolarMass,
    bearable: wf.constant(temperature, 1073.15, {
      symbol: 'T_b',
      label: 'Temperature from which ash attacks a filter',
      source: ashReview2019,
    }),
  },
  answer: 'verdict',
  steps: [
    ...honeycombSteps,
    wf.formula('sootMass', 'sootLoad * filterVolume'),
    heatOfCombustionStep,
    wf.cases('activationEnergy', {
      "kinetics == 'bai-2016'": 'baiOxygenEnergy',
      "kinetics == 'uncoated-2008'": 'uncoatedOxygenEnergy',
      "kinetics == 'bissett-shadman-1985'": 'bissettOxygenEnergy',
      otherwise: 'ownOxygenEnergy',
    }),
    wf.formula(
      'criticalRise',
      'activationEnergy / (2 * gasConstant) * (1 - sqrt(1 - 4 * gasConstant * filterTemperature / activationEnergy)) - filterTemperature',
      semenov1928,
    ),
    wf.formula('criticalTemperature', 'filterTemperature + criticalRise'),
    oxygenRateAt('burnRate', 'filterTemperature', 'oxygen'),
    oxygenRateAt('idleBurnRate', 'filterTemperature', 'idleOxygen'),
    wf.formula(
      'index',
      `burnRate * ${hotter} * sootMass * heatOfCombustion / (exhaustMassFlow * gasHeatCapacity * criticalRise)`,
      semenov1928,
      undefined,
      'Heat released at the critical temperature over the heat that the gas carries away there.',
    ),
    wf.formula(
      'idleIndex',
      `idleBurnRate * ${hotter} * sootMass * heatOfCombustion / (idleMassFlow * gasHeatCapacity * criticalRise)`,
      semenov1928,
    ),
    adiabaticRiseStep,
    wf.formula('worstTemperature', 'filterTemperature + adiabaticRise', adiabaticBalance),
    wf.formula(
      'oxygenRise',
      'idleOxygen * carbonMolarMass * heatOfCombustion / ((1 - carbonMonoxideShare / 2) * airMolarMass * gasHeatCapacity)',
      carbonHeats,
    ),
    peakOf('peak', 'exhaustMassFlow', 'oxygen'),
    peakOf('idlePeak', 'idleMassFlow', 'idleOxygen'),
    wf.verdict(
      'verdict',
      { stable: 'max(index, idleIndex) <= 1', critical: 'peak > bearable', 'idle-critical': 'idlePeak > bearable', bounded: 'otherwise' },
      ashReview2019,
    ),
  ],
  assumptions: {
    well_mixed:
      'The filter has one temperature, at the start that of the gas. For the index the soot is not used up and oxygen is enough; for the highest temperatures both run out.',
    idle_still_hot: 'At the drop to idle the filter is still as hot as before.',
  },
  limits: {
    index_not_damage:
      'The index alone is no danger: every ordinary regeneration has one above 1, speeds up for a while, and ends because its soot runs out. How hot the filter gets is shown by the highest temperatures here, and by the simulation along the filter, whose hottest place near the outlet is hotter than the mean.',
    kinetics_spread: 'Rates measured on coated and uncoated filters differ by a factor of five at 600 °C, and so does the index.',
  },
  cautions: [cautions.makerFirst, cautions.runaway, cautions.hotExhaust, cautions.neverUnattended],
  precision: 1e-4,
  dimensional: 'time stepping with tolerances tied to the units',
  sources: [airTable, bai2016, bissettShadman1985, uncoatedDisk2008, siBrochure],
  compute(input, { constants, assume }) {
    const kinetics = chosenKinetics(input, constants);
    if (wf.isRefusal(kinetics)) return kinetics;
    const law = kinetics.oxygen;
    if (law === undefined || !(law.activationEnergy > 0))
      return wf.noSolution('the index needs a rate law with oxygen and an activation energy above zero');
    const { filterTemperature: temperature, sootLoad, carbonMonoxideShare, gasHeatCapacity: gasSpecificHeat } = input;
    const { gasConstant, airMolarMass: gasMolarMass, carbonMolarMass } = constants;
    const heatOfCombustion = sootHeat(constants.heatToDioxide, constants.heatToMonoxide, carbonMonoxideShare, carbonMolarMass);
    const honeycomb = honeycombOf(input, constants, assume);
    const { honeycombDensity: bulkDensity, honeycombHeatCapacity: specificHeat } = honeycomb;
    const sootMass = sootLoad * input.filterVolume;
    const common = { law, temperature, sootMass, gasSpecificHeat, heatOfCombustion };
    const now = { massFlow: input.exhaustMassFlow, oxygen: input.oxygen };
    const idle = { massFlow: input.idleMassFlow, oxygen: input.idleOxygen };
    const critical = criticalRise(law, temperature, gasConstant);
    const index = runawayIndex({ ...common, ...now }, gasConstant);
    const idleIndex = runawayIndex({ ...common, ...idle }, gasConstant);
    if (critical === undefined || index === undefined || idleIndex === undefined)
      return wf.noSolution('with so low an activation energy the burning never speeds up by itself');
    const adiabatic = adiabaticRise(sootLoad, heatOfCombustion, bulkDensity, specificHeat);
    const combustion = { kinetics: { oxygen: law }, heatOfCombustion, carbonMonoxideShare, gasSpecificHeat, gasMolarMass, gasConstant };
    const bed = { volume: input.filterVolume, bulkDensity, specificHeat, combustion, sootLoad, temperature };
    const peak = hotStartPeak({ ...bed, ...now });
    const idlePeak = hotStartPeak({ ...bed, ...idle });
    if (peak === undefined || idlePeak === undefined) return wf.noSolution('the steps in time became too short');
    const rateAt = (oxygen: number) => sootOxidationRate(kinetics, { temperature, oxygen, nitrogenDioxide: 0 }, gasConstant).oxygen;
    return {
      ...honeycomb,
      sootMass,
      heatOfCombustion,
      activationEnergy: law.activationEnergy,
      criticalRise: critical,
      criticalTemperature: temperature + critical,
      burnRate: rateAt(input.oxygen),
      idleBurnRate: rateAt(input.idleOxygen),
      adiabaticRise: adiabatic,
      oxygenRise: oxygenRise({ ...common, ...idle }, carbonMonoxideShare, gasMolarMass, carbonMolarMass),
      index,
      idleIndex,
      peak,
      idlePeak,
      worstTemperature: temperature + adiabatic,
      verdict: verdictOf({ index, idleIndex, peak, idlePeak }, constants.bearable),
    };
  },
  advise({ verdict }) {
    if (verdict === 'stable') return [];
    return [
      {
        tone: 'do-not',
        text: 'Never let the engine drop to idle or stop while this filter burns, unless there is fire: keep the flow up.',
      },
    ];
  },
});
