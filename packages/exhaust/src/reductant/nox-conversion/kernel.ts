export interface ConversionReadings {
  /** Mole fractions on the same basis, both wet or both dry. */
  readonly noxBefore: number;
  readonly noxAfter: number;
  /** Reading of the noxAfter sensor per ammonia in the gas. */
  readonly crossSensitivity: number;
}

/** Conversion as the two readings show it; too low where ammonia slips, as the sensor reads it as NOx. */
export function apparentConversion({ noxBefore, noxAfter }: Pick<ConversionReadings, 'noxBefore' | 'noxAfter'>): number {
  return 1 - noxAfter / noxBefore;
}

/** Conversion when the ammonia mole fraction after the catalyst is known. */
export function conversionWithAmmonia({ noxBefore, noxAfter, crossSensitivity }: ConversionReadings, ammonia: number): number {
  return 1 - (noxAfter - crossSensitivity * ammonia) / noxBefore;
}

export interface AmmoniaBalance {
  readonly conversion: number;
  /** Mole fraction of ammonia after the catalyst; negative where the dosed ammonia does not explain the readings. */
  readonly ammoniaSlip: number;
}

/**
 * Conversion and slip from the ratio that is dosed, when no ammonia is stored, released or burnt: the slip is
 * α x − s η x and the reading is (1 − η) x plus the cross-sensitivity times the slip.
 */
export function ammoniaBalance(readings: ConversionReadings, dosedRatio: number, ammoniaPerNox: number): AmmoniaBalance {
  const { noxBefore, noxAfter, crossSensitivity } = readings;
  const conversion = (1 + crossSensitivity * dosedRatio - noxAfter / noxBefore) / (1 + crossSensitivity * ammoniaPerNox);
  return { conversion, ammoniaSlip: (dosedRatio - ammoniaPerNox * conversion) * noxBefore };
}
