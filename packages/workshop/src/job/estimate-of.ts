import { kinds } from '@wallflow/units';
import { type BackPressureReading, type EstimateInput, estimateFilter, type FilterEstimate, type Trials } from '../estimate/index.js';
import { givenNumber, givenValue } from './given.js';
import type { JobFile } from './job-file.js';
import type { MeasuredSide } from './measured-side.js';

/** Filters of light engines have about this volume for each volume of displacement (derived from published filters). */
const volumePerDisplacement = 1.5;

/** Volume of the filter in m³, as it was entered or from its diameter and length. */
export function filterVolume({ filter }: JobFile): number | undefined {
  const length = givenValue(kinds.length, filter.filterLength);
  const diameter = givenValue(kinds.length, filter.filterDiameter);
  return (
    givenValue(kinds.volume, filter.filterVolume) ??
    (length !== undefined && diameter !== undefined ? (Math.PI / 4) * diameter ** 2 * length : undefined)
  );
}

function filterOf(job: JobFile) {
  const { filter } = job;
  const length = givenValue(kinds.length, filter.filterLength);
  const volume = filterVolume(job);
  const cellDensity = givenValue(kinds.cellDensity, filter.cellDensity);
  const wallThickness = givenValue(kinds.length, filter.wallThickness);
  return {
    ...(volume === undefined ? {} : { volume }),
    ...(length === undefined ? {} : { length }),
    ...(cellDensity === undefined ? {} : { cellDensity }),
    ...(wallThickness === undefined ? {} : { wallThickness }),
  };
}

/** All that a job knows of one side, as the estimate takes it. */
export function estimateInput(side: MeasuredSide, job: JobFile, after: boolean): EstimateInput | undefined {
  const filter = filterOf(job);
  const displacement =
    givenValue(kinds.volume, job.engine.displacement) ?? (filter.volume === undefined ? undefined : filter.volume / volumePerDisplacement);
  if (displacement === undefined) return undefined;
  const distance = givenValue(kinds.length, job.vehicle.odometer);
  const ambientPressure = givenValue(kinds.absolutePressure, job.ambient.pressure);
  const weighed = after && job.reset?.ashBasis === 'weighed' ? givenValue(kinds.mass, job.reset.residualAsh) : undefined;
  const backPressures = backPressuresOf(job);
  const zero = side.zero?.mean.pressureDrop;
  const zeroUncertainty = side.zero?.uncertainty.pressureDrop;
  return {
    vehicle: {
      displacement,
      complaint: !after,
      filter,
      ...lookedAt(after ? job.trials?.after : job.trials?.before),
      ...(distance === undefined ? {} : { distance }),
      ...(ambientPressure === undefined ? {} : { ambientPressure }),
      ...(weighed === undefined ? {} : { weighedAsh: weighed }),
    },
    readings: side.readings.map(({ steady: { mean, uncertainty } }) => ({
      engineSpeed: mean.engineSpeed ?? 0,
      pressureDrop: mean.pressureDrop ?? 0,
      ...(uncertainty.pressureDrop === undefined ? {} : { uncertainty: uncertainty.pressureDrop }),
      ...(mean.gasTemperature === undefined ? {} : { gasTemperature: mean.gasTemperature }),
      ...(mean.airMassFlow === undefined ? {} : { airMassFlow: mean.airMassFlow }),
    })),
    ...(zero === undefined
      ? {}
      : { zero: { pressureDrop: zero, ...(zeroUncertainty === undefined ? {} : { uncertainty: zeroUncertainty }) } }),
    ...(backPressures.length === 0 || after ? {} : { backPressures }),
    trials: trialsOf(after ? job.trials?.after : job.trials?.before),
    ...(after ? {} : { controlUnit: figuresOf(job) }),
  };
}

/** What the trials showed, as the estimate takes it; the quantities among them in SI. */
function trialsOf(given: NonNullable<JobFile['trials']>['before']): Trials {
  const { resistanceRatio, particleNumber, weighedLoad, sensorTaps: _, washed: __, ...seen } = given ?? {};
  return {
    ...(seen as Trials),
    ...defined({
      resistanceRatio: givenValue(kinds.ratio, resistanceRatio),
      particleNumber: givenValue(kinds.particleNumberConcentration, particleNumber),
      weighedLoad: givenValue(kinds.mass, weighedLoad),
    }),
  };
}

/** What a look at the vehicle tells of its sensor and of its last days. */
function lookedAt(given: NonNullable<JobFile['trials']>['before']): Pick<EstimateInput['vehicle'], 'sensor' | 'washedRecently'> {
  const { sensorTaps, washed } = given ?? {};
  return {
    ...(sensorTaps === 'one' ? { sensor: 'one-tap' } : sensorTaps === 'two' ? { sensor: 'across-filter' } : {}),
    ...(washed === 'yes' ? { washedRecently: true } : {}),
  };
}

/** The control unit's own figures. Ash that was entered for the filter is such a figure or a calculation: weak evidence too. */
function figuresOf({ controlUnit, filter }: JobFile) {
  return defined({
    sootMass: givenValue(kinds.mass, controlUnit?.sootMass),
    ashMass: givenValue(kinds.mass, controlUnit?.ashMass ?? filter.ashMass),
  });
}

/** Readings of a gauge before the filter. */
function backPressuresOf({ backPressure }: JobFile): BackPressureReading[] {
  return (backPressure?.before ?? []).flatMap((row) => {
    const engineSpeed = givenValue(kinds.rotationalSpeed, row.engineSpeed);
    const read = givenNumber(kinds.gaugePressure, row.backPressure);
    if (engineSpeed === undefined || read === undefined) return [];
    const more = defined({
      uncertainty: read.uncertainty,
      gasTemperature: givenValue(kinds.temperature, row.gasTemperature),
      airMassFlow: givenValue(kinds.massFlow, row.airMassFlow),
    });
    return [{ engineSpeed, backPressure: read.value, ...more }];
  });
}

/** A record without the entries that are not known. */
function defined<T extends Readonly<Record<string, number | undefined>>>(record: T): { [Key in keyof T]?: number } {
  return Object.fromEntries(Object.entries(record).filter(([, one]) => one !== undefined)) as { [Key in keyof T]?: number };
}

const none = { p5: 0, p50: 0, p95: 0 };
/** A filter that was fitted new holds neither soot nor ash: that is known, and no reading has to show it. */
const ofNewFilter = { sootLoad: none, sootMass: none, ashLoad: none, ashMass: none, chanceOfSootAbove: () => 0 };

/** The estimate of one side; undefined where neither displacement nor filter volume is known. */
export function estimateOf(side: MeasuredSide, job: JobFile, after: boolean): FilterEstimate | undefined {
  const input = estimateInput(side, job, after);
  if (input === undefined) return undefined;
  const estimate = estimateFilter(input);
  return after && job.reset?.filterWork === 'new' ? { ...estimate, ...ofNewFilter } : estimate;
}
