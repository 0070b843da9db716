import { choice, listOrNone, optional, quantity, text } from '@wallflow/calculation';
import { calculations as exhaust } from '@wallflow/exhaust/calculations';
import {
  absolutePressure,
  gaugePressure,
  length,
  mass,
  massFlow,
  money,
  particleNumberConcentration,
  ratio,
  rotationalSpeed,
  temperature,
  time,
  volume,
} from '@wallflow/units';
import * as z from 'zod/mini';
import { filterConditionCalculation } from '../filter-condition/definition.js';
import { resetInputs } from '../reset-advice/inputs.js';
import { channelRange } from './channels.js';
import { type FileOf, head, lines, record, rows } from './section.js';
import { readingList } from './typed-readings.js';

/** Some inputs of a calculation, as it describes them itself. */
function inputsOf<const F extends string>(id: string, keys: readonly F[]): z.ZodMiniObject<Readonly<Record<F, z.core.$ZodType>>> {
  const found = [...exhaust, filterConditionCalculation].find((calculation) => calculation.id === id);
  const shape = found?.spec.inputs.shape as unknown as Readonly<Record<string, z.core.$ZodType>> | undefined;
  return z.strictObject(
    Object.fromEntries(
      keys.map((key) => {
        const field = shape?.[key];
        if (field === undefined) throw new Error(`${id} has no input ${key}`);
        return [key, field];
      }),
    ) as Readonly<Record<F, z.core.$ZodType>>,
  );
}

/** All inputs of a calculation but those that the job works out itself. */
function inputsBut(id: string, but: readonly string[]) {
  const found = exhaust.find((calculation) => calculation.id === id);
  return inputsOf(
    id,
    Object.keys(found?.spec.inputs.shape ?? {}).filter((key) => !but.includes(key)),
  );
}

/** The fields of one row of a calculation's list. */
function rowFields(id: string, key: string): z.core.$ZodObject {
  const field = inputsOf(id, [key])._zod.def.shape[key] as unknown as z.core.$ZodArray<z.core.$ZodObject>;
  return field._zod.def.element;
}

const words = (label: string, example: string, description?: string) =>
  text({ label, example, maxLength: 2000, ...(description === undefined ? {} : { description }) });
const line = (label: string, example: string, description?: string) =>
  text({ label, example, maxLength: 200, ...(description === undefined ? {} : { description }) });

const permissionFields = inputsBut('regeneration-permission', [
  'substrate',
  // Of the section about the filter.
  'filterVolume',
  'measuredSootLoad',
  'measuredSootLoadUncertainty',
  'pressureSensorZero',
  'coolantTemperature',
]);

// The job takes both from its readings.
const { dropVerified: _, mostSoot: __, ...resetFields } = resetInputs;

const readingsAfter = listOrNone(readingList._zod.def.element, {
  label: 'Readings after the work',
  description: 'At the same engine speeds as before; left out until the work is done.',
  max: 50,
  example: [{ engineSpeed: '2200 rpm', pressureDrop: '14 mbar', gasTemperature: '184 °C', airMassFlow: '286 kg/h' }],
});

/** A gauge in the exhaust before the filter, which shows what lies behind the filter as well. */
const gaugeReadings = listOrNone(
  z.strictObject({
    engineSpeed: quantity(rotationalSpeed, {
      symbol: 'n',
      label: 'Engine speed',
      range: channelRange('engineSpeed'),
      example: '2200 rpm',
      units: ['rpm'],
    }),
    backPressure: quantity(gaugePressure, {
      symbol: 'p_b',
      label: 'Back-pressure before the filter',
      range: '-100 <= x <= 2000 mbar',
      example: '110 mbar',
      units: ['mbar', 'kPa', 'bar', 'psi'],
    }),
    gasTemperature: optional(
      quantity(temperature, {
        symbol: 'T',
        label: 'Gas temperature before the filter',
        range: channelRange('gasTemperature'),
        example: '206 °C',
      }),
    ),
    airMassFlow: optional(
      quantity(massFlow, {
        symbol: '\\dot m_a',
        label: 'Air mass flow',
        range: channelRange('airMassFlow'),
        example: '300 kg/h',
        units: ['kg/h', 'g/s'],
      }),
    ),
  }),
  {
    label: 'Gauge before the filter',
    description: 'Back-pressure by a gauge at raised speed: it tells a blocked filter from a pipe that is in the way.',
    max: 20,
    example: [{ engineSpeed: '2200 rpm', backPressure: '110 mbar', gasTemperature: '206 °C' }],
  },
);

