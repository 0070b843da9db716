import * as wf from '@wallflow/calculation';
import {
  absolutePressure,
  area,
  fraction,
  gaugePressure,
  length,
  massFlow,
  ratio,
  temperature,
  time,
  volume,
  volumeFlow,
} from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { airMolarMass, gasConstant } from '../../vocabulary/constants.js';
import { airBalance, isentropicNozzle, moss1906, pneumaticPractice } from '../sources.js';
import { compressorVerdict, criticalPressureRatio, nozzleMassFlow } from './kernel.js';

const flowOutput = (symbol: string, label: string) =>
  wf.quantityOutput(volumeFlow, { symbol, label, digits: 3, units: ['L/min', 'm3/h', 'ft3/min'] });
const timeOutput = (symbol: string, label: string) => wf.quantityOutput(time, { symbol, label, digits: 2, units: ['min', 's', 'h'] });

export const pneumaticAirCalculation = wf.defineCalculation({
  id: 'pneumatic-air',
  subject: 'cleaning',
  title: 'Air for blowing a filter out',
  purpose: 'How much air does a pneumatic clean need, and can the compressor and receiver supply it?',
  keywords: 'compressed air, nozzle, compressor, receiver, blow out, DPF',
  method: 'isentropic nozzle, choked above 1.89 times the pressure after it',
  inputs: {
    nozzleDiameter: wf.quantity(length, {
      symbol: 'd',
      label: 'Nozzle bore',
      range: '0 < x <= 25 mm',
      usual: ['0.5 mm', '10 mm', 'blow guns and lances'],
      example: '3 mm',
      units: ['mm', 'in'],
    }),
    nozzles: wf.count({ symbol: 'N', label: 'Nozzles at once', min: 1, max: 50, default: [1, 'one blow gun'] }),
    nozzlePressure: wf.quantity(gaugePressure, {
      symbol: 'p_n',
      label: 'Pressure at the nozzle while it blows',
      range: '0 < x <= 20 bar',
      usual: [
        '0.5 bar',
        '7 bar',
        {
          below: 'common practice, no source: so little air hardly moves ash',
          above: 'common practice, no source: blow guns get 4 to 7 bar',
        },
      ],
      example: '5 bar',
      units: ['bar', 'psi', 'kPa'],
    }),
    dischargeCoefficient: wf.quantity(ratio, {
      symbol: 'C_d',
      label: 'Discharge coefficient',
      description: '0.97 for a rounded nozzle, 0.61 for a sharp-edged hole.',
      range: '0.3 <= x <= 1',
      default: ['0.97', 'rounded nozzle'],
    }),
    blowTime: wf.quantity(time, {
      symbol: 't',
      label: 'Time the nozzle is open, in all',
      range: '0 s < x <= 24 h',
      example: '20 min',
      units: ['min', 's', 'h'],
    }),
    cleanTime: wf.optional(
      wf.quantity(time, {
        symbol: 't_a',
        label: 'Time of the whole clean, with pauses',
        description: 'Leave blank if you blow without a pause.',
        range: '0 s < x <= 48 h',
        example: '40 min',
        units: ['min', 's', 'h'],
      }),
    ),
    airTemperature: wf.quantity(temperature, {
      symbol: 'T',
      label: 'Air temperature',
      range: '-20 <= x <= 60 °C',
      default: ['20 °C', 'workshop'],
    }),
    ambientPressure: wf.quantity(absolutePressure, {
      symbol: 'p_a',
      label: 'Ambient pressure',
      range: '60 <= x <= 110 kPa',
      units: ['kPa', 'hPa', 'mbar', 'psi'],
      default: ['101.325 kPa', 'sea level'],
    }),
    compressorFlow: wf.optional(
      wf.quantity(volumeFlow, {
        symbol: 'Q_k',
        label: 'Air that the compressor delivers',
        description: 'Free air delivery, not the displacement on the sticker.',
        range: '0 L/min < x <= 100 m3/min',
        example: '350 L/min',
        units: ['L/min', 'm3/h', 'ft3/min'],
      }),
    ),
    ...wf.together(
      {
        receiverVolume: wf.quantity(volume, {
          symbol: 'V',
          label: 'Receiver volume',
          range: '0 L < x <= 10 m3',
          example: '200 L',
          units: ['L', 'gal_US'],
        }),
        receiverPressure: wf.quantity(gaugePressure, {
          symbol: 'p_1',
          label: 'Pressure of the full receiver',
          range: '0 <= x <= 20 bar',
          example: '10 bar',
          units: ['bar', 'psi', 'kPa'],
        }),
      },
      {
        otherwise: {
          code: 'receiver_not_counted',
          text: 'Only one of volume and pressure of the receiver was entered, so the air in it is not counted.',
        },
      },
    ),
  },
  example: {
    ambientPressure: '986 hPa',
    airTemperature: '14 °C',
    compressorFlow: '350 L/min',
    receiverVolume: '200 L',
    receiverPressure: '10 bar',
    cleanTime: '40 min',
  },
  intermediates: {
    nozzleArea: wf.quantityOutput(area, { symbol: 'A', label: 'Area of one nozzle', digits: 4, units: ['mm2', 'in2'] }),
    nozzleAbsolute: wf.quantityOutput(absolutePressure, {
      symbol: 'p_0',
      label: 'Absolute pressure before the nozzle',
      digits: 4,
      units: ['bar', 'kPa', 'psi'],
    }),
    pressureRatio: wf.quantityOutput(ratio, { symbol: 'r', label: 'Pressure before the nozzle over ambient pressure', digits: 4 }),
    criticalRatio: wf.quantityOutput(ratio, { symbol: 'r_c', label: 'Ratio from which the nozzle is choked', digits: 4 }),
    flowRatio: wf.quantityOutput(ratio, { symbol: 'r_q', label: 'Ratio that counts for the flow', digits: 4 }),
    airExpansion: wf.quantityOutput(ratio, { symbol: 'e', label: 'Expansion in the nozzle', digits: 4 }),
    wholeTime: timeOutput('t_g', 'Time of the whole clean'),
    nozzleAirFlow: wf.quantityOutput(massFlow, { symbol: '\\dot m', label: 'Air through all nozzles', digits: 3, units: ['g/s', 'kg/h'] }),
    storedAir: wf.optional(
      wf.quantityOutput(volume, {
        symbol: 'V_s',
        label: 'Free air that the receiver holds for the nozzle',
        digits: 3,
        units: ['L', 'm3', 'ft3'],
      }),
    ),
    meanDemand: flowOutput('Q_m', 'Free air over the whole clean'),
  },
  outputs: {
    nozzleState: wf.choiceOutput({
      label: 'Nozzle',
      options: {
        choked: 'choked: the air reaches the speed of sound in the nozzle, and the flow rises with absolute pressure',
        open: 'not choked',
      },
    }),
    totalAir: wf.quantityOutput(volume, { symbol: 'V_a', label: 'Free air in all', digits: 3, units: ['m3', 'L', 'ft3'] }),
    duty: wf.optional(
      wf.quantityOutput(fraction, {
        symbol: 'b',
        label: 'Compressor load over the clean, with the receiver full again at the end',
        digits: 3,
        units: ['%'],
      }),
    ),
    blowFromFull: wf.optional(timeOutput('t_1', 'Longest blow from a full receiver')),
    refillTime: wf.optional(timeOutput('t_2', 'Time to refill the receiver')),
    verdict: wf.choiceOutput({
      label: 'Is the compressor large enough?',
      options: {
        enough: 'yes: it keeps up while the nozzle blows',
        'from-receiver': 'yes, with the full receiver: the air lasts for the whole blow without a pause',
        pauses: 'yes, with pauses: blow, then let the receiver fill',
        'too-small': 'no: take longer, or use a smaller nozzle or a larger compressor',
        unknown: 'not known: delivery or receiver was not entered, and the other alone is not enough',
      },
    }),
    freeAirFlow: flowOutput('Q', 'Free air while it blows'),
  },
  constants: {
    gasConstant,
    airMolarMass,
    heatCapacityRatio: wf.constant(ratio, 1.4, { symbol: '\\gamma', label: 'Ratio of specific heats', source: isentropicNozzle }),
  },
  answer: 'verdict',
  steps: [
    wf.formula('nozzleArea', 'pi / 4 * nozzleDiameter ^ 2'),
    wf.formula('nozzleAbsolute', 'nozzlePressure + ambientPressure'),
    wf.formula('pressureRatio', 'nozzleAbsolute / ambientPressure'),
    wf.formula('criticalRatio', '((heatCapacityRatio + 1) / 2) ^ (heatCapacityRatio / (heatCapacityRatio - 1))', isentropicNozzle),
    wf.verdict('nozzleState', { choked: 'pressureRatio >= criticalRatio', open: 'otherwise' }, isentropicNozzle),
    wf.formula('flowRatio', 'min(criticalRatio, pressureRatio)', isentropicNozzle),
    wf.formula(
      'airExpansion',
      'flowRatio ^ (-2 / heatCapacityRatio) - flowRatio ^ (-(heatCapacityRatio + 1) / heatCapacityRatio)',
      isentropicNozzle,
    ),
    wf.formula(
      'nozzleAirFlow',
      'nozzles * dischargeCoefficient * nozzleArea * nozzleAbsolute * sqrt(2 * heatCapacityRatio / (heatCapacityRatio - 1) * airExpansion * airMolarMass / (gasConstant * airTemperature))',
      isentropicNozzle,
    ),
    wf.formula('freeAirFlow', 'nozzleAirFlow * gasConstant * airTemperature / (airMolarMass * ambientPressure)', moss1906),
    wf.formula('totalAir', 'freeAirFlow * blowTime'),
    wf.cases('wholeTime', { 'known(cleanTime)': 'cleanTime', otherwise: 'blowTime' }),
    wf.formula('meanDemand', 'totalAir / wholeTime'),
    wf.formula('duty', 'meanDemand / compressorFlow'),
    wf.formula('storedAir', 'receiverVolume * (receiverPressure - nozzlePressure) / ambientPressure'),
    wf.cases('blowFromFull', { 'freeAirFlow > compressorFlow': 'storedAir / (freeAirFlow - compressorFlow)' }, airBalance),
    wf.formula('refillTime', 'storedAir / compressorFlow'),
    wf.verdict(
      'verdict',
      {
        enough: 'known(compressorFlow) and compressorFlow >= freeAirFlow',
        'from-receiver':
          'known(storedAir) and (storedAir >= totalAir or known(compressorFlow) and storedAir >= totalAir - compressorFlow * blowTime)',
        pauses:
          'known(compressorFlow) and (compressorFlow * wholeTime >= totalAir and not known(storedAir) or known(storedAir) and storedAir > 0 and storedAir + compressorFlow * wholeTime >= totalAir)',
        'too-small': 'known(compressorFlow) and known(storedAir)',
        unknown: 'otherwise',
      },
      airBalance,
    ),
  ],
  assumptions: {
    pressure_at_nozzle:
      'The pressure at the nozzle stays the same while it blows; in a thin hose it falls far below the gauge at the receiver.',
    isothermal_receiver: 'The receiver stays at room temperature; emptied within seconds, it cools and gives up to a quarter less.',
  },
  limits: { not_how_clean: 'More air does not clean better: ash plugs may need baking first, and the weight shows what came out.' },
  cautions: [
    {
      code: 'compressed_air',
      text: 'Compressed air injures eyes and ears and goes through skin: goggles, ear protection, never toward people.',
    },
    cautions.ashDust,
    cautions.waste,
    cautions.makerFirst,
  ],
  sources: [pneumaticPractice],
  compute(input, { constants, assume }) {
    const {
      nozzlePressure,
      ambientPressure,
      airTemperature,
      blowTime,
      cleanTime = blowTime,
      compressorFlow,
      receiverVolume,
      receiverPressure,
    } = input;
    if (cleanTime < blowTime) {
      return wf.inconsistentInputs('the nozzle cannot be open for longer than the whole clean takes', ['blowTime'], ['cleanTime']);
    }
    if (receiverPressure !== undefined && receiverPressure < nozzlePressure) {
      return wf.inconsistentInputs(
        'the full receiver holds less pressure than was entered for the nozzle',
        ['receiverPressure'],
        ['nozzlePressure'],
      );
    }
    const gas = { gasConstant: constants.gasConstant, molarMass: constants.airMolarMass, heatCapacityRatio: constants.heatCapacityRatio };
    const pressure = nozzlePressure + ambientPressure;
    const nozzleArea = (Math.PI * input.nozzleDiameter ** 2) / 4;
    const one = nozzleMassFlow(
      {
        area: nozzleArea,
        dischargeCoefficient: input.dischargeCoefficient,
        pressure,
        backPressure: ambientPressure,
        temperature: airTemperature,
      },
      gas,
    );
    const nozzleAirFlow = one * input.nozzles;
    const freeAirFlow = (nozzleAirFlow * gas.gasConstant * airTemperature) / (gas.molarMass * ambientPressure);
    const totalAir = freeAirFlow * blowTime;
    const meanDemand = totalAir / cleanTime;
    const storedAir =
      receiverVolume === undefined || receiverPressure === undefined
        ? undefined
        : (receiverVolume * (receiverPressure - nozzlePressure)) / ambientPressure;
    const missing = compressorFlow === undefined ? undefined : freeAirFlow - compressorFlow;
    const large = compressorVerdict({ freeAirFlow, blowTime, cleanTime, delivery: compressorFlow, stored: storedAir });
    if (storedAir === undefined && large === 'pauses') {
      assume('some_receiver', 'There is a receiver to blow from; its volume and pressure were not both entered.');
    }
    const critical = criticalPressureRatio(constants.heatCapacityRatio);
    const flowRatio = Math.min(critical, pressure / ambientPressure);
    const gamma = constants.heatCapacityRatio;
    return {
      nozzleArea,
      nozzleAbsolute: pressure,
      pressureRatio: pressure / ambientPressure,
      criticalRatio: critical,
      flowRatio,
      airExpansion: flowRatio ** (-2 / gamma) - flowRatio ** (-(gamma + 1) / gamma),
      wholeTime: cleanTime,
      nozzleState: pressure / ambientPressure >= critical ? 'choked' : 'open',
      nozzleAirFlow,
      freeAirFlow,
      totalAir,
      meanDemand,
      duty: compressorFlow === undefined ? undefined : meanDemand / compressorFlow,
      storedAir,
      blowFromFull: storedAir === undefined || missing === undefined || missing <= 0 ? undefined : storedAir / missing,
      refillTime: storedAir === undefined || compressorFlow === undefined ? undefined : storedAir / compressorFlow,
      verdict: large,
    };
  },
  advise: () => [
    { tone: 'do', text: 'Blow backwards, from the outlet to the inlet, inside a cabinet with extraction; collect the ash.' },
    { tone: 'do-not', text: 'Do not blow a filter out in the open or towards a door.' },
  ],
});
