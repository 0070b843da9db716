import * as wf from '@wallflow/calculation';
import { fraction, mass, ratio, surfaceLoad, volume } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { konstandopoulos2000, konstandopoulos2008 } from '../../sources.js';
import { totalDrop } from '../clean-pressure-drop/kernel.js';
import { coveringThickness } from '../constants.js';
import { dropModel, loadedConstants, loadedInputs, materialIn } from '../drop-model.js';
import { depositOutputs, dropOutput, flowResistanceOutput, flowStateOutputs, loadedPartOutputs } from '../drop-outputs.js';
import {
  asGiven,
  ashSteps,
  cakePermeabilityStep,
  cakeSteps,
  flowResistanceStep,
  layerSteps,
  loadedSum,
  machSteps,
  otherPartSteps,
  startSteps,
  velocitySteps,
  wallStep,
} from '../drop-steps.js';
import { assumed, limit } from '../drop-texts.js';
import { filtrationArea } from '../filter-geometry/kernel.js';
import { deepBedInputs } from '../inputs.js';
import { loadedPressureDropCalculation } from '../loaded-pressure-drop/definition.js';
import { acicularCeramicStudy, deepBedFit, konstandopoulosJohnson1989, unequalCells, yao2023 } from '../sources.js';
import { deepBedMaterial, warnOfDeepBed } from './deep-bed-input.js';
import { deepBedDrop } from './kernel.js';

const soot = (symbol: string, label: string) => wf.quantityOutput(mass, { symbol, label, digits: 3, units: ['g'] });
const growth = (symbol: string, label: string) => wf.quantityOutput(ratio, { symbol, label, digits: 5 });
/** Kuwabara's factor of a wall with this part of solid, over d² and times 9/2. */
const kuwabara = (solid: string) => `(1 + ${solid} - 1.8 * cbrt(${solid}) - 0.2 * (${solid}) ^ 2) / (${solid})`;

