import * as wf from '@wallflow/calculation';
import { fraction, volumeFlow } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { konstandopoulos2000, konstandopoulos2008 } from '../../sources.js';
import { totalDrop } from '../clean-pressure-drop/kernel.js';
import { dropModel, loadedConstants, loadedInputs, materialIn } from '../drop-model.js';
import { depositOutputs, dropOutput, flowStateOutputs, loadedPartOutputs } from '../drop-outputs.js';
import {
  ashSteps,
  cakePermeabilityStep,
  cakeSteps,
  layerSteps,
  machSteps,
  otherPartSteps,
  passingSteps,
  startSteps,
  wallStep,
} from '../drop-steps.js';
import { assumed, limit } from '../drop-texts.js';
import { chosenVolumeFlow, flowPressureInput } from '../inputs.js';
import { warnOfLoad } from '../load-warnings.js';
import { type LoadedDropParts, loadedDropParts } from '../loaded-pressure-drop/kernel.js';
import { acicularCeramicStudy, cakeCompaction, flowConversion, unequalCells, yao2023 } from '../sources.js';
import { compressibleDrop, compressibleDropParts, flowBehind } from './kernel.js';

const { exhaustVolumeFlow: _, ...otherInputs } = loadedInputs;
const flow = 'outletVolumeFlow';
const even = (symbol: string, label: string) => dropOutput(`\\Delta p_{${symbol},0}`, `${label}, with the density at the outlet`);

/** The parts from the outlet upwards, as the gas meets them. */
const upwards = ['expansion', 'outletChannel', 'wall', 'forchheimer', 'ash', 'soot', 'inletChannel', 'contraction'] as const;
/** A part at the pressure there: what it adds to the drop of an expanding gas, the difference of two roots written as a quotient. */
const expandedSteps = upwards.map((part, index) => {
  const upTo = (count: number) => {
    const sum = upwards.slice(0, count).map((one) => `${one}Even`);
    return count === 0 ? '1' : `sqrt(1 + 2 * (${sum.join(' + ')}) / gasPressure)`;
  };
  return wf.formula(`${part}Drop`, `2 * ${part}Even / (${upTo(index)} + ${upTo(index + 1)})`, konstandopoulos2008, 'Eqs A.3 to A.8');
});

