import type { Issue } from '@wallflow/calculation';
import { kinds } from '@wallflow/units';
import { type Attempt, evaluate, numberOf, si, succeeded, unsureText, wordOf } from './evaluation.js';
import { givenValue } from './given.js';
import type { JobFile } from './job-file.js';
import { dropOf, flowValue, type MeasuredSide, scatterOf } from './measured-side.js';

/** Conditions that say that the readings of a side are wrong or tell nothing; nothing can be proven with them. */
const wrongReadings = new Set(['zero-fault', 'contradiction', 'reversed', 'suspiciously-low', 'unclear']);
/** Results that already say why nothing is proven. */
const saysItself = new Set(['no-signal', 'too-low', 'before-too-low', 'not-comparable', 'unclear']);

function sideInput(measured: MeasuredSide) {
  const { deciding, zero } = measured;
  return {
    drop: si(dropOf(deciding, zero), 'Pa', scatterOf(deciding, zero)),
    flow: flowValue(deciding.volumeFlow),
    temperature: si(deciding.steady.mean.gasTemperature ?? 0, 'K', deciding.steady.uncertainty.gasTemperature),
  };
}

/** Uncertainty of each drop for the verdict: the zero of the sensor, and the scatter of the two readings where that is larger. */
function dropUncertainty(sides: readonly MeasuredSide[], job: JobFile): Readonly<Record<string, unknown>> {
  const scatter = Math.max(...sides.map(({ deciding, zero }) => scatterOf(deciding, zero) ?? 0));
  const given = job.sensor?.zeroUncertainty;
  if (scatter === 0) return given === undefined ? {} : { dropUncertainty: given };
  const ofZero = givenValue(kinds.differentialPressure, given ?? '2 mbar');
  if (ofZero === undefined) return { dropUncertainty: given };
  return { dropUncertainty: si(Math.min(5000, Math.hypot(ofZero, scatter)), 'Pa') };
}

/** Before against after by the reading used of each side; void where one of them proves nothing. */
export function comparisonOf(before: MeasuredSide, after: MeasuredSide, job: JobFile): Attempt {
  const [first, second] = [sideInput(before), sideInput(after)];
  const input = {
    dropBefore: first.drop,
    flowBefore: first.flow,
    temperatureBefore: first.temperature,
    dropAfter: second.drop,
    flowAfter: second.flow,
    temperatureAfter: second.temperature,
    // The clean filter at the later flow and temperature, as the condition after the work was judged against it.
    cleanDrop: si(numberOf(after.condition, 'cleanDrop'), 'Pa'),
    cleanFrom: 'calculated',
    ...dropUncertainty([before, after], job),
    ...(job.sensor?.flowUncertainty === undefined ? {} : { flowUncertainty: job.sensor.flowUncertainty }),
  };
  const compared = evaluate('before-after', input);
  if (succeeded(compared) && saysItself.has(wordOf(compared, 'verdict'))) return compared;
  const sides = [
    ['before', before],
    ['after', after],
  ] as const;
  const wrong = sides.find(([, side]) => wrongReadings.has(wordOf(side.condition, 'verdict')));
  if (wrong === undefined) return compared;
  const [when, { condition }] = wrong;
  const reason = `the readings ${when} the work prove nothing. ${wordOf(condition, 'why')}`;
  const issue: Issue = { code: 'no_solution', path: [], reason };
  return { calculation: compared.calculation, input, issues: [issue] };
}

/** Whether the drop is proven lower; undefined where it is open, as it is when the ± could turn the verdict. */
export function dropProven(comparison: Attempt | undefined): boolean | undefined {
  if (!succeeded(comparison)) return undefined;
  const settled: Readonly<Record<string, boolean>> = {
    cleaned: true,
    improved: false,
    unchanged: false,
    worse: false,
    'no-signal': false,
    'too-low': false,
  };
  const proven = settled[wordOf(comparison, 'verdict')];
  return proven === true && unsureText(comparison) !== undefined ? undefined : proven;
}
