import type { Source } from '@wallflow/calculation';
import { euroSixHeavyInducement, unR83Inducement, usGuidance2025 } from './sources.js';

export type FaultClass = 'level' | 'quality' | 'consumption' | 'nox' | 'tampering';
export type CountdownStageName = 'none' | 'warning' | 'counting' | 'low-level' | 'severe' | 'no-restart';

/** A stage is reached when any one of its thresholds is: distance or time since detection, or what is left in the tank. */
export interface CountdownStage {
  readonly stage: Exclude<CountdownStageName, 'none'>;
  readonly effect: string;
  /** Distance since detection in m. */
  readonly distance?: number;
  /** Engine running time since detection in s. */
  readonly engineTime?: number;
  /** Share of the tank left, at most. */
  readonly levelAtMost?: number;
  /** Range left in m, at most. */
  readonly rangeAtMost?: number;
}

/** What one law asks for, as data: a correction of the text is a correction of a row here. */
export interface LawProfile {
  readonly name: string;
  readonly source: Source;
  readonly faults: Readonly<Partial<Record<FaultClass, readonly CountdownStage[]>>>;
  /** Engine running time in s for which a confirmed repair keeps the counter for a repeat of the fault. */
  readonly counterMemory?: number;
  readonly note: string;
}

const km = 1000;
const hour = 3600;

const lightDutyFault: readonly CountdownStage[] = [
  { stage: 'warning', effect: 'driver warning', distance: 0 },
  { stage: 'counting', effect: 'warning with the distance left, countdown to inducement', distance: 50 * km },
  {
    stage: 'no-restart',
    effect: 'the engine does not start again after it is switched off, or performance is restricted',
    distance: 800 * km,
  },
];

const heavyDutyFault: readonly CountdownStage[] = [
  { stage: 'warning', effect: 'driver warning', engineTime: 0 },
  { stage: 'low-level', effect: 'torque reduced by a quarter', engineTime: 10 * hour },
  { stage: 'severe', effect: 'road speed limited to 20 km/h, after the next stop, restart or refuelling', engineTime: 20 * hour },
];

const usFinalStage: readonly CountdownStage[] = [
  {
    stage: 'severe',
    effect: 'final stage begins: road speed limited to 25 mph (40 km/h)',
    distance: 8400 * 1609.344,
    engineTime: 160 * hour,
  },
];

export const lawProfiles = {
  'eu-light-duty': {
    name: 'EU and UN, cars and vans',
    source: unR83Inducement,
    faults: {
      level: [
        { stage: 'warning', effect: 'driver warning, growing more insistent', rangeAtMost: 2400 * km },
        {
          stage: 'no-restart',
          effect: 'the engine does not start again, or performance is restricted, until it is refilled',
          rangeAtMost: 0,
        },
      ],
      quality: lightDutyFault,
      consumption: lightDutyFault,
      nox: lightDutyFault,
    },
    note: 'A vehicle may warn earlier and may use any of the four methods of inducement that the rule allows. One fluid supplier prints 1000 km where 800 km is remembered.',
  },
  'eu-heavy-duty': {
    name: 'EU and UN, Euro VI lorries and buses',
    source: euroSixHeavyInducement,
    faults: {
      level: [
        { stage: 'warning', effect: 'driver warning', levelAtMost: 0.1 },
        { stage: 'low-level', effect: 'torque reduced by a quarter', levelAtMost: 0.025 },
        { stage: 'severe', effect: 'road speed limited to 20 km/h, after the next stop, restart or refuelling', levelAtMost: 0 },
      ],
      quality: heavyDutyFault,
      consumption: heavyDutyFault,
      tampering: [
        { stage: 'warning', effect: 'driver warning', engineTime: 0 },
        { stage: 'low-level', effect: 'torque reduced by a quarter', engineTime: 36 * hour },
        { stage: 'severe', effect: 'road speed limited to 20 km/h, after the next stop, restart or refuelling', engineTime: 100 * hour },
      ],
    },
    counterMemory: 40 * hour,
    note: 'A vehicle may act earlier than the rule asks for.',
  },
  'us-guidance-2025': {
    name: 'US on-road heavy vehicles to model year 2026, guidance of August 2025',
    source: usGuidance2025,
    faults: { level: usFinalStage, quality: usFinalStage, consumption: usFinalStage, nox: usFinalStage, tampering: usFinalStage },
    note: 'Voluntary guidance. It has two milder stages before, whose limits were not available here. Vehicles without the update act by their older programme.',
  },
} as const satisfies Record<string, LawProfile>;

export type LawProfileId = keyof typeof lawProfiles;
