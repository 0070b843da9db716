import {
  choiceWithDefault,
  constant,
  defineCalculation,
  optional,
  quantity,
  quantityOutput,
  quantityWithDefault,
} from '@wallflow/calculation';
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
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { cfr1065 } from '../../sources.js';
import { molarMassOfAmmonia, molarMassOfNitricOxide, molarMassOfNitrogenDioxide, molarMassOfUrea } from '../constants.js';
import { iso22241Part1, scrReactions, ureaHydrolysis } from '../sources.js';
import { reductantMassFlow } from './kernel.js';
import { ammoniaPerNox } from './stoichiometry.js';

export const reductantDemandCalculation = defineCalculation({
  id: 'reductant-demand',
  version: '1.0.0',
  subject: 'reductant',
  title: 'Reductant that the NOx needs',
  purpose: 'How much reductant must be dosed, per hour, per 1000 km and as a share of the fuel?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['reductant', 'urea', 'consumption', 'ammonia-to-NOx ratio', 'stoichiometry'],
  method: 'stoichiometry: one urea gives two ammonia',
  inputs: z.strictObject({
    noxMassFlow: quantity(massFlow, {
      symbol: 'q_{NOx}',
      label: 'NOx mass flow before the SCR catalyst',
      min: '0 g/h',
      max: '100 kg/h',
      example: '130 g/h',
      units: ['g/h', 'g/s', 'mg/s', 'kg/h'],
    }),
    countedAs: choiceWithDefault({
      label: 'NOx counted as',
      description: 'Emission rules count all NOx as NO2. Grams of real NO are more moles.',
      options: { 'nitrogen-dioxide': 'NO2, as emission rules do', 'nitric-oxide': 'NO' },
      example: 'nitrogen-dioxide',
      default: 'nitrogen-dioxide',
      defaultReason: 'emission rules count NOx as NO2',
    }),
    conversion: quantity(fraction, {
      symbol: '\\eta',
      label: 'Share of the NOx to be converted',
      min: '0 %',
      max: '100 %',
      example: '90 %',
      units: ['%'],
    }),
    nitrogenDioxideShare: quantityWithDefault(fraction, {
      symbol: 'y',
      label: 'Share of NO2 in the NOx, by moles',
      min: '0 %',
      max: '100 %',
      usual: ['0 %', '60 %'],
      usualReason: 'an oxidation catalyst seldom gives more NO2 than NO',
      example: '40 %',
      units: ['%'],
      default: '40 %',
      defaultReason: 'any share up to 50 % gives the same demand',
    }),
    dosedRatio: quantity(ratio, {
      symbol: '\\alpha',
      label: 'Ammonia-to-NOx ratio that is dosed',
      description: 'Moles of ammonia dosed per mole of NOx that comes in. Leave it out to get the ratio the conversion needs.',
      min: '0',
      max: '3',
      usual: ['0.3', '1.3'],
      usualReason: { below: 'so little starves the catalyst', above: 'so much slips ammonia' },
      example: '1',
    }).optional(),
    ureaFraction: quantityWithDefault(massFraction, {
      symbol: 'w_u',
      label: 'Urea in the reductant, by mass',
      min: '5 %',
      max: '52 %',
      usual: ['31.8 %', '33.2 %'],
      usualReason: 'ISO 22241-1 allows 31.8 % to 33.2 %',
      example: '32.5 %',
      units: ['%'],
      default: '32.5 %',
      defaultReason: 'target of ISO 22241-1',
    }),
    reductantDensity: quantityWithDefault(density, {
      symbol: '\\rho_r',
      label: 'Density of the reductant',
      min: '990 kg/m3',
      max: '1160 kg/m3',
      usual: ['1087 kg/m3', '1093 kg/m3'],
      usualReason: 'ISO 22241-1 at 20 °C',
      example: '1090 kg/m3',
      units: ['kg/m3', 'kg/L'],
      default: '1090 kg/m3',
      defaultReason: 'middle of the range of ISO 22241-1 at 20 °C',
    }),
    vehicleSpeed: quantity(velocity, {
      symbol: 'v',
      label: 'Mean road speed while this NOx is made',
      description: 'Give it to get litres per 1000 km.',
      above: '0 km/h',
      max: '200 km/h',
      example: '80 km/h',
      units: ['km/h', 'm/s'],
    }).optional(),
    fuelMassFlow: quantity(massFlow, {
      symbol: 'q_f',
      label: 'Fuel mass flow',
      description: 'Give it to get the share of the fuel.',
      above: '0 kg/h',
      max: '1000 kg/h',
      example: '5 kg/h',
      units: ['kg/h', 'g/s'],
    }).optional(),
    fuelDensity: quantityWithDefault(density, {
      symbol: '\\rho_f',
      label: 'Density of the fuel',
      min: '700 kg/m3',
      max: '1000 kg/m3',
      usual: ['800 kg/m3', '860 kg/m3'],
      usualReason: 'road diesel',
      example: '835 kg/m3',
      units: ['kg/m3', 'kg/L'],
      default: '835 kg/m3',
      defaultReason: 'common value for road diesel, no source; used for the share by volume only',
    }),
  }),
  example: { vehicleSpeed: '80 km/h', fuelMassFlow: '5 kg/h' },
  intermediates: {
    noxMolarMass: quantityOutput(molarMass, { symbol: 'M', label: 'Molar mass that the NOx is counted with', digits: 6, units: ['g/mol'] }),
    noxMolarFlow: quantityOutput(molarFlow, { symbol: '\\dot n_{NOx}', label: 'NOx molar flow', digits: 5, units: ['mol/s'] }),
    ammoniaPerNox: quantityOutput(ratio, { symbol: 's', label: 'Ammonia per converted NOx, by moles', digits: 4 }),
    stoichiometricRatio: quantityOutput(ratio, {
      symbol: '\\alpha_{st}',
      label: 'Ammonia-to-NOx ratio that the conversion needs',
      digits: 4,
    }),
    ureaMassFlow: quantityOutput(massFlow, { symbol: 'q_u', label: 'Urea', digits: 5, units: ['g/h', 'mg/s'] }),
    ammoniaMassFlow: quantityOutput(massFlow, { symbol: 'q_{NH_3}', label: 'Ammonia released', digits: 5, units: ['g/h', 'mg/s'] }),
  },
  outputs: {
    ammoniaToNoxRatio: quantityOutput(ratio, { symbol: '\\alpha', label: 'Ammonia-to-NOx ratio', digits: 4 }),
    reductantVolumeFlow: quantityOutput(volumeFlow, {
      symbol: '\\dot V_r',
      label: 'Reductant by volume',
      digits: 4,
      units: ['L/h', 'mL/min'],
    }),
    reductantPerDistance: optional(
      quantityOutput(volumePerDistance, { symbol: 'c_r', label: 'Reductant per distance', digits: 4, units: ['L/1000km'] }),
    ),
    shareOfFuelByMass: optional(
      quantityOutput(massRatio, { symbol: 'r_m', label: 'Reductant as a share of the fuel, by mass', digits: 4, units: ['%'] }),
    ),
    shareOfFuelByVolume: optional(
      quantityOutput(volumeFraction, { symbol: 'r_V', label: 'Reductant as a share of the fuel, by volume', digits: 4, units: ['%'] }),
    ),
    reductantMassFlow: quantityOutput(massFlow, { symbol: 'q_r', label: 'Reductant by mass', digits: 5, units: ['g/h', 'mg/s', 'kg/h'] }),
  },
  constants: {
    nitrogenDioxide: constant(molarMass, molarMassOfNitrogenDioxide, { symbol: 'M_{NO_2}', label: 'Molar mass of NO2', source: 'cfr1065' }),
    nitricOxide: constant(molarMass, molarMassOfNitricOxide, { symbol: 'M_{NO}', label: 'Molar mass of NO', source: 'cfr1065' }),
    ammonia: constant(molarMass, molarMassOfAmmonia, { symbol: 'M_{NH_3}', label: 'Molar mass of ammonia', source: 'cfr1065' }),
    urea: constant(molarMass, molarMassOfUrea, { symbol: 'M_u', label: 'Molar mass of urea', source: 'cfr1065' }),
  },
  steps: [
    {
      gives: 'noxMolarMass',
      text: 'Molar mass of the gas that the NOx is counted as: [[countedAs]].',
      source: 'cfr1065',
      locator: '1065.1005, Table 7',
    },
    {
      gives: 'noxMolarFlow',
      tex: '[[noxMolarFlow]] = \\frac{[[noxMassFlow]]}{[[noxMolarMass]]}',
      source: 'cfr1065',
      locator: '1065.1005, Table 7',
    },
    {
      gives: 'ammoniaPerNox',
      tex: '[[ammoniaPerNox]] = \\max\\left(1,\\ \\frac{2+2\\,[[nitrogenDioxideShare]]}{3}\\right)',
      source: 'scrReactions',
    },
    { gives: 'stoichiometricRatio', tex: '[[stoichiometricRatio]] = [[conversion]]\\,[[ammoniaPerNox]]' },
    { gives: 'ammoniaToNoxRatio', text: 'The ratio dosed, if given; otherwise the ratio that the conversion needs.' },
    { gives: 'ammoniaMassFlow', tex: '[[ammoniaMassFlow]] = [[ammoniaToNoxRatio]]\\,[[noxMolarFlow]]\\,[[ammonia]]' },
    {
      gives: 'ureaMassFlow',
      tex: '[[ureaMassFlow]] = \\tfrac{1}{2}\\,[[ammoniaToNoxRatio]]\\,[[noxMolarFlow]]\\,[[urea]]',
      source: 'ureaHydrolysis',
    },
    { gives: 'reductantVolumeFlow', tex: '[[reductantVolumeFlow]] = \\frac{[[reductantMassFlow]]}{[[reductantDensity]]}' },
    { gives: 'reductantPerDistance', tex: '[[reductantPerDistance]] = \\frac{[[reductantVolumeFlow]]}{[[vehicleSpeed]]}' },
    { gives: 'shareOfFuelByMass', tex: '[[shareOfFuelByMass]] = \\frac{[[reductantMassFlow]]}{[[fuelMassFlow]]}' },
    {
      gives: 'shareOfFuelByVolume',
      tex: '[[shareOfFuelByVolume]] = [[shareOfFuelByMass]]\\,\\frac{[[fuelDensity]]}{[[reductantDensity]]}',
    },
    { gives: 'reductantMassFlow', tex: '[[reductantMassFlow]] = \\frac{[[ureaMassFlow]]}{[[ureaFraction]]}', source: 'iso22241Part1' },
  ],
  assumptions: [
    { code: 'all_urea', text: 'All urea turns into ammonia and isocyanic acid, and the acid into more ammonia.' },
    { code: 'no_oxidation', text: 'No ammonia burns on the catalyst. Above about 450 °C some does, and the demand is higher.' },
    { code: 'steady', text: 'The ammonia stored in the catalyst does not change.' },
  ],
  limits: [
    { code: 'demand_not_command', text: 'This is the chemical demand. What the control unit commands also holds its own corrections.' },
  ],
  cautions: [cautions.noDefeat, cautions.makerFirst],
  sources: { cfr1065, scrReactions, ureaHydrolysis, iso22241Part1 },
  compute(input, context) {
    const { constants } = context;
    const noxMolarMass = input.countedAs === 'nitric-oxide' ? constants.nitricOxide : constants.nitrogenDioxide;
    const noxMolarFlow = input.noxMassFlow / noxMolarMass;
    const perNox = ammoniaPerNox(input.nitrogenDioxideShare);
    const stoichiometricRatio = input.conversion * perNox;
    const ammoniaToNoxRatio = input.dosedRatio ?? stoichiometricRatio;
    if (ammoniaToNoxRatio < stoichiometricRatio * (1 - 1e-9)) {
      context.warn('ratio_too_low', 'The dosed ratio cannot reach this conversion; the ammonia does not suffice.', ['dosedRatio']);
    }
    if (ammoniaToNoxRatio > perNox * (1 + 1e-9)) {
      context.warn('ratio_too_high', 'More ammonia is dosed than all the NOx can use: expect slip, and deposits.', ['dosedRatio']);
    }
    const ammoniaMolarFlow = ammoniaToNoxRatio * noxMolarFlow;
    const flow = reductantMassFlow({ ammoniaMolarFlow, ureaFraction: input.ureaFraction }, constants.urea);
    const reductantVolumeFlow = flow / input.reductantDensity;
    const byMass = input.fuelMassFlow === undefined ? undefined : flow / input.fuelMassFlow;
    return {
      noxMolarMass,
      noxMolarFlow,
      ammoniaPerNox: perNox,
      stoichiometricRatio,
      ammoniaToNoxRatio,
      ammoniaMassFlow: ammoniaMolarFlow * constants.ammonia,
      ureaMassFlow: flow * input.ureaFraction,
      reductantMassFlow: flow,
      reductantVolumeFlow,
      reductantPerDistance: input.vehicleSpeed === undefined ? undefined : reductantVolumeFlow / input.vehicleSpeed,
      shareOfFuelByMass: byMass,
      shareOfFuelByVolume: byMass === undefined ? undefined : (byMass * input.fuelDensity) / input.reductantDensity,
    };
  },
});
