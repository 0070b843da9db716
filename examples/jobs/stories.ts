// Eighteen invented vehicles of one rural county, each with a cause that its technician does not know yet. What the right answer
// is was settled by who wrote the story, before anything was calculated.

/** What is in the exhaust, and what the sensor makes of it. */
export interface Hidden {
  /** g/L */
  readonly soot: number;
  readonly ash: number;
  readonly plugShare: number;
  /** Of the true drop; 1 if the hoses and the filter are whole. */
  readonly seen?: number;
  /** Added at all flows, Pa. */
  readonly offset?: number;
  /** Drop of another part at the highest flow, Pa, which a sensor with one tap sees too. */
  readonly pipe?: number;
}

export interface Story {
  readonly name: string;
  readonly title: string;
  readonly vehicle: string;
  readonly engine: 'van' | 'bus';
  readonly odometer: string;
  readonly complaint: string;
  readonly history: readonly string[];
  readonly hidden: Hidden;
  /** The cause in the words of the estimate. */
  readonly cause: string;
  /** Options that a good technician would take. */
  readonly plan: readonly string[];
  readonly trials?: Readonly<Record<string, string>>;
  readonly reductant?: Readonly<Record<string, unknown>>;
  readonly reductantCause?: string;
  readonly use?: Readonly<Record<string, unknown>>;
}

const whole = { hoses: 'tight', tailPipe: 'clean' } as const;
const runs = (volume: string) => ({
  runs: ['39 mL', volume, volume].map((collectedVolume) => ({ collectedVolume, duration: '60 s' })),
  nominalVolume: '50 mL',
  nominalDuration: '60 s',
});
const fluid = (percent: string) => ({ refractometerPercent: percent, fluidTemperature: '20 °C' });

