import { choice, choiceWithDefault, defineCalculation, noSolution, optional, quantity, quantityOutput } from '@wallflow/calculation';
import { moleFraction, ratio } from '@wallflow/units';
import * as z from 'zod';
import { oxygenDemand } from '../air-fuel-ratio/kernel.js';
import { waterPerDryAirOfHumidity } from '../composition/kernel.js';
import { fuelFields, humidityField } from '../fields.js';
import { atomBalance } from '../sources.js';
import { exhaustMolesByLambda, lambdaFromCarbonDioxide, lambdaFromOxygen } from './kernel.js';

/** What the digits of a reading can be off, relative; far below what any analyser tells. */
const rounding = 1e-9;

export const lambdaFromGasCalculation = defineCalculation({
  id: 'lambda-from-exhaust-gas',
  version: '1.1.0',
  subject: 'gas',
  title: 'Lambda from measured oxygen or carbon dioxide',
  purpose: 'How lean does the engine run, from one reading of the exhaust gas?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['lambda', 'oxygen', 'carbon dioxide', 'gas analysis', 'wet', 'dry'],
  method: 'atom balance of complete combustion',
  inputs: z.strictObject({
    gas: choice({
      label: 'Measured gas',
      options: { oxygen: 'oxygen', 'carbon-dioxide': 'carbon dioxide' },
      example: 'oxygen',
    }),
    reading: quantity(moleFraction, {
      symbol: 'x',
      label: 'Reading',
      description: 'Share of the volume of the gas.',
      min: '0 %',
      max: '25 %',
      usual: ['0.3 %', '19 %'],
      usualReason: 'near the ends a small error of the reading is a large error of lambda',
      example: '10.1 %',
      units: ['%', 'ppm'],
    }),
    basis: choiceWithDefault({
      label: 'Basis of the reading',
      options: { dry: 'dry: after a cooler or a water trap', wet: 'wet: a sensor in the hot exhaust' },
      example: 'dry',
      default: 'dry',
      defaultReason: 'bench and hand-held analysers dry their sample; a sensor in the pipe does not',
    }),
    ...fuelFields,
    humidity: humidityField,
  }),
  intermediates: {
    oxygenDemand: quantityOutput(ratio, { symbol: 's', label: 'Moles of oxygen needed per mole of carbon', digits: 5 }),
    fixedMoles: quantityOutput(ratio, {
      symbol: 'n_0',
      label: 'Moles of exhaust per mole of carbon that do not depend on lambda',
      digits: 5,
    }),
    molesPerLambda: quantityOutput(ratio, { symbol: 'n_1', label: 'Moles of exhaust per mole of carbon and unit of lambda', digits: 5 }),
    fromOxygen: optional(quantityOutput(ratio, { symbol: '\\lambda_{O_2}', label: 'Lambda by oxygen', digits: 3 })),
    fromCarbonDioxide: optional(quantityOutput(ratio, { symbol: '\\lambda_{CO_2}', label: 'Lambda by carbon dioxide', digits: 3 })),
  },
  outputs: { lambda: quantityOutput(ratio, { symbol: '\\lambda', label: 'Lambda', digits: 3 }) },
  constants: {},
  steps: [
    {
      gives: 'oxygenDemand',
      tex: '[[oxygenDemand]] = 1+\\frac{[[hydrogenToCarbon]]}{4}-\\frac{[[oxygenToCarbon]]}{2}',
      source: 'atomBalance',
    },
    {
      gives: 'fixedMoles',
      text: 'One less the oxygen needed in a dry sample; in a wet one the water from the fuel comes on top, half a mole per mole of hydrogen atoms. Sample: [[basis]].',
      source: 'atomBalance',
    },
    {
      gives: 'molesPerLambda',
      text: 'Oxygen needed over the 20.945 % of it in dry air; in a wet sample times one plus the moles of water per mole of intake air.',
      source: 'atomBalance',
    },
    {
      gives: 'fromOxygen',
      tex: '[[fromOxygen]] = \\frac{[[oxygenDemand]]+[[reading]]\\,[[fixedMoles]]}{[[oxygenDemand]]-[[reading]]\\,[[molesPerLambda]]}',
      source: 'atomBalance',
    },
    {
      gives: 'fromCarbonDioxide',
      tex: '[[fromCarbonDioxide]] = \\frac{1-[[reading]]\\,[[fixedMoles]]}{[[reading]]\\,[[molesPerLambda]]-0.000375\\,[[oxygenDemand]]/0.209445}',
      source: 'atomBalance',
    },
    { gives: 'lambda', text: 'Lambda by the gas that was measured: [[gas]].' },
  ],
  assumptions: [
    {
      code: 'complete_combustion',
      text: 'All fuel is burnt. At lambda 2, 1000 ppm of carbon monoxide make lambda read 0.4 % too high by oxygen and 1.4 % too high by carbon dioxide.',
    },
    { code: 'undiluted', text: 'The probe draws no false air: taken deep in the tailpipe, all joints tight.' },
  ],
  limits: [{ code: 'lean_only', text: 'For lean exhaust only: with carbon dioxide, rich and lean mixtures can give the same reading.' }],
  cautions: [],
  sources: { atomBalance },
  compute(input) {
    const given = {
      moleFraction: input.reading,
      fuel: input,
      waterPerDryAir: waterPerDryAirOfHumidity(input.humidity),
      basis: input.basis,
    };
    const found = input.gas === 'oxygen' ? lambdaFromOxygen(given) : lambdaFromCarbonDioxide(given);
    // The reading of exactly lambda 1 may come out a rounding error below it.
    const lambda = found < 1 && found > 1 - rounding ? 1 : found;
    if (!(lambda > 0) || lambda > 1000) {
      return noSolution('the reading is that of air: engine off, probe out, or a leak in the sample line', ['reading']);
    }
    if (lambda < 1)
      return noSolution('more carbon dioxide than this fuel can give: check the analyser, its basis and the fuel', ['reading']);
    const { fixed, perLambda } = exhaustMolesByLambda(given);
    return {
      oxygenDemand: oxygenDemand(input),
      fixedMoles: fixed,
      molesPerLambda: perLambda,
      fromOxygen: input.gas === 'oxygen' ? lambda : undefined,
      fromCarbonDioxide: input.gas === 'oxygen' ? undefined : lambda,
      lambda,
    };
  },
});
