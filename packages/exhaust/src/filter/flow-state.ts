import { type ComputeContext, type Constants, isRefusal, type Refusal } from '@wallflow/calculation';
import type { FilterFlow } from './clean-pressure-drop/kernel.js';
import type { FilterConstantValues } from './constants.js';
import { type FilterChannels, wallFlowArea } from './filter-geometry/kernel.js';
import { type GeometryValues, type ResolvedGeometry, resolveDensity, resolveGeometry, resolveViscosity } from './resolve.js';

interface FlowValues extends GeometryValues {
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

interface DropState {
  readonly flow: FilterFlow;
  readonly channels: FilterChannels;
  /** Open width of the inlet channels, m, and the velocity into them, m/s. */
  readonly openWidth: number;
  readonly channelVelocity: number;
  readonly wallVelocity: number;
  /** Absolute pressure behind the filter, Pa; left out when the model counts the expansion itself. */
  readonly outletPressure?: number | undefined;
  readonly pressureDrop: number;
}

/** Warn where the closed forms leave the range their authors give: Konstandopoulos 2000 App. I, 2008 App. A. */
export function warnOutsideClosedForm(state: DropState, { warn }: Pick<ComputeContext<Constants>, 'warn'>): void {
  const { flow, channels, openWidth, channelVelocity, wallVelocity, outletPressure, pressureDrop } = state;
  const reynolds = (velocity: number, width: number) => (flow.density * velocity * width) / flow.viscosity;
  if (reynolds(channelVelocity, openWidth) > 2000) {
    warn(
      'turbulent_channels',
      'The channel Reynolds number is above 2000: the flow in the channels is not laminar and the drop is larger.',
    );
  }
  if (reynolds(wallVelocity, channels.inletWidth) > 2) {
    warn('wall_reynolds', 'The wall Reynolds number is above 2: suction changes the friction in the channels.');
  }
  if (outletPressure !== undefined && pressureDrop > 0.15 * outletPressure) {
    warn(
      'compressible',
      'The drop is more than 15 % of the absolute pressure: this form is too high there by about 7 %. Use the compressible form.',
    );
  }
  if (pressureDrop > 20_000) {
    warn('compaction', 'Above about 200 mbar the soot cake compacts: the true load is smaller than a fixed permeability says.');
  }
}
