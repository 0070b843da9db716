import {
  type Advice,
  type ComputeContext,
  type Constants,
  choiceOutput,
  choiceWithDefault,
  defineCalculation,
  isRefusal,
  noSolution,
  optional,
  quantity,
  quantityOutput,
  type Refusal,
} from '@wallflow/calculation';
import { differentialPressure, fraction, length, mass, massConcentration, surfaceLoad } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { soundOfIdealGas } from '../../flow/sources.js';
import { cfr1065, konstandopoulos2000, konstandopoulos2008, siBrochure } from '../../sources.js';
import { loadChannels } from '../channel-deposits/kernel.js';
import { compressibleDrop, incompressibleDrop } from '../compressible-pressure-drop/kernel.js';
import { channelFriction, coveringThickness, dropConstants, slipReferencePressure } from '../constants.js';
import { deepBedMaterial, warnOfDeepBed } from '../deep-bed-pressure-drop/deep-bed-input.js';
import { type DeepBedMaterial, deepBedDrop } from '../deep-bed-pressure-drop/kernel.js';
import { depositOutputs, dropOutput, flowStateOutputs } from '../drop-outputs.js';
import { limit } from '../drop-texts.js';
import { filtrationArea } from '../filter-geometry/kernel.js';
import { checkedMach, resolveFlowState } from '../flow-state.js';
import {
  ashInputs,
  chosenVolumeFlow,
  deepBedInputs,
  densityInputs,
  flowPressureInput,
  gasInputs,
  geometryInputs,
  pressureDropInput,
} from '../inputs.js';
import { deepBedRange, warnOfLoad } from '../load-warnings.js';
import { resolveSootPermeability } from '../resolve.js';
import {
  acicularCeramicStudy,
  bissett1984,
  cakeOnset,
  deepBedFit,
  deng2017,
  flowConversion,
  konstandopoulosJohnson1989,
  unequalCells,
  wang2021,
  yao2023,
} from '../sources.js';
import type { SootMassResult } from './kernel.js';
import { sootMassFromClosedForm, sootMassFromDeepBed, sootMassFromOneDimensional } from './kernel-models.js';
import { closedBySoot, type Material, materialConstants, materialInputs, materialRange } from './material-range.js';

const methods = {
  'closed-form': 'closed form for even wall flow, solved for the soot mass',
  compressible: 'closed form with the expansion of the gas, solved for the soot mass',
  'one-dimensional': 'one-dimensional two-channel model, solved for the soot mass',
  'deep-bed': 'unit-collector wall under an even cake, solved for the soot mass',
};

const solvers = {
  'closed-form': sootMassFromClosedForm,
  compressible: sootMassFromClosedForm,
  'one-dimensional': sootMassFromOneDimensional,
  'deep-bed': sootMassFromDeepBed,
};

/** The most soot lies in a cake, whatever the model: soot in the wall reads more for less. */
const mostSolvers = { ...solvers, 'deep-bed': sootMassFromClosedForm };

/** The mass, nothing for a drop that a filter without soot has, or undefined when none was found. */
function massOf(result: SootMassResult): number | undefined {
  if (result.status === 'found') return result.sootMass;
  return result.status === 'below_clean' ? 0 : undefined;
}

/** Why the drop has no soot mass, or undefined when it has one or may have one. */
function refusal(found: SootMassResult, most: SootMassResult, measured: (drop: number) => number): Refusal | undefined {
  switch (found.status) {
    case 'found':
      return undefined;
    case 'no_room':
      return noSolution('The ash alone fills the inlet channels.', ['ashMass']);
    case 'several':
      return noSolution(
        'At this flow several soot masses give the same drop, so that none can be told. Measure at a lower flow, or check the flow.',
        ['pressureDrop'],
      );
    case 'not_found':
      return noSolution(
        'Even channels full of soot would not read as much at this flow. Check the unit of the drop, the flow and for a closed exhaust.',
        ['pressureDrop'],
      );
    default: {
      if (most.status !== 'below_clean') return undefined;
      const millibar = Number((measured(most.dropWithoutSoot) / 100).toPrecision(3));
      return noSolution(
        `Even without soot, and with the most open wall that is possible here, this filter would read ${millibar} mbar at this flow, more than was measured. Check flow, temperature, sensor zero and hoses, the wall permeability, or whether the filter is cracked.`,
        ['pressureDrop'],
      );
    }
  }
}

