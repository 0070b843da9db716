import { type CheckedOf, choice, flag, optional, quantity } from '@wallflow/calculation';
import { mass } from '@wallflow/units';

/** Work on a part. What nobody mentions counts as not worked on, so its value is left alone. */
const work = (label: string, example: boolean, description?: string) =>
  flag({
    label,
    example,
    default: [false, 'not done unless said; what was not worked on is left as it is'],
    ...(description === undefined ? {} : { description }),
  });

/** A proof. Left out it is not known, and not known is not a yes. */
const proof = (label: string, description?: string) =>
  optional(flag({ label, example: true, ...(description === undefined ? {} : { description }) }));

const done = {
  filterWork: choice({
    label: 'Work on the filter',
    options: {
      none: 'none',
      'on-vehicle': 'cleaned on the vehicle',
      'off-vehicle': 'removed, cleaned and fitted again',
      new: 'new filter fitted',
      exchange: 'reconditioned exchange filter fitted',
      unknown: 'not known',
    },
    example: 'off-vehicle',
  }),
  pressureSensor: work('Filter pressure sensor or its hoses replaced', false),
  temperatureSensor: work('Exhaust temperature sensor replaced', false),
  noxSensor: work('NOx sensor replaced', false),
  airMassSensor: work('Air mass sensor replaced', false),
  recirculationValve: work('Exhaust recirculation valve replaced or cleaned', false),
  fuelInjectors: work('Fuel injectors replaced', false),
  reductantParts: work('Reductant injector, pump or tank replaced or cleaned', false),
  reductantRefilled: work('Reductant drained and refilled', false),
  scrCatalyst: work('New SCR catalyst fitted', false),
  oilChanged: work('Engine oil changed', false),
  noxFault: work('NOx or reductant fault with a warning or a countdown', false),
};

const proven = {
  emissionComplete: proof(
    'All emission parts fitted and working',
    'Filter, catalysts, sensors, exhaust recirculation and dosing, with parts approved for this vehicle.',
  ),
  saved: proof('Codes, freeze frames, counters and learned values saved', 'As they are now, before anything is cleared or reset.'),
  batterySupport: proof('Battery charger connected', 'At least 12.4 V at rest and 13.5 V charging; twice that on a 24 V system.'),
  causeRepaired: proof('Cause of the fault repaired and tested', 'Yes as well if no fault code was ever stored.'),
  regenerationVerified: proof(
    'Complete regeneration after the work verified',
    'Hot enough and long enough, with the pressure drop falling until it stayed level.',
  ),
  dropVerified: proof('Pressure drop verified at comparable flow', 'The resistance fell as far as a clean should make it.'),
  sensorsPlausible: proof(
    'Sensors checked and plausible',
    'Ignition on, engine off and cold: pressure drop steady and near zero, hoses the right way round, dry and free, temperatures agree, NOx sensors report no fault.',
  ),
  dosingTestPassed: proof('Dosing test passed', 'Quantity, spray, no dripping.'),
  reductantInOrder: proof('Reductant measured and in order', 'Urea content right, and no oil, fuel, coolant or water in it.'),
};

const ash = {
  ashBasis: optional(
    choice({
      label: 'How the ash left in the filter is known',
      options: { weighed: 'weighed hot, baked free of soot', estimated: 'estimated' },
      example: 'weighed',
    }),
  ),
  residualAsh: optional(
    quantity(mass, {
      symbol: 'm_a',
      label: 'Ash left in the filter',
      description: 'Weight hot and free of soot, less the weight when new.',
      range: '0 g <= x <= 10 kg',
      example: '35 g',
      units: ['g', 'kg'],
    }),
  ),
  ashUncertainty: quantity(mass, {
    symbol: 'u(m_a)',
    label: 'Uncertainty of that ash',
    range: '0 g < x <= 2 kg',
    units: ['g', 'kg'],
    default: ['5 g', 'a workshop scale at its worst, common practice, no source'],
  }),
};

const soot = {
  mostSoot: optional(
    quantity(mass, {
      symbol: 'm_{s,max}',
      label: 'Most soot that the readings after the work allow',
      description: 'Upper end of the estimate by pressure drop. The soot value is then set to it, and to zero only for a new filter.',
      range: '0 g <= x <= 2 kg',
      example: '16 g',
      units: ['g', 'kg'],
    }),
  ),
};

export const resetInputs = { ...done, ...ash, ...soot, ...proven };

/** Checked values in SI. */
export type ResetInput = CheckedOf<typeof resetInputs>;

export type FilterWork = ResetInput['filterWork'];

/** The inputs that say whether a part was worked on. */
export type PartWork = Exclude<keyof typeof done, 'filterWork'>;
