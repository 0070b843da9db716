import * as wf from '@wallflow/calculation';
import { density, differentialPressure, fraction, mass, massConcentration, permeability, surfaceLoad, volumeFlow } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { konstandopoulos2000 } from '../../sources.js';
import { loadChannels } from '../channel-deposits/kernel.js';
import { compressibleDrop, incompressibleDrop } from '../compressible-pressure-drop/kernel.js';
import { coveringThickness } from '../constants.js';
import { deepBedMaterial, warnOfDeepBed } from '../deep-bed-pressure-drop/deep-bed-input.js';
import { deepBedPressureDropCalculation } from '../deep-bed-pressure-drop/definition.js';
import { type DeepBedMaterial, deepBedDrop } from '../deep-bed-pressure-drop/kernel.js';
import { channelsFound, loadedConstants } from '../drop-model.js';
import { depositOutputs, dropOutput, flowStateOutputs } from '../drop-outputs.js';
import { asGiven, ashSteps, bodyLoad, cakePermeabilityOf, cakeSteps, machSteps, passingSteps, startSteps } from '../drop-steps.js';
import { assumed, limit } from '../drop-texts.js';
import { filtrationArea, wallFlowArea } from '../filter-geometry/kernel.js';
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
import { loadedPressureDropCalculation } from '../loaded-pressure-drop/definition.js';
import { oneDimensionalPressureDropCalculation } from '../one-dimensional-pressure-drop/definition.js';
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
function refusal(found: SootMassResult, most: SootMassResult, measured: (drop: number) => number): wf.Refusal | undefined {
  switch (found.status) {
    case 'found':
      return undefined;
    case 'no_room':
      return wf.noSolution('The ash alone fills the inlet channels.', ['ashMass']);
    case 'several':
      return wf.noSolution(
        'At this flow several soot masses give the same drop, so no single mass can be given. Measure at a lower flow, or check the flow.',
        ['pressureDrop'],
      );
    case 'not_found':
      return wf.noSolution(
        'Even channels full of soot would not read as much at this flow. Check the unit of the drop, the flow and for a closed exhaust.',
        ['pressureDrop'],
      );
    default: {
      if (most.status !== 'below_clean') return undefined;
      const millibar = Number((measured(most.dropWithoutSoot) / 100).toPrecision(3));
      return wf.noSolution(
        wf.say`Even without soot, and with the most open wall that is possible here, this filter would read ${millibar} mbar at this flow, more than was measured. Check flow, temperature, sensor zero and hoses, the wall permeability, or whether the filter is cracked.`,
        ['pressureDrop'],
      );
    }
  }
}

