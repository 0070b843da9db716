/**
 * Light absorption coefficient in 1/m from the opacity (0 to below 1) over a path in m: k = −ln(1 − N)/L
 * (Beer–Lambert; UN Regulation No. 24, UN Regulation No. 49).
 */
export function absorptionFromOpacity(opacity: number, pathLength: number): number {
  return -Math.log1p(-opacity) / pathLength;
}

/** Opacity over a path in m from the light absorption coefficient in 1/m; undoes `absorptionFromOpacity`. */
export function opacityFromAbsorption(absorptionCoefficient: number, pathLength: number): number {
  return -Math.expm1(-absorptionCoefficient * pathLength);
}
