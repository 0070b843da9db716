export const conversionVerdicts = {
  converting: 'converts as it should',
  poor: 'converts too little',
  slip: 'converts, but ammonia slips and is read as NOx',
  'cannot-tell': 'not clear from these readings: too little conversion and ammonia slip read the same',
  'too-cold': 'too cold to judge',
  'temperature-unknown': 'not clear: catalyst temperature unknown, and a cold one converts little',
  'too-little-nox': 'not clear: too little NOx before the catalyst for the error of the sensors',
  'no-signal': 'not proven: the sensor after the catalyst reads zero, as a dead one or one that is not ready does',
  contradiction: 'more NOx after the catalyst than before it: check sensors, order and units first',
} as const;

export type ConversionVerdict = keyof typeof conversionVerdicts;

export interface ConversionVerdictInput {
  readonly apparent: number;
  /** Conversion with the ammonia taken out, where that is known. */
  readonly corrected: number | undefined;
  readonly wanted: number;
  /** Whether the catalyst is below the temperature to judge from; undefined where its temperature is not known. */
  readonly tooCold: boolean | undefined;
  /** Whether the NOx before the catalyst is below what the error of the sensors lets judge. */
  readonly tooLittle: boolean;
  /** Whether the sensor after the catalyst reads exactly nothing. */
  readonly silent: boolean;
}

export function conversionVerdict({ apparent, corrected, wanted, tooCold, tooLittle, silent }: ConversionVerdictInput): ConversionVerdict {
  if (tooLittle) return 'too-little-nox';
  if (silent) return 'no-signal';
  if (apparent < 0 && (corrected === undefined || corrected < 0)) return 'contradiction';
  if (apparent >= wanted) return 'converting';
  if (corrected !== undefined && corrected >= wanted) return 'slip';
  if (tooCold === undefined) return 'temperature-unknown';
  if (tooCold) return 'too-cold';
  return corrected === undefined ? 'cannot-tell' : 'poor';
}
