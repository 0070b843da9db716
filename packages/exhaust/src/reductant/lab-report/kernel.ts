import { type LabLimit, type LabProperty, labLimits, labProperties } from './limits.js';

export type LabFinding = 'within' | 'exceeds' | 'below' | 'not-measured';

/** Where one value of a laboratory stands to its limits. */
export function labFinding(value: number | undefined, { min, max }: Pick<LabLimit, 'min' | 'max'>): LabFinding {
  if (value === undefined) return 'not-measured';
  if (value > max) return 'exceeds';
  return min !== undefined && value < min ? 'below' : 'within';
}

export type LabVerdict = 'meets' | 'fails' | 'incomplete';

/** The whole report: it fails by one finding, and meets only where everything was measured. */
export function labVerdict(values: Readonly<Partial<Record<LabProperty, number | undefined>>>): LabVerdict {
  const findings = labProperties.map((property) => labFinding(values[property], labLimits[property]));
  if (findings.some((finding) => finding === 'exceeds' || finding === 'below')) return 'fails';
  return findings.includes('not-measured') ? 'incomplete' : 'meets';
}
