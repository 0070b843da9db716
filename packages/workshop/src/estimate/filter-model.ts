import {
  ashPlugFriction,
  cleanDropParts,
  type FilterChannels,
  filterChannels,
  filtrationArea,
  layerResistance,
  loadChannels,
  totalDrop,
} from '@wallflow/exhaust';
import { lognormal, share, uniform } from './latent.js';
import type { Priors } from './priors.js';
import { at } from './unknowns.js';

/** What is in the filter. */
export interface Content {
  /** Soot load, kg/m³. */
  readonly sootLoad: number;
  /** Ash load, kg/m³. */
  readonly ashLoad: number;
  readonly plugShare: number;
  /** Share of the inlet cells whose face is open; soot and ash can bridge the others. */
  readonly openFace: number;
}

/** The drop of a filter is `viscous` · μ Q + `inertial` · ρ Q². */
export interface Resistance {
  /** 1/m³ */
  readonly viscous: number;
  /** 1/m⁴ */
  readonly inertial: number;
  /** Part of `viscous` that soot makes. */
  readonly sootPart: number;
}

/** One draw of the filter's body and deposits' properties. */
export interface Body {
  readonly channels: FilterChannels;
  readonly volume: number;
  readonly wallPermeability: number;
  readonly forchheimerCoefficient: number;
  readonly entranceExitCoefficient: number;
  readonly deepBedRise: number;
  readonly sootPermeability: number;
  readonly sootDensity: number;
  readonly ashPermeability: number;
  /** Contraction and expansion: what deposits do not change, 1/m⁴. */
  readonly inertial: number;
  /** How much a load raises the resistance of the same filter without ash; made when it is asked for. */
  readonly scale: () => SootScale | undefined;
}

/** A straight line through the empty filter and one that is due for regeneration, over μ Q. */
export interface SootScale {
  readonly clean: number;
  readonly perLoad: number;
}

const plug = 6e-3;
const ashDensity = 450;
const entranceExitCoefficient = 0.82;
/** Soot that the pores of the wall take before a cake forms, kg/m³ of filter: 0.4 to 1.2 as published. */
const deepBedCapacity = 0.75;
const viscousFlow = { volumeFlow: 1, viscosity: 1, density: 0 };
const inertialFlow = { volumeFlow: 1, viscosity: 0, density: 1 };

/** The filter that a point stands for; undefined when its cells leave no channel. */
export function bodyOf(point: Float64Array, priors: Priors): Body | undefined {
  const draw = (
    name: 'volume' | 'cellDensity' | 'wallThickness' | 'wallPermeability' | 'deepBedRise' | 'sootDensity' | 'ashPermeability',
  ) => lognormal(point[at[name]]!, priors[name].median, priors[name].spread);
  const volume = draw('volume');
  // As long as it is wide; what another shape changes is far below the other unknowns.
  const filterLength = priors.length ?? Math.cbrt((4 * volume) / Math.PI);
  const channels = filterChannels({
    cellDensity: draw('cellDensity'),
    wallThickness: draw('wallThickness'),
    frontalArea: volume / filterLength,
    filterLength,
    plugLength: plug,
    layout: 'alternate',
    inletWidthRatio: 1,
  });
  if (channels === undefined) return undefined;
  const sootDensity = draw('sootDensity');
  const wall = { wallPermeability: draw('wallPermeability'), forchheimerCoefficient: 0, entranceExitCoefficient };
  const sootFactor = lognormal(point[at.sootFactor]!, priors.sootFactor.median, priors.sootFactor.spread);
  const due = priors.trigger.median;
  let scale: SootScale | undefined;
  const body: Body = {
    channels,
    volume,
    ...wall,
    inertial: totalDrop(cleanDropParts(channels, inertialFlow, wall)),
    deepBedRise: draw('deepBedRise'),
    sootPermeability: sootFactor / sootDensity,
    sootDensity,
    ashPermeability: draw('ashPermeability'),
    scale: () => {
      if (scale === undefined) {
        const of = (sootLoad: number) => resistanceOf(body, { sootLoad, ashLoad: 0, plugShare: 0, openFace: 1 })?.viscous;
        const [clean, loaded] = [of(0), of(due)];
        if (clean !== undefined && loaded !== undefined) scale = { clean, perLoad: (loaded - clean) / due };
      }
      return scale;
    },
  };
  return body;
}

const bodyUnknowns = [
  at.volume,
  at.cellDensity,
  at.wallThickness,
  at.wallPermeability,
  at.deepBedRise,
  at.sootFactor,
  at.sootDensity,
  at.ashPermeability,
] as const;

/** The same, kept from one point to the next as long as nothing of the body changes: most steps of a fit move other unknowns. */
export function bodySource(priors: Priors): (point: Float64Array) => Body | undefined {
  const last = new Float64Array(bodyUnknowns.length).fill(Number.NaN);
  let body: Body | undefined;
  return (point) => {
    if (bodyUnknowns.some((index, k) => point[index] !== last[k])) {
      bodyUnknowns.forEach((index, k) => {
        last[k] = point[index]!;
      });
      body = bodyOf(point, priors);
    }
    return body;
  };
}

/** Resistance of a filter with this in it; undefined when it does not fit into the channels. */
export function resistanceOf(body: Body, content: Content): Resistance | undefined {
  const { channels, volume } = body;
  // Soot fills the pores of the wall first; only the rest lies on it.
  const inWall = deepBedCapacity * (1 - Math.exp(-content.sootLoad / deepBedCapacity));
  const loaded = loadChannels(channels, {
    sootMass: Math.max(0, content.sootLoad - inWall) * volume,
    ashMass: content.ashLoad * volume,
    ashPlugShare: content.plugShare,
    sootPackingDensity: body.sootDensity,
    ashPackingDensity: ashDensity,
  });
  if (loaded === undefined) return undefined;
  // The parts of the loaded drop that viscosity makes, one by one: this runs for every draw.
  const { wallDrop, inletChannelDrop, outletChannelDrop } = cleanDropParts(loaded.channels, viscousFlow, body, loaded.widthInCake);
  const velocity = 1 / filtrationArea(loaded.channels);
  const sootDrop = velocity * layerResistance(loaded.channels, loaded.widthOnAsh, loaded.sootFill, body.sootPermeability);
  const ashDrop = velocity * layerResistance(loaded.channels, channels.inletWidth, loaded.ashFill, body.ashPermeability);
  const friction = inletChannelDrop + outletChannelDrop + ashPlugFriction(loaded, viscousFlow);
  // An ash layer keeps soot out of the pores.
  const rise = body.deepBedRise * (inWall / deepBedCapacity) * Math.exp(-content.ashLoad / 20);
  const wallRise = wallDrop * rise;
  // The cells that are open take all of the flow.
  const { openFace } = content;
  return {
    viscous: (wallDrop + friction + sootDrop + ashDrop + wallRise) / openFace,
    inertial: body.inertial / openFace ** 2,
    sootPart: (sootDrop + wallRise) / openFace,
  };
}

/** Drop at a state of the gas, Pa. A cake is pressed together from about 200 mbar on. */
export function dropAt(resistance: Resistance, muQ: number, rhoQQ: number, compaction: number): number {
  const drop = resistance.viscous * muQ + resistance.inertial * rhoQQ;
  const pressed = Math.min(1, Math.max(0, drop / 2e4 - 1));
  return drop + compaction * pressed * resistance.sootPart * muQ;
}

export const compactionOf = (point: Float64Array): number => uniform(point[at.compaction]!, 0, 1);

export const plugShareOf = (point: Float64Array, median: number): number => share(point[at.plugShare]!, median, 0.9);
