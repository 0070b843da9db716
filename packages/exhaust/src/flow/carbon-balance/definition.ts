import * as wf from '@wallflow/calculation';
import { massFlow, massFraction, molarFlow, molarMass, moleFraction, ratio } from '@wallflow/units';
import { carbonMassFraction, oxygenDemand } from '../../gas/air-fuel-ratio/kernel.js';
import { waterPerDryAirOfHumidity } from '../../gas/composition/kernel.js';
import { fuelFields, humidityField } from '../../gas/mixture-fields.js';
import { molarMassConstants } from '../../gas/molar-mass-constants.js';
import { atomicMass, dryAir } from '../../gas/species.js';
import { cfr1065 } from '../../sources.js';
import { airMolarMass } from '../../vocabulary/constants.js';
import { massBalance } from '../sources.js';
import { carbonBalance, carbonBalanceMolarFlow } from './kernel.js';

const trace = (symbol: string, label: string, max: string, example: string, defaultReason: string) =>
  wf.quantity(moleFraction, {
    symbol,
    label,
    range: `0 ppm <= x <= ${max}`,
    usual: ['0 ppm', '3000 ppm', 'a sound diesel gives less'],
    example,
    default: ['0 ppm', defaultReason],
    units: ['ppm', '%'],
  });

export const exhaustFlowCarbonBalanceCalculation = wf.defineCalculation({
  id: 'exhaust-flow-carbon-balance',
  subject: 'flow',
  title: 'Exhaust flow by carbon balance',
  purpose: 'How much exhaust comes out, from the fuel burnt and the carbon dioxide in the gas?',
  keywords: 'carbon balance, fuel flow, carbon dioxide',
  method: 'carbon balance, 40 CFR 1065.655',
  inputs: {
    fuelMassFlow: wf.quantity(massFlow, {
      symbol: '\\dot m_{fuel}',
      label: 'Fuel mass flow',
      range: '0.001 < x <= 3000 kg/h',
      usual: ['0.3 kg/h', '200 kg/h', 'road and machine diesels burn this much'],
      example: '4 kg/h',
      units: ['kg/h', 'g/s'],
    }),
    carbonDioxideReading: wf.quantity(moleFraction, {
      symbol: 'x_{CO_2}',
      label: 'Carbon dioxide reading',
      range: '0.1 < x <= 20 %',
      usual: ['1 %', '15.5 %', 'diesel exhaust from idle to full load'],
      example: '4.8 %',
      units: ['%', 'ppm'],
    }),
    carbonMonoxideReading: trace('x_{CO}', 'Carbon monoxide reading', '5 %', '200 ppm', 'small beside carbon dioxide in lean exhaust'),
    hydrocarbonReading: trace(
      'x_{HC}',
      'Hydrocarbon reading, per carbon atom',
      '2 %',
      '50 ppm',
      'small beside carbon dioxide in lean exhaust',
    ),
    readingBasis: wf.choice({
      label: 'Basis of the reading',
      options: { dry: 'dry: after a cooler or a water trap', wet: 'wet: hot sample or sensor' },
      default: ['dry', 'bench and hand-held analysers dry their sample'],
    }),
    ...fuelFields,
    carbonFraction: wf.optional(
      wf.quantity(massFraction, {
        symbol: 'w_{C,g}',
        label: 'Carbon in the fuel by mass, if analysed',
        description: 'Left out, it follows from the formula of the fuel.',
        range: '20 <= x <= 100 %',
        usual: ['75 %', '88 %', 'diesel and biodiesel lie in this range'],
        example: '86.9 %',
        units: ['%'],
      }),
    ),
    humidity: humidityField,
    waterPerDryExhaust: wf.optional(
      wf.quantity(ratio, {
        symbol: 'w_g',
        label: 'Water per mole of dry exhaust, if known',
        description: 'Left out, it follows from the fuel and the humidity.',
        range: '0 <= x <= 0.6',
        usual: ['0.005', '0.2', 'diesel exhaust in common weather'],
        example: '0.06',
      }),
    ),
    intakeCarbonDioxide: wf.quantity(moleFraction, {
      symbol: 'x_{CO_2,int}',
      label: 'Carbon dioxide in the intake air',
      range: '0 ppm <= x <= 0.1 %',
      usual: ['0 ppm', '800 ppm', 'outdoor air holds about 420 ppm, a workshop more'],
      default: ['375 ppm', 'the value that 40 CFR 1065.655(c)(3) allows; 50 ppm more change the result by 0.1 % at 5 % carbon dioxide'],
      units: ['ppm'],
    }),
  },
  intermediates: {
    carbonRead: wf.quantityOutput(moleFraction, { symbol: 'x_C', label: 'Carbon read in the gas', digits: 4, units: ['%', 'ppm'] }),
    oxygenDemand: wf.quantityOutput(ratio, { symbol: 's', label: 'Moles of oxygen needed per mole of carbon', digits: 5 }),
    waterPerDryAir: wf.quantityOutput(ratio, { symbol: 'h', label: 'Moles of water per mole of dry intake air', digits: 4 }),
    fixedWater: wf.quantityOutput(ratio, { symbol: 'w_0', label: 'Water per mole of dry exhaust without any fuel', digits: 4 }),
    waterPerCarbon: wf.quantityOutput(ratio, { symbol: 'w_1', label: 'Water that one mole of carbon from the fuel adds', digits: 4 }),
    fuelCarbonFraction: wf.quantityOutput(massFraction, { symbol: 'w_C', label: 'Carbon in the fuel by mass', digits: 4, units: ['%'] }),
    carbonPerDryExhaust: wf.quantityOutput(ratio, { symbol: 'x_{C,d}', label: 'Carbon from the fuel per mole of dry exhaust', digits: 5 }),
    airPerDryExhaust: wf.quantityOutput(ratio, { symbol: 'a', label: 'Dry intake air per mole of dry exhaust', digits: 5 }),
    resultingWater: wf.quantityOutput(ratio, { symbol: 'w', label: 'Water per mole of dry exhaust', digits: 4 }),
    lambda: wf.quantityOutput(ratio, { symbol: '\\lambda', label: 'Lambda', digits: 3 }),
  },
  outputs: {
    exhaustMolarFlow: wf.quantityOutput(molarFlow, {
      symbol: '\\dot n_{exh}',
      label: 'Exhaust molar flow',
      digits: 5,
      units: ['mol/s', 'mol/h'],
    }),
    airMassFlow: wf.quantityOutput(massFlow, {
      symbol: '\\dot m_{air}',
      label: 'Air mass flow',
      digits: 4,
      units: ['kg/h', 'g/s'],
    }),
    exhaustMassFlow: wf.quantityOutput(massFlow, {
      symbol: '\\dot m_{exh}',
      label: 'Exhaust mass flow',
      digits: 4,
      units: ['kg/h', 'g/s'],
    }),
  },
  constants: {
    carbonAtomicMass: wf.constant(molarMass, atomicMass.carbon, { symbol: 'M_C', label: 'Molar mass of carbon', source: cfr1065 }),
    airMolarMass,
    waterMolarMass: molarMassConstants.waterMolarMass,
  },
  answer: 'exhaustMassFlow',
  steps: [
    wf.cases(
      'fuelCarbonFraction',
      {
        'known(carbonFraction)': 'carbonFraction',
        otherwise: '12.0107 / (12.0107 + 1.00794 * hydrogenToCarbon + 15.9994 * oxygenToCarbon)',
      },
      cfr1065,
      '1065.655(d)',
    ),
    wf.formula('carbonRead', 'carbonDioxideReading + carbonMonoxideReading + hydrocarbonReading', cfr1065, '1065.655(c)'),
    wf.formula('oxygenDemand', '1 + hydrogenToCarbon / 4 - oxygenToCarbon / 2', cfr1065, '1065.655(c)'),
    wf.formula('waterPerDryAir', 'airMolarMass / waterMolarMass * humidity', cfr1065, '1065.1005(f)(2), Table 7'),
    wf.cases(
      'fixedWater',
      { 'known(waterPerDryExhaust)': 'waterPerDryExhaust', otherwise: 'waterPerDryAir' },
      cfr1065,
      '1065.655(c)',
      'As known, or the humidity of the intake air.',
    ),
    wf.cases(
      'waterPerCarbon',
      { 'known(waterPerDryExhaust)': '0', otherwise: 'hydrogenToCarbon / 2 - waterPerDryAir * (1 - oxygenDemand)' },
      cfr1065,
      '1065.655(c)',
      'Half a mole per mole of hydrogen atoms; where the water is known, nothing is added to it.',
    ),
    wf.cases(
      'carbonPerDryExhaust',
      {
        "readingBasis == 'dry'": '(carbonRead - intakeCarbonDioxide) / (1 - intakeCarbonDioxide * (1 - oxygenDemand))',
        otherwise:
          '(carbonRead * (1 + fixedWater) - intakeCarbonDioxide) / (1 - intakeCarbonDioxide * (1 - oxygenDemand) - carbonRead * waterPerCarbon)',
      },
      cfr1065,
      '1065.655(c)',
      'Carbon read in the gas, brought to dry exhaust, less what the intake air brought.',
    ),
    wf.formula('airPerDryExhaust', '1 - (1 - oxygenDemand) * carbonPerDryExhaust', cfr1065, '1065.655(c)'),
    wf.formula('resultingWater', 'fixedWater + waterPerCarbon * carbonPerDryExhaust', cfr1065, '1065.655(c)'),
    wf.formula(
      'exhaustMolarFlow',
      '(fuelMassFlow * fuelCarbonFraction * (1 + resultingWater)) / (carbonAtomicMass * carbonPerDryExhaust)',
      cfr1065,
      '1065.655(f)(3)',
    ),
    wf.formula(
      'lambda',
      'airPerDryExhaust * 0.209445 / (carbonPerDryExhaust * oxygenDemand)',
      undefined,
      undefined,
      'The air found over the air that the fuel needs.',
    ),
    wf.formula('airMassFlow', 'exhaustMolarFlow / (1 + resultingWater) * airPerDryExhaust * airMolarMass * (1 + humidity)', massBalance),
    wf.formula('exhaustMassFlow', 'airMassFlow + fuelMassFlow', massBalance),
  ],
  assumptions: {
    steady: 'Fuel flow and gas readings belong to the same steady state; the regulation allows this route for steady tests only.',
    undiluted: 'The sample is undiluted and no carbon is stored: not during a regeneration, when soot burns too.',
  },
  limits: {
    weak_reading: 'At idle the carbon dioxide is low and its error counts in full: 0.1 % of volume in 2 % is 5 % of the flow.',
    lean_only: 'For lean exhaust; hydrogen is not counted.',
  },
  compute(input, { constants, warn }) {
    const waterPerDryAir = waterPerDryAirOfHumidity(input.humidity, constants.airMolarMass, constants.waterMolarMass);
    const readings = {
      carbonDioxide: input.carbonDioxideReading,
      carbonMonoxide: input.carbonMonoxideReading,
      hydrocarbons: input.hydrocarbonReading,
    };
    const balance = carbonBalance({ ...input, ...readings, basis: input.readingBasis, fuel: input, waterPerDryAir });
    if (!(balance.carbonPerDryExhaust > 0)) {
      return wf.noSolution('the gas holds no more carbon than the intake air: engine off, probe out or analyser wrong', [
        'carbonDioxideReading',
      ]);
    }
    const fuelCarbonFraction = input.carbonFraction ?? carbonMassFraction(input);
    const moles = carbonBalanceMolarFlow(input.fuelMassFlow, balance, fuelCarbonFraction, constants.carbonAtomicMass);
    const dryAirMoles = (moles / (1 + balance.waterPerDryExhaust)) * balance.airPerDryExhaust;
    const lambda = (balance.airPerDryExhaust * dryAir.oxygen) / (balance.carbonPerDryExhaust * oxygenDemand(input));
    if (lambda < 1)
      warn('rich_mixture', 'More carbon than this fuel gives in lean exhaust: check the analyser, its basis and the fuel.', [
        'carbonDioxideReading',
      ]);
    const airMassFlow = dryAirMoles * constants.airMolarMass * (1 + input.humidity);
    return {
      ...balance,
      waterPerDryAir,
      carbonRead: input.carbonDioxideReading + input.carbonMonoxideReading + input.hydrocarbonReading,
      oxygenDemand: oxygenDemand(input),
      fuelCarbonFraction,
      resultingWater: balance.waterPerDryExhaust,
      lambda,
      exhaustMolarFlow: moles,
      airMassFlow,
      exhaustMassFlow: airMassFlow + input.fuelMassFlow,
    };
  },
});