/** Warn that soot in the wall is read as cake. */
function warnOfSootInWall(sootOnWall: number, { warn }: Pick<ComputeContext<Constants>, 'warn'>): void {
  if (sootOnWall < deepBedRange) {
    warn(
      'deep_bed_range',
      'The result lies in the deep-bed range (below 2 g per m² of wall), where soot in the wall causes most of the drop: the true mass is smaller.',
    );
    return;
  }
  warn(
    'deep_bed_offset',
    'Soot inside the wall is read as cake: on a filter that was fully burnt off before, the true mass is smaller, on two published heavy-duty filters by a factor of 1.6 to 6.',
  );
}

/** Load at which filters are usually regenerated, kg per m² of filtration area: Konstandopoulos 2008, p. 45, "of the order of 10 g/m²". */
const usualRegenerationLoad = 10e-3;

export const sootMassFromPressureDropCalculation = defineCalculation({
  id: 'soot-mass-from-pressure-drop',
  version: '3.0.0',
  subject: 'filter',
  title: 'Soot mass from a measured pressure drop',
  purpose: 'How much soot explains the drop that was measured, with the ash known?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['soot load', 'back pressure', 'inverse', 'how full'],
  method: 'pressure-drop model solved for the soot mass',
  inputs: z.strictObject({
    pressureDrop: pressureDropInput,
    dropUncertainty: quantity(differentialPressure, {
      symbol: 'u_p',
      label: 'How far off the drop may be, if known',
      description: 'Zero and scatter of the sensor. Widens the range of the result.',
      min: '0 mbar',
      max: '100 mbar',
      usual: ['0 mbar', '10 mbar'],
      usualReason: 'what sensors and hand gauges reach',
      example: '2 mbar',
    }).optional(),
    ...geometryInputs,
    ...gasInputs,
    exhaustVolumeFlow: chosenVolumeFlow,
    flowPressure: flowPressureInput,
    ...ashInputs,
    ...densityInputs,
    ...materialInputs,
    model: choiceWithDefault({
      label: 'Model',
      options: {
        'closed-form': 'closed form, all soot in an even cake',
        compressible: 'closed form with the expansion of the gas, all soot in an even cake',
        'one-dimensional': 'one-dimensional with inertia, all soot in an even cake',
        'deep-bed': 'soot in the wall and in a cake on it',
      },
      example: 'closed-form',
      default: 'closed-form',
      defaultReason: 'the published form; the deep-bed model is only fitted to two heavy-duty filters',
    }),
    ...deepBedInputs,
  }),
  example: { filterDiameter: '144 mm' },
  intermediates: {
    viscosity: flowStateOutputs.viscosity,
    density: flowStateOutputs.density,
    channelVelocity: flowStateOutputs.channelVelocity,
    machNumber: flowStateOutputs.machNumber,
    wallVelocity: flowStateOutputs.wallVelocity,
    cakePermeability: depositOutputs.cakePermeability,
    dropWithoutSoot: dropOutput('\\Delta p_0', 'Drop with the ash but without soot'),
    sootShare: quantityOutput(fraction, { symbol: 'x_s', label: 'Part of the drop that soot causes', digits: 3, units: ['%'] }),
    sootThickness: quantityOutput(length, { symbol: 'w', label: 'Thickness of the soot cake', units: ['um', 'mm', 'mil'] }),
    sootOnWall: quantityOutput(surfaceLoad, { symbol: 'm_s/A_w', label: 'Soot per filtration area', digits: 2, units: ['g/m2'] }),
    mostSootOnWall: optional(
      quantityOutput(surfaceLoad, { symbol: 'm_{s,+}/A_w', label: 'The most soot per filtration area', digits: 2, units: ['g/m2'] }),
    ),
  },
  outputs: {
    verdict: choiceOutput({
      label: 'What the drop tells',
      options: {
        soot: 'soot: between the least and the most below',
        'within-clean': 'no soot can be told: a filter without soot can read as much, and so can one with the most below',
      },
    }),
    leastSootMass: optional(
      quantityOutput(mass, {
        symbol: 'm_{s,-}',
        label: 'Least soot that explains the drop',
        description: 'Of a filter that was clean: soot inside the wall reads several times as much as soot on it.',
        digits: 2,
        units: ['g', 'oz'],
      }),
    ),
    mostSootMass: optional(
      quantityOutput(mass, {
        symbol: 'm_{s,+}',
        label: 'Most soot that explains the drop',
        description:
          'With the most open wall and soot published, where yours are not known. Holds on every published curve that was found, unless part of the soot was burnt off before.',
        digits: 2,
        units: ['g', 'oz'],
      }),
    ),
    mostSootLoad: optional(
      quantityOutput(massConcentration, { symbol: 'm_{s,+}/V', label: 'Soot load with the most', digits: 2, units: ['g/L', 'g/in3'] }),
    ),
    sootLoad: quantityOutput(massConcentration, { symbol: 'm_s/V', label: 'Soot load', digits: 2, units: ['g/L', 'g/in3'] }),
    sootMass: quantityOutput(mass, { symbol: 'm_s', label: 'Soot mass, best guess', digits: 2, units: ['g', 'oz'] }),
  },
  constants: { ...dropConstants, slipReferencePressure, channelFriction, coveringThickness, ...materialConstants },
  steps: [
    {
      gives: 'dropWithoutSoot',
      text: 'Model: [[model]]. With this ash and no soot it gives [[dropWithoutSoot]].',
      source: 'konstandopoulos2000',
      locator: 'Eq. 1',
    },
    {
      gives: 'sootThickness',
      text: 'A cake of this thickness, with the soot in the wall if the model has any, makes it the measured drop: [[sootThickness]].',
      source: 'konstandopoulos2000',
      locator: 'Eqs 1, A9 and A10',
    },
    { gives: 'sootShare', tex: '[[sootShare]] = \\max\\left(0,\\;1-\\frac{[[dropWithoutSoot]]}{[[pressureDrop]]}\\right)' },
    {
      gives: 'leastSootMass',
      text: 'Solved again for a filter that was clean and whose wall a little soot has closed as far as any published one, with the least permeable published wall and soot where yours are not given, [[modelShortfall]] of the rise taken as error of the model, and the drop less what it may be off: [[leastSootMass]].',
      source: 'konstandopoulos2000',
      locator: 'Figs 4, 10 and 11, Tables 6 and 7; soot of Yao 2023',
    },
    {
      gives: 'mostSootMass',
      text: 'Solved with all soot in a cake, the most permeable published wall and soot where yours are not given, [[modelExcess]] more rise for the error of the model, and the drop plus what it may be off: [[mostSootMass]].',
      source: 'deng2017',
      locator: 'permeability of wall and soot; packing density of Yao 2023',
    },
    { gives: 'mostSootLoad', text: 'Per volume of the filter at most: [[mostSootLoad]].' },
    { gives: 'verdict', text: 'Soot is told when the least is above nothing: [[verdict]].' },
    { gives: 'sootLoad', text: 'Per volume of the filter: [[sootLoad]].' },
    {
      gives: 'sootMass',
      text: 'Cake thickness, packing density and channels give the mass: [[sootMass]].',
      source: 'konstandopoulos2000',
      locator: 'Eq. A9',
    },
  ],
  assumptions: [
    {
      code: 'flow_pressure',
      text: 'The volume flow belongs to the pressure that was chosen; without a choice, to that in the middle of the filter, as the volume flow calculation gives it with the drop.',
    },
    { code: 'even_wall_flow', text: 'The gas passes the wall evenly along the channel.' },
    { code: 'even_cake', text: 'Soot and ash lie as layers of even thickness; all soot is on the wall, none in it.' },
  ],
  limits: [
    { code: 'mach', text: limit.mach.mach },
    {
      code: 'deep_bed',
      text: 'The first 0.5 to 2 g of soot per m² of wall goes into the wall and raises the drop much more than a cake: this method then reads too much soot.',
    },
    {
      code: 'history',
      text: 'The same load reads differently after a partial burn-off: drop can be near that of a clean filter with soot left.',
    },
    {
      code: 'soot_properties',
      text: 'Permeability and packing density of soot differ between engines. Their product, which decides, differs by a factor of two between published measurements, and by more between published models; so does the mass. The range shows it; it is the range of published values, not of all engines.',
    },
    { code: 'ash_unknown', text: 'Ash that is not given is read as soot.' },
  ],
  cautions: [cautions.sensorFirst, cautions.runaway, cautions.makerFirst],
  sources: {
    konstandopoulos2000,
    konstandopoulos2008,
    bissett1984,
    konstandopoulosJohnson1989,
    deepBedFit,
    cakeOnset,
    wang2021,
    yao2023,
    acicularCeramicStudy,
    unequalCells,
    cfr1065,
    siBrochure,
    deng2017,
    flowConversion,
    soundOfIdealGas,
  },
  precision: 1e-6,
  mostEvaluations: 60,
  compute(input, context) {
    const { gasPressure: outlet, pressureDrop } = input;
    const expanding = input.model === 'compressible';
    // Pressure times volume flow is the same everywhere: to the pressure at which the model takes its flow.
    const pressureOf = { before: outlet + pressureDrop, middle: outlet + pressureDrop / 2, behind: outlet };
    const exhaustVolumeFlow = (input.exhaustVolumeFlow * pressureOf[input.flowPressure]) / pressureOf[expanding ? 'behind' : 'middle'];
    const state = resolveFlowState({ ...input, exhaustVolumeFlow }, context.constants);
    if (isRefusal(state)) return state;
    const { channels, flow, wallVelocity, filterVolume } = state;
    const { channelFriction: friction } = context.constants;

    const slipped = (material: Material) => ({
      ...material,
      sootPermeability: resolveSootPermeability({ ...input, ...material }, flow.viscosity, context.constants),
    });
    const deepBed = (material: Material) => ({ ...material, ...deepBedMaterial({ ...input, ...slipped(material) }, context.constants) });
    const solve = (solver: typeof sootMassFromDeepBed, material: DeepBedMaterial & Material, drop: number, sootPart = 1) => {
      const load = { ...input, sootMass: 0, sootPackingDensity: material.sootPackingDensity };
      return solver(expanding ? incompressibleDrop(drop, outlet) : drop, channels, flow, material, load, friction, sootPart);
    };
    const { usual, leastSoot, mostSoot } = materialRange(input, context.constants);
    const { modelShortfall, modelExcess } = context.constants;
    const uncertainty = input.dropUncertainty ?? 0;
    const found = solve(solvers[input.model], deepBed(usual), pressureDrop);
    const most = solve(mostSolvers[input.model], deepBed(mostSoot), pressureDrop + uncertainty, 1 + modelExcess);
    const refused = refusal(found, most, expanding ? (drop) => compressibleDrop(drop, outlet) : (drop) => drop);
    if (refused !== undefined) return refused;
    context.method(methods[input.model]);

    const sootMass = massOf(found) ?? 0;
    // In the wall a little soot reads most; near full channels it is soot in the cake. Whichever needs less is the least.
    const least = [
      { solver: sootMassFromDeepBed, material: closedBySoot(deepBed(leastSoot), context.constants) },
      { solver: sootMassFromClosedForm, material: deepBed(leastSoot) },
    ].map(({ solver, material }) => massOf(solve(solver, material, Math.max(0, pressureDrop - uncertainty), 1 - modelShortfall)));
    const leastSootMass = least.includes(undefined) ? undefined : Math.min(sootMass, ...least.map((value) => value ?? 0));
    const mostSootMass = most.status === 'found' ? Math.max(sootMass, most.sootMass) : undefined;
    const without = 'dropWithoutSoot' in found ? found.dropWithoutSoot : 0;
    const dropWithoutSoot = expanding ? compressibleDrop(without, outlet) : without;

    const load = { ...input, sootPackingDensity: usual.sootPackingDensity, sootMass };
    const wallSoot = input.model === 'deep-bed' ? (deepBedDrop(channels, load, flow, deepBed(usual), friction)?.wallSootMass ?? 0) : 0;
    const loaded = loadChannels(channels, { ...load, sootMass: sootMass - wallSoot });
    if (loaded === undefined) return noSolution('The soot does not fit into the inlet channels.', ['pressureDrop']);
    const openWidth = loaded.widthInCake;
    const entering = expanding ? (flow.volumeFlow * outlet) / pressureOf.before : flow.volumeFlow;
    const channelVelocity = entering / (channels.inletCount * openWidth ** 2);
    const outletPressure = expanding ? undefined : outlet;
    const { gasTemperature } = input;
    const speed = checkedMach(
      { flow, gasTemperature, channels, openWidth, channelVelocity, wallVelocity, outletPressure, pressureDrop },
      context,
    );
    if (isRefusal(speed)) return speed;
    const area = filtrationArea(channels);
    const sootOnWall = sootMass / area;
    if (leastSootMass === 0) {
      context.warn(
        'within_clean',
        'A filter without soot can read as much: no soot can be told from this drop. That does not mean that there is none. Measure at a higher flow, or give the permeability of this wall from a clean measurement.',
        ['pressureDrop'],
      );
    }
    if (leastSootMass === undefined || mostSootMass === undefined)
      context.warn('range_open', 'The range of the soot mass could not be found at one end: take the result as a rough estimate.');
    if (input.model === 'deep-bed') warnOfDeepBed({ ...input, ...usual }, context);
    else if (sootMass > 0) warnOfSootInWall(sootOnWall, context);
    warnOfLoad(loaded, 0, context);
    return {
      viscosity: flow.viscosity,
      density: flow.density,
      cakePermeability: slipped(usual).sootPermeability,
      channelVelocity,
      ...speed,
      wallVelocity,
      dropWithoutSoot,
      sootShare: Math.max(0, 1 - dropWithoutSoot / pressureDrop),
      sootThickness: loaded.sootThickness,
      sootOnWall,
      mostSootOnWall: mostSootMass === undefined ? undefined : mostSootMass / area,
      verdict: leastSootMass === 0 ? ('within-clean' as const) : ('soot' as const),
      leastSootMass,
      mostSootMass,
      mostSootLoad: mostSootMass === undefined ? undefined : mostSootMass / filterVolume,
      sootLoad: sootMass / filterVolume,
      sootMass,
    };
  },
  advise({ sootOnWall, mostSootOnWall, verdict }) {
    const check = {
      tone: 'do' as const,
      text: 'Check sensor zero and hoses, and compare with a second method, before acting on this number.',
    };
    const advice: Advice[] = [check];
    if (verdict === 'within-clean')
      advice.push({
        tone: 'do-not',
        text: 'Do not call the filter free of soot by this reading: weigh it, or measure again at a higher flow.',
      });
    if (sootOnWall > usualRegenerationLoad) {
      advice.push({
        tone: 'do-not',
        text: 'More than 10 g per m² of wall is beyond the load at which filters are usually regenerated: do not start a regeneration on this number alone, it can run away. Follow the vehicle maker, or clean the filter off the vehicle.',
      });
    } else if (mostSootOnWall === undefined || mostSootOnWall > usualRegenerationLoad) {
      advice.push({
        tone: 'do-not',
        text: 'Up to the most soot of the range may be there, more than the 10 g per m² of wall at which filters are usually regenerated: do not start a regeneration before a second method says less. Follow the vehicle maker.',
      });
    }
    return advice;
  },
});
