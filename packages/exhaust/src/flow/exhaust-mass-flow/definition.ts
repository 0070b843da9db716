import * as wf from '@wallflow/calculation';
import { massFlow, ratio } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { airMolarMass, gasConstant } from '../../vocabulary/constants.js';
import { revolutionsStep } from '../engine-fields.js';
import { heywood1988, lambdaDefinition, massBalance } from '../sources.js';
import { exhaustMassFlowInputs } from './fields.js';
import { airFlow, fuelFlow } from './flows.js';
import { exhaustMassFlow, lambdaOfFlows } from './kernel.js';

const flow = (symbol: string, label: string) => wf.quantityOutput(massFlow, { symbol, label, digits: 4, units: ['kg/h', 'g/s'] });

export const exhaustMassFlowCalculation = wf.defineCalculation({
  id: 'exhaust-mass-flow',
  subject: 'flow',
  title: 'Exhaust mass flow',
  purpose: 'How much gas goes through the exhaust, from what the engine shows?',
  keywords: 'exhaust flow, air mass, MAF, mass air flow, speed density, lambda, fuel flow, airflow',
  method: 'air plus fuel',
  inputs: exhaustMassFlowInputs,
  example: {
    airFrom: 'speed-density',
    displacement: '3.9 L',
    engineSpeed: '2200 rpm',
    manifoldPressure: '117 kPa',
    manifoldTemperature: '40 °C',
    fuelMassFlow: '4 kg/h',
  },
  intermediates: {
    revolutionsPerCycle: wf.optional(wf.countOutput({ symbol: 'i', label: 'Crankshaft revolutions per working cycle' })),
    airFromStrokes: wf.optional(flow('\\dot m_{air,str}', 'Air mass flow by air per stroke')),
    airFromSpeedDensity: wf.optional(flow('\\dot m_{air,sd}', 'Air mass flow by speed and density')),
    airFromFuel: wf.optional(flow('\\dot m_{air,\\lambda}', 'Air mass flow by fuel and lambda')),
    fuelFromLambda: wf.optional(flow('\\dot m_{fuel,\\lambda}', 'Fuel mass flow by lambda')),
    fuelAssumed: wf.optional(flow('\\dot m_{fuel,0}', 'Fuel mass flow as without load')),
    resultingLambda: wf.optional(wf.quantityOutput(ratio, { symbol: '\\lambda_r', label: 'Lambda', digits: 3 })),
  },
  outputs: {
    usedAirMassFlow: flow('\\dot m_{air}', 'Air mass flow'),
    usedFuelMassFlow: flow('\\dot m_{fuel}', 'Fuel mass flow'),
    exhaustMassFlow: flow('\\dot m_{exh}', 'Exhaust mass flow'),
  },
  answer: 'exhaustMassFlow',
  constants: { gasConstant, airMolarMass },
  steps: [
    revolutionsStep,
    wf.formula(
      'airFromStrokes',
      'airMassPerStroke * cylinderCount * engineSpeed / revolutionsPerCycle',
      wf.commonPractice('Air mass per stroke: the charge of fresh air that one cylinder draws in one intake stroke'),
    ),
    wf.formula(
      'airFromSpeedDensity',
      'volumetricEfficiency * manifoldPressure * displacement * engineSpeed * airMolarMass / (revolutionsPerCycle * gasConstant * manifoldTemperature) * (1 - exhaustGasRecirculation)',
      heywood1988,
      'Eq. 2.27',
    ),
    wf.formula('airFromFuel', 'lambda * stoichiometricAirFuelRatio * fuelMassFlow', lambdaDefinition),
    wf.cases('usedAirMassFlow', {
      "airFrom == 'air-mass-signal'": 'airMassFlow',
      "airFrom == 'air-mass-per-stroke'": 'airFromStrokes',
      "airFrom == 'speed-density'": 'airFromSpeedDensity',
      otherwise: 'airFromFuel',
    }),
    wf.formula('fuelFromLambda', 'usedAirMassFlow / (lambda * stoichiometricAirFuelRatio)', lambdaDefinition),
    wf.formula(
      'fuelAssumed',
      '0.015 * usedAirMassFlow',
      wf.commonPractice('Fuel share of a diesel without load: 1 to 2 % of the air mass'),
    ),
    wf.cases('usedFuelMassFlow', { 'known(fuelMassFlow)': 'fuelMassFlow', 'known(lambda)': 'fuelFromLambda', otherwise: 'fuelAssumed' }),
    wf.formula('resultingLambda', 'usedAirMassFlow / (stoichiometricAirFuelRatio * usedFuelMassFlow)', lambdaDefinition),
    wf.formula('exhaustMassFlow', 'usedAirMassFlow + usedFuelMassFlow', massBalance),
  ],
  assumptions: {
    steady: 'The engine runs steadily, so that what enters leaves at once.',
    dry_air: 'The air is taken as dry; humid air of 20 g/kg changes the exhaust flow by 1.2 % at most.',
    no_leak: 'Nothing leaks between the point of measurement and the filter, and no air or reductant is added.',
  },
  limits: {
    volumetric_efficiency:
      'By speed and density the result is as good as the volumetric efficiency: expect about 10 % without the value of this engine.',
    air_mass_sensor: 'By the air-mass signal the result is as good as the sensor: a dirty one usually reads low.',
  },
  cautions: [cautions.sensorFirst],
  advise: (values) =>
    values.fuelAssumed === undefined
      ? []
      : [{ tone: 'do', text: 'Use this value for tests without load only; under load enter the fuel flow or lambda as well.' }],
  compute(input, context) {
    const air = airFlow(input, context.constants, context);
    if (wf.isRefusal(air)) return air;
    const fuel = fuelFlow(input, air.usedAirMassFlow, context);
    const resultingLambda =
      fuel.usedFuelMassFlow > 0 ? lambdaOfFlows(air.usedAirMassFlow, fuel.usedFuelMassFlow, input.stoichiometricAirFuelRatio) : undefined;
    if (resultingLambda !== undefined && resultingLambda < 1) {
      context.warn('rich_mixture', 'More fuel than this air can burn (lambda below 1): check the air flow, the fuel flow and their units.');
    }
    if (resultingLambda !== undefined && input.lambda !== undefined && Math.abs(resultingLambda / input.lambda - 1) > 0.1) {
      context.warn(
        'lambda_disagrees',
        'Air and fuel flow do not fit the lambda entered: one of the three signals is wrong. The fuel flow was used.',
        ['lambda'],
      );
    }
    return {
      revolutionsPerCycle: undefined,
      airFromStrokes: undefined,
      airFromSpeedDensity: undefined,
      airFromFuel: undefined,
      fuelFromLambda: undefined,
      fuelAssumed: undefined,
      ...air,
      ...fuel,
      resultingLambda,
      exhaustMassFlow: exhaustMassFlow(air.usedAirMassFlow, fuel.usedFuelMassFlow),
    };
  },
});
