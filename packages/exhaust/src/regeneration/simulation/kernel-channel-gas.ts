import type { FilterBed } from './kernel-bed.js';

/**
 * Gas in the channels of a wall-flow filter, quasi-steady, each cell of constant wall temperature solved exactly. In the
 * inlet channels, of which every cell takes the same flow through its wall, (1 − x) dT₁/dx = −N (T₁ − T); in the outlet
 * channels, fed at wall temperature, x dT₂/dx = (1 + N)(T − T₂); with x = z/L and N = h A / (ṁ c).
 */
export class ChannelGas {
  /** Temperature at the outlet face in K at the last call. */
  outletTemperature = Number.NaN;
  private readonly cells: number;
  private readonly specificHeat: number;
  /** h A in W/K, and the heat capacity of the bed in J/K. */
  private readonly transfer: number;
  private readonly bedCapacity: number;
  private readonly inletDecay: Float64Array;
  private readonly outletDecay: Float64Array;
  private decayFor = Number.NaN;

  constructor(bed: FilterBed, specificHeat: number, cells: number) {
    this.cells = cells;
    this.specificHeat = specificHeat;
    this.transfer = bed.heatTransferCoefficient * bed.filtrationAreaPerVolume * bed.volume;
    this.bedCapacity = bed.volume * bed.bulkDensity * bed.specificHeat;
    this.inletDecay = new Float64Array(cells);
    this.outletDecay = new Float64Array(cells);
  }

  /** Writes how fast the gas warms each wall, in K/s, from an offset on; gives the heat in W that it leaves in the filter. */
  heat(
    feed: { readonly massFlow: number; readonly temperature: number },
    wall: Float64Array,
    warming: Float64Array,
    offset: number,
  ): number {
    const { cells: n, inletDecay, outletDecay } = this;
    const flowCapacity = feed.massFlow * this.specificHeat;
    if (!(flowCapacity > 0)) {
      warming.fill(0, offset, offset + n);
      this.outletTemperature = wall[n - 1]!;
      return 0;
    }
    this.setDecay(this.transfer / flowCapacity);
    const rate = flowCapacity / this.bedCapacity;
    let inlet = feed.temperature;
    let outlet = wall[0]!;
    for (let i = 0; i < n; i += 1) {
      const here = wall[i]!;
      const inletNext = here + (inlet - here) * inletDecay[i]!;
      const outletNext = here + (outlet - here) * outletDecay[i]!;
      // Enthalpy that comes in less what goes out, in flows per n-th of the whole flow.
      const given = (n - i) * inlet - (n - i - 1) * inletNext - ((i + 1) * outletNext - i * outlet);
      warming[offset + i] = rate * given;
      inlet = inletNext;
      outlet = outletNext;
    }
    this.outletTemperature = outlet;
    return flowCapacity * (feed.temperature - outlet);
  }

  /** How far the gas comes to the wall temperature within each cell; kept while the flow stays. */
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
