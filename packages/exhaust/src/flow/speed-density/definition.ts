import { constant, countOutput, defineCalculation, quantityOutput } from '@wallflow/calculation';
import { massFlow, molarFlow, molarHeatCapacity, molarMass, volumeFlow } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { molarGasConstant, molarMassOfDryAir } from '../../gas/constants.js';
import { cfr1065, siBrochure } from '../../sources.js';
import { chargeFields, engineFields, revolutionsPerCycle } from '../engine-fields.js';
import { heywood1988, unRegulation24 } from '../sources.js';
import { speedDensityAirMolarFlow, sweptVolumeFlow } from './kernel.js';

export const airMassFlowSpeedDensityCalculation = defineCalculation({
  id: 'air-mass-flow-speed-density',
  version: '1.0.0',
  subject: 'flow',
  title: 'Air mass flow from engine speed and manifold density',
  purpose: 'How much fresh air does the engine draw, when the air-mass signal is missing or in doubt?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['air mass', 'speed density', 'volumetric efficiency', 'boost', 'exhaust gas recirculation'],
  method: 'speed and density',
  inputs: z.strictObject({ ...engineFields, ...chargeFields }),
  intermediates: {
    revolutionsPerCycle: countOutput({ symbol: 'i', label: 'Crankshaft revolutions per working cycle' }),
    sweptVolumeFlow: quantityOutput(volumeFlow, { symbol: '\\dot V_d', label: 'Swept volume flow', digits: 5, units: ['L/s', 'm3/h'] }),
    airMolarFlow: quantityOutput(molarFlow, { symbol: '\\dot n_{air}', label: 'Air molar flow', digits: 5, units: ['mol/s'] }),
  },
  outputs: {
    airMassFlow: quantityOutput(massFlow, { symbol: '\\dot m_{air}', label: 'Air mass flow', digits: 4, units: ['kg/h', 'g/s'] }),
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
      gives: 'sweptVolumeFlow',
      tex: '[[sweptVolumeFlow]] = \\frac{[[displacement]]\\,[[engineSpeed]]}{[[revolutionsPerCycle]]}',
      source: 'unRegulation24',
      locator: 'Annex 4, 4.1',
    },
    {
      gives: 'airMolarFlow',
      tex: '[[airMolarFlow]] = \\frac{[[volumetricEfficiency]]\\,[[manifoldPressure]]\\,[[sweptVolumeFlow]]}{[[gasConstant]]\\,[[manifoldTemperature]]}\\left(1-[[exhaustGasRecirculation]]\\right)',
      source: 'cfr1065',
      locator: '1065.602(l)(1)',
    },
    { gives: 'airMassFlow', tex: '[[airMassFlow]] = [[airMolarFlow]]\\,[[airMolarMass]]', source: 'heywood1988', locator: 'Eq. 2.27' },
  ],
  assumptions: [
    { code: 'dry_air', text: 'The air is taken as dry; humid air of 20 g/kg is 1.2 % lighter.' },
    { code: 'steady', text: 'Engine speed and manifold pressure are steady.' },
  ],
  limits: [
    {
      code: 'volumetric_efficiency',
      text: 'The result is as good as the volumetric efficiency: without the value for this engine and speed expect about 10 %.',
    },
    {
      code: 'scavenging',
      text: 'A two-stroke or an engine with valve overlap can blow air straight through; that air is not counted unless the efficiency includes it.',
    },
  ],
  cautions: [cautions.sensorFirst],
  sources: { cfr1065, unRegulation24, heywood1988, siBrochure },
  compute(input, { constants }) {
    const engine = { ...input, revolutionsPerCycle: revolutionsPerCycle(input.strokes) };
    const airMolarFlow = speedDensityAirMolarFlow(engine, constants.gasConstant);
    return {
      revolutionsPerCycle: engine.revolutionsPerCycle,
      sweptVolumeFlow: sweptVolumeFlow(engine),
      airMolarFlow,
      airMassFlow: airMolarFlow * constants.airMolarMass,
    };
  },
});
