import * as wf from '@wallflow/calculation';
import { absolutePressure, fraction, mass, temperature, volume } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { airMolarMass, gasConstant } from '../../vocabulary/constants.js';
import { acceptancePractice, airBuoyancy, weighingPractice, weighingUncertainty, weightDifference } from '../sources.js';
import { airLift, dryMass, dryMassUncertainty, massRecovery } from './kernel.js';
import { recoveryVerdict, sootVerdict } from './verdict.js';

const massInput = (symbol: string, label: string, example: string, description?: string) =>
  wf.quantity(mass, {
    symbol,
    label,
    ...(description === undefined ? {} : { description }),
    range: '0 g < x <= 200 kg',
    example,
    units: ['g', 'kg', 'lb'],
  });
const temperatureInput = (symbol: string, label: string, example: string) =>
  wf.quantity(temperature, {
    symbol,
    label,
    range: '-40 <= x <= 700 °C',
    usual: [
      '120 °C',
      '250 °C',
      { below: 'a cooler filter takes up water from the air', above: 'too hot to handle, and its hot air lifts the pan' },
    ],
    example,
  });
const moistureInput = (symbol: string, label: string) =>
  wf.optional(
    wf.quantity(fraction, {
      symbol,
      label,
      description: 'Only for a filter weighed cold. Weigh it once cold and once hot: the difference over the hot weight.',
      range: '0 <= x <= 30 %',
      example: '0.4 %',
    }),
  );
const massOutput = (symbol: string, label: string) => wf.quantityOutput(mass, { symbol, label, digits: 6, units: ['g', 'kg', 'lb'] });
// The difference of two nearly equal weights counts, so the weights are shown in full.
const wholeMass = (symbol: string, label: string) =>
  wf.quantityOutput(mass, { symbol, label, digits: 6, leastDigits: 5, units: ['g', 'kg', 'lb'] });
const shareOutput = (symbol: string, label: string) => wf.quantityOutput(fraction, { symbol, label, digits: 3, units: ['%'] });

/** Dry weight and its uncertainty: as weighed hot, with the lift of the air inside; cold, less the moisture. */
const dryWeight = <const When extends 'Before' | 'After'>(when: When) =>
  [
    wf.cases(
      `dry${when}`,
      {
        [`temperature${when} >= dryAbove and known(gasVolume)`]: `mass${when} + lift${when}`,
        [`temperature${when} >= dryAbove`]: `mass${when}`,
        'known(gasVolume)': `(mass${when} + lift${when}) / (1 + moisture${when})`,
        otherwise: `mass${when} / (1 + moisture${when})`,
      },
      weighingPractice,
    ),
    wf.cases(
      `dry${when}Uncertainty`,
      {
        [`temperature${when} >= dryAbove`]: 'scaleUncertainty',
        otherwise: `sqrt(scaleUncertainty ^ 2 + (dry${when} * moistureUncertainty) ^ 2) / (1 + moisture${when})`,
      },
      weighingUncertainty,
    ),
  ] as const;

