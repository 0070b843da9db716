import * as wf from '@wallflow/calculation';
import { fraction, inertialCoefficient, length, ratio, velocity } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { konstandopoulos2000 } from '../../sources.js';
import { totalDrop } from '../clean-pressure-drop/kernel.js';
import { dropModel, loadedConstants, loadedInputs, materialIn } from '../drop-model.js';
import { cleanPartOutputs, depositOutputs, dropOutput, flowStateOutputs } from '../drop-outputs.js';
import {
  asGiven,
  ashSteps,
  cakePermeabilityStep,
  cakeSteps,
  contractionStep,
  expansionStep,
  machSteps,
  startSteps,
  velocitySteps,
} from '../drop-steps.js';
import { assumed, limit } from '../drop-texts.js';
import { filtrationArea, wallFlowArea } from '../filter-geometry/kernel.js';
import { warnOfLoad } from '../load-warnings.js';
import { loadedPressureDropCalculation } from '../loaded-pressure-drop/definition.js';
import { layerResistance, loadedDropParts } from '../loaded-pressure-drop/kernel.js';
import { bissett1984, liu2021, unequalCells } from '../sources.js';
import { channelProfile } from './kernel.js';

const speed = (symbol: string, label: string) => wf.quantityOutput(velocity, { symbol, label, units: ['m/s', 'mm/s'] });
const { contractionDrop, expansionDrop } = cleanPartOutputs;
const places = 21;

