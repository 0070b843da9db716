import { type ComputeContext, isRefusal, noSolution, type Refusal } from '@wallflow/calculation';
import { type FilterLoad, type LoadedChannels, loadChannels } from './channel-deposits/kernel.js';
import type { FilterFlow } from './clean-pressure-drop/kernel.js';
import { channelFriction, type DropConstantValues, dropConstants, slipReferencePressure } from './constants.js';
import { type FilterChannels, filtrationArea, wallFlowArea } from './filter-geometry/kernel.js';
import { flowResistance } from './flow-resistance/kernel.js';
import { checkedMach, type FlowState, type FlowValues, resolveFlowState } from './flow-state.js';
import { ashInputs, densityInputs, gasInputs, geometryInputs, sootMassInput, sootMaterialInputs, wallInputs } from './inputs.js';
import { resolveSootPermeability } from './resolve.js';

/** Inputs and constants of a drop with soot and ash in the filter. */
export const loadedInputs = {
  ...geometryInputs,
  ...gasInputs,
  sootMass: sootMassInput,
  ...ashInputs,
  ...densityInputs,
  ...wallInputs,
  ...sootMaterialInputs,
};
export const cleanConstants = { ...dropConstants, channelFriction };
export const loadedConstants = { ...cleanConstants, slipReferencePressure };

/** What a model starts from. */
export interface DropState extends FlowState {
  readonly loaded: LoadedChannels;
}

/** What a model gives: the drop, and what differs from the state it started from. */
interface Modelled {
  readonly pressureDrop: number;
  /** Channels with the deposits as the model has them. */
  readonly loaded?: LoadedChannels;
  /** Where the model counts the expansion: the gas after the filter, and its volume flow before it, m³/s. */
  readonly after?: FilterFlow;
  readonly entering?: number;
}

interface DropInput extends FlowValues, Partial<FilterLoad> {
  readonly gasPressure: number;
}

type Context = Pick<ComputeContext<typeof dropConstants>, 'warn'> & { readonly constants: DropConstantValues };

/** Nothing in the channels. */
const clean: FilterLoad = { sootMass: 0, ashMass: 0, ashPlugShare: 0, sootPackingDensity: 1, ashPackingDensity: 1 };

/** The way of every drop calculation: channels and gas, deposits, the model, then the velocities that it leads to. */
export function dropModel<V extends Modelled>(input: DropInput, context: Context, model: (state: DropState) => V | Refusal) {
  const state = resolveFlowState(input, context.constants);
  if (isRefusal(state)) return state;
  const { channels, flow } = state;
  const loaded = loadChannels(channels, { ...clean, ...input });
  if (loaded === undefined)
    return noSolution('So much soot and ash does not fit into the inlet channels: nothing is left open.', ['sootMass']);
  const modelled = model({ ...state, loaded });
  if (isRefusal(modelled)) return modelled;
  const { pressureDrop, after = flow, entering = flow.volumeFlow } = modelled;
  const { widthInCake: openWidth, ...deposits } = modelled.loaded ?? loaded;
  const channelVelocity = entering / (channels.inletCount * openWidth ** 2);
  const wallVelocity = after.volumeFlow / wallFlowArea(deposits.channels);
  const { gasTemperature, gasPressure } = input;
  // A model that counts the expansion is not warned of it.
  const outletPressure = modelled.after === undefined ? gasPressure : undefined;
  const speeds = checkedMach(
    { flow: after, gasTemperature, channels, openWidth, channelVelocity, wallVelocity, outletPressure, pressureDrop },
    context,
  );
  if (isRefusal(speeds)) return speeds;
  return {
    ...deposits,
    ...channelsFound(channels),
    viscosity: flow.viscosity,
    density: flow.density,
    ...speeds,
    channelVelocity,
    wallVelocity,
    cakeLength: deposits.channels.openLength,
    layerArea: filtrationArea(deposits.channels),
    openWidth,
    flowResistance: flowResistance(pressureDrop, flow.viscosity, flow.volumeFlow),
    ...modelled,
  };
}

/** The channels as the working names them. */
export function channelsFound(channels: FilterChannels) {
  const { inletWidth, outletWidth, inletCount, outletCount, openLength } = channels;
  return {
    inletWidth,
    outletWidth,
    inletCells: inletCount,
    outletCells: outletCount,
    openLength,
    filtrationArea: filtrationArea(channels),
  };
}

/** The materials of a loaded filter, with the cake's permeability as it is in this gas. */
export function materialIn<I extends Parameters<typeof resolveSootPermeability>[0]>(
  input: I,
  { flow }: Pick<FlowState, 'flow'>,
  constants: Parameters<typeof resolveSootPermeability>[2],
): I & { readonly cakePermeability: number } {
  const sootPermeability = resolveSootPermeability(input, flow.viscosity, constants);
  return { ...input, sootPermeability, cakePermeability: sootPermeability };
}
