import type { ReasonedRuling } from './filter-rulings.js';
import type { PartWork } from './inputs.js';

/** A stored value that belongs to parts beside the filter. */
export interface PartRuling extends ReasonedRuling {
  readonly code: string;
  readonly what: string;
  /** One of these makes the value untrue. */
  readonly after: readonly PartWork[];
}

/** The sensor itself was changed, whatever was done to the filter. */
export const pressureSensorRuling: ReasonedRuling = {
  verdict: 'relearn',
  proofs: ['sensors'],
  why: 'The old correction belongs to the old sensor or hoses and makes an error of its own.',
};

/** What each work on a part makes true, in the order of the table. */
export const partRulings: readonly PartRuling[] = [
  {
    code: 'temperature_sensors',
    what: 'Exhaust temperature sensor: changed-part routine',
    after: ['temperatureSensor'],
    verdict: 'relearn',
    proofs: ['sensors'],
    why: 'The old corrections belong to the old sensor.',
  },
  {
    code: 'nox_sensors',
    what: 'NOx sensor: adaptation and self-test',
    after: ['noxSensor'],
    verdict: 'relearn',
    proofs: ['sensors'],
    why: 'The old corrections belong to the old sensor, and its heater must be ready.',
  },
  {
    code: 'air_mass',
    what: 'Air mass adaptation',
    after: ['airMassSensor'],
    verdict: 'relearn',
    proofs: ['sensors'],
    why: 'The soot estimate of the vehicle uses it.',
  },
  {
    code: 'recirculation',
    what: 'Position of the exhaust recirculation valve',
    after: ['recirculationValve'],
    verdict: 'relearn',
    proofs: [],
    why: 'The soot estimate of the vehicle uses it.',
  },
  {
    code: 'fuel_injectors',
    what: 'Quantity codes of the fuel injectors',
    after: ['fuelInjectors'],
    verdict: 'set',
    proofs: [],
    why: 'Enter the codes printed on the injectors. The soot estimate of the vehicle uses them.',
  },
  {
    code: 'dosing',
    what: 'Learned dosing factor',
    after: ['reductantParts'],
    verdict: 'relearn',
    proofs: ['cause', 'dosing'],
    why: 'It still makes up for the old injector: over-dosing, ammonia slip and crystals. Until the cause is repaired it is evidence.',
  },
  {
    code: 'reductant',
    what: 'Reductant: priming, level and quality detection',
    after: ['reductantParts', 'reductantRefilled'],
    verdict: 'relearn',
    proofs: ['reductant'],
    why: 'The vehicle must see the new filling, with no air in the line.',
  },
  {
    code: 'scr_catalyst',
    what: 'SCR catalyst: ageing, stored ammonia, efficiency monitor',
    after: ['scrCatalyst'],
    verdict: 'reset',
    proofs: [],
    why: 'A new catalyst has not aged and stores no ammonia yet.',
  },
  {
    code: 'oil',
    what: 'Oil service and dilution counter',
    after: ['oilChanged'],
    verdict: 'reset',
    proofs: [],
    why: 'The fuel in the oil went out with the old oil.',
  },
  {
    code: 'countdown',
    what: 'Countdown of a NOx or reductant fault',
    after: ['noxFault'],
    verdict: 'confirm',
    proofs: ['cause', 'reductant', 'sensors'],
    why: 'Drive cycle and sensor check end it. After a plain clear it can stay or come back.',
  },
];
