import { choice, choiceWithDefault, defineCalculation, noSolution, quantity, quantityOutput } from '@wallflow/calculation';
import { moleFraction, ratio } from '@wallflow/units';
import * as z from 'zod';
import { waterPerDryAirOfHumidity } from '../composition/kernel.js';
import { fuelFields, humidityField } from '../fields.js';
import { atomBalance } from '../sources.js';
import { lambdaFromCarbonDioxide, lambdaFromOxygen } from './kernel.js';

export const lambdaFromGasCalculation = defineCalculation({
  id: 'lambda-from-exhaust-gas',
  version: '1.0.0',
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
  intermediates: {},
  outputs: { lambda: quantityOutput(ratio, { symbol: '\\lambda', label: 'Lambda', digits: 3 }) },
  constants: {},
  steps: [
    {
      gives: 'lambda',
      tex: '[[lambda]] = \\begin{cases}\\dfrac{s+x\\,n_0}{s-x\\,n_1}&\\text{oxygen}\\\\[2ex]\\dfrac{1-x\\,n_0}{x\\,n_1-0.000375\\,s/0.209445}&\\text{carbon dioxide}\\end{cases}',
      text: 'Measured: [[gas]], [[reading]]. With s = 1 + α/4 − β/2. Dry: n0 = 1 − s and n1 = s/0.209445. Wet: n0 is larger by α/2, and n1 by the humidity in moles per mole of air.',
      source: 'atomBalance',
    },
  ],
  assumptions: [
    { code: 'complete_combustion', text: 'All fuel is burnt; 1000 ppm of carbon monoxide shift lambda by about 1 % at lambda 2.' },
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
    const lambda = input.gas === 'oxygen' ? lambdaFromOxygen(given) : lambdaFromCarbonDioxide(given);
    if (!(lambda > 0) || lambda > 1000) {
      return noSolution('the reading is that of air: engine off, probe out, or a leak in the sample line', ['reading']);
    }
    if (lambda < 1)
      return noSolution('more carbon dioxide than this fuel can give: check the analyser, its basis and the fuel', ['reading']);
    return { lambda };
  },
});
