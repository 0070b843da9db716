import { kinds } from '@wallflow/units';
import type { FilterEstimate, Range } from '../estimate/index.js';
import { filterVolume } from './estimate-of.js';
import { givenValue } from './given.js';
import type { JobFile } from './job-file.js';

/** Days of the calendar as `2026-03-12`: the earliest, the expected and the latest. */
export interface Dates {
  readonly p5: string;
  readonly p50: string;
  readonly p95: string;
}

/** When the filter will ask for attention again. Distances in km; all of it after the work where there are readings of it. */
export interface ForecastData {
  readonly regeneration: {
    readonly distance: Range;
    /** Days at the usual trips; absent where no trips were entered. */
    readonly days?: Range;
    /** The days of the calendar that these are, from the date of the job; absent where they lie too far ahead to be named. */
    readonly dates?: Dates;
    /** Whether any usual trip is long enough for a whole regeneration; absent where no trips were entered. */
    readonly completes?: boolean;
    readonly basis: string;
  };
  readonly ashService: {
    readonly distance: Range;
    readonly days?: Range;
    /** The days of the calendar that these are, from the date of the job; absent where they lie too far ahead to be named. */
    readonly dates?: Dates;
    /** In grams. */
    readonly ashNow: number;
    readonly ashLimit: number;
    readonly ashFrom: 'weighed' | 'control-unit' | 'estimate';
    readonly basis: string;
  };
}

/** Distance between regenerations that nobody read, m: a car in mixed use was measured at about 200 km, makers' texts say 400 km. */
const usualInterval = 300e3;
/** Factors of the 90 % range of it, for one that was read and one that was not (common practice, no source). */
const readSpread = 1.4;
const guessedSpread = 2.5;
/** Until a regeneration on the road is over: ten minutes to warm up, fifteen to burn (common practice, no source). */
const wholeRegeneration = 25 * 60;
/** Ash load at which a filter is usually due, kg/m³ (common practice, no source). */
const ashDue = 30;
const spreadOfAshRate = 2;

interface Trips {
  /** m/s over the whole week. */
  readonly pace: number;
  readonly longest: number;
}

const week = 7 * 86_400;

function tripsOf({ use }: JobFile): Trips | undefined {
  const trips = (use?.trips ?? []).map((trip) => ({
    distance: givenValue(kinds.length, trip.tripDistance) ?? 0,
    duration: givenValue(kinds.time, trip.tripDuration) ?? 0,
    often: givenValue(kinds.ratio, trip.timesPerWeek) ?? 0,
  }));
  const pace = trips.reduce((sum, { distance, often }) => sum + distance * often, 0) / week;
  return pace > 0 ? { pace, longest: Math.max(...trips.map(({ duration }) => duration)) } : undefined;
}

const scaled = ({ p5, p50, p95 }: Range, by: number): Range => ({ p5: p5 * by, p50: p50 * by, p95: p95 * by });

/** Nobody plans further ahead than this, days. */
const furthestAhead = 20 * 365;

/** The day so many days after a date; counted in days of the calendar, which no clock and no time zone changes. */
function dayAfter(date: string, days: number): string {
  const at = new Date(`${date}T00:00:00Z`);
  at.setUTCDate(at.getUTCDate() + Math.round(days));
  return at.toISOString().slice(0, 10);
}

function datesOf(date: string, { p5, p50, p95 }: Range): Dates | undefined {
  if (!(p95 <= furthestAhead)) return undefined;
  return { p5: dayAfter(date, p5), p50: dayAfter(date, p50), p95: dayAfter(date, p95) };
}

/** Distances in m as km, and at the pace of the trips in days and as dates. */
function told(distance: Range, trips: Trips | undefined, date: string) {
  const inKilometres = { distance: scaled(distance, 1e-3) };
  if (trips === undefined) return inKilometres;
  const days = scaled(distance, 1 / trips.pace / 86_400);
  const dates = datesOf(date, days);
  return { ...inKilometres, days, ...(dates === undefined ? {} : { dates }) };
}

function ashNow(
  job: JobFile,
  estimate: FilterEstimate,
  after: boolean,
): { readonly ash: number; readonly from: 'weighed' | 'control-unit' | 'estimate' } {
  if (after && job.reset?.filterWork === 'new') return { ash: 0, from: 'weighed' };
  const weighed = after && job.reset?.ashBasis === 'weighed' ? givenValue(kinds.mass, job.reset.residualAsh) : undefined;
  if (weighed !== undefined) return { ash: weighed, from: 'weighed' };
  const shown = after ? undefined : givenValue(kinds.mass, job.controlUnit?.ashMass);
  return shown === undefined ? { ash: estimate.ashMass.p50, from: 'estimate' } : { ash: shown, from: 'control-unit' };
}

/** The forecast of a job; undefined where the estimate has no filter to speak of. */
export function forecastOf(job: JobFile, estimate: FilterEstimate | undefined, after: boolean): ForecastData | undefined {
  if (estimate === undefined) return undefined;
  const { trigger, volume: typical } = estimate.priors;
  const volume = filterVolume(job) ?? typical.median;
  const trips = tripsOf(job);
  const read = givenValue(kinds.length, job.use?.regenerationDistance);
  const [interval, spread] = read === undefined ? [usualInterval, guessedSpread] : [read, readSpread];
  const left = (load: number) => Math.max(0, 1 - load / trigger.median);
  const { sootLoad } = estimate;
  const next = {
    p5: (interval / spread) * left(sootLoad.p95),
    p50: interval * left(sootLoad.p50),
    p95: interval * spread * left(sootLoad.p5),
  };
  const { ash, from } = ashNow(job, estimate, after);
  const limit = givenValue(kinds.mass, job.use?.ashLimit) ?? ashDue * volume;
  const odometer = givenValue(kinds.length, job.vehicle.odometer);
  const counted = givenValue(kinds.mass, job.controlUnit?.ashMass);
  const ownRate = counted !== undefined && odometer !== undefined && odometer > 1e7;
  // A tenth of a gram of ash for each litre of filter and 1000 km, as the estimate takes it before anything is known.
  const rate = ownRate ? counted / odometer : 1e-7 * volume;
  const service = Math.max(0, limit - ash) / rate;
  return {
    regeneration: {
      ...told(next, trips, job.date),
      ...(trips === undefined ? {} : { completes: trips.longest >= wholeRegeneration }),
      basis: read === undefined ? 'usual distance between regenerations' : 'distance between regenerations as entered',
    },
    ashService: {
      ...told({ p5: service / spreadOfAshRate, p50: service, p95: service * spreadOfAshRate }, trips, job.date),
      ashNow: ash * 1000,
      ashLimit: limit * 1000,
      ashFrom: from,
      basis: ownRate ? 'ash of the control unit over the odometer' : 'usual ash for a filter of this size',
    },
  };
}
