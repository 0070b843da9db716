import {
  choiceOutput,
  constant,
  count,
  defineCalculation,
  inconsistentInputs,
  optional,
  quantity,
  quantityOutput,
  quantityWithDefault,
} from '@wallflow/calculation';
import {
  absolutePressure,
  fraction,
  gaugePressure,
  length,
  massFlow,
  molarHeatCapacity,
  molarMass,
  ratio,
  temperature,
  time,
  volume,
  volumeFlow,
} from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { molarGasConstant, molarMassOfDryAir } from '../../gas/constants.js';
import { cfr1065, siBrochure } from '../../sources.js';
import { airBalance, isentropicNozzle, moss1906, pneumaticPractice } from '../sources.js';
import { compressorVerdict, criticalPressureRatio, nozzleMassFlow } from './kernel.js';

const gauge = (symbol: string, label: string, example: string) =>
  quantity(gaugePressure, { symbol, label, min: '0 bar', max: '20 bar', example, units: ['bar', 'psi', 'kPa'] });
const flowOutput = (symbol: string, label: string) =>
  quantityOutput(volumeFlow, { symbol, label, digits: 3, units: ['L/min', 'm3/h', 'ft3/min'] });
const timeOutput = (symbol: string, label: string) => quantityOutput(time, { symbol, label, digits: 2, units: ['min', 's', 'h'] });

