import { kinds } from '@wallflow/units';
import { type Attempt, type Evaluation, evaluate, inputsFor, numberOf, si, succeeded, wordOf } from './evaluation.js';
import type { JobFile } from './job-file.js';
import type { JobIssue } from './job-issue.js';
import type { SteadyReading } from './steady.js';

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

function stateName(steady: SteadyReading): string {
  const speed = (steady.mean.engineSpeed ?? 0) * 60;
  const rounded = Math.round(speed / 10) * 10;
  return speed < 1200 ? `idle, ${rounded} rpm` : `${rounded} rpm`;
}

function flowOf(steady: SteadyReading, job: JobFile): { readonly mass: Attempt; readonly volume?: Attempt } {
  const { airMassFlow, engineSpeed, gasTemperature, pressureDrop } = steady.mean;
  const air =
    airMassFlow === undefined
      ? { airFrom: 'speed-density', engineSpeed: si(engineSpeed ?? 0, 'r/s') }
      : { airFrom: 'air-mass-signal', airMassFlow: si(airMassFlow, 'kg/s') };
  const mass = evaluate('exhaust-mass-flow', { ...inputsFor('exhaust-mass-flow', job.engine), ...air });
  if (!succeeded(mass)) return { mass };
  const volume = evaluate('exhaust-volume-flow', {
    exhaustMassFlow: si(numberOf(mass, 'exhaustMassFlow'), 'kg/s'),
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

function usableReadings(steady: readonly SteadyReading[], job: JobFile): Usable {
  const usable: Usable = { readings: [], leftOut: [], issues: [] };
  for (const reading of steady) {
    const { engineSpeed, pressureDrop, gasTemperature, coolantTemperature } = reading.mean;
    const state = stateName(reading);
    if (engineSpeed === undefined || engineSpeed < running) continue;
    if (pressureDrop === undefined || gasTemperature === undefined) {
      usable.leftOut.push(`${state}: pressure drop or gas temperature is missing`);
      continue;
    }
    if (coolantTemperature !== undefined && coolantTemperature < warmCoolant) {
      usable.leftOut.push(
        `${state}: the engine was cold (coolant ${kinds.temperature.format(kinds.temperature.si(coolantTemperature), 'degC', { digits: 2 })})`,
      );
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
  return usable;
}

function conditionOf(readings: readonly FlowReading[], zero: SteadyReading | undefined, job: JobFile): Attempt {
  return evaluate('filter-condition', {
    ...inputsFor('filter-condition', job.filter),
    readings: readings.map(({ state, steady, volumeFlow }) => ({
      state,
      pressureDrop: si(steady.mean.pressureDrop ?? 0, 'Pa'),
      exhaustVolumeFlow: si(numberOf(volumeFlow, 'exhaustVolumeFlow'), 'm3/s'),
      gasTemperature: si(steady.mean.gasTemperature ?? 0, 'K'),
    })),
    ...(zero?.mean.pressureDrop === undefined ? {} : { zeroReading: si(zero.mean.pressureDrop, 'Pa') }),
    ambientPressure: job.ambient.pressure,
    ...job.sensor,
  });
}

/** Drop of a reading less the zero reading, Pa. */
export function dropOf(reading: FlowReading, zero: SteadyReading | undefined): number {
  return (reading.steady.mean.pressureDrop ?? 0) - (zero?.mean.pressureDrop ?? 0);
}

function sootOf(reading: FlowReading, zero: SteadyReading | undefined, job: JobFile): Attempt {
  return evaluate('soot-mass-from-pressure-drop', {
    ...inputsFor('soot-mass-from-pressure-drop', job.filter),
    pressureDrop: si(dropOf(reading, zero), 'Pa'),
    exhaustVolumeFlow: si(numberOf(reading.volumeFlow, 'exhaustVolumeFlow'), 'm3/s'),
    gasTemperature: si(reading.steady.mean.gasTemperature ?? 0, 'K'),
    gasPressure: job.ambient.pressure,
  });
}

/** Judge the steady readings of one side: zero, flows, condition of the filter, soot that explains it. */
export function measureSide(file: string, steady: readonly SteadyReading[], job: JobFile): SideResult {
  const zero = steady.find((reading) => (reading.mean.engineSpeed ?? 1) < stopped && reading.mean.pressureDrop !== undefined);
  const { readings, leftOut, issues } = usableReadings(steady, job);
  if (issues.length > 0) return { ok: false, issues };
  if (readings.length === 0) {
    const need =
      leftOut.length > 0 ? leftOut.join('; ') : '30 s of steady running with warm engine, better 60 s, at idle and at 2500 rpm or more';
    return { ok: false, issues: [{ code: 'no_steady_reading', where: file, need }] };
  }
  const condition = conditionOf(readings, zero, job);
  if (!succeeded(condition)) return { ok: false, issues: condition.issues.map((issue) => ({ code: 'input', where: 'filter', issue })) };
  const decidingState = wordOf(condition, 'decidingReading');
  const deciding = readings.find((reading) => reading.state === decidingState) ?? (readings[0] as FlowReading);
  return {
    ok: true,
    side: { file, ...(zero === undefined ? {} : { zero }), readings, leftOut, condition, deciding, soot: sootOf(deciding, zero, job) },
  };
}
