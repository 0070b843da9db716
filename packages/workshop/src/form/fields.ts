import { list, listOrNone, optional, quantity, text } from '@wallflow/calculation';
import { calculations as exhaust } from '@wallflow/exhaust/calculations';
import { absolutePressure, temperature } from '@wallflow/units';
import * as z from 'zod/mini';
import { filterConditionCalculation } from '../filter-condition/definition.js';
import { readingList } from '../job/typed-readings.js';
import { resetInputs } from '../reset-advice/inputs.js';

/** Some inputs of a calculation, as it describes them itself. */
function inputsOf(id: string, keys: readonly string[]): z.core.$ZodObject {
  const found = [...exhaust, filterConditionCalculation].find((calculation) => calculation.id === id);
  const shape = found?.spec.inputs.shape as Readonly<Record<string, z.core.$ZodType>> | undefined;
  return z.strictObject(
    Object.fromEntries(
      keys.map((key) => {
        const field = shape?.[key];
        if (field === undefined) throw new Error(`${id} has no input ${key}`);
        return [key, field];
      }),
    ),
  );
}

/** All inputs of a calculation but those that the job works out itself. */
function inputsBut(id: string, but: readonly string[]): z.core.$ZodObject {
  const found = exhaust.find((calculation) => calculation.id === id);
  return inputsOf(
    id,
    Object.keys(found?.spec.inputs.shape ?? {}).filter((key) => !but.includes(key)),
  );
}

/** The fields of one row of a calculation's list. */
function rowsOf(id: string, key: string): z.core.$ZodObject {
  const field = inputsOf(id, [key])._zod.def.shape[key] as unknown as z.core.$ZodArray<z.core.$ZodObject>;
  return field._zod.def.element;
}

const words = (label: string, example: string, description?: string) =>
  text({ label, example, maxLength: 2000, ...(description === undefined ? {} : { description }) });
const line = (label: string, example: string, description?: string) =>
  text({ label, example, maxLength: 200, ...(description === undefined ? {} : { description }) });

/** One record as a section of the form. */
const section = (fields: z.core.$ZodObject, label: string, description: string) =>
  list(fields, { label, description, min: 1, max: 1, example: [{}] });
/** Any number of lines of text. */
const lines = (label: string, description: string, example: string) =>
  listOrNone(z.strictObject({ line: words(label, example) }), { label, description, max: 50, example: [{ line: example }] });

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

/**
 * The job as a form: each input is a section, with the fields of the calculations that read it. What is typed in becomes a job
 * file by `jobFromForm`.
 */
export const jobForm = z.strictObject({
  about: section(
    z.strictObject({
      title: optional(line('Title of the sheet', 'Demo: library bus with a loaded filter', 'Left empty, it is made from the vehicle.')),
      vehicle: line('Vehicle', 'Library bus, 3.9 L diesel with particulate filter and SCR'),
      odometer: optional(line('Odometer', '146300 km')),
      date: line('Date', '2026-03-12', 'Year, month, day.'),
      reference: optional(line('Reference', 'BUS-7', 'Your own number of the job.')),
      technician: optional(line('Technician', 'Workshop at the mill')),
      complaint: words('Complaint', 'Low power, the filter lamp is on.', 'What the customer says.'),
    }),
    'Vehicle and complaint',
    'The head of the sheet.',
  ),
  history: lines(
    'History',
    'What was done before, how it is driven, oil used: one line each.',
    'Forced regeneration elsewhere, six weeks ago',
  ),
  codesBefore: lines('Fault codes before', 'Read and written down before anything is cleared.', 'particulate filter: restriction'),
  ambient: section(
    z.strictObject({
      pressure: quantity(absolutePressure, {
        symbol: 'p_a',
        label: 'Ambient pressure',
        description: 'Of the place, not reduced to sea level.',
        min: '50 kPa',
        max: '110 kPa',
        example: '986 hPa',
        units: ['hPa', 'kPa', 'mbar'],
      }),
      temperature: optional(
        quantity(temperature, {
          symbol: 'T_a',
          label: 'Ambient temperature',
          min: '-50 °C',
          max: '60 °C',
          example: '14 °C',
        }),
      ),
    }),
    'Ambient conditions',
    'Used to work out the flow.',
  ),
  engine: section(
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
    'Engine',
    'Needed where a reading has no air-mass signal; lambda or fuel flow add the fuel to the air.',
  ),
  filter: section(
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
    'Filter',
    'From the data sheet of the part: diameter or volume, length, cells and wall.',
  ),
  sensor: section(
    inputsOf('filter-condition', ['zeroUncertainty', 'flowUncertainty']),
    'Measurement uncertainty',
    'Of the pressure sensor and of the flow.',
  ),
  readingsBefore: readingList,
  permissionBefore: section(
    permissionFields,
    'Before the work: may it be regenerated?',
    'What is left open counts as not checked, and is treated as failed.',
  ),
  cleaning: section(
    inputsOf('cleaning-volumes', ['dilutionRatio', 'fillShare', 'passes', 'rinseVolume']),
    'Cleaning',
    'Left empty when the filter is not cleaned with liquid.',
  ),
  readingsAfter: listOrNone(readingList._zod.def.element, {
    label: 'Readings after the work',
    description: 'At the same engine speeds as before; left out until the work is done.',
    max: 50,
    example: [{ engineSpeed: '2200 rpm', pressureDrop: '14 mbar', gasTemperature: '184 °C', airMassFlow: '286 kg/h' }],
  }),
  permissionAfter: section(permissionFields, 'After the work: may it be regenerated?', 'Counts only with readings after the work.'),
  codesAfter: lines(
    'Fault codes after',
    'If they were read and there were none, write none. Left empty, the sheet says that they were not read.',
    'none',
  ),
  reductant: section(
    inputsOf('reductant-concentration', ['refractometerPercent', 'refractiveIndex', 'fluidDensity', 'specificGravity', 'fluidTemperature']),
    'Reductant in the tank',
    'By refractometer or by density; left empty when it was not tested.',
  ),
  dosingRuns: listOrNone(rowsOf('dosing-test', 'runs'), {
    label: 'Dosing test: runs',
    description: 'The first run is left out: air in the line makes it low.',
    max: 20,
    example: [{ collectedVolume: '43 mL', duration: '60 s' }],
  }),
  dosing: section(
    inputsOf('dosing-test', ['nominalVolume', 'nominalMass', 'nominalDuration', 'tolerance', 'ureaFraction']),
    'Dosing test: what it should give',
    'Quantity and time from the test instruction of the vehicle maker; left empty when there was no test.',
  ),
  reset: section(
    z.strictObject(resetFields),
    'What was done, and what is proven',
    'For what may be reset. The drop counts as proven only when the readings before and after prove it.',
  ),
  resets: lines(
    'Reset or relearned, and why',
    'Never reset a counter that the work has not made true.',
    'Ash set to the weighed 35 g, not to zero',
  ),
  advice: lines('Advice', 'What the customer can do.', 'Once a week 30 min of steady driving on the main road'),
  closing: section(
    z.strictObject({
      rootCause: optional(words('Cause found', 'Charge-air hose split under its clamp: less air, more soot.')),
      nextCheck: optional(words('Next check', 'in 2000 km or six weeks')),
    }),
    'Cause and next check',
    'What the customer should remember.',
  ),
});
