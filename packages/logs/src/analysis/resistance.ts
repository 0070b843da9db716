import { fitLinear } from '@wallflow/numerics/fit';
import type { Batch } from '../clean/cleaner.js';

/** Molar gas constant over the molar mass of dry air, J/(kg K) (ISO 2533). */
const airConstant = 287.052_87;

/** Viscosity of air in Pa s (Sutherland's law, U.S. Standard Atmosphere 1976, equation 51). */
function airViscosity(temperature: number): number {
  return (1.458e-6 * temperature ** 1.5) / (temperature + 110.4);
}

/** A few seconds of a drive in which little changed. */
export interface FlowBlock {
  /** Viscosity times volume flow, Pa m³. */
  readonly viscous: number;
  /** Density times volume flow squared, kg m³/s². */
  readonly inertial: number;
  /** Pa. */
  readonly drop: number;
  /** Standard deviation of the drop within the block, Pa. */
  readonly scatter: number;
}

/** How flows are worked out and how far they are trusted. */
export interface FlowOptions {
  /** Pressure at the filter, Pa; that of the standard atmosphere unless given. */
  readonly pressure?: number;
  /** Length of a block, s. */
  readonly block?: number;
}

/** By how much air mass and speed may change within a block. Own rule. */
const mostChange = 0.1;
const leastRows = 3;

/**
 * Collects blocks of a few quiet seconds from the rows of a drive: air mass, gas temperature and drop become flow terms. The gas is
 * taken for air and the fuel's mass is left out, some 2 to 4 % of the flow (common practice), which the fit takes as an error in it.
 */
export class FlowBlocks {
  readonly blocks: FlowBlock[] = [];
  readonly #pressure: number;
  readonly #length: number;
  #from = Number.NaN;
  #rows: { air: number; temperature: number; drop: number }[] = [];

  constructor({ pressure = 101_325, block = 5 }: FlowOptions = {}) {
    this.#pressure = pressure;
    this.#length = block;
  }