export const deepBedPressureDropCalculation = wf.defineCalculation({
  id: 'deep-bed-pressure-drop',
  subject: 'filter',
  title: 'Pressure drop with soot in the wall and on it',
  purpose: 'What does a filter read from its first grams of soot on, when soot still goes into the wall?',
  keywords: 'deep bed, unit collector, two layers, first soot, hysteresis, backpressure, back pressure, delta p, restriction',
  method: 'unit-collector wall under an even cake',
  inputs: { ...loadedInputs, ...deepBedInputs },
  intermediates: {
    ...flowStateOutputs,
    ...depositOutputs,
    sootOnWall: wf.quantityOutput(surfaceLoad, { symbol: 'm_s/A_w', label: 'Soot per filtration area', units: ['g/m2'] }),
    openShare: wf.quantityOutput(fraction, {
      symbol: 's',
      label: 'Part of the wall that the ash leaves open to soot',
      digits: 3,
      units: ['%', '1'],
    }),
    wallVolume: wf.quantityOutput(volume, { symbol: 'V_w', label: 'Volume of the wall', units: ['L', 'cm3'] }),
    collectorMass: soot('M', 'Soot with the volume of the bare collectors'),
    growthLimit: growth('\\Pi', 'Diameter of the collectors over the clean one at which the wall is closed to soot'),
    collectorGrowth: growth('y', 'Diameter of the collectors over the clean one'),
    permeabilityRatio: wf.quantityOutput(fraction, { symbol: 'k/k_0', label: 'Wall permeability left', digits: 3, units: ['%', '1'] }),
    ...loadedPartOutputs,
    cakeOnlyDrop: wf.optional(dropOutput('\\Delta p_0', 'Closed form with all soot in the cake, for comparison')),
  },
  outputs: {
    wallSootMass: soot('m_w', 'Soot inside the wall'),
    cakeSootMass: soot('m_c', 'Soot in the cake'),
    flowResistance: flowResistanceOutput,
    pressureDrop: dropOutput('\\Delta p', 'Pressure drop'),
  },
  answer: 'pressureDrop',
  constants: { ...loadedConstants, coveringThickness },
  steps: [
    ...startSteps,
    cakePermeabilityStep,
    ...ashSteps,
    wf.formula('sootOnWall', 'sootMass / filtrationArea'),
    wf.formula('openShare', 'max(0, 1 - ashThickness / coveringThickness)'),
    wf.formula('wallVolume', 'layerArea * wallThickness'),
    wf.formula('collectorMass', 'wallSootDensity * (1 - wallPorosity) * wallVolume'),
    wf.formula('growthLimit', 'percolationFactor / cbrt(1 - wallPorosity)', konstandopoulosJohnson1989),
    wf.cases(
      'collectorGrowth',
      {
        'growthLimit <= 1 or openShare == 0 or sootMass == 0': '1',
        otherwise: wf.solved(
          'collectorGrowth',
          'collectorGrowth = growthLimit * tanh((sootMass * openShare / (3 * collectorMass * (growthLimit ^ 2 - 1)) + growthLimit / 2 * ln((growthLimit + 1) / (growthLimit - 1)) - 1 + collectorGrowth) / growthLimit)',
        ),
      },
      konstandopoulosJohnson1989,
      'of new soot the part (Π² − y²)/(Π² − 1) goes into the wall, integrated from the clean wall',
    ),
    wf.formula('wallSootMass', 'min(sootMass, collectorMass * (collectorGrowth ^ 3 - 1))'),
    wf.formula('cakeSootMass', 'sootMass - wallSootMass'),
    wf.formula(
      'permeabilityRatio',
      `collectorGrowth ^ 2 * (${kuwabara('(1 - wallPorosity) * collectorGrowth ^ 3')}) / (${kuwabara('(1 - wallPorosity)')})`,
      konstandopoulos2008,
      'Eqs 11 to 14, Kuwabara factor',
    ),
    ...cakeSteps('cakeSootMass'),
    ...velocitySteps(),
    ...machSteps,
    wallStep('Drop', '(wallPermeability * permeabilityRatio)'),
    ...layerSteps('Drop'),
    ...otherPartSteps('Drop'),
    wf.formula('pressureDrop', loadedSum, konstandopoulos2000, 'Eq. 1'),
    wf.nested('cakeOnlyDrop', loadedPressureDropCalculation, asGiven(Object.keys(loadedInputs)), 'pressureDrop'),
    flowResistanceStep,
  ],
  assumptions: {
    ...assumed.middle,
    even_wall: 'The wall fills evenly over its depth, as one layer; the cake lies on it as another.',
    from_clean: 'The filter was free of soot when loading began, and nothing has burnt off since.',
    ash_covers: 'An ash layer keeps soot out of the wall, wholly from a thickness of 15 µm on: then more ash can mean a lower drop.',
  },
  limits: {
    ...limit.mach,
    fitted_range:
      'Fitted to two bare cordierite filters of 17 L, 100 cpsi, up to 5 g/L: within 4 and 7 % of the measured drops from 5 g on. The first point of one curve is 15 % off.',
    history: 'After a partial burn-off the wall may be empty under a remaining cake; the drop is then much lower at the same mass.',
    other_walls:
      'For other walls and for coated ones the percolation factor is unknown; the drop is sensitive to it, 0.01 changes it by 5 to 20 %.',
  },
  cautions: [cautions.makerFirst],
  sources: [deepBedFit, yao2023, acicularCeramicStudy, unequalCells],
  compute: (input, context) =>
    dropModel({ ...input, sootMass: 0 }, context, ({ channels, flow }) => {
      const material = materialIn(input, { flow }, context.constants);
      const { channelFriction: friction } = context.constants;
      const result = deepBedDrop(channels, input, flow, deepBedMaterial(material, context.constants), friction);
      if (result === undefined)
        return wf.noSolution('So much soot and ash does not fit into the inlet channels: nothing is left open.', ['sootMass']);
      warnOfDeepBed(input, context);
      const { parts, ...rest } = result;
      return {
        ...parts,
        ...rest,
        collectorMass: input.wallSootDensity * (1 - input.wallPorosity) * result.wallVolume,
        growthLimit: input.percolationFactor / Math.cbrt(1 - input.wallPorosity),
        cakePermeability: material.cakePermeability,
        sootOnWall: input.sootMass / filtrationArea(channels),
        cakeOnlyDrop: closedForm(input, context.constants),
        pressureDrop: totalDrop(parts),
      };
    }),
});

/** The closed form with all soot in the cake, where it has a result. */
function closedForm(
  input: Parameters<typeof loadedPressureDropCalculation.evaluate>[0],
  constants: wf.ConstantValues<typeof loadedConstants>,
) {
  const result = loadedPressureDropCalculation.evaluate(input, constants);
  return wf.isRefusal(result) ? undefined : result.pressureDrop;
}