export const oneDimensionalPressureDropCalculation = wf.defineCalculation({
  id: 'one-dimensional-pressure-drop',
  subject: 'filter',
  title: 'Pressure drop and flow along the channels',
  purpose: 'Where along the filter does the gas pass the wall, and what drop follows from it?',
  keywords: 'two-channel model, Bissett, profile, wall velocity, back pressure, backpressure, delta p, restriction',
  method: 'one-dimensional two-channel model with inertia',
  inputs: loadedInputs,
  intermediates: {
    ...flowStateOutputs,
    ...depositOutputs,
    wallResistance: wf.quantityOutput(inertialCoefficient, { symbol: 'R_w', label: 'Resistance of wall and layers', units: ['1/m'] }),
    contractionDrop,
    expansionDrop,
    channelDrop: dropOutput('\\Delta p_{12}', 'From the entrance of the inlet channels to the end of the outlet channels'),
    closedFormDrop: dropOutput('\\Delta p_0', 'Closed form with even wall flow, for comparison'),
    modelDifference: wf.quantityOutput(fraction, {
      symbol: '\\delta',
      label: 'This model against the closed form',
      digits: 3,
      units: ['%'],
    }),
  },
  outputs: {
    profile: wf.tableOutput({
      label: 'Along the channels',
      columns: {
        distanceFromInlet: wf.quantityOutput(length, { symbol: 'z', label: 'Distance from the inlet', units: ['mm', 'in'] }),
        wallVelocity: speed('u_w', 'Through the wall'),
        inletVelocity: speed('u_1', 'In the inlet channel'),
        outletVelocity: speed('u_2', 'In the outlet channel'),
        inletPressure: dropOutput('p_1', 'Inlet channel, above the outlet end'),
        outletPressure: dropOutput('p_2', 'Outlet channel, above the outlet end'),
      },
      plot: { x: 'distanceFromInlet', y: ['inletPressure', 'outletPressure'] },
    }),
    wallFlowUnevenness: wf.quantityOutput(ratio, {
      symbol: 'u_{max}/\\bar{u}',
      label: 'Largest wall flow over the mean',
      description: 'Soot settles unevenly in this measure.',
      digits: 3,
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
    ...velocitySteps(),
    ...machSteps,
    wf.cases('wallResistance', {
      "layout == 'alternate'":
        'wallThickness / wallPermeability + min(inletWidth, outletWidth) / 4 * (ln(1 / (1 - sootFill)) / cakePermeability + ln(1 / (1 - ashFill)) / ashPermeability)',
      otherwise:
        'wallThickness / wallPermeability + 3 / 4 * min(1, outletWidth / inletWidth) * (sootFill * widthOnAsh ^ 2 / cakePermeability + ashFill * inletWidth ^ 2 / ashPermeability) / inletWidth',
    }),
    wf.rows(
      'profile',
      {
        distanceFromInlet: `(row - 1) / ${places - 1} * cakeLength`,
        inletPressure:
          'outletPressure + viscosity * wallResistance * wallVelocity + forchheimerCoefficient * density * wallThickness * wallVelocity * abs(wallVelocity)',
      },
      liu2021,
      'Eqs 11 and 12, after Bissett 1984',
      'Velocities and the pressure in the outlet channel come from the balances of mass and momentum along both channels, solved together: what leaves the inlet channel passes the wall, and friction and momentum change the pressure. The pressure in the inlet channel is that in the outlet channel plus the wall.',
    ),
    wf.formula('wallFlowUnevenness', 'max(profile.wallVelocity) / wallVelocity'),
    wf.formula('channelDrop', 'first(profile.inletPressure)'),
    contractionStep('Drop'),
    expansionStep('Drop'),
    wf.formula('pressureDrop', 'channelDrop + contractionDrop + expansionDrop'),
    wf.nested('closedFormDrop', loadedPressureDropCalculation, asGiven(Object.keys(loadedInputs)), 'pressureDrop'),
    wf.formula('modelDifference', 'pressureDrop / closedFormDrop - 1'),
  ],
  assumptions: {
    ...assumed.middle,
    ...assumed.evenCake,
    ...assumed.oneDensity,
    flat_velocity: 'The velocity is even over the channel for its momentum, and gas passing the wall carries none along the channel.',
  },
  limits: {
    ...limit.mach,
    ...limit.unequalCells,
    ...limit.threeToOne,
    ...limit.deepBed,
    ...limit.plugs,
    ...limit.laminar,
    later_work:
      'Later work corrects the momentum that gas carries into and out of the wall; the effect is within a few per cent of the drop.',
  },
  cautions: [cautions.makerFirst],
  sources: [bissett1984, konstandopoulos2000, unequalCells],
  precision: 1e-6,
  compute: (input, context) =>
    dropModel(input, context, (state) => {
      const { loaded, flow } = state;
      const material = materialIn(input, state, context.constants);
      const { channelFriction: friction } = context.constants;
      const { status, points, channelDrop, ...ends } = channelProfile(loaded, flow, material, places, friction);
      if (status !== 'converged')
        return wf.noSolution('The flow along such narrow channels cannot be resolved. Use the closed form.', ['sootMass']);
      if (points.some((point) => point.wallVelocity < 0))
        context.warn('backward_flow', 'Somewhere the gas passes the wall backwards: inertia is stronger than the wall.');
      warnOfLoad(loaded, input.sootMass, context);
      const { channels, widthOnAsh, ashFill, sootFill } = loaded;
      const layers =
        layerResistance(channels, widthOnAsh, sootFill, material.sootPermeability) +
        layerResistance(channels, channels.inletWidth, ashFill, material.ashPermeability);
      const closedFormDrop = totalDrop(loadedDropParts(loaded, flow, material, friction));
      const pressureDrop = channelDrop + ends.contractionDrop + ends.expansionDrop;
      const largest = points.reduce((most, point) => Math.max(most, point.wallVelocity), 0);
      return {
        ...ends,
        cakePermeability: material.cakePermeability,
        wallResistance: channels.wallThickness / input.wallPermeability + (layers * wallFlowArea(channels)) / filtrationArea(channels),
        channelDrop,
        closedFormDrop,
        modelDifference: pressureDrop / closedFormDrop - 1,
        profile: points.map(({ position, ...place }) => ({
          ...place,
          distanceFromInlet: position,
        })),
        wallFlowUnevenness: (largest * wallFlowArea(channels)) / flow.volumeFlow,
        pressureDrop,
      };
    }),
});
