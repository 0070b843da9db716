import * as wf from '@wallflow/calculation';
import { cleanDropParts, gasDensity, meanFreePath, sutherlandViscosity, totalDrop, zeroVerdict } from '@wallflow/exhaust';
import {
  allowedZeroInput,
  cautions,
  filterConstants,
  geometryInputs,
  resolveGeometry,
  sharedSources,
  wallInputs,
} from '@wallflow/exhaust/shared';
import { absolutePressure, differentialPressure, flowResistance, fraction, ratio, temperature, volumeFlow } from '@wallflow/units';
import * as z from 'zod/mini';
import { backPressureCeiling, oneResistance, readingBands, zeroPractice } from '../sources.js';
import { type ConditionVerdict, conditionOfReading, flowTooLow, type GrowthShape, growthOf, growthShape } from './kernel.js';
import { contradiction } from './kernel-contradiction.js';

const verdicts = {
  'zero-fault': 'not judged: the sensor does not read zero with the engine off',
  contradiction: 'not judged: the readings contradict each other',
  reversed: 'negative: hoses swapped, or the hose behind the filter blocked',
  'suspiciously-low': 'suspiciously low: hose off, sensor dead, or filter cracked or removed',
  clean: 'clean, if the hoses are tight',
  'in-service': 'in service, acceptable, if the hoses are tight',
  loaded: 'loaded',
  blocked: 'blocked',
  unclear: 'not clear from these readings',
} as const satisfies Record<ConditionVerdict, string>;

const shapes = {
  'filter-like': 'like a filter: with the flow',
  between: 'between a filter and a pipe',
  'pipe-like': 'like a pipe, not like a filter: with the flow squared',
  impossible: 'faster than anything in an exhaust can: a reading is wrong',
  unknown: 'not clear from these readings',
} as const satisfies Record<GrowthShape, string>;

const reading = z.strictObject({
  state: wf.text({ label: 'Engine state', example: '2200 rpm, no load', maxLength: 60 }),
  pressureDrop: wf.quantity(differentialPressure, {
    symbol: '\\Delta p',
    label: 'Pressure drop over the filter',
    description: 'As read; the reading with the engine off is subtracted here.',
    min: '-1000 mbar',
    max: '1500 mbar',
    example: '95 mbar',
    units: ['mbar', 'kPa', 'hPa', 'psi'],
  }),
  exhaustVolumeFlow: wf.quantity(volumeFlow, {
    symbol: 'Q',
    label: 'Exhaust volume flow',
    description: 'Actual flow at the temperature and pressure in the filter.',
    above: '1 m3/h',
    max: '10000 m3/h',
    example: '414 m3/h',
    units: ['m3/h', 'L/s', 'ft3/min'],
  }),
  gasTemperature: wf.quantity(temperature, {
    symbol: 'T',
    label: 'Gas temperature in the filter',
    min: '-40 °C',
    max: '1200 °C',
    example: '206 °C',
  }),
});

const band = (symbol: string, label: string, standard: string) =>
  wf.quantityWithDefault(ratio, {
    symbol,
    label,
    min: '0',
    max: '100',
    example: standard,
    default: standard,
    defaultReason: 'common practice, no source; put the value of the vehicle maker here if there is one',
  });

const drop = (symbol: string, label: string) =>
  wf.quantityOutput(differentialPressure, { symbol, label, digits: 3, units: ['mbar', 'kPa', 'hPa', 'psi'] });

