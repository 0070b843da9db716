import { constant, defineCalculation, isRefusal, optional, quantity, quantityOutput } from '@wallflow/calculation';
import { mass, massConcentration, massFlow, massRatio, molarMass, reactionRate, time, volume } from '@wallflow/units';
import * as z from 'zod';
import { molarMassOfDryAir } from '../../gas/constants.js';
import { siBrochure } from '../../sources.js';
import { chosenKinetics, gasInputs, kineticsConstants, kineticsInputs } from '../oxidation/inputs.js';
import { sootOxidationRate } from '../oxidation/kernel.js';
import { bai2016, bissettShadman1985, nitrogenDioxideSupply, uncoatedDisk2008, wholeFilterBalance } from '../sources.js';
import { equilibriumSootMass, nitrogenDioxidePerCarbon, sootBalance } from './kernel.js';

const molarMassOfNitrogenDioxide = 0.0460055;

export const sootBalanceCalculation = defineCalculation({
  id: 'soot-balance',
  version: '1.1.0',
  subject: 'soot',
  title: 'Soot balance at steady conditions',
  purpose: 'Does the filter fill or empty itself at this temperature, how fast, and where does it settle?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['passive regeneration', 'balance point', 'NO2', 'soot mass'],
  method: 'mass balance with a first-order burn rate, closed form',
  inputs: z.strictObject({
    initialMass: quantity(mass, {
      symbol: 'm_0',
      label: 'Soot at the start',
      min: '0 g',
      max: '5 kg',
      example: '72.7 g',
      units: ['g', 'kg'],
    }),
    sootFlow: quantity(massFlow, {
      symbol: '\\dot m_{in}',
      label: 'Soot that comes in',
      min: '0 mg/s',
      max: '100 mg/s',
      usual: ['0 mg/s', '20 mg/s'],
      usualReason: 'a healthy diesel engine leaves some 0.1 to 5 mg/s',
      example: '0.2 mg/s',
      units: ['mg/s', 'g/h'],
    }),
    duration: quantity(time, { symbol: 't', label: 'Duration', min: '0 s', max: '1000 h', example: '1 h', units: ['h', 'min', 's'] }),
    filterVolume: quantity(volume, {
      symbol: 'V',
      label: 'Filter volume',
      min: '0.1 L',
      max: '200 L',
      example: '17.0 L',
      units: ['L', 'm3'],
    }),
    exhaustMassFlow: quantity(massFlow, {
      symbol: '\\dot m_e',
      label: 'Exhaust mass flow',
      description: 'Only to check whether there is enough nitrogen dioxide.',
      above: '0 kg/h',
      max: '5000 kg/h',
      example: '600 kg/h',
      units: ['kg/h', 'g/s'],
    }).optional(),
    ...gasInputs,
    ...kineticsInputs,
  }),
  intermediates: {
    rate: quantityOutput(reactionRate, { symbol: 'k', label: 'Rate of burning', digits: 4, units: ['1/s', '1/h'] }),
    supplyRatio: optional(
      quantityOutput(massRatio, {
        symbol: 'r_{NO_2}',
        label: 'Nitrogen dioxide that passes per soot that comes in, by mass',
        digits: 3,
        units: ['1'],
      }),
    ),
  },
  outputs: {
    finalMass: quantityOutput(mass, { symbol: 'm', label: 'Soot at the end', digits: 4, units: ['g', 'kg'] }),
    finalLoad: quantityOutput(massConcentration, { symbol: "m'", label: 'Soot load at the end', digits: 4, units: ['g/L'] }),
    oxidised: quantityOutput(mass, { symbol: 'm_{ox}', label: 'Soot burnt', digits: 4, units: ['g'] }),
    deposited: quantityOutput(mass, { symbol: 'm_{in}', label: 'Soot that came in', digits: 4, units: ['g'] }),
    equilibriumMass: optional(quantityOutput(mass, { symbol: 'm_{eq}', label: 'Soot at which it settles', digits: 3, units: ['g', 'kg'] })),
    equilibriumLoad: optional(
      quantityOutput(massConcentration, { symbol: "m'_{eq}", label: 'Soot load at which it settles', digits: 3, units: ['g/L'] }),
    ),
  },
  constants: {
    ...kineticsConstants,
    gasMolarMass: constant(molarMass, molarMassOfDryAir, {
      symbol: 'M_g',
      label: 'Molar mass of the exhaust as air',
      source: 'nitrogenDioxideSupply',
    }),
    nitrogenDioxideMolarMass: constant(molarMass, molarMassOfNitrogenDioxide, {
      symbol: 'M_{NO_2}',
      label: 'Molar mass of nitrogen dioxide',
      source: 'nitrogenDioxideSupply',
    }),
  },
  steps: [
    { gives: 'rate', text: 'Sum of the rates with oxygen and nitrogen dioxide at [[temperature]].', source: 'bai2016' },
    {
      gives: 'supplyRatio',
      tex: '[[supplyRatio]] = \\frac{[[exhaustMassFlow]]\\,[[nitrogenDioxide]]\\,[[nitrogenDioxideMolarMass]]}{[[gasMolarMass]]\\,[[sootFlow]]}',
      source: 'nitrogenDioxideSupply',
    },
    { gives: 'deposited', tex: '[[deposited]] = [[sootFlow]]\\,[[duration]]' },
    { gives: 'equilibriumMass', tex: '[[equilibriumMass]] = \\frac{[[sootFlow]]}{[[rate]]}', source: 'bai2016', locator: 'balance point' },
    { gives: 'equilibriumLoad', tex: '[[equilibriumLoad]] = \\frac{[[equilibriumMass]]}{[[filterVolume]]}' },
    {
      gives: 'finalMass',
      tex: '[[finalMass]] = [[initialMass]]\\,e^{-[[rate]]\\,[[duration]]}+[[sootFlow]]\\,\\frac{1-e^{-[[rate]]\\,[[duration]]}}{[[rate]]}',
      source: 'wholeFilterBalance',
    },
    { gives: 'oxidised', tex: '[[oxidised]] = [[initialMass]]+[[deposited]]-[[finalMass]]' },
    { gives: 'finalLoad', tex: '[[finalLoad]] = \\frac{[[finalMass]]}{[[filterVolume]]}' },
  ],
  assumptions: [
    { code: 'steady', text: 'Temperature, gas and soot flow stay the same over the whole time.' },
    { code: 'all_captured', text: 'All soot that comes in stays in the filter until it burns.' },
  ],
  limits: [
    { code: 'isothermal', text: 'Not for a burn that heats the filter itself: there use the simulation of a regeneration.' },
    { code: 'fitted_range', text: 'Fitted to one filter from 250 °C to 350 °C; weighed burn-offs there agree within 5 % to 15 %.' },
  ],
  cautions: [],
  sources: { wholeFilterBalance, bai2016, bissettShadman1985, uncoatedDisk2008, nitrogenDioxideSupply, siBrochure },
  compute(input, { constants, warn }) {
    const kinetics = chosenKinetics(input, constants);
    if (isRefusal(kinetics)) return kinetics;
    const { total: rate, nitrogenDioxide: passive } = sootOxidationRate(kinetics, input, constants.gasConstant);
    const { sootFlow, filterVolume, exhaustMassFlow, duration } = input;
    const balance = sootBalance({ initialMass: input.initialMass, sootFlow, rate, duration });
    const equilibriumMass = equilibriumSootMass(sootFlow, rate);
    const supplied =
      exhaustMassFlow === undefined
        ? undefined
        : (exhaustMassFlow * input.nitrogenDioxide * constants.nitrogenDioxideMolarMass) / constants.gasMolarMass;
    if (supplied !== undefined && rate > 0 && (balance.oxidised * passive) / rate > (supplied * duration) / nitrogenDioxidePerCarbon) {
      warn('nitrogen_dioxide_short', 'More soot would burn than the nitrogen dioxide in this exhaust flow can: the real rate is lower.');
    }
    return {
      rate,
      supplyRatio: supplied === undefined || sootFlow === 0 ? undefined : supplied / sootFlow,
      ...balance,
      finalLoad: balance.finalMass / filterVolume,
      equilibriumMass,
      equilibriumLoad: equilibriumMass === undefined ? undefined : equilibriumMass / filterVolume,
    };
  },
});
