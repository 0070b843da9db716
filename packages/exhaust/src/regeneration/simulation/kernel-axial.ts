import { type FilterBed, LayerCombustion, type SootCombustion } from './kernel-bed.js';
import type { FeedSegment } from './kernel-feed.js';

/**
 * Right-hand side of the axial model. State, for n cells from inlet to outlet: θ (n values), the exponent of the burn-off,
 * so that the soot load is s₀ e^(−θ) and never negative; H (n values), the heat of bed and soot together over the heat
 * capacity of the bed, in K, so that T = H − a s with a = heat of combustion / bed heat capacity; and the heat that the gas
 * has left in the filter, in J.
 *
 * Gas (quasi-steady, each cell of constant wall temperature solved exactly): in the inlet channels, of which every cell
 * takes the same flow through its wall, (1 − x) dT₁/dx = −N (T₁ − T); in the outlet channels, fed at wall temperature,
 * x dT₂/dx = (1 + N)(T − T₂); with x = z/L and N = h A / (ṁ c).
 */
export class AxialBed {
  readonly cells: number;
  /** State size: 2 n + 1. */
  readonly size: number;
  readonly soot0: Float64Array;
  /** Temperature rise per soot load in K/(kg/m³). */
  readonly risePerLoad: number;
  feed: FeedSegment | undefined;
  /** Wall temperature of every cell in K at the last evaluation. */
  readonly temperature: Float64Array;
  /** Gas temperature at the outlet face in K at the last evaluation. */
  outletTemperature = Number.NaN;
  private readonly bed: FilterBed;
  private readonly gasSpecificHeat: number;
  private readonly gasMolarMass: number;
  private readonly burn: LayerCombustion;
  private readonly conduction: number;
  private readonly inletDecay: Float64Array;
  private readonly outletDecay: Float64Array;
  private decayFor = Number.NaN;

  constructor(bed: FilterBed, combustion: SootCombustion, soot0: Float64Array) {
    this.bed = bed;
    this.cells = soot0.length;
    this.size = 2 * this.cells + 1;
    this.soot0 = soot0;
    this.gasSpecificHeat = combustion.gasSpecificHeat;
    this.gasMolarMass = combustion.gasMolarMass;
    this.burn = new LayerCombustion(combustion);
    const heatCapacity = bed.bulkDensity * bed.specificHeat;
    this.risePerLoad = combustion.heatOfCombustion / heatCapacity;
    this.conduction = (bed.axialConductivity / heatCapacity) * (this.cells / bed.length) ** 2;
    this.temperature = new Float64Array(this.cells);
    this.inletDecay = new Float64Array(this.cells);
    this.outletDecay = new Float64Array(this.cells);
  }

  /** State at the start, from the wall temperature of every cell in K. */
  start(temperature: ArrayLike<number>): Float64Array {
    const state = new Float64Array(this.size);
    for (let i = 0; i < this.cells; i += 1) state[this.cells + i] = temperature[i]! + this.risePerLoad * this.soot0[i]!;
    return state;
  }

  derivative = (time: number, state: Float64Array, slope: Float64Array): void => {
    const { cells: n, bed, soot0, risePerLoad, temperature } = this;
    const feed = this.feed!;
    feed.at(time);
    const supply = feed.massFlow / (this.gasMolarMass * bed.volume);
    for (let i = 0; i < n; i += 1) {
      const soot = soot0[i]! * Math.exp(-state[i]!);
      const wall = state[n + i]! - risePerLoad * soot;
      temperature[i] = wall;
      slope[i] = this.burn.rate(wall, soot, supply, feed.oxygen, feed.nitrogenDioxide);
    }
    this.heatFromGas(feed, slope);
    const { conduction } = this;
    for (let i = 0; i < n; i += 1) {
      const left = i > 0 ? temperature[i - 1]! - temperature[i]! : 0;
      const right = i < n - 1 ? temperature[i + 1]! - temperature[i]! : 0;
      slope[n + i]! += conduction * (left + right);
    }
  };

  private heatFromGas(feed: FeedSegment, slope: Float64Array): void {
    const { cells: n, bed, temperature, inletDecay, outletDecay } = this;
    const flowCapacity = feed.massFlow * this.gasSpecificHeat;
    if (!(flowCapacity > 0)) {
      slope.fill(0, n);
      this.outletTemperature = temperature[n - 1]!;
      return;
    }
    this.setDecay((bed.heatTransferCoefficient * bed.filtrationAreaPerVolume * bed.volume) / flowCapacity);
    const perCell = (flowCapacity * n) / (bed.volume * bed.bulkDensity * bed.specificHeat);
    let inlet = feed.temperature;
    let outlet = temperature[0]!;
    for (let i = 0; i < n; i += 1) {
      const wall = temperature[i]!;
      const inletNext = wall + (inlet - wall) * inletDecay[i]!;
      const outletNext = wall + (outlet - wall) * outletDecay[i]!;
      const given = (n - i) * inlet - (n - i - 1) * inletNext - ((i + 1) * outletNext - i * outlet);
      slope[n + i] = (perCell * given) / n;
      inlet = inletNext;
      outlet = outletNext;
    }
    this.outletTemperature = outlet;
    slope[2 * n] = flowCapacity * (feed.temperature - outlet);
  }

  /** How far the channel gas comes to the wall temperature within each cell; kept while the flow stays. */
  private setDecay(transferUnits: number): void {
    if (transferUnits === this.decayFor) return;
    this.decayFor = transferUnits;
    const n = this.cells;
    for (let i = 0; i < n; i += 1) {
      this.inletDecay[i] = i === n - 1 ? 0 : ((n - i - 1) / (n - i)) ** transferUnits;
      this.outletDecay[i] = i === 0 ? 0 : (i / (i + 1)) ** (1 + transferUnits);
    }
  }
}
