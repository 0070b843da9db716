import { type ComputeContext, type Constants, isRefusal, noSolution, type Refusal, say } from '@wallflow/calculation';
import { soundSpeed } from '../flow/pipe-flow/kernel.js';
import type { FilterFlow } from './clean-pressure-drop/kernel.js';
import type { DropConstantValues, FilterConstantValues } from './constants.js';
import { type FilterChannels, wallFlowArea } from './filter-geometry/kernel.js';
import { type GeometryValues, type ResolvedGeometry, resolveDensity, resolveGeometry, resolveViscosity } from './resolve.js';

export interface FlowValues extends GeometryValues {
  readonly exhaustVolumeFlow: number;
  readonly gasTemperature: number;
  readonly gasViscosity?: number | undefined;
  readonly gasPressure: number;
  readonly gasDensity?: number | undefined;
}

export interface FlowState extends ResolvedGeometry {
  readonly flow: FilterFlow;
  readonly channelVelocity: number;
  readonly wallVelocity: number;
}

/** Geometry, gas and velocities that every drop calculation starts from. */
export function resolveFlowState(input: FlowValues, constants: FilterConstantValues): FlowState | Refusal {
  const geometry = resolveGeometry(input);
  if (isRefusal(geometry)) return geometry;
  const { channels } = geometry;
  const volumeFlow = input.exhaustVolumeFlow;
  const flow = { volumeFlow, viscosity: resolveViscosity(input, constants), density: resolveDensity(input, constants) };
  const channelVelocity = volumeFlow / (channels.inletCount * channels.inletWidth ** 2);
  return { ...geometry, flow, channelVelocity, wallVelocity: volumeFlow / wallFlowArea(channels) };
}

/**
 * Drop over a soot cake from which it was measured to compact, Pa: Konstandopoulos 2008, Fig. 14, onset at 155 to 205 mbar. The 25 to
 * 30 % of p. 48 are the relative rise of its solid fraction, not the fraction. Taken from notes of that work, not re-read (second-hand).
 */
const compactionOnset = 15_500;

interface DropContext extends Pick<ComputeContext<Constants>, 'warn'> {
  readonly constants: DropConstantValues;
}

interface DropState {
  readonly flow: FilterFlow;
  readonly gasTemperature: number;
  readonly channels: FilterChannels;
  /** Open width of the inlet channels, m, and the velocity into them at the pressure there, m/s. `flow` and the velocity through the wall belong to one pressure. */
  readonly openWidth: number;
  readonly channelVelocity: number;
  readonly wallVelocity: number;
  /** Absolute pressure after the filter, Pa; left out when the model counts the expansion itself. */
  readonly outletPressure?: number | undefined;
  readonly pressureDrop: number;
}

/**
 * Mach number up to which gas of one density will do: brought to rest it is denser by M²/2 to first order whatever the ratio
 * of specific heats, 4.5 % at 0.3.
 */
const incompressibleMach = 0.3;

/** How fast the gas is in the channels, m/s, and the largest of it over the speed of sound. */
interface ChannelSpeeds {
  readonly machNumber: number;
  readonly soundSpeed: number;
  readonly outletVelocity: number;
}

/** The largest Mach number in the channels, or a refusal when it would be 1 or more: nothing passes a straight channel faster. */
export function channelMach(state: DropState, { warn, constants }: DropContext): ChannelSpeeds | Refusal {
  const { heatCapacityRatio, airMolarMass, gasConstant } = constants;
  const { channels, flow, channelVelocity } = state;
  const outletVelocity = flow.volumeFlow / (channels.outletCount * channels.outletWidth ** 2);
  const fastest = Math.max(channelVelocity, outletVelocity);
  const sound = soundSpeed(state.gasTemperature, heatCapacityRatio, airMolarMass, gasConstant);
  const machNumber = fastest / sound;
  if (machNumber >= 1) {
    const where = channelVelocity >= outletVelocity ? 'what is left open of the inlet channels' : 'the outlet channels';
    return noSolution(
      say`In ${where} this gas would be faster than sound: so much cannot pass. Check the flow, the temperature and how much lies in the filter.`,
      ['exhaustVolumeFlow'],
    );
  }
  if (machNumber > incompressibleMach) {
    warn(
      'fast_channels',
      'The gas in the channels is faster than 0.3 of the speed of sound: its density changes along them, and the drop is a few per cent or more off.',
    );
  }
  return { machNumber, soundSpeed: sound, outletVelocity };
}

/**
 * Warn where the closed forms leave the range their authors give (Konstandopoulos 2000 App. I, 2008 App. A). Gives the largest
 * Mach number in the channels, or refuses what is faster than sound.
 */
export function checkedMach(state: DropState, context: DropContext): ChannelSpeeds | Refusal {
  const { warn } = context;
  const { flow, channels, openWidth, wallVelocity, outletPressure, pressureDrop } = state;
  // Density times velocity is the same at any pressure, so that one state of the gas will do.
  const channelReynolds = (count: number, width: number) => (flow.density * flow.volumeFlow) / (count * width * flow.viscosity);
  const reynolds = Math.max(channelReynolds(channels.inletCount, openWidth), channelReynolds(channels.outletCount, channels.outletWidth));
  if (reynolds > 2000) {
    warn(
      'turbulent_channels',
      'The channel Reynolds number is above 2000: the flow in the channels is not laminar and the drop is larger.',
    );
  }
  if ((flow.density * wallVelocity * channels.inletWidth) / flow.viscosity > 2) {
    warn('wall_reynolds', 'The wall Reynolds number is above 2: suction changes the friction in the channels.');
  }
  if (outletPressure !== undefined && pressureDrop > 0.15 * outletPressure) {
    warn(
      'compressible',
      'The drop is more than 15 % of the absolute pressure: which pressure the volume flow belongs to now counts, by 7 % and more. This form takes it in the middle of the filter; one that belongs to the pressure after the filter makes the drop too high. The compressible form converts.',
    );
  }
  if (pressureDrop > compactionOnset) {
    warn(
      'compaction',
      'From a drop of 155 to 205 mbar on, a soot cake was measured to compact, by 10 to 16 % at twice that drop: it then resists more, and the true load is smaller than a fixed permeability says.',
    );
  }
  return channelMach(state, context);
}
