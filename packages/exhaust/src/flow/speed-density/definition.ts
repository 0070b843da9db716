import * as wf from '@wallflow/calculation';
import { massFlow, molarFlow, volumeFlow } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { cfr1065 } from '../../sources.js';
import { airMolarMass, gasConstant } from '../../vocabulary/constants.js';
import { chargeFields, engineFields, revolutionsPerCycle, revolutionsStep } from '../engine-fields.js';
import { heywood1988, unRegulation24 } from '../sources.js';
import { speedDensityAirMolarFlow, sweptVolumeFlow } from './kernel.js';

export const airMassFlowSpeedDensityCalculation = wf.defineCalculation({
  id: 'air-mass-flow-speed-density',
  subject: 'flow',
  title: 'Air mass flow from engine speed and manifold density',
  purpose: 'How much fresh air does the engine draw, when the air-mass signal is missing or in doubt?',
  keywords: 'air mass, speed density, volumetric efficiency, boost, exhaust gas recirculation, MAF, airflow, MAP, EGR',
  method: 'speed and density',
  inputs: { ...engineFields, ...chargeFields },
  intermediates: {
    revolutionsPerCycle: wf.countOutput({ symbol: 'i', label: 'Crankshaft revolutions per working cycle' }),
    sweptVolumeFlow: wf.quantityOutput(volumeFlow, { symbol: '\\dot V_d', label: 'Swept volume flow', digits: 5, units: ['L/s', 'm3/h'] }),
    airMolarFlow: wf.quantityOutput(molarFlow, { symbol: '\\dot n_{air}', label: 'Air molar flow', digits: 5, units: ['mol/s'] }),
  },
  outputs: {
    airMassFlow: wf.quantityOutput(massFlow, { symbol: '\\dot m_{air}', label: 'Air mass flow', digits: 4, units: ['kg/h', 'g/s'] }),
  },
  constants: {
    gasConstant,
    airMolarMass,
  },
  answer: 'airMassFlow',
  steps: [
    revolutionsStep,
    wf.formula('sweptVolumeFlow', 'displacement * engineSpeed / revolutionsPerCycle', unRegulation24, 'Annex 4, 4.1'),
    wf.formula(
      'airMolarFlow',
      'volumetricEfficiency * manifoldPressure * sweptVolumeFlow / (gasConstant * manifoldTemperature) * (1 - exhaustGasRecirculation)',
      cfr1065,
      '1065.602(l)(1)',
    ),
    wf.formula('airMassFlow', 'airMolarFlow * airMolarMass', heywood1988, 'Eq. 2.27'),
  ],
  assumptions: {
    dry_air: 'The air is taken as dry; humid air of 20 g/kg is 1.2 % lighter.',
    steady: 'Engine speed and manifold pressure are steady.',
  },
  limits: {
    volumetric_efficiency:
      'The result is as good as the volumetric efficiency: without the value for this engine and speed expect about 10 %.',
    scavenging:
      'A two-stroke or an engine with valve overlap can blow air straight through; that air is not counted unless the efficiency includes it.',
  },
  cautions: [cautions.sensorFirst],
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