export const filterConditionCalculation = wf.defineCalculation({
  id: 'filter-condition',
  version: '1.0.0',
  subject: 'workshop',
  title: 'Is the filter blocked?',
  purpose: 'Do these readings show a clean, a loaded or a blocked filter, or a fault of hose and sensor?',
  keywords: 'blocked, clean, diagnosis, idle, pressure sensor, hose, DPF',
  method: 'measured drop against the drop calculated for a clean filter at the same flow and temperature',
  inputs: z.strictObject({
    zeroReading: wf.optional(
      wf.quantity(differentialPressure, {
        symbol: '\\Delta p_0',
        label: 'Reading with the engine off',
        description: 'Ignition on, engine stopped for 30 s, hoses connected. It is subtracted from every reading.',
        min: '-1000 mbar',
        max: '1000 mbar',
        example: '0 mbar',
        units: ['mbar', 'kPa', 'hPa', 'psi'],
      }),
    ),
    readings: wf.list(reading, {
      label: 'Readings, warm engine',
      description: 'One at idle and one or two at raised speed; the highest flow tells most.',
      min: 1,
      max: 20,
      example: [
        { state: 'warm idle', pressureDrop: '18 mbar', exhaustVolumeFlow: '91 m3/h', gasTemperature: '118 °C' },
        { state: '1500 rpm, no load', pressureDrop: '50 mbar', exhaustVolumeFlow: '235 m3/h', gasTemperature: '164 °C' },
        { state: '2200 rpm, no load', pressureDrop: '95 mbar', exhaustVolumeFlow: '414 m3/h', gasTemperature: '206 °C' },
      ],
    }),
    zeroUncertainty: wf.quantityWithDefault(differentialPressure, {
      symbol: 'u_0',
      label: 'Uncertainty of the sensor zero',
      min: '0 mbar',
      max: '50 mbar',
      example: '2 mbar',
      units: ['mbar', 'kPa', 'hPa'],
      default: '2 mbar',
      defaultReason: 'common practice, no source',
    }),
    allowedZero: allowedZeroInput,
    flowUncertainty: wf.quantityWithDefault(fraction, {
      symbol: 'u_Q',
      label: 'Uncertainty of the flow',
      min: '0 %',
      max: '50 %',
      example: '5 %',
      default: '5 %',
      defaultReason: 'air-mass signal in good order; by engine speed and displacement rather 10 %',
    }),
    ...geometryInputs,
    ...wallInputs,
    ambientPressure: wf.quantityWithDefault(absolutePressure, {
      symbol: 'p_a',
      label: 'Ambient pressure',
      min: '40 kPa',
      max: '120 kPa',
      example: '101.3 kPa',
      units: ['hPa', 'kPa', 'mbar'],
      default: '101.325 kPa',
      defaultReason: 'sea level; it only enters the small parts that depend on density',
    }),
    lowBand: band('r_1', 'Suspiciously low below this multiple of clean', '0.3'),
    cleanBand: band('r_2', 'Clean up to this multiple', '2.5'),
    inServiceBand: band('r_3', 'In service up to this multiple', '5'),
    loadedBand: band('r_4', 'Loaded up to this multiple, blocked above', '10'),
    blockedDrop: wf.quantityWithDefault(differentialPressure, {
      symbol: '\\Delta p_b',
      label: 'Blocked at any flow from this drop on',
      min: '10 mbar',
      max: '1500 mbar',
      example: '200 mbar',
      units: ['mbar', 'kPa', 'psi'],
      default: '200 mbar',
      defaultReason: 'back-pressure ceiling for engines of 50 to 500 kW, secondary source',
    }),
  }),
  example: {
    zeroReading: '0.6 mbar',
    filterDiameter: '190.5 mm',
    cellDensity: '200 cpsi',
    wallThickness: '12 mil',
    filterLength: '203.2 mm',
    ambientPressure: '986 hPa',
  },
  picture: wf.gauge('cleanRatio', [
    ['mind', 'too low: doubt the reading', 'lowBand'],
    ['good', 'clean', 'cleanBand'],
    ['good', 'in service', 'inServiceBand'],
    ['mind', 'loaded', 'loadedBand'],
    ['bad', 'blocked'],
  ]),
  intermediates: {
    readingsJudged: wf.tableOutput({
      label: 'Readings',
      columns: {
        state: wf.textOutput({ label: 'Engine state' }),
        pressureDrop: drop('\\Delta p', 'Drop less zero'),
        cleanDrop: drop('\\Delta p_c', 'Clean filter at this flow'),
        cleanRatio: wf.quantityOutput(ratio, { symbol: 'r', label: 'Multiple of clean', digits: 3 }),
        resistance: wf.quantityOutput(flowResistance, { symbol: 'R', label: 'Flow resistance', digits: 3, units: ['1/mm3', '1/m3'] }),
        dropAtReference: drop('\\Delta p_{ref}', 'Drop at 200 m³/h and 200 °C'),
        verdict: wf.choiceOutput({ label: 'This reading', options: verdicts }),
      },
    }),
    growth: wf.optional(wf.quantityOutput(ratio, { symbol: 'n', label: 'Growth exponent of the drop with flow', digits: 2 })),
    growthUncertainty: wf.optional(wf.quantityOutput(ratio, { symbol: 'u(n)', label: 'Standard uncertainty of that exponent', digits: 2 })),
    largestGrowth: wf.optional(
      wf.quantityOutput(ratio, {
        symbol: 'n_{max}',
        label: 'Exponent of a pipe between the same readings, the largest possible',
        digits: 2,
      }),
    ),
  },
  outputs: {
    decidingRow: wf.countOutput({ symbol: 'i', label: 'Reading used, counted from 1' }),
    decidingReading: wf.textOutput({ label: 'Reading used' }),
    growthShape: wf.choiceOutput({ label: 'How the drop grows with the flow', options: shapes }),
    cleanDrop: drop('\\Delta p_c', 'Pressure drop of the clean filter at that flow'),
    cleanRatio: wf.quantityOutput(ratio, { symbol: 'r', label: 'Multiple of the clean filter', digits: 3 }),
    resistance: wf.quantityOutput(flowResistance, { symbol: 'R', label: 'Flow resistance', digits: 3, units: ['1/mm3', '1/m3'] }),
    why: wf.textOutput({ label: 'Why' }),
    verdict: wf.choiceOutput({ label: 'Verdict', options: verdicts }),
  },
  constants: {
    ...filterConstants,
    referenceFlow: wf.constant(volumeFlow, 200 / 3600, { symbol: 'Q_{ref}', label: 'Reference flow 200 m³/h', source: 'readingBands' }),
    referenceGasTemperature: wf.constant(temperature, 473.15, {
      symbol: 'T_r',
      label: 'Reference temperature 200 °C',
      source: 'readingBands',
    }),
    filterShare: wf.constant(fraction, 0.3, {
      symbol: 's_f',
      label: 'Like a filter up to this share of the way to a pipe',
      source: 'oneResistance',
    }),
    pipeShare: wf.constant(fraction, 0.6, {
      symbol: 's_p',
      label: 'Like a pipe from this share of the way on',
      source: 'oneResistance',
    }),
  },
  steps: [
    {
      gives: 'readingsJudged',
      tex: 'R = \\frac{\\Delta p}{\\mu(T)\\,Q},\\quad \\Delta p_{ref} = \\Delta p\\,\\frac{\\mu_{ref}\\,Q_{ref}}{\\mu\\,Q}',
      text: 'Each reading less the zero reading, against the drop calculated for a clean filter at its own flow and temperature.',
      source: 'konstandopoulos2008',
      locator: 'Eq. 8',
    },
    {
      gives: 'largestGrowth',
      tex: '[[largestGrowth]] = \\frac{\\ln(\\rho_2 Q_2^2/\\rho_1 Q_1^2)}{\\ln(\\mu_2 Q_2/\\mu_1 Q_1)}',
      text: 'Between the readings of least and most flow that count: no restriction grows faster than with density times flow squared.',
      source: 'oneResistance',
    },
    {
      gives: 'growth',
      tex: '[[growth]] = \\frac{\\ln(\\Delta p_2/\\Delta p_1)}{\\ln(\\mu_2 Q_2/\\mu_1 Q_1)}',
      text: 'A filter grows with the exponent 1, a pipe with the largest possible one.',
      source: 'oneResistance',
    },
    { gives: 'growthUncertainty', text: 'From the uncertainties of the two drops and their flows: [[growthUncertainty]].' },
    {
      gives: 'growthShape',
      text: 'Like a filter up to [[filterShare]] of the way from 1 to the largest, like a pipe from [[pipeShare]] on, each beyond twice the uncertainty [[growthUncertainty]]: [[growthShape]].',
      source: 'oneResistance',
    },
    { gives: 'decidingRow', text: 'Its place among the readings: [[decidingRow]].' },
    { gives: 'decidingReading', text: 'The reading with the highest flow that can tell: [[decidingReading]].', source: 'readingBands' },
    { gives: 'cleanDrop', text: 'Calculated for a clean filter: [[cleanDrop]].', source: 'konstandopoulos2008', locator: 'Eq. 8' },
    { gives: 'cleanRatio', text: 'Measured drop over clean drop: [[cleanRatio]].' },
    {
      gives: 'why',
      text: 'Before any band: a reading with the engine off beyond five times [[allowedZero]] is a fault, and a resistance that falls as the flow grows is a contradiction: [[why]]',
      source: 'zeroPractice',
    },
    {
      gives: 'verdict',
      text: 'Bands: low below [[lowBand]], clean up to [[cleanBand]], in service up to [[inServiceBand]], loaded up to [[loadedBand]].',
      source: 'readingBands',
    },
  ],
  assumptions: [
    {
      code: 'linear_in_flow',
      text: 'A loaded filter is laminar: its drop rises nearly in proportion to viscosity times flow, not to engine speed or flow squared.',
    },
    {
      code: 'one_filter',
      text: 'All readings are of the same filter in one state: its resistance cannot fall as the flow grows, except by slip in hotter gas.',
    },
    { code: 'steady_reading', text: 'Each reading is an average over at least 20 s of steady running.' },
  ],
  limits: [
    {
      code: 'bands_are_practice',
      text: 'The bands are trade practice, not limits of a maker; a coated or ash-laden filter reads higher when clean.',
    },
    {
      code: 'soot_or_ash',
      text: 'A high drop does not tell soot from ash: only a verified regeneration, weighing or a rod in the channels does.',
    },
    {
      code: 'idle',
      text: 'At idle the clean filter is within the zero error of most sensors: idle alone can show a blockage, never a good filter.',
    },
  ],
  cautions: [cautions.sensorFirst, cautions.hotExhaust, cautions.fumes],
  sources: {
    konstandopoulos2000: sharedSources.konstandopoulos2000,
    konstandopoulos2008: sharedSources.konstandopoulos2008,
    cfr1065: sharedSources.cfr1065,
    siBrochure: sharedSources.siBrochure,
    readingBands,
    backPressureCeiling,
    zeroPractice,
    oneResistance,
  },
  compute(input, { constants, warn }) {
    const geometry = resolveGeometry(input);
    if (wf.isRefusal(geometry)) return geometry;
    const bands = {
      low: input.lowBand,
      clean: input.cleanBand,
      inService: input.inServiceBand,
      loaded: input.loadedBand,
      blockedDrop: input.blockedDrop,
    };
    const referenceViscosity = sutherlandViscosity(constants.referenceGasTemperature, constants);
    const zero = input.zeroReading ?? 0;
    const zeroState = input.zeroReading === undefined ? undefined : zeroVerdict(zero, input.allowedZero);
    const rows = input.readings.map((entry) => {
      const pressureDrop = entry.pressureDrop - zero;
      const viscosity = sutherlandViscosity(entry.gasTemperature, constants);
      const density = gasDensity(
        { temperature: entry.gasTemperature, pressure: input.ambientPressure, molarMass: constants.airMolarMass },
        constants.gasConstant,
      );
      const flow = { volumeFlow: entry.exhaustVolumeFlow, viscosity, density };
      const cleanDrop = totalDrop(cleanDropParts(geometry.channels, flow, input));
      const uncertainty = Math.hypot(input.zeroUncertainty, input.flowUncertainty * pressureDrop);
      const viscousFlow = viscosity * entry.exhaustVolumeFlow;
      const reading = { pressureDrop, uncertainty, zeroUncertainty: input.zeroUncertainty, cleanDrop };
      return {
        state: entry.state,
        pressureDrop,
        cleanDrop,
        cleanRatio: pressureDrop / cleanDrop,
        resistance: pressureDrop / viscousFlow,
        dropAtReference: (pressureDrop * referenceViscosity * constants.referenceFlow) / viscousFlow,
        verdict: zeroState === 'repair' ? 'unclear' : conditionOfReading(reading, bands),
        tooLow: flowTooLow(reading),
        viscousFlow,
        inertialFlow: density * entry.exhaustVolumeFlow ** 2,
        uncertainty,
        flowUncertainty: input.flowUncertainty,
        meanFreePath: meanFreePath({ viscosity, pressure: input.ambientPressure, temperature: entry.gasTemperature }),
      };
    });
    const byFlow = [...rows].sort((a, b) => b.viscousFlow - a.viscousFlow);
    const top = byFlow[0];
    if (top === undefined) return wf.noSolution('there is no reading');
    const deciding = byFlow.find((row) => row.verdict !== 'unclear') ?? top;
    // A drop within its error says nothing of how the drop grows.
    const telling = byFlow.filter((row) => row.pressureDrop > 2 * row.uncertainty);
    const [fastest, slowest] = [telling[0], telling.at(-1)];
    const growth = fastest === undefined || slowest === undefined ? undefined : growthOf(slowest, fastest);
    const shape = growthShape(growth, { filter: constants.filterShare, pipe: constants.pipeShare });
    warnOfGrowth(shape, warn);
    if (zeroState === undefined) {
      warn('zero_not_read', 'The reading with the engine off is missing: a zero error makes this verdict wrong. Read it.');
    } else if (zeroState !== 'accepted') {
      warn(
        'zero_off',
        wf.say`The sensor reads ${mbar(zero)} with the engine off. It is subtracted from every reading here; check hoses and wiring, and read it again at the end.`,
        ['zeroReading'],
      );
    }
    const pair = contradiction(rows);
    const verdict: ConditionVerdict = zeroState === 'repair' ? 'zero-fault' : pair === undefined ? deciding.verdict : 'contradiction';
    return {
      readingsJudged: rows.map((row) => ({
        state: row.state,
        pressureDrop: row.pressureDrop,
        cleanDrop: row.cleanDrop,
        cleanRatio: row.cleanRatio,
        resistance: row.resistance,
        dropAtReference: row.dropAtReference,
        verdict: row.verdict,
      })),
      growth: growth?.exponent,
      growthUncertainty: growth?.uncertainty,
      largestGrowth: growth?.largest,
      decidingRow: rows.indexOf(deciding) + 1,
      decidingReading: deciding.state,
      growthShape: shape,
      cleanDrop: deciding.cleanDrop,
      cleanRatio: deciding.cleanRatio,
      resistance: deciding.resistance,
      why: reasonOf(verdict, deciding, pair, input.lowBand),
      verdict,
    };
  },
  advise({ verdict, growthShape: shape }) {
    switch (verdict) {
      case 'blocked':
      case 'loaded':
        return shape === 'filter-like' || shape === 'unknown' ? adviceOnFilter(verdict) : adviceOnShape(shape);
      case 'reversed':
      case 'suspiciously-low':
        return [
          { tone: 'do', text: 'Check hoses, joints and the sensor with the engine off, then the tail pipe and outlet face for soot.' },
          { tone: 'do-not', text: 'Do not reset anything on this reading.' },
        ];
      case 'zero-fault':
        return [
          {
            tone: 'do',
            text: 'Find the cause: water or soot in a hose, wiring, supply, or the sensor. Repair it and read everything again.',
          },
          { tone: 'do-not', text: 'Do not judge, clean, heat or reset anything on these readings.' },
        ];
      case 'contradiction':
        return [
          {
            tone: 'do',
            text: 'Check hoses and joints, read the sensor with the engine off, then take all readings again, warm and 60 s steady.',
          },
          { tone: 'do-not', text: 'Do not judge, clean, heat or reset anything on these readings.' },
        ];
      case 'unclear':
        return [
          { tone: 'do', text: 'Read again at 2500 rpm or more, or at the highest speed that is allowed without load, warm, 60 s steady.' },
          { tone: 'do', text: 'Check that both hoses are tight, free and dry: a hose that leaks reads too low.' },
        ];
      default:
        return [
          { tone: 'do', text: 'Check that both hoses are tight: one that leaks makes a loaded filter read like this.' },
          { tone: 'note', text: 'If faults came back with a filter like this, look at sensors, hoses and the rest of the exhaust.' },
        ];
    }
  },
});

