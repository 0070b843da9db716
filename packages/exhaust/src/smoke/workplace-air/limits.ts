import type { Source } from '@wallflow/calculation';
import { dangerAtOnce, eh40, euExposureLimits } from '../sources.js';

export type WorkplaceGas = 'carbon-monoxide' | 'nitric-oxide' | 'nitrogen-dioxide';

/** Limits in air as mole fractions: mean over eight hours and over fifteen minutes, and what endangers life at once. */
export interface WorkplaceLimit {
  readonly gas: WorkplaceGas;
  readonly name: string;
  readonly eightHours: number;
  readonly fifteenMinutes?: number;
  readonly dangerous: number;
  readonly sources: readonly [Source, ...Source[]];
}

/** The values of EH40 (2018), which are those of Directive (EU) 2017/164; all from memory. The levels of danger are those of NIOSH. */
export const workplaceLimits: Readonly<Record<WorkplaceGas, WorkplaceLimit>> = {
  'carbon-monoxide': {
    gas: 'carbon-monoxide',
    name: 'carbon monoxide',
    eightHours: 20e-6,
    fifteenMinutes: 100e-6,
    dangerous: 1200e-6,
    sources: [eh40, euExposureLimits, dangerAtOnce],
  },
  'nitric-oxide': {
    gas: 'nitric-oxide',
    name: 'nitric oxide, NO',
    eightHours: 2e-6,
    dangerous: 100e-6,
    sources: [eh40, euExposureLimits, dangerAtOnce],
  },
  'nitrogen-dioxide': {
    gas: 'nitrogen-dioxide',
    name: 'nitrogen dioxide, NO2',
    eightHours: 0.5e-6,
    fifteenMinutes: 1e-6,
    dangerous: 13e-6,
    sources: [eh40, euExposureLimits, dangerAtOnce],
  },
};

/** Diesel exhaust as elemental carbon in air, kg/m³, mean over eight hours: 0.05 mg/m³. */
export const elementalCarbonLimit = 0.05e-6;