export const filterWeighingCalculation = wf.defineCalculation({
  id: 'filter-weighing',
  subject: 'cleaning',
  title: 'Weighing before and after a clean',
  purpose: 'How much came out of the filter, how much ash stayed, and how sure is that?',
  keywords: 'weigh, mass, recovery, ash, moisture, hot',
  method: 'dry masses compared: weighed hot, or corrected for moisture, and for the lift of the hot air inside',
  inputs: {
    massBefore: massInput('m_1', 'Weight before cleaning', '9.038 kg'),
    temperatureBefore: temperatureInput('T_1', 'Filter temperature at the weighing before', '150 °C'),
    massAfter: massInput('m_2', 'Weight after cleaning', '9.002 kg'),
    temperatureAfter: temperatureInput('T_2', 'Filter temperature at the weighing after', '150 °C'),
    moistureBefore: moistureInput('u_1', 'Moisture in the filter before'),
    moistureAfter: moistureInput('u_2', 'Moisture in the filter after'),
    newMass: wf.optional(
      massInput('m_0', 'Weight of this filter when new, dry', '9.000 kg', 'From your own record of this part or from its maker.'),
    ),
    bakedMass: wf.optional(massInput('m_3', 'Weight after baking it once more, hot', '9.0015 kg', 'Shows whether soot is left.')),
    gasVolume: wf.optional(
      wf.quantity(volume, {
        symbol: 'V_g',
        label: 'Air inside the filter',
        description: 'Channels and pores, about 0.8 to 0.85 of its volume. With it, the weights are corrected for the lift of the hot air.',
        range: '0 < x <= 200 L',
        example: '4.8 L',
        units: ['L', 'in3'],
      }),
    ),
    ambientTemperature: wf.quantity(temperature, {
      symbol: 'T_a',
      label: 'Ambient temperature',
      range: '-40 <= x <= 60 °C',
      default: ['20 °C', 'an indoor workshop; 5 K change the lift by 2 %'],
    }),
    ambientPressure: wf.quantity(absolutePressure, {
      symbol: 'p_a',
      label: 'Ambient pressure',
      range: '50 <= x <= 110 kPa',
      units: ['hPa', 'kPa', 'mbar'],
      default: ['1013.25 hPa', 'sea level; 1000 m up the lift is a tenth smaller'],
    }),
    scaleUncertainty: wf.quantity(mass, {
      symbol: 'u_m',
      label: 'Standard uncertainty of one weighing',
      description: 'Of the mean, if each weighing is the mean of several: that of the scale over the square root of their number.',
      range: '0.01 <= x <= 500 g',
      units: ['g'],
      default: ['2 g', 'common practice, no source: workshop scales are good to 1 to 5 g'],
    }),
    moistureUncertainty: wf.quantity(fraction, {
      symbol: 'u_u',
      label: 'Standard uncertainty of a moisture',
      description: 'Counts only for a filter weighed cold. A ± typed with a moisture shows in the results, not in the verdict.',
      range: '0 <= x <= 10 %',
      default: ['0.1 %', 'a guess: a moisture measured on another day is hardly better; that is 12 g of a filter of 12 kg'],
    }),
    neededRecovery: wf.quantity(fraction, {
      symbol: 'r_0',
      label: 'Recovery that is needed',
      range: '1 <= x <= 100 %',
      default: ['90 %', 'common practice, no source: 90 to 95 %'],
    }),
    bakeLimit: wf.quantity(mass, {
      symbol: 'd_0',
      label: 'Loss in one more bake that still counts as free of soot',
      range: '0.1 <= x <= 100 g',
      units: ['g'],
      default: ['2 g', 'common practice, no source: 1 to 2 g'],
    }),
  },
  example: {
    newMass: '9.000 kg',
    bakedMass: '9.0015 kg',
    scaleUncertainty: '0.5 g',
    ambientTemperature: '14 °C',
    ambientPressure: '986 hPa',
  },
  intermediates: {
    liftBefore: wf.optional(massOutput('l_1', 'Lift of the hot air inside, before')),
    liftAfter: wf.optional(massOutput('l_2', 'Lift of the hot air inside, after')),
    dryBefore: wholeMass('d_1', 'Dry weight before'),
    dryAfter: wholeMass('d_2', 'Dry weight after'),
    dryBeforeUncertainty: massOutput('u_1', 'Standard uncertainty of the dry weight before'),
    dryAfterUncertainty: massOutput('u_2', 'Standard uncertainty of the dry weight after'),
    removedUncertainty: massOutput('u_r', 'Standard uncertainty of what came out'),
    liftBaked: wf.optional(massOutput('l_3', 'Lift of the hot air inside, after one more bake')),
    dryBaked: wf.optional(wholeMass('d_3', 'Dry weight after one more bake')),
    bakeLoss: wf.optional(massOutput('d_b', 'Loss in one more bake')),
    bakeLossUncertainty: wf.optional(massOutput('u_d', 'Standard uncertainty of the loss in one more bake')),
  },
  outputs: {
    removed: massOutput('m_r', 'Mass that came out'),
    residue: wf.optional(massOutput('m_a', 'Mass still in the filter, compared with new (ash, if it was baked)')),
    residueUncertainty: wf.optional(massOutput('u_a', 'Standard uncertainty of the mass still in the filter')),
    recovery: wf.optional(shareOutput('r', 'Recovery by weight')),
    recoveryUncertainty: wf.optional(shareOutput('u(r)', 'Standard uncertainty of the recovery')),
    soot: wf.choiceOutput({
      label: 'Is soot left?',
      options: {
        none: 'no: one more bake took out no more than the limit, with the uncertainty counted',
        left: 'yes: one more bake made the filter lighter by more than the limit and the uncertainty allow',
        unclear: 'not clear: the limit is within twice the uncertainty of the loss, or the filter got heavier',
        unknown: 'not known: the filter was not baked and weighed again',
      },
    }),
    verdict: wf.choiceOutput({
      label: 'Verdict by weight',
      options: {
        clean: 'clean by weight, by more than twice the uncertainty',
        'not-clean': 'not clean by weight, by more than twice the uncertainty',
        unclear: 'not clear: the recovery that is needed is within twice the uncertainty of the weighings',
        lighter:
          'lighter than when new, by more than twice the uncertainty: parts are missing, other parts were weighed, or the weight when new is wrong',
        unknown: 'not known: the weight when new is missing',
      },
    }),
  },
  constants: {
    dryAbove: wf.constant(temperature, 393.15, {
      symbol: 'T_d',
      label: 'Temperature above which a filter counts as dry',
      source: weighingPractice,
    }),
    airMolarMass,
    gasConstant,
  },
  answer: 'verdict',
  steps: [
    wf.formula(
      'liftBefore',
      'gasVolume * ambientPressure * airMolarMass / gasConstant * (1 / ambientTemperature - 1 / temperatureBefore)',
      airBuoyancy,
    ),
    wf.formula(
      'liftAfter',
      'gasVolume * ambientPressure * airMolarMass / gasConstant * (1 / ambientTemperature - 1 / temperatureAfter)',
      airBuoyancy,
    ),
    ...dryWeight('Before'),
    ...dryWeight('After'),
    wf.formula('removed', 'dryBefore - dryAfter', weightDifference),
    wf.formula('removedUncertainty', 'sqrt(dryBeforeUncertainty ^ 2 + dryAfterUncertainty ^ 2)', weighingUncertainty),
    wf.formula('residue', 'dryAfter - newMass', weightDifference),
    wf.cases('residueUncertainty', { 'known(newMass)': 'sqrt(dryAfterUncertainty ^ 2 + scaleUncertainty ^ 2)' }, weighingUncertainty),
    wf.formula('recovery', '(dryBefore - dryAfter) / (dryBefore - newMass)', acceptancePractice),
    wf.formula(
      'recoveryUncertainty',
      'sqrt((residue * dryBeforeUncertainty) ^ 2 + ((dryBefore - newMass) * dryAfterUncertainty) ^ 2 + (removed * scaleUncertainty) ^ 2) / (dryBefore - newMass) ^ 2',
      weighingUncertainty,
    ),
    wf.cases(
      'liftBaked',
      {
        'known(bakedMass)':
          'gasVolume * ambientPressure * airMolarMass / gasConstant * (1 / ambientTemperature - 1 / max(temperatureAfter, dryAbove))',
      },
      airBuoyancy,
    ),
    wf.cases('dryBaked', { 'known(liftBaked)': 'bakedMass + liftBaked', otherwise: 'bakedMass' }, weighingPractice),
    wf.formula('bakeLoss', 'dryAfter - dryBaked', acceptancePractice),
    wf.cases('bakeLossUncertainty', { 'known(bakedMass)': 'sqrt(dryAfterUncertainty ^ 2 + scaleUncertainty ^ 2)' }, weighingUncertainty),
    wf.verdict(
      'soot',
      {
        unknown: 'not known(bakeLoss)',
        none: 'bakeLoss >= -2 * bakeLossUncertainty and bakeLoss + 2 * bakeLossUncertainty <= bakeLimit',
        left: 'bakeLoss - 2 * bakeLossUncertainty > bakeLimit',
        unclear: 'otherwise',
      },
      acceptancePractice,
    ),
    wf.verdict(
      'verdict',
      {
        unknown: 'not known(recovery)',
        lighter: 'residue + 2 * residueUncertainty < 0',
        clean: 'recovery - 2 * recoveryUncertainty >= neededRecovery',
        'not-clean': 'recovery + 2 * recoveryUncertainty < neededRecovery',
        unclear: 'otherwise',
      },
      acceptancePractice,
    ),
  ],
  assumptions: {
    same_parts: 'The same parts are on the scale each time: clamps, sensors and gaskets off.',
    new_is_cold: 'The weight when new is that of the cold, dry part; where no lift is counted, that of the part as hot as now.',
  },
  limits: {
    air_currents:
      'Warm air rising round a hot part lifts it too, by a gram or so that is not counted here: weigh at the same temperature both times, out of draughts.',
    weight_is_not_flow: 'A filter can be light and still have a blocked face or a crack: test flow, depth and light too.',
  },
  cautions: [cautions.ashDust, cautions.hotExhaust, cautions.waste, cautions.makerFirst],
  compute(input, { constants, warn }) {
    const { massBefore, massAfter, temperatureBefore, temperatureAfter, newMass, bakedMass, scaleUncertainty } = input;
    const cold = (at: number) => at < constants.dryAbove;
    if (cold(temperatureBefore) && input.moistureBefore === undefined) return wf.missingInputs('moistureBefore');
    if (cold(temperatureAfter) && input.moistureAfter === undefined) return wf.missingInputs('moistureAfter');
    if (Math.abs(temperatureBefore - temperatureAfter) > 30) {
      warn('unequal_temperature', 'The two weighings differ by more than 30 K: moisture and air currents do not cancel.', [
        'temperatureAfter',
      ]);
    }
    const lift = (at: number) =>
      input.gasVolume === undefined
        ? undefined
        : airLift({ ...input, gasVolume: input.gasVolume, temperature: at, molarMass: constants.airMolarMass }, constants.gasConstant);
    const liftBefore = lift(temperatureBefore);
    const liftAfter = lift(temperatureAfter);
    const dry = (weighed: number, at: number, moisture = 0) => ({
      mass: cold(at) ? dryMass(weighed, moisture) : weighed,
      uncertainty: cold(at) ? dryMassUncertainty(weighed, moisture, scaleUncertainty, input.moistureUncertainty) : scaleUncertainty,
    });
    const before = dry(massBefore + (liftBefore ?? 0), temperatureBefore, input.moistureBefore);
    const after = dry(massAfter + (liftAfter ?? 0), temperatureAfter, input.moistureAfter);
    const whenNew = newMass === undefined ? undefined : { mass: newMass, uncertainty: scaleUncertainty };
    if (whenNew !== undefined && before.mass <= whenNew.mass + Math.hypot(before.uncertainty, whenNew.uncertainty)) {
      return wf.inconsistentInputs(
        'the dirty filter is no heavier than a new one, within the uncertainty of the weighings: a weighing is wrong, or it is not the same part',
        ['newMass'],
        ['massBefore'],
      );
    }
    const recovery = whenNew === undefined ? undefined : massRecovery({ before, after, whenNew });
    const liftBaked = bakedMass === undefined ? undefined : lift(Math.max(temperatureAfter, constants.dryAbove));
    const bakeLoss =
      bakedMass === undefined
        ? undefined
        : { mass: after.mass - (bakedMass + (liftBaked ?? 0)), uncertainty: Math.hypot(after.uncertainty, scaleUncertainty) };
    if (bakeLoss !== undefined && bakeLoss.mass < -2 * bakeLoss.uncertainty) {
      warn(
        'heavier_after_bake',
        'The filter is heavier after the bake than before: it took up water while it cooled, or a weight was misread.',
        ['bakedMass'],
      );
    }
    return {
      liftBefore,
      liftAfter,
      dryBefore: before.mass,
      dryAfter: after.mass,
      dryBeforeUncertainty: before.uncertainty,
      dryAfterUncertainty: after.uncertainty,
      liftBaked,
      dryBaked: bakedMass === undefined ? undefined : bakedMass + (liftBaked ?? 0),
      removed: before.mass - after.mass,
      removedUncertainty: Math.hypot(before.uncertainty, after.uncertainty),
      residue: recovery?.residue.mass,
      residueUncertainty: recovery?.residue.uncertainty,
      recovery: recovery?.share,
      recoveryUncertainty: recovery?.uncertainty,
      bakeLoss: bakeLoss?.mass,
      bakeLossUncertainty: bakeLoss?.uncertainty,
      soot: sootVerdict(bakeLoss, input.bakeLimit),
      verdict: recoveryVerdict(recovery, input.neededRecovery),
    };
  },
  advise: ({ soot, verdict }) => [
    ...(soot === 'left' ? ([{ tone: 'do', text: 'Bake it once more: what still burns away is soot, not ash.' }] as const) : []),
    ...(soot === 'unclear'
      ? ([
          {
            tone: 'do',
            text: 'Weigh both times on a finer scale, or several times and enter the uncertainty of the mean, at the same temperature.',
          },
        ] as const)
      : []),
    ...(verdict === 'lighter'
      ? ([
          { tone: 'do-not', text: 'Do not count it as clean: ash cannot weigh less than nothing.' },
          {
            tone: 'do',
            text: 'Look for broken ceramic and a lost mat or clamp, weigh the same parts as when new, and check the weight of the new part.',
          },
          { tone: 'note', text: 'A hot filter reads lighter by the lift of the air inside: enter that volume, and the lift is counted.' },
        ] as const)
      : []),
    ...(verdict === 'unknown'
      ? ([{ tone: 'note', text: 'Note the dry weight of this part now: it is the reference for its next clean.' }] as const)
      : []),
    ...(verdict === 'not-clean'
      ? ([{ tone: 'do', text: 'Clean it again, backwards, before it goes back on; do not reset the ash value yet.' }] as const)
      : []),
  ],
});
