import { commonPractice, constant, countOutput, defineCalculation, isRefusal, optional, quantityOutput } from '@wallflow/calculation';
import { massFlow, molarHeatCapacity, molarMass, ratio } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { molarGasConstant, molarMassOfDryAir } from '../../gas/constants.js';
import { cfr1065, siBrochure } from '../../sources.js';
import { heywood1988, lambdaDefinition, massBalance } from '../sources.js';
import { exhaustMassFlowInputs } from './fields.js';
import { airFlow, fuelFlow } from './flows.js';
import { exhaustMassFlow, lambdaOfFlows } from './kernel.js';
import { warnOfUnused } from './unused-inputs.js';

const flow = (symbol: string, label: string) => quantityOutput(massFlow, { symbol, label, digits: 4, units: ['kg/h', 'g/s'] });

export const exhaustMassFlowCalculation = defineCalculation({
  id: 'exhaust-mass-flow',
  version: '1.1.0',
  subject: 'flow',
  title: 'Exhaust mass flow',
  purpose: 'How much gas goes through the exhaust, from what the engine shows?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['exhaust flow', 'air mass', 'speed density', 'lambda', 'fuel flow'],
  method: 'air plus fuel',
  inputs: exhaustMassFlowInputs,
  example: {
    airFrom: 'speed-density',
    displacement: '2.0 L',
    engineSpeed: '2000 rpm',
    manifoldPressure: '150 kPa',
    manifoldTemperature: '47 °C',
    fuelMassFlow: '4 kg/h',
  },
  intermediates: {
    revolutionsPerCycle: optional(countOutput({ symbol: 'i', label: 'Crankshaft revolutions per working cycle' })),
    airFromStrokes: optional(flow('\\dot m_{air,str}', 'Air mass flow by air per stroke')),
    airFromSpeedDensity: optional(flow('\\dot m_{air,sd}', 'Air mass flow by speed and density')),
    airFromFuel: optional(flow('\\dot m_{air,\\lambda}', 'Air mass flow by fuel and lambda')),
    fuelFromLambda: optional(flow('\\dot m_{fuel,\\lambda}', 'Fuel mass flow by lambda')),
    fuelAssumed: optional(flow('\\dot m_{fuel,0}', 'Fuel mass flow as without load')),
    resultingLambda: optional(quantityOutput(ratio, { symbol: '\\lambda_r', label: 'Lambda of these flows', digits: 3 })),
  },
  outputs: {
    airMassFlow: flow('\\dot m_{air}', 'Air mass flow'),
    fuelMassFlow: flow('\\dot m_{fuel}', 'Fuel mass flow'),
    exhaustMassFlow: flow('\\dot m_{exh}', 'Exhaust mass flow'),
  },
  constants: {
    gasConstant: constant(molarHeatCapacity, molarGasConstant, { symbol: 'R', label: 'Molar gas constant', source: 'siBrochure' }),
    airMolarMass: constant(molarMass, molarMassOfDryAir, { symbol: 'M_{air}', label: 'Molar mass of dry air', source: 'cfr1065' }),
  },
  steps: [
    {
      gives: 'revolutionsPerCycle',
      text: 'A [[strokes]] engine fills its cylinders once every [[revolutionsPerCycle]] crankshaft revolutions.',
    },
    {
      gives: 'airFromStrokes',
      tex: '[[airFromStrokes]] = \\frac{[[airMassPerStroke]]\\,[[cylinderCount]]\\,[[engineSpeed]]}{[[revolutionsPerCycle]]}',
      source: 'strokes',
    },
    {
      gives: 'airFromSpeedDensity',
      tex: '[[airFromSpeedDensity]] = \\frac{[[volumetricEfficiency]]\\,[[manifoldPressure]]\\,[[displacement]]\\,[[engineSpeed]]\\,[[airMolarMass]]}{[[revolutionsPerCycle]]\\,[[gasConstant]]\\,[[manifoldTemperature]]}\\left(1-[[exhaustGasRecirculation]]\\right)',
      source: 'heywood1988',
      locator: 'Eq. 2.27',
    },
    {
      gives: 'airFromFuel',
      tex: '[[airFromFuel]] = [[lambda]]\\,[[stoichiometricAirFuelRatio]]\\,[[fuelMassFlow]]',
      source: 'lambdaDefinition',
    },
    { gives: 'airMassFlow', text: 'Air mass flow taken from: [[airFrom]].' },
    {
      gives: 'fuelFromLambda',
      tex: '[[fuelFromLambda]] = \\frac{[[airMassFlow]]}{[[lambda]]\\,[[stoichiometricAirFuelRatio]]}',
      source: 'lambdaDefinition',
    },
    { gives: 'fuelAssumed', tex: '[[fuelAssumed]] = 0.015\\,[[airMassFlow]]', source: 'fuelAtNoLoad' },
    { gives: 'fuelMassFlow', text: 'Fuel as given, else by lambda, else as without load.' },
    {
      gives: 'resultingLambda',
      tex: '[[resultingLambda]] = \\frac{[[airMassFlow]]}{[[stoichiometricAirFuelRatio]]\\,[[fuelMassFlow]]}',
      source: 'lambdaDefinition',
    },
    { gives: 'exhaustMassFlow', tex: '[[exhaustMassFlow]] = [[airMassFlow]] + [[fuelMassFlow]]', source: 'massBalance' },
  ],
  assumptions: [
    { code: 'steady', text: 'The engine runs steadily, so that what enters leaves at once.' },
    { code: 'dry_air', text: 'The air is taken as dry; humid air of 20 g/kg changes the exhaust flow by 1.2 % at most.' },
    { code: 'no_leak', text: 'Nothing leaks between the point of measurement and the filter, and no air or reductant is added.' },
  ],
  limits: [
    {
      code: 'volumetric_efficiency',
      text: 'By speed and density the result is as good as the volumetric efficiency: expect about 10 % without the value of this engine.',
    },
    { code: 'air_mass_sensor', text: 'By the air-mass signal the result is as good as the sensor: a dirty one usually reads low.' },
  ],
  cautions: [cautions.sensorFirst],
  sources: {
    massBalance,
    lambdaDefinition,
    heywood1988,
    cfr1065,
    siBrochure,
    strokes: commonPractice('Air mass per stroke: the charge of fresh air that one cylinder draws in one intake stroke'),
    fuelAtNoLoad: commonPractice('Fuel share of a diesel without load: 1 to 2 % of the air mass'),
  },
  advise: (values) =>
    values.fuelAssumed === undefined
      ? []
      : [{ tone: 'do', text: 'Use this value for tests without load only; under load give the fuel flow or lambda as well.' }],
  compute(input, context) {
    const air = airFlow(input, context.constants, context);
    if (isRefusal(air)) return air;
    warnOfUnused(input, context);
    const fuel = fuelFlow(input, air.airMassFlow, context);
    const hasFuel = fuel.fuelMassFlow > 0;
    const resultingLambda = hasFuel ? lambdaOfFlows(air.airMassFlow, fuel.fuelMassFlow, input.stoichiometricAirFuelRatio) : undefined;
    if (resultingLambda !== undefined && resultingLambda < 1) {
      context.warn('rich_mixture', 'More fuel than this air can burn (lambda below 1): check the air flow, the fuel flow and their units.');
    }
    if (resultingLambda !== undefined && input.lambda !== undefined && Math.abs(resultingLambda / input.lambda - 1) > 0.1) {
      context.warn(
        'lambda_disagrees',
        'Air and fuel flow do not fit the lambda given: one of the three signals is wrong. The fuel flow was used.',
        ['lambda'],
      );
    }
    return {
      airMassFlow: air.airMassFlow,
      revolutionsPerCycle: air.revolutionsPerCycle,
      airFromStrokes: air.airFromStrokes,
      airFromSpeedDensity: air.airFromSpeedDensity,
      airFromFuel: air.airFromFuel,
      fuelMassFlow: fuel.fuelMassFlow,
      fuelFromLambda: fuel.fuelFromLambda,
      fuelAssumed: fuel.fuelAssumed,
      resultingLambda,
      exhaustMassFlow: exhaustMassFlow(air.airMassFlow, fuel.fuelMassFlow),
    };
  },
});