  /** The next rows. */
  add({ rows, time, values }: Batch): void {
    const [air, temperature, drop] = [values.get('airMassFlow'), values.get('gasTemperature'), values.get('pressureDrop')];
    if (air === undefined || temperature === undefined || drop === undefined) return;
    for (let row = 0; row < rows; row += 1) {
      const now = time[row] as number;
      if (!(now - this.#from < this.#length && now >= this.#from)) this.#close(now);
      const entry = { air: air[row] as number, temperature: temperature[row] as number, drop: drop[row] as number };
      if (entry.air > 0 && entry.temperature > 0 && Number.isFinite(entry.drop)) this.#rows.push(entry);
    }
  }

  /** The drive has ended. */
  end(): readonly FlowBlock[] {
    this.#close(Number.NaN);
    return this.blocks;
  }

  #close(next: number): void {
    const rows = this.#rows;
    this.#rows = [];
    this.#from = next;
    if (rows.length < leastRows) return;
    const mean = (of: (row: (typeof rows)[number]) => number) => rows.reduce((sum, row) => sum + of(row), 0) / rows.length;
    const air = mean((row) => row.air);
    const [least, most] = rows.reduce(([low, high], row) => [Math.min(low, row.air), Math.max(high, row.air)], [Infinity, 0]);
    if (most - least > mostChange * air) return;
    const temperature = mean((row) => row.temperature);
    const drop = mean((row) => row.drop);
    const density = this.#pressure / (airConstant * temperature);
    const flow = air / density;
    const scatter = Math.sqrt(mean((row) => (row.drop - drop) ** 2));
    this.blocks.push({ viscous: airViscosity(temperature) * flow, inertial: density * flow * flow, drop, scatter });
  }
}

/** What a whole drive says of the resistance: `drop = zero + viscous · μQ + inertial · ρQ²`. */
export interface DriveResistance {
  /** Pa. */
  readonly zero: number;
  /** 1/m³. */
  readonly viscous: number;
  /** 1/m⁴. */
  readonly inertial: number;
  readonly uncertainty: { readonly zero: number; readonly viscous: number; readonly inertial: number };
  /** Share of the drop at the greatest flow that grows with the square of the flow. */
  readonly inertialShare: number;
  readonly blocks: number;
  /** Weighted scatter about the fit over what the uncertainties foretell: near 1 where all is told. */
  readonly reducedChiSquare: number;
}

/** Why a drive says nothing of the resistance. */
export type ResistanceProblem = 'too_few_blocks' | 'one_flow_only' | 'not_physical';

/** How far readings are trusted. */
export interface ResistanceOptions {
  /** Relative standard uncertainty of the flow from block to block. */
  readonly flowUncertainty?: number;
  /** Least standard uncertainty of a block's drop, Pa. */
  readonly dropUncertainty?: number;
}

const leastBlocks = 8;

/**
 * Fit zero, viscous and inertial resistance with errors in flow and drop: each block has a true flow that is sought too, and what
 * counts is how far flow and drop lie from the curve in units of their uncertainties (orthogonal distance regression: W. A. Fuller,
 * Measurement Error Models, 1987, chapter 3). Plain least squares would take errors of the flow for a smaller resistance. A
 * resistance below zero by more than twice its uncertainty is refused; within that it is set to nothing.
 */
export function driveResistance(
  blocks: readonly FlowBlock[],
  { flowUncertainty = 0.03, dropUncertainty = 30 }: ResistanceOptions = {},
): { readonly ok: true; readonly resistance: DriveResistance } | { readonly ok: false; readonly problem: ResistanceProblem } {
  if (blocks.length < leastBlocks) return { ok: false, problem: 'too_few_blocks' };
  const flows = blocks.map(({ viscous }) => viscous);
  const [least, most] = [Math.min(...flows), Math.max(...flows)];
  if (!(most > 1.5 * least)) return { ok: false, problem: 'one_flow_only' };
  let fitted = fitTerms(blocks, [true, true], flowUncertainty, dropUncertainty);
  if (fitted === undefined) return { ok: false, problem: 'one_flow_only' };
  const kept: [boolean, boolean] = [fitted.viscous >= 0, fitted.inertial >= 0];
  if (fitted.viscous < -2 * fitted.uncertainty.viscous || fitted.inertial < -2 * fitted.uncertainty.inertial || !(kept[0] || kept[1])) {
    return { ok: false, problem: 'not_physical' };
  }
  if (!kept[0] || !kept[1]) fitted = fitTerms(blocks, kept, flowUncertainty, dropUncertainty);
  if (fitted === undefined || fitted.viscous < 0 || fitted.inertial < 0) return { ok: false, problem: 'not_physical' };
  const top = blocks.reduce((a, b) => (b.viscous > a.viscous ? b : a));
  const parts = [fitted.viscous * top.viscous, fitted.inertial * top.inertial] as const;
  const total = parts[0] + parts[1];
  return { ok: true, resistance: { ...fitted, inertialShare: total > 0 ? parts[1] / total : 0 } };
}

function fitTerms(
  blocks: readonly FlowBlock[],
  [viscousKept, inertialKept]: readonly [boolean, boolean],
  flowUncertainty: number,
  dropUncertainty: number,
): Omit<DriveResistance, 'inertialShare'> | undefined {
  let [zero, viscous, inertial] = [0, 0, 0];
  let covariance: readonly (readonly number[])[] = [];
  let chiSquare = 0;
  /** True flow of each block over the one that was seen. */
  const ratios = new Float64Array(blocks.length).fill(1);
  for (let round = 0; round < 100; round += 1) {
    const slopes = blocks.map((block, i) => viscous * block.viscous + 2 * inertial * block.inertial * (ratios[i] as number));
    const own = blocks.map((block) => Math.hypot(dropUncertainty, block.scatter));
    const fit = fitLinear(
      blocks.map(({ viscous: x, inertial: z }, i) => {
        const ratio = ratios[i] as number;
        return [...(viscousKept ? [x * ratio] : []), ...(inertialKept ? [z * ratio * ratio] : [])];
      }),
      // The drop at the true flow, as far as the curve is straight between the two.
      blocks.map(({ drop }, i) => drop - (slopes[i] as number) * (1 - (ratios[i] as number))),
      { standardUncertainties: slopes.map((slope, i) => Math.hypot(own[i] as number, flowUncertainty * slope)) },
    );
    if (fit.status !== 'fitted' || fit.covariance === undefined) return undefined;
    const [a = 0, b = 0, c = 0] = fit.coefficients;
    const next = [a, viscousKept ? b : 0, inertialKept ? (viscousKept ? c : b) : 0] as const;
    const change = Math.abs(next[1] - viscous) / Math.abs(next[1] || 1) + Math.abs(next[2] - inertial) / Math.abs(next[2] || 1);
    [zero, viscous, inertial] = next;
    covariance = fit.covariance;
    chiSquare = fit.sumOfSquares / Math.max(1, fit.degreesOfFreedom);
    blocks.forEach((block, i) => {
      const ratio = ratios[i] as number;
      const slope = viscous * block.viscous + 2 * inertial * block.inertial * ratio;
      const off = block.drop - zero - viscous * block.viscous * ratio - inertial * block.inertial * ratio * ratio;
      const weight = flowUncertainty ** 2 / ((own[i] as number) ** 2 + (flowUncertainty * slope) ** 2);
      ratios[i] = Math.max(0.2, 1 + weight * slope * (off - slope * (1 - ratio)));
    });
    if (round > 0 && change <= 1e-11) break;
  }
  const error = (index: number) => Math.sqrt(Math.max(0, covariance[index]?.[index] ?? 0));
  return {
    zero,
    viscous,
    inertial,
    uncertainty: { zero: error(0), viscous: viscousKept ? error(1) : 0, inertial: inertialKept ? error(viscousKept ? 2 : 1) : 0 },
    blocks: blocks.length,
    reducedChiSquare: chiSquare,
  };
}