/** Trials that tell causes apart which readings alone cannot. */
const trialFields = z.strictObject({
  hoses: optional(
    choice({
      label: 'Hoses of the pressure sensor',
      description: 'Taken off and tested with a hand pump, each for itself.',
      options: { tight: 'tight and open', leaking: 'leaking', blocked: 'blocked', swapped: 'swapped' },
      example: 'tight',
    }),
  ),
  tailPipe: optional(
    choice({
      label: 'Inside of the tail pipe',
      description: 'Wiped with a cloth, well inside.',
      options: { clean: 'clean', sooty: 'black with soot' },
      example: 'clean',
    }),
  ),
  gaugeBeside: optional(
    choice({
      label: 'Gauge beside the sensor, at raised speed',
      options: { agrees: 'shows the same', differs: 'shows something else' },
      example: 'agrees',
    }),
  ),
  backPressureLost: optional(
    choice({
      label: 'Where most of the back-pressure is lost',
      description: 'By taps along the exhaust.',
      options: {
        'across-filter': 'across the filter',
        'before-filter': 'before the filter',
        'behind-filter': 'behind the filter',
        nowhere: 'nowhere in particular',
      },
      example: 'across-filter',
    }),
  ),
  sensorTaps: optional(
    choice({
      label: 'Taps of the pressure sensor',
      description: 'A sensor with one tap shows what lies behind the filter as well.',
      options: { two: 'before and behind the filter', one: 'before the filter only' },
      example: 'two',
    }),
  ),
  washed: optional(
    choice({
      label: 'Filter washed in the last days',
      options: { yes: 'yes, it may still be wet', no: 'no' },
      example: 'no',
    }),
  ),
  rod: optional(
    choice({
      label: 'Rod into the inlet channels',
      options: { 'full-length': 'goes in to the plugs', short: 'stops short in most of them' },
      example: 'full-length',
    }),
  ),
  resistanceRatio: optional(
    quantity(ratio, {
      symbol: 'r',
      label: 'Response to a complete regeneration: flow resistance after ÷ before',
      description: 'Only of a regeneration that was seen to run to its end.',
      range: '0 <= x <= 5',
      example: '0.4',
    }),
  ),
  particleNumber: optional(
    quantity(particleNumberConcentration, {
      symbol: 'N',
      label: 'Particles at idle',
      description: 'By a particle counter at the tail pipe.',
      range: '0 <= x <= 100000000 1/cm3',
      example: '5000 1/cm3',
      units: ['1/cm3'],
    }),
  ),
  weighedLoad: optional(
    quantity(mass, {
      symbol: 'm',
      label: 'Weight of the filter above its new weight',
      description: 'Weighed hot, taken off the vehicle.',
      range: '0 g <= x <= 10 kg',
      example: '134 g',
      units: ['g', 'kg'],
    }),
  ),
});

/**
 * The whole job, once: each section with its place in the file and its fields. Form, file, JSON Schema, messages and the way from
 * a problem to its field are made from this list; an input that is added here is known to all of them.
 */