const mbar = (value: number) => differentialPressure.format(differentialPressure.si(value), 'mbar', { digits: 3 });

interface Judged {
  readonly state: string;
  readonly cleanRatio: number;
  readonly tooLow: boolean;
}

const noHeat = { tone: 'do-not' as const, text: 'Do not heat the filter on these readings: what is in the way may not be in the filter.' };

const oneSided = {
  tone: 'note' as const,
  text: 'A sensor with one hose reads everything behind its tap: then the share of each part of the exhaust comes first, silencer and pipes too.',
};

function adviceOnFilter(verdict: 'blocked' | 'loaded') {
  if (verdict === 'loaded')
    return [{ tone: 'do' as const, text: 'Find why it loads, then check the permission for a regeneration.' }, oneSided];
  return [
    { tone: 'do' as const, text: 'Estimate the soot and check the permission for a regeneration before any heat.' },
    { tone: 'do-not' as const, text: 'Do not force a regeneration on this reading alone: above the soot limit it can melt the filter.' },
    oneSided,
  ];
}

/** What to do about a restriction that does not grow as a filter's does. */
function adviceOnShape(shape: 'between' | 'pipe-like' | 'impossible') {
  switch (shape) {
    case 'pipe-like':
      return [
        {
          tone: 'do' as const,
          text: 'Look for a restriction like a pipe between the two taps: crushed pipe, closed flap, collapsed catalyst, closed face of the filter.',
        },
        { tone: 'do' as const, text: 'Compare with a gauge at the upstream tap, and with the back-pressure behind the filter.' },
        noHeat,
      ];
    case 'impossible':
      return [
        {
          tone: 'do' as const,
          text: 'Read the sensor with the engine off, and idle again with the exhaust recirculation shut: open, it halves the flow at idle.',
        },
        { tone: 'do' as const, text: 'Take a third reading between the two, 60 s steady.' },
        noHeat,
      ];
    case 'between':
      return [
        {
          tone: 'do' as const,
          text: 'Take a third reading, read the sensor with the engine off, and compare with a gauge at the upstream tap.',
        },
        noHeat,
      ];
  }
}

