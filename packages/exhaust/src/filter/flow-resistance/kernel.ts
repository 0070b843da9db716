/** Flow resistance Δp/(μ Q) in 1/m³ from a drop in Pa, a viscosity in Pa·s and an actual volume flow in m³/s. */
export function flowResistance(pressureDrop: number, viscosity: number, volumeFlow: number): number {
  return pressureDrop / (viscosity * volumeFlow);
}
