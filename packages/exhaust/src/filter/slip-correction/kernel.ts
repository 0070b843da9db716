/** Slip (Cunningham) factor at a Knudsen number: Konstandopoulos 2000 App. II, Eqs A17 to A20. */
export function slipFactor(knudsenNumber: number): number {
  if (knudsenNumber === 0) return 1;
  return 1 + knudsenNumber * (1.257 + 0.4 * Math.exp(-1.1 / knudsenNumber));
}

/** Knudsen number of a layer of grains or pores of a diameter: twice the mean free path over it. */
export function knudsenNumber(meanFreePath: number, diameter: number): number {
  return (2 * meanFreePath) / diameter;
}

/** Permeability at one mean free path from that at another, both in m: k ∝ slip factor (Konstandopoulos 2008 Eq. 13). */
export function slipCorrectedPermeability(permeability: number, diameter: number, knownPath: number, newPath: number): number {
  return (permeability * slipFactor(knudsenNumber(newPath, diameter))) / slipFactor(knudsenNumber(knownPath, diameter));
}
