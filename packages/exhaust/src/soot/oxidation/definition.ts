import * as wf from '@wallflow/calculation';
import { fraction, molarEnergy, moleFraction, ratio, reactionRate, time } from '@wallflow/units';
import { konstandopoulos2000, konstandopoulos2008 } from '../../sources.js';
import { bai2016 } from '../sources.js';
import { chosenKinetics, gasInputs, kineticsConstants, kineticsInputs } from './inputs.js';
import { sootOxidationRate } from './kernel.js';
import { publishedEnergies } from './published.js';

const perSecond = (symbol: string, label: string) => wf.quantityOutput(reactionRate, { symbol, label, digits: 4, units: ['1/s'] });
const energy = (symbol: string, label: string) => wf.quantityOutput(molarEnergy, { symbol, label, digits: 4, units: ['kJ/mol'] });
const oxygenOfLaws = wf.constant(moleFraction, '10 %', {
  symbol: 'x_{O_2,0}',
  label: 'Oxygen for which the factors of the published laws hold',
  source: bai2016,
});

export const sootOxidationRateCalculation = wf.defineCalculation({
  id: 'soot-oxidation-rate',
  subject: 'soot',
  title: 'How fast soot burns at a temperature',
  purpose: 'How fast do oxygen and nitrogen dioxide burn soot in the filter at a steady temperature, and how long does it take?',
  keywords: 'kinetics, Arrhenius, passive, active, burn rate, regen, DPF',
  method: 'first-order rate laws of the whole filter',
  inputs: {
    ...gasInputs,
    targetShare: wf.quantity(fraction, {
      symbol: 'X',
      label: 'Share of the soot to burn',
      range: '0 < x < 100 %',
      default: ['90 %', 'what is usually called a complete regeneration'],
    }),
    ...kineticsInputs,
  },
  intermediates: {
    oxygenFactor: wf.optional(perSecond('A_O', 'Factor of the oxygen law')),
    oxygenEnergy: wf.optional(energy('E_O', 'Activation energy of the oxygen law')),
    oxygenReference: wf.optional(
      wf.quantityOutput(moleFraction, { symbol: 'x_r', label: 'Oxygen for which that factor holds', digits: 3, units: ['%'] }),
    ),
    oxygenRate: perSecond('k_{O_2}', 'Rate with oxygen'),
    nitrogenDioxideFactor: wf.optional(perSecond('A_N', 'Factor of the nitrogen dioxide law')),
    nitrogenDioxideEnergy: wf.optional(energy('E_N', 'Activation energy of the nitrogen dioxide law')),
    nitrogenDioxideOrder: wf.optional(wf.quantityOutput(ratio, { symbol: 'n_N', label: 'Order in nitrogen dioxide', digits: 3 })),
    nitrogenDioxideRate: perSecond('k_{NO_2}', 'Rate with nitrogen dioxide'),
  },
  outputs: {
    burnRate: wf.quantityOutput(reactionRate, {
      symbol: 'k',
      label: 'Rate of burning, share per time',
      digits: 4,
      units: ['1/s', '1/min', '1/h'],
    }),
    passiveShare: wf.quantityOutput(fraction, { symbol: 'f_{NO_2}', label: 'Share burnt by nitrogen dioxide', digits: 3, units: ['%'] }),
    burnTime: wf.optional(
      wf.quantityOutput(time, { symbol: 't_X', label: 'Time for the share at this temperature', digits: 3, units: ['min', 'h', 's'] }),
    ),
    published: wf.tableOutput({
      label: 'Published activation energies, for comparison',
      description: 'Energies of laws with and without a temperature factor are not interchangeable; most lack a usable factor.',
      columns: {
        oxidant: wf.textOutput({ label: 'Oxidant' }),
        energy: wf.textOutput({ label: 'Activation energy' }),
        from: wf.textOutput({ label: 'Source' }),
      },
    }),
  },
  constants: { ...kineticsConstants, oxygenOfLaws },
  answer: 'burnRate',
  steps: [
    wf.cases('oxygenFactor', {
      "kinetics == 'bai-2016'": 'baiOxygenFactor',
      "kinetics == 'uncoated-2008'": 'uncoatedOxygenFactor',
      "kinetics == 'bissett-shadman-1985'": 'bissettOxygenFactor',
      otherwise: 'ownOxygenFactor',
    }),
    wf.cases('oxygenEnergy', {
      "kinetics == 'bai-2016'": 'baiOxygenEnergy',
      "kinetics == 'uncoated-2008'": 'uncoatedOxygenEnergy',
      "kinetics == 'bissett-shadman-1985'": 'bissettOxygenEnergy',
      otherwise: 'ownOxygenEnergy',
    }),
    wf.cases('oxygenReference', { "kinetics == 'own'": 'ownOxygenReference', otherwise: 'oxygenOfLaws' }),
    wf.cases(
      'oxygenRate',
      {
        'known(oxygenFactor)': 'oxygenFactor * exp(-oxygenEnergy / (gasConstant * filterTemperature)) * oxygen / oxygenReference',
        otherwise: '0',
      },
      bai2016,
      'Table 6, corrected',
    ),
    wf.cases('nitrogenDioxideFactor', { "kinetics == 'own'": 'ownNitrogenDioxideFactor', otherwise: 'baiNitrogenDioxideFactor' }),
    wf.cases('nitrogenDioxideEnergy', { "kinetics == 'own'": 'ownNitrogenDioxideEnergy', otherwise: 'baiNitrogenDioxideEnergy' }),
    wf.cases('nitrogenDioxideOrder', { "kinetics == 'own'": 'ownNitrogenDioxideOrder', otherwise: '1.13' }, bai2016),
    wf.cases(
      'nitrogenDioxideRate',
      {
        'known(nitrogenDioxideFactor)':
          'nitrogenDioxideFactor * exp(-nitrogenDioxideEnergy / (gasConstant * filterTemperature)) * nitrogenDioxide ^ nitrogenDioxideOrder',
        otherwise: '0',
      },
      bai2016,
      'Tables 4 and 5',
    ),
    wf.formula('burnRate', 'oxygenRate + nitrogenDioxideRate'),
    wf.cases('passiveShare', { 'burnRate > 0': 'nitrogenDioxideRate / burnRate', otherwise: '0' }),
    wf.formula('burnTime', '-ln(1 - targetShare) / burnRate'),
    wf.statement('published', 'Energies as published, some without the factor that a rate needs.'),
  ],
  assumptions: {
    first_order: 'The rate is proportional to the soot that is left; the whole filter is at one temperature.',
    oxygen_scaling: 'The law of Bai et al. has no oxygen term: it is assumed to hold at 10 % and to be proportional to oxygen.',
  },
  limits: {
    fitted_range:
      'Each law is fitted to one filter; filters of its kind burn from half as fast to twice as fast. Below 450 °C oxygen alone burns less than the law of the coated filter says.',
    surface_law_fast:
      'The surface law of 1985 is some eight times faster at 600 °C than what was measured on filters: for comparison only, not for decisions.',
  },
  sources: [konstandopoulos2000, konstandopoulos2008],
  compute(input, { constants }) {
    const kinetics = chosenKinetics(input, constants);
    const { oxygen, nitrogenDioxide } = kinetics;
    const rates = sootOxidationRate(kinetics, { ...input, temperature: input.filterTemperature }, constants.gasConstant);
    const burnTime = rates.total > 0 ? -Math.log1p(-input.targetShare) / rates.total : undefined;
    return {
      oxygenFactor: oxygen?.preExponential,
      oxygenEnergy: oxygen?.activationEnergy,
      oxygenReference: oxygen?.referenceFraction,
      oxygenRate: rates.oxygen,
      nitrogenDioxideFactor: nitrogenDioxide?.preExponential,
      nitrogenDioxideEnergy: nitrogenDioxide?.activationEnergy,
      nitrogenDioxideOrder: nitrogenDioxide?.oxidantOrder,
      nitrogenDioxideRate: rates.nitrogenDioxide,
      burnRate: rates.total,
      passiveShare: rates.total > 0 ? rates.nitrogenDioxide / rates.total : 0,
      burnTime: burnTime !== undefined && Number.isFinite(burnTime) ? burnTime : undefined,
      published: publishedEnergies.map((row) => ({ ...row })),
    };
  },
});