function warnOfGrowth(shape: GrowthShape, warn: (code: string, text: string) => void): void {
  if (shape === 'impossible')
    warn(
      'steeper_than_possible',
      'The drop grows faster with flow than any restriction does. The reading at low flow is too small, or its flow too high: check the zero, the hoses, and the exhaust recirculation at idle. The reading at the higher flow counts.',
    );
  if (shape === 'pipe-like')
    warn('pipe_like', 'The drop grows like that of a pipe, not like that of a loaded filter: a pipe, flap or catalyst may be in the way.');
  if (shape === 'between')
    warn(
      'between_filter_and_pipe',
      'The drop grows faster than that of a filter, and slower than that of a pipe: these readings do not tell which of the two is in the way.',
    );
}

/** One sentence for the technician. */
function reasonOf(verdict: ConditionVerdict, deciding: Judged, pair: readonly [Judged, Judged] | undefined, low: number): string {
  if (verdict === 'zero-fault') return 'The reading with the engine off is too far from zero: no reading of this sensor can be trusted.';
  if (verdict === 'contradiction' && pair !== undefined)
    return wf.say`No filter gives both readings, "${pair[0].state}" and "${pair[1].state}": a hose, the sensor or its zero is wrong.`;
  if (verdict === 'reversed') return 'The drop is negative beyond its error.';
  if (verdict !== 'unclear')
    return wf.say`The drop is ${Number(deciding.cleanRatio.toPrecision(2))} times that of the clean filter at the same flow and temperature.`;
  if (!deciding.tooLow && deciding.cleanRatio < 2 * low)
    return 'The drop is as low as a clean filter can hardly give: a hose that leaks, or a crack, reads like this.';
  return deciding.tooLow
    ? 'The flow was too low: there even a clean filter is lost in the error of the sensor zero.'
    : 'The reading is as small as the error of the sensor zero.';
}
