import { molarGasConstant } from '../../gas/constants.js';
import { molarMassOfCarbon, type OxidationLaw } from '../../soot/oxidation/kernel.js';
import type { FilterBed, SootCombustion } from './kernel-bed.js';
import { ChannelGas } from './kernel-channel-gas.js';
import type { FeedSegment } from './kernel-feed.js';
import { Oxidant } from './kernel-oxidant.js';

/**
 * Right-hand side of the axial model. State, for n cells from inlet to outlet: θ (n values), the exponent of the burn-off,
 * so that the soot load is s₀ e^(−θ) and never negative; H (n values), the heat of bed and soot together over the heat
 * capacity of the bed, in K, so that T = H − a s with a = heat of combustion / bed heat capacity; and the heat that the gas
 * has left in the filter, in J.
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
  readonly gas: ChannelGas;
  private readonly supplyPerFlow: number;
  private readonly transfer: number;
  private readonly oxygen: Oxidant | undefined;
  private readonly nitrogenDioxide: Oxidant | undefined;
  private readonly soot: Float64Array;
  /** Rate in 1/s at which a cell takes on the temperature of a neighbour. */
  readonly conduction: number;

  constructor(bed: FilterBed, combustion: SootCombustion, soot0: Float64Array) {
    this.cells = soot0.length;
    this.size = 2 * this.cells + 1;
    this.soot0 = soot0;
    this.gas = new ChannelGas(bed, combustion.gasSpecificHeat, this.cells);
    this.supplyPerFlow = 1 / (combustion.gasMolarMass * bed.volume);
    this.transfer = (bed.oxidantTransferCoefficient ?? 0) * bed.filtrationAreaPerVolume;
    // C + (1 − f/2) O₂ and C + (2 − f) NO₂, with the share f of the carbon that becomes CO.
    this.oxygen = this.oxidantOf(combustion, combustion.kinetics.oxygen, 1 - combustion.carbonMonoxideShare / 2);
    this.nitrogenDioxide = this.oxidantOf(combustion, combustion.kinetics.nitrogenDioxide, 2 - combustion.carbonMonoxideShare);
    this.soot = new Float64Array(this.cells);
    const heatCapacity = bed.bulkDensity * bed.specificHeat;
    this.risePerLoad = combustion.heatOfCombustion / heatCapacity;
    this.conduction = (bed.axialConductivity / heatCapacity) * (this.cells / bed.length) ** 2;
    this.temperature = new Float64Array(this.cells);
  }

  /** State at the start, from the wall temperature of every cell in K. */
  start(temperature: ArrayLike<number>): Float64Array {
    const state = new Float64Array(this.size);
    for (let i = 0; i < this.cells; i += 1) state[this.cells + i] = temperature[i]! + this.risePerLoad * this.soot0[i]!;
    return state;
  }

  derivative = (time: number, state: Float64Array, slope: Float64Array): void => {
    const { cells: n, soot, soot0, risePerLoad, temperature, transfer, conduction } = this;
    const feed = this.feed!;
    feed.at(time);
    const supply = feed.massFlow * this.supplyPerFlow;
    for (let i = 0; i < n; i += 1) {
      soot[i] = soot0[i]! * Math.exp(-state[i]!);
      temperature[i] = state[n + i]! - risePerLoad * soot[i]!;
      slope[i] = 0;
    }
    this.oxygen?.addRates(temperature, soot, supply, transfer, feed.oxygen, slope);
    this.nitrogenDioxide?.addRates(temperature, soot, supply, transfer, feed.nitrogenDioxide, slope);
    slope[2 * n] = this.gas.heat(feed, temperature, slope, n);
    for (let i = 0; i < n; i += 1) {
      const left = i > 0 ? temperature[i - 1]! - temperature[i]! : 0;
      const right = i < n - 1 ? temperature[i + 1]! - temperature[i]! : 0;
      slope[n + i]! += conduction * (left + right);
    }
  };

  private oxidantOf(combustion: SootCombustion, law: OxidationLaw | undefined, perCarbon: number): Oxidant | undefined {
    if (law === undefined) return undefined;
    return new Oxidant(law, perCarbon / molarMassOfCarbon, combustion.gasConstant ?? molarGasConstant, this.cells);
  }
}
