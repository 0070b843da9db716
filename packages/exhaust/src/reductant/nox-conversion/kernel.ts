export interface ConversionReadings {
  /** Mole fractions on the same basis, both wet or both dry. */
  readonly upstream: number;
  readonly downstream: number;
  /** Reading of the downstream sensor per ammonia in the gas. */
  readonly crossSensitivity: number;
}

/** Conversion as the two readings show it; too low where ammonia slips, as the sensor reads it as NOx. */
export function apparentConversion({ upstream, downstream }: Pick<ConversionReadings, 'upstream' | 'downstream'>): number {
  return 1 - downstream / upstream;
}

/** Conversion when the ammonia mole fraction behind the catalyst is known. */
export function conversionWithAmmonia({ upstream, downstream, crossSensitivity }: ConversionReadings, ammonia: number): number {
  return 1 - (downstream - crossSensitivity * ammonia) / upstream;
}

export interface AmmoniaBalance {
  readonly conversion: number;
  /** Mole fraction of ammonia behind the catalyst; negative where the dosed ammonia does not explain the readings. */
  readonly ammoniaSlip: number;
}

/**
 * Conversion and slip from the ratio that is dosed, when no ammonia is stored, released or burnt: the slip is
 * α x − s η x and the reading is (1 − η) x plus the cross-sensitivity times the slip.
 */
export function ammoniaBalance(readings: ConversionReadings, dosedRatio: number, ammoniaPerNox: number): AmmoniaBalance {
  const { upstream, downstream, crossSensitivity } = readings;
  const conversion = (1 + crossSensitivity * dosedRatio - downstream / upstream) / (1 + crossSensitivity * ammoniaPerNox);
  return { conversion, ammoniaSlip: (dosedRatio - ammoniaPerNox * conversion) * upstream };
}
