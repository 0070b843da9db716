/** Fuel of regenerations per distance in m³/m, from the fuel of one in m³ and the distance between two in m. */
export function regenerationFuelPerDistance(fuelPerEvent: number, distanceBetween: number): number {
  return fuelPerEvent / distanceBetween;
}
