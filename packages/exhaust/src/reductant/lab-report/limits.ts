import type { SourceMark } from '@wallflow/calculation';

/** One row of the quality limits of ISO 22241-1, as mass fractions. */
export interface LabLimit {
  readonly name: string;
  readonly min?: number;
  readonly max: number;
  /** How far the value was checked. */
  readonly mark: SourceMark;
}

const perCent = 0.01;
const milligramPerKilogram = 1e-6;

const trace = (name: string, limit: number): LabLimit => ({ name, max: limit * milligramPerKilogram, mark: 'from memory' });

/** ISO 22241-1: urea, biuret, alkalinity and aldehydes read in its published summary, the rest from memory. */
export const labLimits = {
  ureaFraction: { name: 'urea', min: 31.8 * perCent, max: 33.2 * perCent, mark: 'read' },
  biuret: { name: 'biuret', max: 0.3 * perCent, mark: 'read' },
  ammoniaAlkalinity: { name: 'alkalinity as ammonia', max: 0.2 * perCent, mark: 'read' },
  aldehydes: { name: 'aldehydes', max: 5 * milligramPerKilogram, mark: 'read' },
  insolubles: trace('insoluble matter', 20),
  phosphate: trace('phosphate', 0.5),
  calcium: trace('calcium', 0.5),
  iron: trace('iron', 0.5),
  aluminium: trace('aluminium', 0.5),
  magnesium: trace('magnesium', 0.5),
  sodium: trace('sodium', 0.5),
  potassium: trace('potassium', 0.5),
  copper: trace('copper', 0.2),
  zinc: trace('zinc', 0.2),
  chromium: trace('chromium', 0.2),
  nickel: trace('nickel', 0.2),
} as const satisfies Record<string, LabLimit>;

export type LabProperty = keyof typeof labLimits;
export const labProperties = Object.keys(labLimits) as readonly LabProperty[];