export const jobSections = [
  head(
    'about',
    {
      title: ['title'],
      vehicle: ['vehicle', 'description'],
      odometer: ['vehicle', 'odometer'],
      date: ['date'],
      reference: ['reference'],
      technician: ['technician'],
      complaint: ['complaint'],
    },
    z.strictObject({
      title: optional(line('Title of the sheet', 'Demo: library bus with a loaded filter', 'Left empty, it is made from the vehicle.')),
      vehicle: line('Vehicle', 'Library bus, 3.9 L diesel with particulate filter and SCR'),
      odometer: optional(line('Odometer', '146300 km')),
      date: line('Date', '2026-03-12', 'Year, month, day.'),
      reference: optional(line('Reference', 'BUS-7', 'Your own number of the job.')),
      technician: optional(line('Technician', 'Workshop at the mill')),
      complaint: words('Complaint', 'Low power, the filter lamp is on.', 'What the customer says.'),
    }),
    { label: 'Vehicle and complaint', description: 'The head of the sheet.' },
  ),
  lines('history', ['history'], {
    label: 'History',
    description: 'What was done before, how it is driven, oil used: one line each.',
    example: 'Forced regeneration elsewhere, six weeks ago',
  }),
  lines('codesBefore', ['faultCodes', 'before'], {
    label: 'Fault codes before',
    description: 'Read and written down before anything is cleared.',
    example: 'particulate filter: restriction',
    noneIsFinding: true,
  }),
  record(
    'ambient',
    ['ambient'],
    z.strictObject({
      pressure: quantity(absolutePressure, {
        symbol: 'p_a',
        label: 'Ambient pressure',
        description: 'Of the place, not reduced to sea level.',
        range: '50 <= x <= 110 kPa',
        example: '986 hPa',
        units: ['hPa', 'kPa', 'mbar'],
      }),
      temperature: optional(
        quantity(temperature, {
          symbol: 'T_a',
          label: 'Ambient temperature',
          range: '-50 <= x <= 60 °C',
          example: '14 °C',
        }),
      ),
    }),
    { label: 'Ambient conditions', description: 'Used to work out the flow.' },
    { always: true },
  ),
  record(
    'engine',
    ['engine'],
    inputsOf('exhaust-mass-flow', [
      'displacement',
      'strokes',
      'volumetricEfficiency',
      'manifoldPressure',
      'manifoldTemperature',
      'exhaustGasRecirculation',
      'lambda',
      'fuelMassFlow',
    ]),
    {
      label: 'Engine',
      description: 'Needed where a reading has no air-mass signal; lambda or fuel flow add the fuel to the air.',
    },
    { always: true, readBy: ['exhaust-mass-flow'] },
  ),
  record(
    'filter',
    ['filter'],
    z.strictObject({
      ...inputsOf('soot-mass-from-pressure-drop', [
        'filterDiameter',
        'filterVolume',
        'filterLength',
        'cellDensity',
        'wallThickness',
        'ashMass',
        'ashPlugShare',
        'plugLength',
        'layout',
        'inletWidthRatio',
        'wallPermeability',
      ])._zod.def.shape,
      ...inputsOf('regeneration-permission', ['substrate'])._zod.def.shape,
    }),
    { label: 'Filter', description: 'From the data sheet of the part: diameter or volume, length, cells and wall.' },
    {
      always: true,
      readBy: ['filter-condition', 'soot-mass-from-pressure-drop', 'regeneration-permission', 'cleaning-volumes'],
    },
  ),
  record('sensor', ['sensor'], inputsOf('filter-condition', ['zeroUncertainty', 'flowUncertainty']), {
    label: 'Measurement uncertainty',
    description: 'Of the pressure sensor and of the flow.',
  }),
  record(
    'controlUnit',
    ['controlUnit'],
    z.strictObject({
      sootMass: optional(
        quantity(mass, {
          symbol: 'm_s',
          label: 'Soot, as the control unit shows it',
          description: 'Worked out by the vehicle, not measured: weak evidence, but some.',
          range: '0 g <= x <= 2 kg',
          example: '38 g',
          units: ['g', 'kg'],
        }),
      ),
      ashMass: optional(
        quantity(mass, {
          symbol: 'm_a',
          label: 'Ash, as the control unit shows it',
          description: 'Counted up from distance and fuel by the vehicle, not measured.',
          range: '0 g <= x <= 5 kg',
          example: '41 g',
          units: ['g', 'kg'],
        }),
      ),
    }),
    { label: 'Figures of the control unit', description: 'Read before anything is reset. Leave blank if not shown.' },
  ),
  rows('readingsBefore', ['readings', 'before'], 'Readings before the work', readingList),
  rows('gaugeBefore', ['backPressure', 'before'], 'Gauge before the filter', gaugeReadings),
  record('trialsBefore', ['trials', 'before'], trialFields, {
    label: 'Trials before the work',
    description: 'Short trials that tell causes apart which readings alone cannot. Leave blank what was not done.',
  }),
  record(
    'permissionBefore',
    ['permission', 'before'],
    permissionFields,
    {
      label: 'Before the work: may it be regenerated?',
      description: 'What is left open counts as not checked, and is treated as failed.',
    },
    { always: true, readBy: ['regeneration-permission'] },
  ),
  record(
    'cleaning',
    ['cleaning'],
    inputsOf('cleaning-volumes', ['dilutionRatio', 'fillShare', 'passes', 'rinseVolume']),
    { label: 'Cleaning', description: 'Left empty when the filter is not cleaned with liquid.' },
    { readBy: ['cleaning-volumes'] },
  ),
  rows('readingsAfter', ['readings', 'after'], 'Readings after the work', readingsAfter),
  record('trialsAfter', ['trials', 'after'], trialFields, {
    label: 'Trials after the work',
    description: 'Leave blank what was not done after the work.',
  }),
  record(
    'permissionAfter',
    ['permission', 'after'],
    permissionFields,
    { label: 'After the work: may it be regenerated?', description: 'Counts only with readings after the work.' },
    { readBy: ['regeneration-permission'] },
  ),
  lines('codesAfter', ['faultCodes', 'after'], {
    label: 'Fault codes after',
    description: 'If they were read and there were none, write none. Left empty, the sheet says that they were not read.',
    example: 'none',
    noneIsFinding: true,
  }),
  record(
    'reductant',
    ['reductant', 'reductant-concentration'],
    inputsOf('reductant-concentration', ['refractometerPercent', 'refractiveIndex', 'fluidDensity', 'specificGravity', 'fluidTemperature']),
    { label: 'Fluid in the tank', description: 'By refractometer or by density; left empty when it was not tested.' },
    { readBy: ['reductant-concentration'] },
  ),
  rows(
    'dosingRuns',
    ['reductant', 'dosing-test', 'runs'],
    'Dosing test: runs',
    listOrNone(rowFields('dosing-test', 'runs'), {
      label: 'Dosing test: runs',
      description: 'The first run is left out: air in the line makes it low.',
      max: 20,
      example: [{ collectedVolume: '43 mL', duration: '60 s' }],
    }),
  ),
  record(
    'dosing',
    ['reductant', 'dosing-test'],
    inputsOf('dosing-test', ['nominalVolume', 'nominalMass', 'nominalDuration', 'tolerance', 'ureaFraction']),
    {
      label: 'Dosing test: what it should give',
      description: 'Quantity and time from the test instruction of the vehicle maker; left empty when there was no test.',
    },
    { readBy: ['dosing-test'] },
  ),
  record(
    'reset',
    ['reset'],
    z.strictObject(resetFields),
    {
      label: 'What was done, and what is proven',
      description: 'For what may be reset. The drop counts as proven only when the readings before and after prove it.',
    },
    { readBy: ['reset-advice'] },
  ),
  rows(
    'trips',
    ['use', 'trips'],
    'Usual trips',
    listOrNone(
      z.strictObject({
        tripDistance: quantity(length, {
          symbol: 's',
          label: 'Distance of the trip',
          range: '100 m <= x <= 3000 km',
          example: '7 km',
          units: ['km', 'mi'],
        }),
        tripDuration: quantity(time, {
          symbol: 't',
          label: 'Duration of the trip',
          range: '1 min <= x <= 24 h',
          example: '19 min',
          units: ['min', 'h'],
        }),
        timesPerWeek: quantity(ratio, { symbol: 'n', label: 'Times a week', range: '0.01 <= x <= 500', example: '30' }),
      }),
      {
        label: 'Usual trips',
        description: 'How the vehicle is driven: for when the filter will be due again.',
        max: 20,
        example: [{ tripDistance: '7 km', tripDuration: '19 min', timesPerWeek: '30' }],
      },
    ),
  ),
  record(
    'use',
    ['use'],
    z.strictObject({
      ashLimit: optional(
        quantity(mass, {
          symbol: 'm_L',
          label: 'Ash at which the filter is due, by the vehicle maker',
          description: 'Leave blank if unknown: then a usual value for a filter of this size is used.',
          range: '1 g <= x <= 5 kg',
          example: '120 g',
          units: ['g', 'kg'],
        }),
      ),
      regenerationDistance: optional(
        quantity(length, {
          symbol: 's_r',
          label: 'Usual distance between regenerations',
          description: 'As the control unit shows it over the last ones, before the fault.',
          range: '10 <= x <= 3000 km',
          example: '320 km',
          units: ['km', 'mi'],
        }),
      ),
    }),
    { label: 'How it is used', description: 'For the forecast. Leave blank what is not known.' },
  ),
  record(
    'quote',
    ['quote'],
    z.strictObject({
      hourlyRate: optional(
        quantity(money, {
          symbol: 'k_h',
          label: 'Price of an hour of work',
          range: '0 <= x <= 10000',
          example: '80.00',
        }),
      ),
      bottlePrice: optional(
        quantity(money, {
          symbol: 'k_b',
          label: 'Price of a bottle of cleaner',
          range: '0 <= x <= 100000',
          example: '31.00',
        }),
      ),
      bottleVolume: optional(
        quantity(volume, {
          symbol: 'V_b',
          label: 'Content of a bottle of cleaner',
          range: '10 mL <= x <= 1000 L',
          example: '1.5 L',
          units: ['L', 'mL'],
        }),
      ),
      filterPrice: optional(
        quantity(money, {
          symbol: 'k_f',
          label: 'Price of a new filter',
          range: '0 <= x <= 1000000',
          example: '1900.00',
        }),
      ),
    }),
    { label: 'Prices', description: 'In your currency, for the quote. Leave blank for time alone.' },
  ),
  lines('resets', ['resets'], {
    label: 'Reset or relearned, and why',
    description: 'Never reset a counter that the work has not made true.',
    example: 'Ash set to the weighed 35 g, not to zero',
  }),
  lines('advice', ['advice'], {
    label: 'Advice',
    description: 'What the customer can do.',
    example: 'Once a week 30 min of steady driving on the main road',
  }),
  head(
    'closing',
    { rootCause: ['rootCause'], nextCheck: ['nextCheck'] },
    z.strictObject({
      rootCause: optional(words('Cause found', 'Charge-air hose split under its clamp: less air, more soot.')),
      nextCheck: optional(words('Next check', 'in 2000 km or six weeks')),
    }),
    { label: 'Cause and next check', description: 'What the customer should remember.' },
  ),
] as const;

/** The file that the sections make, as a type. */
export type DescribedJob = FileOf<typeof jobSections>;
