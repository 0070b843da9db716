import { type Kind, type KindName, kinds } from '@wallflow/units';
import { type EstimateInput, estimateFilter, type FilterEstimate, type Trials } from '../estimate/index.js';
import type { JobFile } from './job-file.js';
import type { MeasuredSide } from './measured-side.js';

/** The SI value of a text with its unit; undefined where nothing usable was entered, which another check reports. */
function value<K extends KindName>(kind: Kind<K>, given: unknown): number | undefined {
  if (typeof given !== 'string') return undefined;
  const parsed = kind.parse(given);
  return parsed.ok ? parsed.quantity : undefined;
}

/** Filters of light engines have about this volume for each volume of displacement (derived from published filters). */
const volumePerDisplacement = 1.5;

/** Volume of the filter in m³, as it was entered or from its diameter and length. */
export function filterVolume({ filter }: JobFile): number | undefined {
  const length = value(kinds.length, filter.filterLength);
  const diameter = value(kinds.length, filter.filterDiameter);
  return (
    value(kinds.volume, filter.filterVolume) ??
    (length !== undefined && diameter !== undefined ? (Math.PI / 4) * diameter ** 2 * length : undefined)
  );
}

function filterOf(job: JobFile) {
  const { filter } = job;
  const length = value(kinds.length, filter.filterLength);
  const volume = filterVolume(job);
  const cellDensity = value(kinds.cellDensity, filter.cellDensity);
  const wallThickness = value(kinds.length, filter.wallThickness);
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
    value(kinds.volume, job.engine.displacement) ?? (filter.volume === undefined ? undefined : filter.volume / volumePerDisplacement);
  if (displacement === undefined) return undefined;
  const distance = value(kinds.length, job.vehicle.odometer);
  const ambientPressure = value(kinds.absolutePressure, job.ambient.pressure);
  const ash = value(kinds.mass, job.filter.ashMass);
  const weighed = after && job.reset?.ashBasis === 'weighed' ? value(kinds.mass, job.reset.residualAsh) : undefined;
  const zero = side.zero?.mean.pressureDrop;
  const zeroUncertainty = side.zero?.uncertainty.pressureDrop;
  return {
    vehicle: {
      displacement,
      complaint: !after,
      filter,
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
    trials: ((after ? job.trials?.after : job.trials?.before) as Trials | undefined) ?? {},
    // Ash that was typed is a figure of the control unit or of a calculation: weak evidence.
    ...(ash === undefined || after ? {} : { controlUnit: { ashMass: ash } }),
  };
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
