import * as wf from '@wallflow/calculation';
import {
  density,
  fraction,
  massFlow,
  massFraction,
  massRatio,
  molarFlow,
  molarMass,
  ratio,
  velocity,
  volumeFlow,
  volumeFraction,
  volumePerDistance,
} from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { cfr1065 } from '../../sources.js';
import { ammoniaMolarMass, nitricOxideMolarMass, nitrogenDioxideMolarMass, ureaMolarMass } from '../named-constants.js';
import { iso22241Part1, scrReactions, ureaHydrolysis } from '../sources.js';
import { reductantMassFlow } from './kernel.js';
import { ammoniaPerNox } from './stoichiometry.js';

export const reductantDemandCalculation = wf.defineCalculation({
  id: 'reductant-demand',
  subject: 'reductant',
  title: 'Reductant that the NOx needs',
  purpose: 'How much reductant must be dosed, per hour, per 1000 km and as a share of the fuel?',
  keywords: 'reductant, urea, consumption, ammonia-to-NOx ratio, stoichiometry, DEF, AUS 32, SCR',
  method: 'stoichiometry: one urea gives two ammonia',
  inputs: {
    noxMassFlow: wf.quantity(massFlow, {
      symbol: 'q_{NOx}',
      label: 'NOx mass flow, counted as NO2',
      range: '0 g/h <= x <= 100 kg/h',
      example: '157 g/h',
      units: ['g/h', 'g/s', 'mg/s', 'kg/h'],
    }),
    countedAs: wf.choice({
      label: 'NOx counted as',
      description: 'Emission rules count all NOx as NO2. Grams of real NO are more moles.',
      options: { 'nitrogen-dioxide': 'NO2, as emission rules do', 'nitric-oxide': 'NO' },
      default: ['nitrogen-dioxide', 'emission rules count NOx as NO2'],
    }),
    conversion: wf.quantity(fraction, {
      symbol: '\\eta',
      label: 'Share of the NOx to be converted',
      range: '0 <= x <= 100 %',
      example: '84 %',
      units: ['%'],
    }),
    nitrogenDioxideShare: wf.quantity(fraction, {
      symbol: 'y',
      label: 'Share of NO2 in the NOx, by moles',
      range: '0 <= x <= 100 %',
      usual: ['0 %', '60 %', 'an oxidation catalyst seldom gives more NO2 than NO'],
      units: ['%'],
      default: ['40 %', 'any share up to 50 % gives the same demand'],
    }),
    dosedRatio: wf.optional(
      wf.quantity(ratio, {
        symbol: '\\alpha',
        label: 'Ammonia-to-NOx ratio that is dosed',
        description: 'Moles of ammonia dosed per mole of NOx that comes in. Leave blank to work out the ratio that the conversion needs.',
        range: '0 <= x <= 3',
        usual: ['0.3', '1.3', { below: 'so little starves the catalyst', above: 'so much slips ammonia' }],
        example: '1',
      }),
    ),
    ureaFraction: wf.quantity(massFraction, {
      symbol: 'w_u',
      label: 'Urea in the fluid, by mass',
      range: '5 <= x <= 52 %',
      usual: ['31.8 %', '33.2 %', 'ISO 22241-1 allows 31.8 % to 33.2 %'],
      units: ['%'],
      default: ['32.5 %', 'target of ISO 22241-1'],
    }),
    reductantDensity: wf.quantity(density, {
      symbol: '\\rho_r',
      label: 'Density of the reductant',
      range: '990 <= x <= 1160 kg/m3',
      usual: ['1087 kg/m3', '1093 kg/m3', 'ISO 22241-1 at 20 °C'],
      units: ['kg/m3', 'kg/L'],
      default: ['1090 kg/m3', 'middle of the range of ISO 22241-1 at 20 °C'],
    }),
    vehicleSpeed: wf.optional(
      wf.quantity(velocity, {
        symbol: 'v',
        label: 'Road speed',
        description: 'Enter it to see litres per 1000 km.',
        range: '0 < x <= 200 km/h',
        example: '22 km/h',
        units: ['km/h', 'm/s'],
      }),
    ),
    fuelMassFlow: wf.optional(
      wf.quantity(massFlow, {
        symbol: 'q_f',
        label: 'Fuel mass flow',
        description: 'Enter it to see the share of the fuel.',
        range: '0 < x <= 1000 kg/h',
        example: '4.5 kg/h',
        units: ['kg/h', 'g/s'],
      }),
    ),
    fuelDensity: wf.quantity(density, {
      symbol: '\\rho_f',
      label: 'Density of the fuel',
      range: '700 <= x <= 1000 kg/m3',
      usual: ['800 kg/m3', '860 kg/m3', 'road diesel'],
      units: ['kg/m3', 'kg/L'],
      default: ['835 kg/m3', 'common value for road diesel, no source; used for the share by volume only'],
    }),
  },
  example: { vehicleSpeed: '22 km/h', fuelMassFlow: '4.5 kg/h' },
  intermediates: {
    noxMolarMass: wf.quantityOutput(molarMass, {
      symbol: 'M',
      label: 'Molar mass that the NOx is counted with',
      digits: 6,
      units: ['g/mol'],
    }),
    noxMolarFlow: wf.quantityOutput(molarFlow, { symbol: '\\dot n_{NOx}', label: 'NOx molar flow', digits: 5, units: ['mol/s'] }),
    ammoniaPerNox: wf.quantityOutput(ratio, { symbol: 's', label: 'Ammonia per converted NOx, by moles', digits: 4 }),
    stoichiometricRatio: wf.quantityOutput(ratio, {
      symbol: '\\alpha_{st}',
      label: 'Ammonia-to-NOx ratio that the conversion needs',
      digits: 4,
    }),
    ureaMassFlow: wf.quantityOutput(massFlow, { symbol: 'q_u', label: 'Urea', digits: 5, units: ['g/h', 'mg/s'] }),
    ammoniaMassFlow: wf.quantityOutput(massFlow, { symbol: 'q_{NH_3}', label: 'Ammonia released', digits: 5, units: ['g/h', 'mg/s'] }),
  },
  outputs: {
    ammoniaToNoxRatio: wf.quantityOutput(ratio, { symbol: '\\alpha', label: 'Ammonia-to-NOx ratio', digits: 4 }),
    reductantVolumeFlow: wf.quantityOutput(volumeFlow, {
      symbol: '\\dot V_r',
      label: 'Reductant by volume',
      digits: 4,
      units: ['L/h', 'mL/min'],
    }),
    reductantPerDistance: wf.optional(
      wf.quantityOutput(volumePerDistance, { symbol: 'c_r', label: 'Reductant per distance', digits: 4, units: ['L/1000km'] }),
    ),
    shareOfFuelByMass: wf.optional(
      wf.quantityOutput(massRatio, { symbol: 'r_m', label: 'Reductant as a share of the fuel, by mass', digits: 4, units: ['%'] }),
    ),
    shareOfFuelByVolume: wf.optional(
      wf.quantityOutput(volumeFraction, { symbol: 'r_V', label: 'Reductant as a share of the fuel, by volume', digits: 4, units: ['%'] }),
    ),
    reductantMassFlow: wf.quantityOutput(massFlow, {
      symbol: 'q_r',
      label: 'Reductant by mass',
      digits: 5,
      units: ['g/h', 'mg/s', 'kg/h'],
    }),
  },
  constants: {
    nitrogenDioxideMolarMass,
    nitricOxideMolarMass,
    ammoniaMolarMass,
    ureaMolarMass,
  },
  answer: 'reductantMassFlow',
  steps: [
    wf.cases(
      'noxMolarMass',
      { "countedAs == 'nitric-oxide'": 'nitricOxideMolarMass', otherwise: 'nitrogenDioxideMolarMass' },
      cfr1065,
      '1065.1005, Table 7',
    ),
    wf.formula('noxMolarFlow', 'noxMassFlow / noxMolarMass'),
    wf.formula('ammoniaPerNox', 'max(1, (2 + 2 * nitrogenDioxideShare) / 3)', scrReactions),
    wf.formula('stoichiometricRatio', 'conversion * ammoniaPerNox'),
    wf.cases('ammoniaToNoxRatio', { 'known(dosedRatio)': 'dosedRatio', otherwise: 'stoichiometricRatio' }),
    wf.formula('ammoniaMassFlow', 'ammoniaToNoxRatio * noxMolarFlow * ammoniaMolarMass'),
    wf.formula('ureaMassFlow', 'ammoniaToNoxRatio * noxMolarFlow * ureaMolarMass / 2', ureaHydrolysis),
    wf.formula('reductantMassFlow', 'ureaMassFlow / ureaFraction', iso22241Part1),
    wf.formula('reductantVolumeFlow', 'reductantMassFlow / reductantDensity'),
    wf.formula('reductantPerDistance', 'reductantVolumeFlow / vehicleSpeed'),
    wf.formula('shareOfFuelByMass', 'reductantMassFlow / fuelMassFlow'),
    wf.formula('shareOfFuelByVolume', 'shareOfFuelByMass * fuelDensity / reductantDensity'),
  ],
  assumptions: {
    all_urea: 'All urea turns into ammonia and isocyanic acid, and the acid into more ammonia.',
    no_oxidation: 'No ammonia burns on the catalyst. Above about 450 °C some does, and the demand is higher.',
    steady: 'The ammonia stored in the catalyst does not change.',
  },
  limits: { demand_not_command: 'This is the chemical demand. The control unit adds corrections of its own to it.' },
  cautions: [cautions.noDefeat, cautions.makerFirst],
  compute(input, context) {
    const { constants } = context;
    const noxMolarMass = input.countedAs === 'nitric-oxide' ? constants.nitricOxideMolarMass : constants.nitrogenDioxideMolarMass;
    const noxMolarFlow = input.noxMassFlow / noxMolarMass;
    const perNox = ammoniaPerNox(input.nitrogenDioxideShare);
    const stoichiometricRatio = input.conversion * perNox;
    const ammoniaToNoxRatio = input.dosedRatio ?? stoichiometricRatio;
    if (ammoniaToNoxRatio < stoichiometricRatio * (1 - 1e-9)) {
      context.warn('ratio_too_low', 'Too little ammonia is dosed to reach this conversion.', ['dosedRatio']);
    }
    if (ammoniaToNoxRatio > perNox * (1 + 1e-9)) {
      context.warn('ratio_too_high', 'More ammonia is dosed than all the NOx can use: expect slip, and deposits.', ['dosedRatio']);
    }
    const ammoniaMolarFlow = ammoniaToNoxRatio * noxMolarFlow;
    const flow = reductantMassFlow({ ammoniaMolarFlow, ureaFraction: input.ureaFraction }, constants.ureaMolarMass);
    const reductantVolumeFlow = flow / input.reductantDensity;
    const byMass = input.fuelMassFlow === undefined ? undefined : flow / input.fuelMassFlow;
    return {
      noxMolarMass,
      noxMolarFlow,
      ammoniaPerNox: perNox,
      stoichiometricRatio,
      ammoniaToNoxRatio,
      ammoniaMassFlow: ammoniaMolarFlow * constants.ammoniaMolarMass,
      ureaMassFlow: flow * input.ureaFraction,
      reductantMassFlow: flow,
      reductantVolumeFlow,
      reductantPerDistance: input.vehicleSpeed === undefined ? undefined : reductantVolumeFlow / input.vehicleSpeed,
      shareOfFuelByMass: byMass,
      shareOfFuelByVolume: byMass === undefined ? undefined : (byMass * input.fuelDensity) / input.reductantDensity,
    };
  },
});
