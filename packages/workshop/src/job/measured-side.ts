import { kinds } from '@wallflow/units';
import { channels } from './channels.js';
import { type Attempt, type Evaluation, evaluate, inputsFor, numberOf, si, succeeded, uncertaintyOf } from './evaluation.js';
import { givenValue } from './given.js';
import type { JobFile } from './job-file.js';
import type { JobIssue } from './job-issue.js';
import type { SteadyReading } from './steady.js';
import { typicalCharge } from './typical.js';

/** A steady reading with the flow that belongs to it. */
export interface FlowReading {
  readonly steady: SteadyReading;
  readonly state: string;
  readonly massFlow: Evaluation;
  readonly volumeFlow: Evaluation;
}

/** What the readings before, or after, the work say. */
export interface MeasuredSide {
  /** The log, or where in the job the readings were typed in. */
  readonly file: string;
  /** The reading with the engine off, if there is one. */
  readonly zero?: SteadyReading;
  readonly readings: readonly FlowReading[];
  /** Readings that were left out, and why. */
  readonly leftOut: readonly string[];
  readonly condition: Evaluation;
  /** The reading that decided the condition. */
  readonly deciding: FlowReading;
  readonly soot: Attempt;
}

type SideResult = { readonly ok: true; readonly side: MeasuredSide } | { readonly ok: false; readonly issues: readonly JobIssue[] };

const stopped = 50 / 60;
const running = 400 / 60;
/** A thermostat that works holds at least this; below it the readings are of a cold engine (common practice). */
const warmCoolant = 273.15 + 60;
/** Exhaust of a warm engine at the filter is hotter than this even at idle; what is colder is a sensor without signal (common practice). */
const coldestExhaust = 273.15 + 40;

function stateName(steady: SteadyReading): string {
  const speed = (steady.mean.engineSpeed ?? 0) * 60;
  const rounded = Math.round(speed / 10) * 10;
  return speed < 1200 ? `idle, ${rounded} rpm` : `${rounded} rpm`;
}

function flowOf(steady: SteadyReading, job: JobFile): { readonly mass: Attempt; readonly volume?: Attempt } {
  const { airMassFlow, engineSpeed, gasTemperature, pressureDrop } = steady.mean;
  const off = steady.uncertainty;
  const air =
    airMassFlow === undefined
      ? { airFrom: 'speed-density', engineSpeed: si(engineSpeed ?? 0, 'r/s', off.engineSpeed) }
      : { airFrom: 'air-mass-signal', airMassFlow: si(airMassFlow, 'kg/s', off.airMassFlow) };
  const mass = evaluate('exhaust-mass-flow', {
    ...(airMassFlow === undefined ? typicalCharge(job) : {}),
    ...inputsFor('exhaust-mass-flow', job.engine),
    ...air,
  });
  if (!succeeded(mass)) return { mass };
  const volume = evaluate('exhaust-volume-flow', {
    exhaustMassFlow: si(numberOf(mass, 'exhaustMassFlow'), 'kg/s', uncertaintyOf(mass, 'exhaustMassFlow')),
    gasTemperature: si(gasTemperature ?? 0, 'K'),
    // Half the drop lies before the middle of the filter.
    backPressure: si(Math.max(0, (pressureDrop ?? 0) / 2), 'Pa'),
    ambientPressure: job.ambient.pressure,
  });
  return { mass, volume };
}

interface Usable {
  readonly readings: FlowReading[];
  readonly leftOut: string[];
  readonly issues: JobIssue[];
}

const degrees = (kelvin: number) => kinds.temperature.format(kinds.temperature.si(kelvin), 'degC', { digits: 2 });

/** Why a reading of a running engine cannot be used; undefined when it can. */
function unusable({ mean, restless, lost }: SteadyReading): string | undefined {
  const { pressureDrop, gasTemperature, coolantTemperature } = mean;
  if (pressureDrop === undefined || gasTemperature === undefined) return 'pressure drop or gas temperature is missing or scatters too much';
  const [restlessChannel] = restless;
  if (restlessChannel !== undefined) return `the ${channels[restlessChannel].label} does not stand still`;
  if (lost.includes('airMassFlow')) return 'the air mass flow is missing in most of it or scatters too much';
  if (coolantTemperature !== undefined && coolantTemperature < warmCoolant)
    return `the engine was cold (coolant ${degrees(coolantTemperature)})`;
  if (gasTemperature < coldestExhaust) return `${degrees(gasTemperature)} is no exhaust of a warm engine`;
  return undefined;
}

function usableReadings(steady: readonly SteadyReading[], job: JobFile): Usable {
  const usable: Usable = { readings: [], leftOut: [], issues: [] };
  for (const reading of steady) {
    const { engineSpeed } = reading.mean;
    const state = stateName(reading);
    if (engineSpeed === undefined || engineSpeed < running) continue;
    const why = unusable(reading);
    if (why !== undefined) {
      usable.leftOut.push(`${state}: ${why}`);
      continue;
    }
    const { mass, volume } = flowOf(reading, job);
    for (const [attempt, where] of [
      [mass, 'engine'],
      [volume, 'ambient'],
    ] as const) {
      if (attempt !== undefined && !succeeded(attempt))
        usable.issues.push(...attempt.issues.map((issue) => ({ code: 'input' as const, where, issue })));
    }
    if (succeeded(mass) && succeeded(volume)) usable.readings.push({ steady: reading, state, massFlow: mass, volumeFlow: volume });
  }
  return { ...usable, issues: eachOnce(usable.issues) };
}

