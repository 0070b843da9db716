import * as wf from '@wallflow/calculation';
import { moleFraction, ratio } from '@wallflow/units';
import { cfr1065 } from '../../sources.js';
import { airMolarMass } from '../../vocabulary/constants.js';
import { oxygenDemand } from '../air-fuel-ratio/kernel.js';
import { waterPerDryAirOfHumidity } from '../composition/kernel.js';
import { fuelFields, humidityField } from '../mixture-fields.js';
import { molarMassConstants } from '../molar-mass-constants.js';
import { atomBalance } from '../sources.js';
import { exhaustMolesByLambda, lambdaFromCarbonDioxide, lambdaFromOxygen } from './kernel.js';

const reading = (symbol: string, label: string, example: string) =>
  wf.quantity(moleFraction, {
    symbol,
    label,
    description: 'Share of the volume of the gas.',
    range: '0 <= x <= 25 %',
    usual: ['0.3 %', '19 %', 'near the ends a small error of the reading is a large error of lambda'],
    example,
    units: ['%', 'ppm'],
  });

/** What the digits of a reading can be off, relative; far below what any analyser tells. */
const rounding = 1e-9;

export const lambdaFromGasCalculation = wf.defineCalculation({
  id: 'lambda-from-exhaust-gas',
  subject: 'gas',
  title: 'Lambda from measured oxygen or carbon dioxide',
  purpose: 'How lean does the engine run, from one reading of the exhaust gas?',
  keywords: 'lambda, oxygen, carbon dioxide, gas analysis, wet, dry',
  method: 'atom balance of complete combustion',
  inputs: {
    ...wf.oneOf({
      oxygenReading: reading('x_{O_2}', 'Oxygen reading', '10.1 %'),
      carbonDioxideReading: reading('x_{CO_2}', 'Carbon dioxide reading', '7.8 %'),
    }),
    readingBasis: wf.choice({
      label: 'Basis of the reading',
      options: { dry: 'dry: after a cooler or a water trap', wet: 'wet: a sensor in the hot exhaust' },
      default: ['dry', 'bench and hand-held analysers dry their sample; a sensor in the pipe does not'],
    }),
    ...fuelFields,
    ...wf.relevantWhen('readingBasis', 'wet', { humidity: humidityField }),
  },
  example: { oxygenReading: '10.1 %' },
  intermediates: {
    oxygenDemand: wf.quantityOutput(ratio, { symbol: 's', label: 'Moles of oxygen needed per mole of carbon', digits: 5 }),
    waterPerDryAir: wf.optional(wf.quantityOutput(ratio, { symbol: 'h', label: 'Moles of water per mole of dry intake air', digits: 4 })),
    fixedMoles: wf.quantityOutput(ratio, {
      symbol: 'n_0',
      label: 'Moles of exhaust per mole of carbon that do not depend on lambda',
      digits: 5,
    }),
    molesPerLambda: wf.quantityOutput(ratio, { symbol: 'n_1', label: 'Moles of exhaust per mole of carbon and unit of lambda', digits: 5 }),
    fromOxygen: wf.optional(wf.quantityOutput(ratio, { symbol: '\\lambda_{O_2}', label: 'Lambda by oxygen', digits: 3 })),
    fromCarbonDioxide: wf.optional(wf.quantityOutput(ratio, { symbol: '\\lambda_{CO_2}', label: 'Lambda by carbon dioxide', digits: 3 })),
  },
  outputs: { lambda: wf.quantityOutput(ratio, { symbol: '\\lambda', label: 'Lambda', digits: 3 }) },
  constants: { airMolarMass, waterMolarMass: molarMassConstants.waterMolarMass },
  steps: [
    wf.formula('oxygenDemand', '1 + hydrogenToCarbon / 4 - oxygenToCarbon / 2', atomBalance),
    wf.formula('waterPerDryAir', 'airMolarMass / waterMolarMass * humidity', cfr1065, '1065.1005(f)(2), Table 7'),
    wf.cases(
      'fixedMoles',
      { "readingBasis == 'dry'": '1 - oxygenDemand', otherwise: '1 - oxygenDemand + hydrogenToCarbon / 2' },
      atomBalance,
      undefined,
      'A wet sample also holds the water from the fuel, half a mole per mole of hydrogen atoms.',
    ),
    wf.cases(
      'molesPerLambda',
      { "readingBasis == 'dry'": 'oxygenDemand / 0.209445', otherwise: 'oxygenDemand / 0.209445 * (1 + waterPerDryAir)' },
      atomBalance,
      undefined,
      'The air that brings the oxygen; a wet sample also holds the water of that air.',
    ),
    wf.formula('fromOxygen', '(oxygenDemand + oxygenReading * fixedMoles) / (oxygenDemand - oxygenReading * molesPerLambda)', atomBalance),
    wf.formula(
      'fromCarbonDioxide',
      '(1 - carbonDioxideReading * fixedMoles) / (carbonDioxideReading * molesPerLambda - 0.000375 * oxygenDemand / 0.209445)',
      atomBalance,
    ),
    wf.cases('lambda', { 'known(fromOxygen)': 'fromOxygen', otherwise: 'fromCarbonDioxide' }),
  ],
  assumptions: {
    complete_combustion:
      'All fuel is burnt. At lambda 2, 1000 ppm of carbon monoxide make lambda read 0.4 % too high by oxygen and 1.4 % too high by carbon dioxide.',
    undiluted: 'The probe draws in no outside air: it sits deep in the tailpipe, and all joints are tight.',
  },
  limits: { lean_only: 'For lean exhaust only: with carbon dioxide, rich and lean mixtures can give the same reading.' },
  compute({ oxygenReading, carbonDioxideReading, ...input }, { constants }) {
    const byOxygen = oxygenReading !== undefined;
    const waterPerDryAir =
      input.humidity === undefined ? undefined : waterPerDryAirOfHumidity(input.humidity, constants.airMolarMass, constants.waterMolarMass);
    const moleFraction = oxygenReading ?? wf.known(carbonDioxideReading);
    const given = { moleFraction, fuel: input, waterPerDryAir: waterPerDryAir ?? 0, basis: input.readingBasis };
    const found = byOxygen ? lambdaFromOxygen(given) : lambdaFromCarbonDioxide(given);
    // The reading of exactly lambda 1 may come out a rounding error below it.
    const lambda = found < 1 && found > 1 - rounding ? 1 : found;
    const path = [byOxygen ? 'oxygenReading' : 'carbonDioxideReading'];
    if (!(lambda > 0) || lambda > 1000)
      return wf.noSolution('the reading is that of air: engine off, probe out, or a leak in the sample line', path);
    if (lambda < 1) return wf.noSolution('more carbon dioxide than this fuel can give: check the analyser, its basis and the fuel', path);
    const { fixed, perLambda } = exhaustMolesByLambda(given);
    return {
      oxygenDemand: oxygenDemand(input),
      waterPerDryAir,
      fixedMoles: fixed,
      molesPerLambda: perLambda,
      fromOxygen: byOxygen ? lambda : undefined,
      fromCarbonDioxide: byOxygen ? undefined : lambda,
      lambda,
    };
  },
});