export const pneumaticAirCalculation = defineCalculation({
  id: 'pneumatic-air',
  version: '2.0.0',
  subject: 'cleaning',
  title: 'Air for blowing a filter out',
  purpose: 'How much air does a pneumatic clean take, and do compressor and receiver give it?',
  usedBy: ['technician', 'developer'],
  keywords: ['compressed air', 'nozzle', 'compressor', 'receiver', 'blow out'],
  method: 'isentropic nozzle, choked above 1.89 times the pressure behind it',
  inputs: z.strictObject({
    nozzleDiameter: quantity(length, {
      symbol: 'd',
      label: 'Nozzle bore',
      above: '0 mm',
      max: '25 mm',
      usual: ['0.5 mm', '10 mm'],
      usualReason: 'blow guns and lances',
      example: '3 mm',
      units: ['mm', 'in'],
    }),
    nozzles: count({ symbol: 'N', label: 'Nozzles at once', min: 1, max: 50, example: 1, default: 1, defaultReason: 'one blow gun' }),
    nozzlePressure: quantity(gaugePressure, {
      symbol: 'p_n',
      label: 'Pressure at the nozzle while it blows',
      above: '0 bar',
      max: '20 bar',
      usual: ['0.5 bar', '7 bar'],
      usualReason: {
        below: 'common practice, no source: so little air hardly moves ash',
        above: 'common practice, no source: blow guns get 4 to 7 bar',
      },
      example: '5 bar',
      units: ['bar', 'psi', 'kPa'],
    }),
    dischargeCoefficient: quantityWithDefault(ratio, {
      symbol: 'C_d',
      label: 'Discharge coefficient',
      description: '0.97 for a rounded nozzle, 0.61 for a sharp-edged hole.',
      min: '0.3',
      max: '1',
      example: '0.97',
      default: '0.97',
      defaultReason: 'rounded nozzle',
    }),
    blowTime: quantity(time, {
      symbol: 't',
      label: 'Time the nozzle is open, in all',
      above: '0 s',
      max: '24 h',
      example: '20 min',
      units: ['min', 's', 'h'],
    }),
    cleanTime: quantity(time, {
      symbol: 't_a',
      label: 'Time of the whole clean, with pauses',
      description: 'Left out, it is blown without a pause.',
      above: '0 s',
      max: '48 h',
      example: '40 min',
      units: ['min', 's', 'h'],
    }).optional(),
    airTemperature: quantityWithDefault(temperature, {
      symbol: 'T',
      label: 'Air temperature',
      min: '-20 °C',
      max: '60 °C',
      example: '20 °C',
      default: '20 °C',
      defaultReason: 'workshop',
    }),
    ambientPressure: quantityWithDefault(absolutePressure, {
      symbol: 'p_a',
      label: 'Air pressure of the place',
      min: '60 kPa',
      max: '110 kPa',
      example: '101.325 kPa',
      units: ['kPa', 'mbar', 'psi'],
      default: '101.325 kPa',
      defaultReason: 'sea level',
    }),
    compressorFlow: quantity(volumeFlow, {
      symbol: 'Q_k',
      label: 'Air that the compressor delivers',
      description: 'Free air delivery, not the displacement on the sticker.',
      above: '0 L/min',
      max: '100 m3/min',
      example: '350 L/min',
      units: ['L/min', 'm3/h', 'ft3/min'],
    }).optional(),
    receiverVolume: quantity(volume, {
      symbol: 'V',
      label: 'Receiver',
      above: '0 L',
      max: '10 m3',
      example: '200 L',
      units: ['L', 'gal_US'],
    }).optional(),
    receiverPressure: gauge('p_1', 'Receiver full', '10 bar').optional(),
  }),
  example: { compressorFlow: '350 L/min', receiverVolume: '200 L', receiverPressure: '10 bar', cleanTime: '40 min' },
  intermediates: {
    airMassFlow: quantityOutput(massFlow, { symbol: '\\dot m', label: 'Air through all nozzles', digits: 3, units: ['g/s', 'kg/h'] }),
    storedAir: optional(
      quantityOutput(volume, { symbol: 'V_s', label: 'Free air that the receiver gives', digits: 3, units: ['L', 'm3', 'ft3'] }),
    ),
    meanDemand: flowOutput('Q_m', 'Free air over the whole clean'),
  },
  outputs: {
    state: choiceOutput({
      label: 'Nozzle',
      options: { choked: 'choked: sound speed in the nozzle; flow goes with the absolute pressure', open: 'not choked' },
    }),
    totalAir: quantityOutput(volume, { symbol: 'V_a', label: 'Free air in all', digits: 3, units: ['m3', 'L', 'ft3'] }),
    duty: optional(
      quantityOutput(fraction, {
        symbol: 'b',
        label: 'Load of the compressor over the clean, receiver full again at its end',
        digits: 3,
        units: ['%'],
      }),
    ),
    blowFromFull: optional(timeOutput('t_1', 'Longest blow from a full receiver')),
    refill: optional(timeOutput('t_2', 'Time to fill it again')),
    verdict: choiceOutput({
      label: 'Compressor',
      options: {
        enough: 'large enough: it keeps up while the nozzle blows',
        'from-receiver': 'the full receiver makes up for it: it lasts for the whole blow without a pause',
        pauses: 'large enough with pauses: blow, then let the receiver fill',
        'too-small': 'too small for that time: take longer, a smaller nozzle, or a larger compressor',
        unknown: 'not known: delivery or receiver was not given, and the other alone does not last',
      },
    }),
    freeAirFlow: flowOutput('Q', 'Free air while it blows'),
  },
  constants: {
    gasConstant: constant(molarHeatCapacity, molarGasConstant, { symbol: 'R', label: 'Molar gas constant', source: 'siBrochure' }),
    airMolarMass: constant(molarMass, molarMassOfDryAir, { symbol: 'M', label: 'Molar mass of dry air', source: 'cfr1065' }),
    heatCapacityRatio: constant(ratio, 1.4, { symbol: '\\gamma', label: 'Heat capacity ratio of air', source: 'isentropicNozzle' }),
  },
  steps: [
    { gives: 'state', text: 'Absolute pressure before the nozzle over that of the place, against 1.893.', source: 'isentropicNozzle' },
    {
      gives: 'airMassFlow',
      text: 'Isentropic flow of an ideal gas times nozzles and discharge coefficient, at the critical ratio when choked: [[airMassFlow]].',
      source: 'isentropicNozzle',
    },
    { gives: 'totalAir', tex: '[[totalAir]] = [[freeAirFlow]]\\,[[blowTime]]' },
    { gives: 'meanDemand', text: 'All of it over the time of the whole clean: [[meanDemand]].' },
    { gives: 'duty', tex: '[[duty]] = \\frac{[[meanDemand]]}{[[compressorFlow]]}' },
    {
      gives: 'storedAir',
      tex: '[[storedAir]] = [[receiverVolume]]\\,\\frac{[[receiverPressure]]-[[nozzlePressure]]}{[[ambientPressure]]}',
    },
    { gives: 'blowFromFull', text: 'Stored air over what the nozzle takes beyond the delivery: [[blowFromFull]].' },
    { gives: 'refill', tex: '[[refill]] = \\frac{[[storedAir]]}{[[compressorFlow]]}' },
    {
      gives: 'freeAirFlow',
      tex: '[[freeAirFlow]] = \\frac{[[airMassFlow]]\\,[[gasConstant]]\\,[[airTemperature]]}{[[airMolarMass]]\\,[[ambientPressure]]}',
      source: 'moss1906',
    },
    {
      gives: 'verdict',
      text: 'Delivery against the flow while it blows; then with the stored air against what the blow takes, without and with pauses.',
      source: 'airBalance',
    },
  ],
  assumptions: [
    {
      code: 'pressure_at_nozzle',
      text: 'The pressure holds at the nozzle while it blows; in a thin hose it falls far below the gauge at the receiver.',
    },
    {
      code: 'isothermal_receiver',
      text: 'The receiver stays at room temperature; emptied within seconds it cools and gives up to a quarter less.',
    },
  ],
  limits: [
    { code: 'not_how_clean', text: 'More air is not more clean: ash plugs may need baking first, and the weight shows what came out.' },
  ],
  cautions: [
    {
      code: 'compressed_air',
      text: 'Compressed air injures eyes and ears and goes through skin: goggles, ear protection, never toward people.',
    },
    cautions.ashDust,
    cautions.waste,
    cautions.makerFirst,
  ],
  sources: { isentropicNozzle, airBalance, moss1906, pneumaticPractice, siBrochure, cfr1065 },
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
      return inconsistentInputs('the nozzle cannot be open for longer than the whole clean takes', ['blowTime'], ['cleanTime']);
    }
    if (receiverPressure !== undefined && receiverPressure < nozzlePressure) {
      return inconsistentInputs(
        'the full receiver holds less pressure than the nozzle is said to have',
        ['receiverPressure'],
        ['nozzlePressure'],
      );
    }
    const gas = { gasConstant: constants.gasConstant, molarMass: constants.airMolarMass, heatCapacityRatio: constants.heatCapacityRatio };
    const pressure = nozzlePressure + ambientPressure;
    const one = nozzleMassFlow(
      {
        area: (Math.PI * input.nozzleDiameter ** 2) / 4,
        dischargeCoefficient: input.dischargeCoefficient,
        pressure,
        backPressure: ambientPressure,
        temperature: airTemperature,
      },
      gas,
    );
    const airMassFlow = one * input.nozzles;
    const freeAirFlow = (airMassFlow * gas.gasConstant * airTemperature) / (gas.molarMass * ambientPressure);
    const totalAir = freeAirFlow * blowTime;
    const meanDemand = totalAir / cleanTime;
    const storedAir =
      receiverVolume === undefined || receiverPressure === undefined
        ? undefined
        : (receiverVolume * (receiverPressure - nozzlePressure)) / ambientPressure;
    const missing = compressorFlow === undefined ? undefined : freeAirFlow - compressorFlow;
    const verdict = compressorVerdict({ freeAirFlow, blowTime, cleanTime, delivery: compressorFlow, stored: storedAir });
    if (storedAir === undefined && verdict === 'pauses') {
      assume('some_receiver', 'There is a receiver to blow from; its volume and pressure are not both given.');
    }
    return {
      state: pressure / ambientPressure >= criticalPressureRatio(constants.heatCapacityRatio) ? 'choked' : 'open',
      airMassFlow,
      freeAirFlow,
      totalAir,
      meanDemand,
      duty: compressorFlow === undefined ? undefined : meanDemand / compressorFlow,
      storedAir,
      blowFromFull: storedAir === undefined || missing === undefined || missing <= 0 ? undefined : storedAir / missing,
      refill: storedAir === undefined || compressorFlow === undefined ? undefined : storedAir / compressorFlow,
      verdict,
    };
  },
  advise: () => [
    { tone: 'do', text: 'Blow backwards, from the outlet to the inlet, inside a cabinet with extraction; catch the ash.' },
    { tone: 'do-not', text: 'Do not blow a filter out in the open or towards a door.' },
  ],
});