/** A wrong value that every reading meets is told once. */
function eachOnce(issues: readonly JobIssue[]): JobIssue[] {
  const seen = new Map(issues.map((issue) => [JSON.stringify(issue), issue]));
  return [...seen.values()];
}

function conditionOf(readings: readonly FlowReading[], zero: SteadyReading | undefined, job: JobFile): Attempt {
  return evaluate('filter-condition', {
    ...inputsFor('filter-condition', job.filter),
    readings: readings.map(({ state, steady, volumeFlow }) => ({
      state,
      pressureDrop: si(steady.mean.pressureDrop ?? 0, 'Pa', steady.uncertainty.pressureDrop),
      exhaustVolumeFlow: flowValue(volumeFlow),
      gasTemperature: si(steady.mean.gasTemperature ?? 0, 'K', steady.uncertainty.gasTemperature),
    })),
    ...(zero?.mean.pressureDrop === undefined ? {} : { zeroReading: si(zero.mean.pressureDrop, 'Pa', zero.uncertainty.pressureDrop) }),
    ambientPressure: job.ambient.pressure,
    ...job.sensor,
  });
}

/** Drop of a reading less the zero reading, Pa. */
export function dropOf(reading: FlowReading, zero: SteadyReading | undefined): number {
  return (reading.steady.mean.pressureDrop ?? 0) - (zero?.mean.pressureDrop ?? 0);
}

/** Standard uncertainty of that from the readings themselves, Pa; undefined where nothing is known of it. */
export function scatterOf(reading: FlowReading, zero: SteadyReading | undefined): number | undefined {
  const scatter = Math.hypot(reading.steady.uncertainty.pressureDrop ?? 0, zero?.uncertainty.pressureDrop ?? 0);
  return scatter > 0 ? scatter : undefined;
}

/** The volume flow of a reading as an input of a calculation. */
export function flowValue(volumeFlow: Evaluation) {
  return si(numberOf(volumeFlow, 'exhaustVolumeFlow'), 'm3/s', uncertaintyOf(volumeFlow, 'exhaustVolumeFlow'));
}

/** Standard uncertainty of a sensor zero that nobody has stated, Pa (common practice). */
const usualZeroUncertainty = 200;

/** How far off the drop may be, Pa: twice its standard uncertainty, from the zero of the sensor and the reading itself. */
function widestError(reading: FlowReading, zero: SteadyReading | undefined, job: JobFile): number {
  const ofZero = givenValue(kinds.differentialPressure, job.sensor?.zeroUncertainty) ?? usualZeroUncertainty;
  return Math.min(10_000, 2 * Math.hypot(ofZero, scatterOf(reading, zero) ?? 0));
}

function sootOf(reading: FlowReading, zero: SteadyReading | undefined, job: JobFile): Attempt {
  return evaluate('soot-mass-from-pressure-drop', {
    ...inputsFor('soot-mass-from-pressure-drop', job.filter),
    pressureDrop: si(dropOf(reading, zero), 'Pa'),
    dropUncertainty: si(widestError(reading, zero, job), 'Pa'),
    exhaustVolumeFlow: flowValue(reading.volumeFlow),
    gasTemperature: si(reading.steady.mean.gasTemperature ?? 0, 'K', reading.steady.uncertainty.gasTemperature),
    gasPressure: job.ambient.pressure,
  });
}

/** What a side was measured with. */
interface Measured {
  /** The log, or where in the job the readings were typed in. */
  readonly file: string;
  readonly steady: readonly SteadyReading[];
  /** What was left out of the log, in sentences. */
  readonly notes?: readonly string[];
}

/** Judge the steady readings of one side: zero, flows, condition of the filter, soot that explains it. */
export function measureSide({ file, steady, notes = [] }: Measured, job: JobFile): SideResult {
  const zero = steady.find((reading) => (reading.mean.engineSpeed ?? 1) < stopped && reading.mean.pressureDrop !== undefined);
  const { readings, leftOut: stretches, issues } = usableReadings(steady, job);
  const leftOut = [...stretches, ...notes];
  if (issues.length > 0) return { ok: false, issues };
  if (readings.length === 0) {
    const need =
      leftOut.length > 0
        ? leftOut.join('; ')
        : '30 s of steady running with warm engine and a sample at least every 10 s, better 60 s, at idle and at 2500 rpm or more';
    return { ok: false, issues: [{ code: 'no_steady_reading', where: file, need }] };
  }
  const condition = conditionOf(readings, zero, job);
  if (!succeeded(condition)) return { ok: false, issues: condition.issues.map((issue) => ({ code: 'input', where: 'filter', issue })) };
  const deciding = readings[numberOf(condition, 'decidingRow') - 1] ?? (readings[0] as FlowReading);
  return {
    ok: true,
    side: { file, ...(zero === undefined ? {} : { zero }), readings, leftOut, condition, deciding, soot: sootOf(deciding, zero, job) },
  };
}
