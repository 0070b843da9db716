import { type ComputeContext, inconsistentInputs, isRefusal, known, type Refusal } from '@wallflow/calculation';
import { squareCellFiltrationArea } from '../../soot/load/kernel.js';
import { chosenKinetics } from '../../soot/oxidation/inputs.js';
import { honeycombOf } from '../honeycomb.js';
import type { SimulationInput, simulationConstants } from './inputs.js';
import { sootHeat } from './kernel-adiabatic.js';
import type { FeedPoint } from './kernel-feed.js';
import type { AxialRegeneration } from './kernel-run.js';
import { dropFeed, rampFeed, steadyFeed } from './kernel-scenario.js';
import { channelHeatTransfer, channelOxygenTransfer } from './kernel-substrate.js';

type Context = ComputeContext<typeof simulationConstants>;

/** What a run takes in any model: no duration of its own, nothing of the channels. */
export type RunInput = Omit<SimulationInput, keyof ChannelChoice | 'targetShare' | 'axialConductivity' | 'oxygenTransport'>;

/** What the axial model alone takes. */
export interface ChannelChoice {
  readonly filterLength: number;
  readonly cellDensity: number;
  readonly wallThickness: number;
  readonly axialConductivity?: number | undefined;
  readonly gasConductivity: number;
  readonly oxygenTransport: 'diffusion' | 'wall-flow';
}

/** The feed of the chosen scenario, or why it cannot be. */
export function scenarioFeed(input: RunInput): FeedPoint[] | Refusal {
  if (input.scenario === 'own') return ownFeed(input);
  const { nitrogenDioxide } = input;
  const gas = {
    massFlow: known(input.exhaustMassFlow),
    temperature: known(input.gasTemperature),
    oxygen: known(input.oxygen),
    nitrogenDioxide,
  };
  if (input.scenario === 'steady') return steadyFeed(gas);
  const ramp = rampFeed(gas, input.startTemperature, known(input.rampDuration));
  if (input.scenario === 'ramp') return ramp;
  return dropFeed(ramp, known(input.dropTime), {
    massFlow: known(input.idleMassFlow),
    temperature: known(input.idleTemperature),
    oxygen: known(input.idleOxygen),
    nitrogenDioxide,
  });
}

function ownFeed({ course: given, nitrogenDioxide }: RunInput): FeedPoint[] | Refusal {
  const course = known(given);
  const late = course.findIndex((point, index) => index > 0 && point.time < (course[index - 1]?.time ?? 0));
  if (late > 0)
    return inconsistentInputs('the points of the course are not in order of time', ['course', late, 'time'], ['course', late - 1, 'time']);
  return course.map(({ time, exhaustMassFlow: massFlow, gasTemperature: temperature, oxygen }) => ({
    time,
    massFlow,
    temperature,
    oxygen,
    nitrogenDioxide,
  }));
}

/** How long the filter is and how its channels pass heat and oxygen; one piece of one temperature asks for none of it. */
export type Channels = Pick<
  AxialRegeneration['bed'],
  'length' | 'axialConductivity' | 'filtrationAreaPerVolume' | 'heatTransferCoefficient' | 'oxidantTransferCoefficient'
>;

export const onePiece: Channels = { length: 1, axialConductivity: 0, filtrationAreaPerVolume: 1, heatTransferCoefficient: 1 };

/** The channels of a filter, with what the working shows of them, or why they cannot be. */
export function channelsOf(
  input: ChannelChoice & Pick<SimulationInput, 'substrate' | 'filterVolume'>,
  constants: { readonly siliconCarbideConductivity: number; readonly cordieriteConductivity: number },
):
  | {
      readonly channels: Channels;
      readonly shown: Readonly<Record<'channelWidth' | 'filtrationArea' | 'heatTransfer' | 'bedConductivity', number>>;
    }
  | Refusal {
  const channelWidth = 1 / Math.sqrt(input.cellDensity) - input.wallThickness;
  if (channelWidth <= 0)
    return inconsistentInputs('the wall is thicker than the distance between the walls', ['wallThickness'], ['cellDensity']);
  const ofMaterial = input.substrate === 'silicon-carbide' ? constants.siliconCarbideConductivity : constants.cordieriteConductivity;
  const bedConductivity = input.axialConductivity ?? ofMaterial;
  const filtrationAreaPerVolume = squareCellFiltrationArea(input.cellDensity, input.wallThickness);
  const heatTransfer = channelHeatTransfer(input.gasConductivity, channelWidth);
  return {
    channels: {
      length: input.filterLength,
      axialConductivity: bedConductivity,
      filtrationAreaPerVolume,
      heatTransferCoefficient: heatTransfer,
      ...(input.oxygenTransport === 'diffusion' ? { oxidantTransferCoefficient: channelOxygenTransfer(channelWidth) } : {}),
    },
    shown: { channelWidth, filtrationArea: filtrationAreaPerVolume * input.filterVolume, heatTransfer, bedConductivity },
  };
}

/** The whole model input in SI for a number of cells, or why there is none. */
export function prepareRun(
  input: RunInput,
  channels: Channels,
  cells: number,
  { constants, assume }: Pick<Context, 'constants' | 'assume'>,
): AxialRegeneration | Refusal {
  const kinetics = chosenKinetics(input, constants);
  if (isRefusal(kinetics)) return kinetics;
  const feed = scenarioFeed(input);
  if (!Array.isArray(feed)) return feed;
  const { heatToDioxide, heatToMonoxide, carbonMolarMass, airMolarMass, gasConstant } = constants;
  const { carbonMonoxideShare } = input;
  const { honeycombDensity: bulkDensity, honeycombHeatCapacity: specificHeat } = honeycombOf(input, constants, assume);
  return {
    bed: { volume: input.filterVolume, bulkDensity, specificHeat, ...channels },
    combustion: {
      kinetics,
      heatOfCombustion: sootHeat(heatToDioxide, heatToMonoxide, carbonMonoxideShare, carbonMolarMass),
      carbonMonoxideShare,
      gasSpecificHeat: input.gasHeatCapacity,
      gasMolarMass: airMolarMass,
      gasConstant,
    },
    soot: new Float64Array(cells).fill(input.sootLoad),
    initialTemperature: new Float64Array(cells).fill(input.startTemperature),
    feed,
    duration: input.duration,
  };
}