export const stories: readonly Story[] = [
  {
    name: 'soot-only',
    title: 'Delivery van of a bakery: soot',
    vehicle: 'Bakery van, 2.0 L diesel',
    engine: 'van',
    odometer: '62000 km',
    complaint: 'The filter lamp came on after a week of short rounds.',
    history: ['Rounds of 3 to 6 km before dawn'],
    hidden: { soot: 11, ash: 5, plugShare: 0.5 },
    cause: 'soot',
    plan: ['clean-off-vehicle', 'test-more'],
    trials: { ...whole, gaugeBeside: 'agrees', rod: 'full-length' },
  },
  {
    name: 'ash-layer',
    title: 'Post van at high distance: ash on the walls',
    vehicle: 'Post van, 2.0 L diesel',
    engine: 'van',
    odometer: '310000 km',
    complaint: 'Regenerations come every 120 km.',
    history: ['Long main-road rounds', 'The filter was never off the vehicle'],
    hidden: { soot: 3, ash: 75, plugShare: 0.15 },
    cause: 'ash',
    plan: ['clean-off-vehicle', 'test-more'],
    trials: { ...whole, gaugeBeside: 'agrees', rod: 'full-length', resistanceRatio: '0.9' },
  },
  {
    name: 'ash-plug',
    title: 'Parcel truck at high distance: ash in the channel ends',
    vehicle: 'Parcel truck, 3.9 L diesel',
    engine: 'bus',
    odometer: '420000 km',
    complaint: 'Less power each month, and a forced regeneration did not help.',
    history: ['A complete forced regeneration two weeks ago changed nothing'],
    hidden: { soot: 1.5, ash: 80, plugShare: 0.85 },
    cause: 'ash',
    plan: ['clean-off-vehicle', 'test-more'],
    trials: { ...whole, gaugeBeside: 'agrees', rod: 'short', resistanceRatio: '0.93' },
  },
  {
    name: 'hose-leaking',
    title: 'School minibus: a hose of the sensor leaks',
    vehicle: 'School minibus, 2.0 L diesel',
    engine: 'van',
    odometer: '118000 km',
    complaint: 'A code for an implausible filter pressure.',
    history: ['The exhaust was off for a new joint last month'],
    hidden: { soot: 3, ash: 8, plugShare: 0.5, seen: 0.15 },
    cause: 'hose-leaking',
    plan: ['repair-first'],
    trials: { hoses: 'leaking', tailPipe: 'clean', gaugeBeside: 'differs' },
  },
  {
    name: 'hose-plugged',
    title: 'Street sweeper: a hose of the sensor is plugged',
    vehicle: 'Street sweeper, 3.9 L diesel',
    engine: 'bus',
    odometer: '54000 km',
    complaint: 'The lamp stays off, yet it smokes less than its age and pulls badly in the morning.',
    history: ['Works at walking pace'],
    hidden: { soot: 3, ash: 6, plugShare: 0.5, seen: 0.08, offset: 250 },
    cause: 'hose-plugged',
    plan: ['repair-first'],
    trials: { hoses: 'blocked', tailPipe: 'clean', gaugeBeside: 'differs' },
  },
  {
    name: 'hoses-swapped',
    title: 'Flatbed of a builder: the hoses of the sensor are swapped',
    vehicle: 'Flatbed, 2.0 L diesel',
    engine: 'van',
    odometer: '97000 km',
    complaint: 'A code the day after a new pressure sensor was fitted elsewhere.',
    history: ['New pressure sensor last week'],
    hidden: { soot: 2.5, ash: 7, plugShare: 0.5, seen: -1 },
    cause: 'hoses-swapped',
    plan: ['repair-first'],
    trials: { hoses: 'swapped' },
  },
  {
    name: 'sensor-zero',
    title: 'Van of a district nurse: the sensor does not read zero at rest',
    vehicle: 'Nurse van, 2.0 L diesel',
    engine: 'van',
    odometer: '88000 km',
    complaint: 'Regenerations come every 60 km.',
    history: ['Same pressure shown with the key on and the engine off'],
    hidden: { soot: 2, ash: 7, plugShare: 0.5, offset: 4200 },
    cause: 'sensor-zero',
    plan: ['repair-first', 'test-more'],
    trials: { hoses: 'tight', gaugeBeside: 'differs' },
  },
  {
    name: 'one-tap-sensor',
    title: 'Workshop van of a waterworks: a sensor with one tap sees the silencer',
    vehicle: 'Waterworks van, 2.0 L diesel',
    engine: 'van',
    odometer: '74000 km',
    complaint: 'Limp mode at raised speed.',
    history: ['A new filter three months ago changed nothing'],
    hidden: { soot: 2, ash: 2, plugShare: 0.5, pipe: 21_000 },
    cause: 'restriction-behind',
    plan: ['repair-first', 'test-more'],
    trials: { ...whole, sensorTaps: 'one', gaugeBeside: 'agrees', backPressureLost: 'behind-filter' },
  },
  {
    name: 'silencer-blocked',
    title: 'Horse transporter: the silencer is blocked',
    vehicle: 'Horse transporter, 3.9 L diesel',
    engine: 'bus',
    odometer: '205000 km',
    complaint: 'No power on the hill.',
    history: ['Stood in a barn all winter'],
    hidden: { soot: 2, ash: 10, plugShare: 0.5, pipe: 18_000 },
    cause: 'restriction-behind',
    plan: ['repair-first', 'test-more'],
    trials: { ...whole, sensorTaps: 'one', gaugeBeside: 'agrees', backPressureLost: 'behind-filter' },
  },
  {
    name: 'catalyst-blocked',
    title: 'Recovery truck: the catalyst before the filter is blocked',
    vehicle: 'Recovery truck, 3.9 L diesel',
    engine: 'bus',
    odometer: '260000 km',
    complaint: 'No power, while the filter pressure looks good.',
    history: ['Burnt oil for a month before the turbocharger was replaced'],
    hidden: { soot: 2, ash: 10, plugShare: 0.5 },
    cause: 'restriction-before',
    plan: ['repair-first', 'test-more'],
    trials: { ...whole, sensorTaps: 'two', gaugeBeside: 'agrees', backPressureLost: 'before-filter' },
  },
  {
    name: 'core-cracked',
    title: 'Camper: the core is cracked',
    vehicle: 'Camper, 2.0 L diesel',
    engine: 'van',
    odometer: '132000 km',
    complaint: 'Black tail pipe, failed the smoke test.',
    history: ['A forced regeneration elsewhere ended with a bang'],
    hidden: { soot: 2, ash: 9, plugShare: 0.5, seen: 0.3 },
    cause: 'core-damaged',
    plan: ['replace', 'test-more'],
    trials: { hoses: 'tight', tailPipe: 'sooty', gaugeBeside: 'agrees' },
  },
  {
    name: 'weak-reductant',
    title: 'Mobile shop: the reductant is weak',
    vehicle: 'Mobile shop, 3.9 L diesel with SCR',
    engine: 'bus',
    odometer: '91000 km',
    complaint: 'NOx conversion low.',
    history: ['The tank was filled from an open drum'],
    hidden: { soot: 1.5, ash: 6, plugShare: 0.5 },
    cause: 'nothing-wrong',
    plan: ['leave', 'test-more'],
    trials: whole,
    reductant: { 'reductant-concentration': fluid('25 %'), 'dosing-test': runs('50 mL') },
    reductantCause: 'weak-fluid',
  },
  {
    name: 'nozzle-blocked',
    title: 'Refuse truck: the nozzle for the reductant is partly blocked',
    vehicle: 'Small refuse truck, 3.9 L diesel with SCR',
    engine: 'bus',
    odometer: '83000 km',
    complaint: 'NOx conversion low, white crust at the nozzle.',
    history: ['Idles most of the day'],
    hidden: { soot: 1.8, ash: 6, plugShare: 0.5 },
    cause: 'nothing-wrong',
    plan: ['leave', 'test-more'],
    trials: whole,
    reductant: { 'reductant-concentration': fluid('32.5 %'), 'dosing-test': runs('38 mL') },
    reductantCause: 'low-quantity',
  },
  {
    name: 'filter-and-reductant',
    title: 'Library bus of the next county: soot, and a weak dose',
    vehicle: 'Library bus, 3.9 L diesel with SCR',
    engine: 'bus',
    odometer: '146000 km',
    complaint: 'Filter lamp, and NOx conversion low.',
    history: ['Stops every few kilometres and idles for heat'],
    hidden: { soot: 11, ash: 9, plugShare: 0.5 },
    cause: 'soot',
    plan: ['clean-off-vehicle', 'test-more'],
    trials: { ...whole, gaugeBeside: 'agrees', rod: 'full-length' },
    reductant: { 'reductant-concentration': fluid('27 %'), 'dosing-test': runs('42 mL') },
    reductantCause: 'weak-and-low',
  },
  {
    name: 'wet-after-wash',
    title: 'Hearse: the filter is wet from a wash',
    vehicle: 'Hearse, 2.0 L diesel',
    engine: 'van',
    odometer: '58000 km',
    complaint: 'Higher pressure than expected the day after the filter was washed.',
    history: ['Filter washed and fitted yesterday, not dried'],
    hidden: { soot: 0.4, ash: 2, plugShare: 0.3, seen: 2.2 },
    cause: 'wet-after-wash',
    plan: ['leave', 'test-more', 'drive'],
    trials: { ...whole, washed: 'yes' },
  },
  {
    name: 'too-hot-to-burn',
    title: 'Crew bus of a quarry: too much soot to burn',
    vehicle: 'Crew bus, 3.9 L diesel',
    engine: 'bus',
    odometer: '112000 km',
    complaint: 'Crawls uphill. Three regenerations were broken off.',
    history: ['Three forced regenerations broken off elsewhere'],
    hidden: { soot: 16, ash: 8, plugShare: 0.5 },
    cause: 'soot',
    plan: ['clean-off-vehicle'],
    trials: { ...whole, gaugeBeside: 'agrees', rod: 'full-length', backPressureLost: 'across-filter' },
  },
  {
    name: 'short-trips',
    title: 'Van of a driving school: short trips',
    vehicle: 'Driving-school van, 2.0 L diesel',
    engine: 'van',
    odometer: '41000 km',
    complaint: 'The filter lamp comes on every other week.',
    history: ['Lessons in town, the engine stopped and started all day'],
    hidden: { soot: 8.5, ash: 3, plugShare: 0.5 },
    cause: 'soot',
    plan: ['clean-off-vehicle', 'regenerate', 'test-more'],
    trials: { ...whole, gaugeBeside: 'agrees', rod: 'full-length' },
    use: {
      trips: [{ tripDistance: '4 km', tripDuration: '14 min', timesPerWeek: '45' }],
      regenerationDistance: '160 km',
    },
  },
  {
    name: 'nothing-wrong',
    title: 'Library bus, second of the county: nothing is wrong',
    vehicle: 'Library bus, 3.9 L diesel',
    engine: 'bus',
    odometer: '36000 km',
    complaint: 'Yearly check, no lamp.',
    history: ['No complaint'],
    hidden: { soot: 1.2, ash: 3, plugShare: 0.5 },
    cause: 'nothing-wrong',
    plan: ['leave', 'test-more'],
    trials: { ...whole, gaugeBeside: 'agrees' },
  },
];
