/**
 * Mole fraction at the flow meter from one read where water had been removed: x (1 − x_H2O,exh)/(1 − x_H2O,meas)
 * (40 CFR 1065.659, Eq. 1065.659-1).
 */
export function removedWaterCorrection(reading: number, waterAtReading: number, waterInExhaust: number): number {
  return (reading * (1 - waterInExhaust)) / (1 - waterAtReading);
}
