import type { OxidationLaw } from '../../soot/oxidation/kernel.js';

/** (1 − e^(−x)) / x: what is left of a first-order rate when the oxidant runs short; 1 without shortage. */
export function oxidantSupplyFactor(x: number): number {
  return x < 1e-9 ? 1 : -Math.expm1(-x) / x;
}

/**
 * One oxidant on its way along the inlet channels into the soot layer, per filter volume.
 *
 * Without diffusion the layer gets what the gas carries through it, and uses it up on the way (Konstandopoulos et al. 2000,
 * Eq. A55). With diffusion the layer is well mixed: what the gas carries and what diffuses from the channel together equal
 * what leaves and what is used, y_L (u + K) = u y + M (y − y_L); the channel loses (1 − x) dy/dx = −(M/u)(y − y_L).
 */
export class Oxidant {
  private readonly law: OxidationLaw;
  /** Moles of oxidant per kg of soot. */
  private readonly perSoot: number;
  private readonly gasConstant: number;
  private readonly cells: number;
  /** ln((1 − x) at the end of a cell over that at its start). */
  private readonly logs: Float64Array;

  constructor(law: OxidationLaw, perSoot: number, gasConstant: number, cells: number) {
    this.law = law;
    this.perSoot = perSoot;
    this.gasConstant = gasConstant;
    this.cells = cells;
    this.logs = Float64Array.from({ length: cells }, (_, i) => Math.log((cells - i - 1) / (cells - i)));
  }

  /**
   * Adds the rate of burning in every cell in 1/s. `supply` is the molar gas flow through the wall and `transfer` the molar
   * transfer to the layer, both per filter volume in mol/(m³·s); `fraction` is the mole fraction at the inlet face.
   */
  addRates(wall: Float64Array, soot: Float64Array, supply: number, transfer: number, fraction: number, rates: Float64Array): void {
    if (!(fraction > 0 && supply > 0)) return;
    const { cells: n, perSoot, gasConstant, logs } = this;
    const { preExponential, activationEnergy, oxidantOrder, referenceFraction } = this.law;
    const reach = supply + transfer;
    let y = fraction;
    for (let i = 0; i < n; i += 1) {
      const share = y / referenceFraction;
      const k =
        preExponential * Math.exp(-activationEnergy / (gasConstant * wall[i]!)) * (oxidantOrder === 1 ? share : share ** oxidantOrder);
      const use = (perSoot * k * soot[i]!) / y;
      if (transfer === 0) {
        rates[i]! += k * oxidantSupplyFactor(use / supply);
        continue;
      }
      const decay = (transfer * use) / (supply * (reach + use));
      const next = i === n - 1 ? 0 : y * Math.exp(decay * logs[i]!);
      const mean = ((n - i) * y - (n - i - 1) * next) / (1 + decay);
      rates[i]! += (k * (mean / y) * reach) / (reach + use);
      y = next;
      if (y < 1e-30 * fraction) return;
    }
  }
}