export const compressiblePressureDropCalculation = wf.defineCalculation({
  id: 'compressible-pressure-drop',
  subject: 'filter',
  title: 'Pressure drop with the expansion of the gas',
  purpose: 'What does a heavily loaded filter read when the gas gets noticeably thinner on its way through?',
  keywords: 'compressible, high back pressure, high backpressure, expansion, backpressure, back pressure, delta p, restriction',
  method: 'closed form, integrated with the pressure from the outlet upwards',
  inputs: { exhaustVolumeFlow: chosenVolumeFlow, flowPressure: flowPressureInput, ...otherInputs },
  intermediates: {
    ...flowStateOutputs,
    ...depositOutputs,
    outletVolumeFlow: wf.quantityOutput(volumeFlow, { symbol: 'Q_1', label: 'Volume flow after the filter', units: ['m3/h', 'L/s'] }),
    expansionEven: even('e', 'Expansion'),
    outletChannelEven: even('out', 'Outlet channels'),
    wallEven: even('w', 'Wall'),
    forchheimerEven: even('F', 'Inertia in the wall'),
    ashEven: even('a', 'Ash layer'),
    sootEven: even('s', 'Soot cake'),
    inletChannelEven: even('in', 'Inlet channels'),
    contractionEven: even('c', 'Contraction'),
    incompressibleDrop: dropOutput('\\Delta p_0', 'Drop with the density at the outlet throughout'),
    ...loadedPartOutputs,
  },
  outputs: {
    overestimate: wf.quantityOutput(fraction, {
      symbol: '\\delta',
      label: 'Incompressible form against this one',
      digits: 3,
      units: ['%'],
    }),
    pressureDrop: dropOutput('\\Delta p', 'Pressure drop'),
  },
  answer: 'pressureDrop',
  constants: loadedConstants,
  steps: [
    ...startSteps,
    cakePermeabilityStep,
    ...ashSteps,
    ...cakeSteps('sootMass'),
    wf.cases(
      'outletVolumeFlow',
      {
        "flowPressure == 'behind'": 'exhaustVolumeFlow',
        "flowPressure == 'before'": wf.solved(
          'outletVolumeFlow',
          'outletVolumeFlow * gasPressure = exhaustVolumeFlow * (gasPressure + pressureDrop)',
        ),
        otherwise: wf.solved('outletVolumeFlow', 'outletVolumeFlow * gasPressure = exhaustVolumeFlow * (gasPressure + pressureDrop / 2)'),
      },
      flowConversion,
    ),
    ...passingSteps({ flow }),
    wallStep('Even'),
    ...layerSteps('Even', flow),
    ...otherPartSteps('Even', { flow }),
    wf.formula('incompressibleDrop', upwards.map((part) => `${part}Even`).join(' + '), konstandopoulos2000, 'Eq. 1'),
    wf.formula(
      'pressureDrop',
      'gasPressure * (sqrt(1 + 2 * incompressibleDrop / gasPressure) - 1)',
      konstandopoulos2008,
      'Eqs A.3 to A.9, summed',
    ),
    ...expandedSteps,
    wf.formula(
      'channelVelocity',
      'outletVolumeFlow * gasPressure / (gasPressure + pressureDrop) / (inletCells * openWidth ^ 2)',
      flowConversion,
    ),
    ...machSteps,
    wf.formula('overestimate', 'incompressibleDrop / pressureDrop - 1'),
  ],
  assumptions: {
    flow_pressure:
      'The volume flow belongs to the pressure that was chosen; without a choice, to that in the middle of the filter. The volume flow calculation gives the flow before the filter, and with the drop also the other two.',
    even_temperature: 'The temperature is even.',
    ...assumed.evenFlow,
    ...assumed.evenCake,
  },
  limits: {
    ...limit.mach,
    ...limit.deepBed,
    compaction: 'From 155 to 205 mbar on, the soot cake compacts, by 10 to 16 % at twice that drop; this is not described.',
  },
  cautions: [cautions.makerFirst],
  sources: [cakeCompaction, yao2023, acicularCeramicStudy, unequalCells],
  compute: (input, context) =>
    dropModel(input, context, (state) => {
      const { loaded, flow: given } = state;
      const material = materialIn(input, state, context.constants);
      const { channelFriction: friction } = context.constants;
      const outlet = input.gasPressure;
      const factor = flowBehind(loadedDropParts(loaded, given, material, friction), outlet, input.flowPressure);
      if (factor === undefined)
        return wf.noSolution('No pressure before the filter drives so large a volume of gas through it.', ['exhaustVolumeFlow']);
      const after = { ...given, volumeFlow: factor * given.volumeFlow };
      const parts = loadedDropParts(loaded, after, material, friction);
      const incompressibleDrop = totalDrop(parts);
      const pressureDrop = compressibleDrop(incompressibleDrop, outlet);
      warnOfLoad(loaded, input.sootMass, context);
      return {
        ...withEvenParts(parts),
        ...compressibleDropParts(parts, outlet),
        cakePermeability: material.cakePermeability,
        after,
        entering: after.volumeFlow / (1 + pressureDrop / outlet),
        outletVolumeFlow: after.volumeFlow,
        incompressibleDrop,
        overestimate: incompressibleDrop / pressureDrop - 1,
        pressureDrop,
      };
    }),
});

function withEvenParts(parts: LoadedDropParts) {
  return {
    expansionEven: parts.expansionDrop,
    outletChannelEven: parts.outletChannelDrop,
    wallEven: parts.wallDrop,
    forchheimerEven: parts.forchheimerDrop,
    ashEven: parts.ashDrop,
    sootEven: parts.sootDrop,
    inletChannelEven: parts.inletChannelDrop,
    contractionEven: parts.contractionDrop,
  };
}