/** Warn that soot in the wall is read as cake. */
function warnOfSootInWall(sootOnWall: number, { warn }: Pick<wf.ComputeContext<wf.Constants>, 'warn'>): void {
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

const { wallPermeability: _, sootPermeability: __, sootPackingDensity: ___, ...sameMaterial } = materialInputs;
const sameInputs = asGiven(Object.keys({ ...geometryInputs, ...gasInputs, ...ashInputs, ...densityInputs, ...sameMaterial }));
/** What a model is asked: this filter and gas, the best guess of its materials, and a soot mass. */
const inModel = (sootMass: string, deep = false) => ({
  ...sameInputs,
  ...(deep ? asGiven(Object.keys(deepBedInputs)) : {}),
  exhaustVolumeFlow: 'modelFlow',
  wallPermeability: 'first(materials.wall)',
  sootPermeability: 'first(materials.cake)',
  sootPackingDensity: 'first(materials.packing)',
  sootMass,
});
/** The drop that the chosen model gives with this soot, before the expansion of the gas. */
const modelled = <const Key extends string>(gives: Key, sootMass: string) =>
  wf.cases(gives, {
    "model == 'one-dimensional'": wf.nested(gives, oneDimensionalPressureDropCalculation, inModel(sootMass), 'pressureDrop'),
    "model == 'deep-bed'": wf.nested(gives, deepBedPressureDropCalculation, inModel(sootMass, true), 'pressureDrop'),
    otherwise: wf.nested(gives, loadedPressureDropCalculation, inModel(sootMass), 'pressureDrop'),
  });

export const sootMassFromPressureDropCalculation = wf.defineCalculation({
  id: 'soot-mass-from-pressure-drop',
  subject: 'filter',
  title: 'Soot mass from a measured pressure drop',
  purpose: 'How much soot explains the drop that was measured, with the ash known?',
  keywords: 'soot load, back pressure, inverse, how full, DPF, backpressure, delta p, restriction',
  method: 'pressure-drop model solved for the soot mass',
  inputs: {
    pressureDrop: pressureDropInput,
    dropUncertainty: wf.optional(
      wf.quantity(differentialPressure, {
        symbol: 'u_p',
        label: 'Uncertainty of the pressure drop',
        description: 'Optional: how far off the drop may be by zero and scatter of the sensor. Widens the range of the result.',
        range: '0 <= u <= 100 mbar',
        usual: ['0 mbar', '10 mbar', 'more than sensors and hand gauges are off'],
        example: '2 mbar',
      }),
    ),
    ...geometryInputs,
    ...gasInputs,
    exhaustVolumeFlow: chosenVolumeFlow,
    flowPressure: flowPressureInput,
    ...ashInputs,
    ...densityInputs,
    ...materialInputs,
    model: wf.choice({
      label: 'Model',
      options: {
        'closed-form': 'closed form, all soot in an even cake',
        compressible: 'closed form with the expansion of the gas, all soot in an even cake',
        'one-dimensional': 'one-dimensional with inertia, all soot in an even cake',
        'deep-bed': 'soot in the wall and in a cake on it',
      },
      default: ['closed-form', 'the published form; the deep-bed model is only fitted to two heavy-duty filters'],
    }),
    ...wf.relevantWhen('model', 'deep-bed', deepBedInputs),
  },
  intermediates: {
    ...flowStateOutputs,
    modelFlow: wf.quantityOutput(volumeFlow, { symbol: "Q'", label: 'Volume flow as the model takes it', units: ['m3/h', 'L/s'] }),
    materials: wf.tableOutput({
      label: 'Materials',
      columns: {
        materialsOf: wf.textOutput({ label: 'For' }),
        wall: wf.quantityOutput(permeability, { symbol: 'k_0', label: 'Permeability of the clean wall', units: ['m2'] }),
        cake: wf.quantityOutput(permeability, { symbol: 'k_s', label: 'Permeability of the cake', units: ['m2'] }),
        packing: wf.quantityOutput(density, { symbol: '\\rho_s', label: 'Packing density of the cake', units: ['kg/m3'] }),
      },
    }),
    ...depositOutputs,
    evenDrop: dropOutput("\\Delta p'", 'Measured drop, as gas without expansion would have it'),
    evenWithout: dropOutput("\\Delta p_0'", 'Drop of the model with the ash but without soot'),
    modelDrop: wf.optional(dropOutput('\\Delta p_m', 'Drop of the model with the soot found')),
    cakeMass: wf.quantityOutput(mass, { symbol: 'm_c', label: 'Soot in the cake', digits: 3, units: ['g', 'oz'] }),
    dropWithoutSoot: dropOutput('\\Delta p_0', 'Drop with the ash but without soot'),
    sootShare: wf.quantityOutput(fraction, { symbol: 'x_s', label: 'Part of the drop that soot causes', digits: 3, units: ['%'] }),
    sootOnWall: wf.quantityOutput(surfaceLoad, { symbol: 'm_s/A_w', label: 'Soot per filtration area', digits: 2, units: ['g/m2'] }),
    possibleError: dropOutput('u_p', 'Possible error of the drop, as used'),
    ends: wf.tableOutput({
      label: 'Ends of the range',
      columns: {
        end: wf.textOutput({ label: 'Search for' }),
        reading: dropOutput('\\Delta p_i', 'Drop with its possible error'),
        evenReading: dropOutput("\\Delta p_i'", 'As gas without expansion would have it'),
        withoutSoot: wf.optional(dropOutput('\\Delta p_{0,i}', 'Model without soot')),
        wanted: wf.optional(dropOutput('\\Delta p_{w,i}', 'Drop that the model must give')),
        found: wf.optional(dropOutput('\\Delta p_{m,i}', 'Drop of the model with this soot')),
        leastHere: wf.optional(wf.quantityOutput(mass, { symbol: 'm_-', label: 'Least soot', digits: 3, units: ['g', 'oz'] })),
        mostHere: wf.optional(wf.quantityOutput(mass, { symbol: 'm_+', label: 'Most soot', digits: 3, units: ['g', 'oz'] })),
      },
    }),
    mostSootOnWall: wf.optional(
      wf.quantityOutput(surfaceLoad, { symbol: 'm_{s,+}/A_w', label: 'The most soot per filtration area', digits: 2, units: ['g/m2'] }),
    ),
  },
  outputs: {
    verdict: wf.choiceOutput({
      label: 'What the drop tells',
      options: {
        soot: 'soot: between the least and the most below',
        'within-clean': 'not clear: a filter without soot can read as much, and so can one with the most below',
      },
    }),
    leastSootMass: wf.optional(
      wf.quantityOutput(mass, {
        symbol: 'm_{s,-}',
        label: 'Least soot that explains the drop',
        description: 'Of a filter that was clean: soot inside the wall reads several times as much as soot on it.',
        digits: 2,
        units: ['g', 'oz'],
      }),
    ),
    mostSootMass: wf.optional(
      wf.quantityOutput(mass, {
        symbol: 'm_{s,+}',
        label: 'Most soot that explains the drop',
        description:
          'With the most open wall and soot published, where yours are not known. Holds on every published curve that was found, unless part of the soot was burnt off before.',
        digits: 2,
        units: ['g', 'oz'],
      }),
    ),
    mostSootLoad: wf.optional(
      wf.quantityOutput(massConcentration, { symbol: 'm_{s,+}/V', label: 'Soot load with the most', digits: 2, units: ['g/L', 'g/in3'] }),
    ),
    sootLoad: wf.quantityOutput(massConcentration, { symbol: 'm_s/V', label: 'Soot load', digits: 2, units: ['g/L', 'g/in3'] }),
    sootMass: wf.quantityOutput(mass, { symbol: 'm_s', label: 'Soot mass, best guess', digits: 2, units: ['g', 'oz'] }),
  },
  answer: 'sootMass',
  constants: { ...loadedConstants, coveringThickness, ...materialConstants },
  steps: [
    ...startSteps,
    wf.cases(
      'modelFlow',
      {
        "model == 'compressible' and flowPressure == 'behind'": 'exhaustVolumeFlow',
        "model == 'compressible' and flowPressure == 'before'": 'exhaustVolumeFlow * (gasPressure + pressureDrop) / gasPressure',
        "model == 'compressible'": 'exhaustVolumeFlow * (gasPressure + pressureDrop / 2) / gasPressure',
        "flowPressure == 'behind'": 'exhaustVolumeFlow * gasPressure / (gasPressure + pressureDrop / 2)',
        "flowPressure == 'before'": 'exhaustVolumeFlow * (gasPressure + pressureDrop) / (gasPressure + pressureDrop / 2)',
        otherwise: 'exhaustVolumeFlow',
      },
      flowConversion,
      undefined,
      'Pressure times volume flow is the same everywhere. The form with the expansion takes the flow after the filter, the others that in the middle.',
    ),
    wf.rows(
      'materials',
      {
        wall: {
          'known(wallPermeability)': 'wallPermeability',
          'row == 1': 'usualWall',
          'row == 2': 'tightestWall',
          otherwise: 'mostOpenWall',
        },
        cake: {
          'known(sootPermeability)': 'sootPermeability',
          'row == 1': 'usualSootPermeability',
          'row == 2': 'tightestSoot',
          otherwise: 'mostOpenSoot',
        },
        packing: {
          'known(sootPackingDensity)': 'sootPackingDensity',
          'row == 1': 'usualSootDensity',
          'row == 2': 'lightestSoot',
          otherwise: 'densestSoot',
        },
      },
      undefined,
      undefined,
      'As entered; where nothing is entered, the usual and the published values.',
    ),
    cakePermeabilityOf('first(materials.cake)'),
    wf.cases('evenDrop', { "model == 'compressible'": 'pressureDrop * (1 + pressureDrop / (2 * gasPressure))', otherwise: 'pressureDrop' }),
    modelled('evenWithout', '0'),
    wf.cases(
      'sootMass',
      { 'evenWithout >= evenDrop': '0', otherwise: wf.solved('sootMass', 'evenDrop = modelDrop') },
      konstandopoulos2000,
      'Eq. 1',
    ),
    modelled('modelDrop', 'sootMass'),
    wf.cases('cakeMass', {
      "model == 'deep-bed' and sootMass > 0": wf.nested(
        'cakeMass',
        deepBedPressureDropCalculation,
        inModel('sootMass', true),
        'cakeSootMass',
      ),
      otherwise: 'sootMass',
    }),
    ...ashSteps,
    ...cakeSteps('cakeMass', 'first(materials.packing)'),
    wf.cases(
      'channelVelocity',
      {
        "model == 'compressible'": 'modelFlow * gasPressure / (gasPressure + pressureDrop) / (inletCells * openWidth ^ 2)',
        otherwise: 'modelFlow / (inletCells * openWidth ^ 2)',
      },
      konstandopoulos2000,
      'Eq. A2',
    ),
    ...passingSteps({ flow: 'modelFlow' }),
    ...machSteps,
    wf.cases('dropWithoutSoot', {
      "model == 'compressible'": 'gasPressure * (sqrt(1 + 2 * evenWithout / gasPressure) - 1)',
      otherwise: 'evenWithout',
    }),
    wf.formula('sootShare', 'max(0, 1 - dropWithoutSoot / pressureDrop)'),
    wf.formula('sootOnWall', 'sootMass / filtrationArea'),
    bodyLoad('sootLoad', 'sootMass'),
    wf.cases('possibleError', { 'known(dropUncertainty)': 'dropUncertainty', otherwise: '0' }),
    wf.rows(
      'ends',
      {
        reading: { 'row == 1': 'pressureDrop + possibleError', otherwise: 'max(0, pressureDrop - possibleError)' },
        evenReading: { "model == 'compressible'": 'reading * (1 + reading / (2 * gasPressure))', otherwise: 'reading' },
        wanted: {
          'evenReading <= withoutSoot': 'evenReading',
          'row == 1': 'withoutSoot + (1 + modelExcess) * (evenReading - withoutSoot)',
          otherwise: 'withoutSoot + (1 - modelShortfall) * (evenReading - withoutSoot)',
        },
      },
      konstandopoulos2000,
      'Figs 4, 10 and 11, Tables 6 and 7; materials of Deng 2017 and Yao 2023',
      'Solved again. For the most: all soot in a cake, the most open published wall and soot, more rise for the error of the model. For the least: a wall that a little soot has closed as far as any published one, or all in a tight cake, and less rise.',
    ),
    wf.formula('leastSootMass', 'min(sootMass, min(ends.leastHere))'),
    wf.formula('mostSootMass', 'max(sootMass, first(ends.mostHere))'),
    wf.formula('mostSootOnWall', 'mostSootMass / filtrationArea'),
    bodyLoad('mostSootLoad', 'mostSootMass'),
    wf.verdict('verdict', { 'within-clean': 'known(leastSootMass) and leastSootMass == 0', soot: 'otherwise' }),
  ],
  assumptions: {
    flow_pressure:
      'The volume flow belongs to the pressure that was chosen; without a choice, to that in the middle of the filter, as the volume flow calculation gives it with the drop.',
    ...assumed.evenFlow,
    ...assumed.evenCake,
  },
  limits: {
    ...limit.mach,
    deep_bed:
      'The first 0.5 to 2 g of soot per m² of wall goes into the wall and raises the drop much more than a cake: this method then reads too much soot.',
    history: 'The same load reads differently after a partial burn-off: the drop can be near that of a clean filter with soot left.',
    soot_properties:
      'Permeability and packing density of soot differ between engines. Their product, which decides, differs by a factor of two between published measurements, and by more between published models; so does the mass. The range shows it; it is the range of published values, not of all engines.',
    ash_unknown: 'Ash that is not entered is read as soot.',
  },
  cautions: [cautions.sensorFirst, cautions.runaway, cautions.makerFirst],
  sources: [bissett1984, konstandopoulosJohnson1989, deepBedFit, cakeOnset, yao2023, acicularCeramicStudy, unequalCells, deng2017],
  precision: 1e-6,
  mostEvaluations: 40,
  compute(input, context) {
    const { gasPressure: outlet, pressureDrop } = input;
    const expanding = input.model === 'compressible';
    // Pressure times volume flow is the same everywhere: to the pressure at which the model takes its flow.
    const pressureOf = { before: outlet + pressureDrop, middle: outlet + pressureDrop / 2, behind: outlet };
    const modelFlow = (input.exhaustVolumeFlow * pressureOf[input.flowPressure]) / pressureOf[expanding ? 'behind' : 'middle'];
    const state = resolveFlowState({ ...input, exhaustVolumeFlow: modelFlow }, context.constants);
    if (wf.isRefusal(state)) return state;
    const { channels, flow, filterVolume } = state;
    const { channelFriction: friction, modelShortfall, modelExcess, ...constants } = context.constants;

    const inGas = (material: Material) => {
      const sootPermeability = resolveSootPermeability({ ...input, ...material }, flow.viscosity, context.constants);
      // What only the deep-bed model asks for is not used where another model was chosen.
      const wall = {
        wallPorosity: input.wallPorosity ?? constants.closingPorosity,
        wallSootDensity: input.wallSootDensity ?? constants.closingSootDensity,
        percolationFactor: input.percolationFactor ?? constants.closingPercolation,
      };
      return { ...material, ...deepBedMaterial({ ...input, ...material, ...wall, sootPermeability }, constants) };
    };
    const evenly = (drop: number) => (expanding ? incompressibleDrop(drop, outlet) : drop);
    const solve = (solver: typeof sootMassFromDeepBed, material: DeepBedMaterial & Material, drop: number, sootPart = 1) => {
      const load = { ...input, sootMass: 0, sootPackingDensity: material.sootPackingDensity };
      return solver(evenly(drop), channels, flow, material, load, friction, sootPart);
    };
    const { usual, leastSoot, mostSoot } = materialRange(input, context.constants);
    const possibleError = input.dropUncertainty ?? 0;
    const found = solve(solvers[input.model], inGas(usual), pressureDrop);
    const mostReading = pressureDrop + possibleError;
    const most = solve(mostSolvers[input.model], inGas(mostSoot), mostReading, 1 + modelExcess);
    const refused = refusal(found, most, expanding ? (drop) => compressibleDrop(drop, outlet) : (drop) => drop);
    if (refused !== undefined) return refused;
    context.method(methods[input.model]);

    const sootMass = massOf(found) ?? 0;
    const leastReading = Math.max(0, pressureDrop - possibleError);
    // In the wall a little soot reads most; near full channels it is soot in the cake. Whichever needs less is the least.
    const closed = solve(sootMassFromDeepBed, closedBySoot(inGas(leastSoot), constants), leastReading, 1 - modelShortfall);
    const tight = solve(sootMassFromClosedForm, inGas(leastSoot), leastReading, 1 - modelShortfall);
    const least = [massOf(closed), massOf(tight)];
    const leastSootMass = least.includes(undefined) ? undefined : Math.min(sootMass, ...least.map((value) => value ?? 0));
    const mostSootMass = most.status === 'found' ? Math.max(sootMass, most.sootMass) : undefined;
    const evenWithout = 'dropWithoutSoot' in found ? found.dropWithoutSoot : 0;
    const dropWithoutSoot = expanding ? compressibleDrop(evenWithout, outlet) : evenWithout;

    const load = { ...input, sootPackingDensity: usual.sootPackingDensity, sootMass };
    const wallSoot = input.model === 'deep-bed' ? (deepBedDrop(channels, load, flow, inGas(usual), friction)?.wallSootMass ?? 0) : 0;
    const cakeMass = sootMass - wallSoot;
    const loaded = loadChannels(channels, { ...load, sootMass: cakeMass });
    if (loaded === undefined) return wf.noSolution('The soot does not fit into the inlet channels.', ['pressureDrop']);
    const { widthInCake: openWidth, ...deposits } = loaded;
    const entering = expanding ? (modelFlow * outlet) / pressureOf.before : modelFlow;
    const channelVelocity = entering / (channels.inletCount * openWidth ** 2);
    const wallVelocity = modelFlow / wallFlowArea(loaded.channels);
    const outletPressure = expanding ? undefined : outlet;
    const { gasTemperature } = input;
    const speeds = checkedMach(
      { flow, gasTemperature, channels, openWidth, channelVelocity, wallVelocity, outletPressure, pressureDrop },
      context,
    );
    if (wf.isRefusal(speeds)) return speeds;
    const area = filtrationArea(channels);
    const sootOnWall = sootMass / area;
    if (leastSootMass === 0) {
      context.warn(
        'within_clean',
        'Not clear: a filter without soot can read as much. That does not mean that there is none. Measure at a higher flow, or enter the permeability of this wall from a clean measurement.',
        ['pressureDrop'],
      );
    }
    if (leastSootMass === undefined || mostSootMass === undefined)
      context.warn('range_open', 'One end of the range of the soot mass was not found: take the result as a rough estimate.');
    const { wallPorosity = 0, wallSootDensity = 0, percolationFactor = 0 } = input;
    if (input.model === 'deep-bed') warnOfDeepBed({ ...input, ...usual, wallPorosity, wallSootDensity, percolationFactor }, context);
    else if (sootMass > 0) warnOfSootInWall(sootOnWall, context);
    warnOfLoad(loaded, 0, context);
    const end = (name: string, reading: number, result: SootMassResult) => ({
      end: name,
      reading,
      evenReading: evenly(reading),
      withoutSoot: 'dropWithoutSoot' in result ? result.dropWithoutSoot : undefined,
      wanted: result.status === 'found' ? result.wantedDrop : result.status === 'below_clean' ? evenly(reading) : undefined,
      found: result.status === 'found' ? result.modelDrop : undefined,
      leastHere: undefined,
      mostHere: undefined,
    });
    return {
      ...channelsFound(channels),
      ...deposits,
      viscosity: flow.viscosity,
      density: flow.density,
      ...speeds,
      channelVelocity,
      wallVelocity,
      modelFlow,
      materials: [
        { materialsOf: 'best guess', ...rowOf(usual) },
        { materialsOf: 'least soot', ...rowOf(leastSoot) },
        { materialsOf: 'most soot', ...rowOf(mostSoot) },
      ],
      cakePermeability: inGas(usual).sootPermeability,
      cakeLength: deposits.channels.openLength,
      layerArea: filtrationArea(deposits.channels),
      openWidth,
      evenDrop: evenly(pressureDrop),
      evenWithout,
      modelDrop: found.status === 'found' ? found.modelDrop : evenWithout,
      cakeMass,
      dropWithoutSoot,
      sootShare: Math.max(0, 1 - dropWithoutSoot / pressureDrop),
      sootOnWall,
      possibleError,
      ends: [
        { ...end('most soot, in the cake', mostReading, most), mostHere: massOf(most) },
        { ...end('least soot, in the wall first', leastReading, closed), leastHere: massOf(closed) },
        { ...end('least soot, in the cake', leastReading, tight), leastHere: massOf(tight) },
      ],
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
      text: 'Check sensor zero and hoses, and compare with a second method, before you act on this number.',
    };
    const advice: wf.Advice[] = [check];
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

const rowOf = ({ wallPermeability, sootPermeability, sootPackingDensity }: Material) => ({
  wall: wallPermeability,
  cake: sootPermeability,
  packing: sootPackingDensity,
});
