import * as wf from '@wallflow/calculation';
import { mass, massConcentration, massFlow, massRatio, molarMass, reactionRate, time, volume } from '@wallflow/units';
import { airMolarMass } from '../../vocabulary/constants.js';
import { chosenKinetics, gasInputs, kineticsConstants, kineticsInputs, oneLaw } from '../oxidation/inputs.js';
import { sootOxidationRate } from '../oxidation/kernel.js';
import { burnRateAt } from '../oxidation/nested.js';
import { bai2016, nitrogenDioxideSupply, wholeFilterBalance } from '../sources.js';
import { equilibriumSootMass, nitrogenDioxidePerCarbon, sootBalance } from './kernel.js';

const molarMassOfNitrogenDioxide = 0.0460055;

export const sootBalanceCalculation = wf.defineCalculation({
  id: 'soot-balance',
  subject: 'soot',
  title: 'Soot balance at steady conditions',
  purpose: 'Does the filter fill or burn itself clean at this temperature, how fast, and where does it settle?',
  keywords: 'passive regeneration, passive regen, balance point, NO2, soot mass, DPF, regen, burn-off',
  method: 'mass balance with a first-order burn rate, closed form',
  inputs: {
    startSootMass: wf.quantity(mass, {
      symbol: 'm_0',
      label: 'Soot at the start',
      range: '0 g <= x <= 5 kg',
      example: '17 g',
      units: ['g', 'kg'],
    }),
    sootFlow: wf.quantity(massFlow, {
      symbol: '\\dot m_{in}',
      label: 'Engine-out soot',
      range: '0 <= x <= 100 mg/s',
      usual: ['0 mg/s', '20 mg/s', { above: 'a healthy diesel engine leaves some 0.1 to 5 mg/s' }],
      example: '3 g/h',
      units: ['g/h', 'mg/s'],
    }),
    duration: wf.quantity(time, { symbol: 't', label: 'Duration', range: '0 s <= x <= 1000 h', example: '1 h', units: ['h', 'min', 's'] }),
    filterVolume: wf.quantity(volume, {
      symbol: 'V',
      label: 'Filter volume',
      range: '0.1 <= x <= 200 L',
      example: '5.79 L',
      units: ['L', 'm3'],
    }),
    exhaustMassFlow: wf.optional(
      wf.quantity(massFlow, {
        symbol: '\\dot m_e',
        label: 'Exhaust mass flow',
        description: 'Only to check whether there is enough nitrogen dioxide.',
        range: '0 < x <= 5000 kg/h',
        example: '305 kg/h',
        units: ['kg/h', 'g/s'],
      }),
    ),
    ...gasInputs,
    ...kineticsInputs,
  },
  intermediates: {
    burnRate: wf.quantityOutput(reactionRate, { symbol: 'k', label: 'Rate of burning, share per time', digits: 4, units: ['1/s', '1/h'] }),
    supplyRatio: wf.optional(
      wf.quantityOutput(massRatio, {
        symbol: 'r_{NO_2}',
        label: 'Nitrogen dioxide ÷ engine-out soot, by mass',
        digits: 3,
        units: ['1'],
      }),
    ),
  },
  outputs: {
    finalSootMass: wf.quantityOutput(mass, { symbol: 'm', label: 'Soot at the end', digits: 4, units: ['g', 'kg'] }),
    finalSootLoad: wf.quantityOutput(massConcentration, { symbol: "m'", label: 'Soot load at the end', digits: 4, units: ['g/L'] }),
    burntSoot: wf.quantityOutput(mass, { symbol: 'm_{ox}', label: 'Soot burnt', digits: 4, units: ['g'] }),
    depositedSoot: wf.quantityOutput(mass, { symbol: 'm_{in}', label: 'Soot that came in', digits: 4, units: ['g'] }),
    equilibriumSootMass: wf.optional(
      wf.quantityOutput(mass, { symbol: 'm_{eq}', label: 'Soot at which the filter settles', digits: 3, units: ['g', 'kg'] }),
    ),
    equilibriumSootLoad: wf.optional(
      wf.quantityOutput(massConcentration, {
        symbol: "m'_{eq}",
        label: 'Soot load at which the filter settles',
        digits: 3,
        units: ['g/L'],
      }),
    ),
  },
  constants: {
    ...kineticsConstants,
    airMolarMass,
    nitrogenDioxideMolarMass: wf.constant(molarMass, molarMassOfNitrogenDioxide, {
      symbol: 'M_{NO_2}',
      label: 'Molar mass of NO2',
      source: nitrogenDioxideSupply,
    }),
  },
  answer: 'finalSootMass',
  steps: [
    burnRateAt('burnRate', { filterTemperature: 'filterTemperature', oxygen: 'oxygen', nitrogenDioxide: 'nitrogenDioxide' }),
    wf.formula(
      'supplyRatio',
      'exhaustMassFlow * nitrogenDioxide * nitrogenDioxideMolarMass / (airMolarMass * sootFlow)',
      nitrogenDioxideSupply,
    ),
    wf.formula('depositedSoot', 'sootFlow * duration'),
    wf.formula('equilibriumSootMass', 'sootFlow / burnRate', bai2016, 'balance point'),
    wf.formula('equilibriumSootLoad', 'equilibriumSootMass / filterVolume'),
    wf.cases(
      'finalSootMass',
      {
        'burnRate == 0': 'startSootMass + depositedSoot',
        otherwise: 'startSootMass * exp(-burnRate * duration) + sootFlow * (1 - exp(-burnRate * duration)) / burnRate',
      },
      wholeFilterBalance,
    ),
    wf.formula('burntSoot', 'startSootMass + depositedSoot - finalSootMass'),
    wf.formula('finalSootLoad', 'finalSootMass / filterVolume'),
  ],
  assumptions: {
    steady: 'Temperature, gas and soot flow stay the same over the whole time.',
    all_captured: 'All engine-out soot stays in the filter until it burns.',
  },
  limits: {
    ...oneLaw,
    isothermal: 'Not for a burn that heats the filter itself: use the simulation of a regeneration for that.',
    fitted_range: 'Fitted to one filter from 250 °C to 350 °C; weighed burn-offs there agree within 5 % to 15 %.',
  },
  compute(input, { constants, warn }) {
    const kinetics = chosenKinetics(input, constants);
    const at = { ...input, temperature: input.filterTemperature };
    const { total: burnRate, nitrogenDioxide: passive } = sootOxidationRate(kinetics, at, constants.gasConstant);
    const { startSootMass, sootFlow, filterVolume, exhaustMassFlow, duration } = input;
    const balance = sootBalance({ initialMass: startSootMass, sootFlow, rate: burnRate, duration });
    const settled = equilibriumSootMass(sootFlow, burnRate);
    const supplied =
      exhaustMassFlow === undefined
        ? undefined
        : (exhaustMassFlow * input.nitrogenDioxide * constants.nitrogenDioxideMolarMass) / constants.airMolarMass;
    if (
      supplied !== undefined &&
      burnRate > 0 &&
      (balance.oxidised * passive) / burnRate > (supplied * duration) / nitrogenDioxidePerCarbon
    ) {
      warn('nitrogen_dioxide_short', 'The nitrogen dioxide in this exhaust flow cannot burn that much soot: the real rate is lower.');
    }
    return {
      burnRate,
      supplyRatio: supplied === undefined || sootFlow === 0 ? undefined : supplied / sootFlow,
      finalSootMass: balance.finalMass,
      finalSootLoad: balance.finalMass / filterVolume,
      burntSoot: balance.oxidised,
      depositedSoot: balance.deposited,
      equilibriumSootMass: settled,
      equilibriumSootLoad: settled === undefined ? undefined : settled / filterVolume,
    };
  },
});
