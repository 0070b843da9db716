import { length } from '@wallflow/units';
import type { PermissionInput } from './inputs.js';
import { answerRow, type ConditionRow, decidedRow, spanRow } from './row.js';

const fireAdvisory = 'WorkSafeBC, risk advisory on diesel particulate filters';
const networkReasons = 'SAE J1939-71, reasons why a regeneration is inhibited (from memory)';

/** State of filter, fuel and joints. */
export function filterRows(input: PermissionInput): ConditionRow[] {
  return [
    answerRow({
      condition: 'Leak in intake or exhaust',
      answer: input.leaks,
      wanted: false,
      reason: 'A leak falsifies the air mass and lets hot gas and flame out.',
      repair: 'Seal the leak.',
      find: 'Look for soot marks and do a smoke test.',
    }),
    answerRow({
      condition: 'Filter still wet from cleaning',
      answer: input.wetFilter,
      wanted: false,
      reason: 'Water flashes to steam and cracks filter and coating.',
      repair: 'Drain it and dry it at raised engine speed first.',
      find: 'Find out whether the filter was cleaned with liquid and dried.',
    }),
    answerRow({
      condition: 'Cleaning additive just poured into the fuel',
      answer: input.freshAdditive,
      wanted: false,
      reason: 'It adds an unknown amount of heat.',
      repair: 'Do not force a regeneration on this tank of fuel.',
      find: 'Ask the owner what went into the tank.',
    }),
  ];
}

/** Where the vehicle stands. */
export function placeRows(input: PermissionInput, clearance: number): ConditionRow[] {
  return [
    placeRow(input),
    answerRow({
      condition: 'Rain falls on hot parts',
      answer: input.rainOnHotParts,
      wanted: false,
      reason: 'Water on hot parts cracks them and makes steam.',
      repair: 'Wait, or move under a roof that is open at the sides.',
      find: 'Look at the weather.',
    }),
    spanRow({
      condition: 'Distance to anything that burns',
      kind: length,
      unit: 'm',
      value: input.clearance,
      least: { usual: clearance, maker: input.makerMinimumClearance },
      reason: 'Gas of about 600 °C leaves the tail pipe.',
      repair: 'Move the vehicle, or clear away what can burn.',
      find: 'Measure the free distance behind the tail pipe and at the sides.',
    }),
    answerRow({
      condition: 'Hard ground, nothing under the vehicle',
      answer: input.hardGround,
      wanted: true,
      reason: 'Dry grass and soft asphalt catch fire or give way.',
      repair: 'Move to bare concrete or gravel.',
      find: 'Look under the vehicle.',
      basis: fireAdvisory,
    }),
    answerRow({
      condition: 'Undertray and exhaust free of oil and fuel',
      answer: input.undertrayClean,
      wanted: true,
      reason: 'Oil on hot parts burns; regeneration heat has ignited lines and vehicles.',
      repair: 'Clean the undertray and stop the leak.',
      find: 'Look under the vehicle with a lamp.',
      basis: fireAdvisory,
    }),
  ];
}

function placeRow({ place }: PermissionInput): ConditionRow {
  const words = {
    outdoors: 'outdoors',
    'indoors-extracted': 'indoors, extraction for hot exhaust',
    'indoors-not-extracted': 'indoors without such extraction',
  };
  return decidedRow({
    condition: 'Outdoors, or extraction rated for hot exhaust',
    result: place === undefined ? 'unknown' : place === 'indoors-not-extracted' ? 'refuse' : 'pass',
    measured: place === undefined ? undefined : words[place],
    limit: 'outdoors, or extraction rated for hot exhaust',
    reason: 'The exhaust is toxic, and hot enough to ignite things nearby.',
    repair: 'Drive it outdoors.',
    find: 'Decide where to do it.',
    basis: fireAdvisory,
  });
}

/** People and the stationary vehicle. */
export function safetyRows(input: PermissionInput): ConditionRow[] {
  const ask = (condition: string, answer: boolean | undefined, reason: string, repair: string, wanted = true, basis?: string) =>
    answerRow({ condition, answer, wanted, reason, repair, find: repair, ...(basis === undefined ? {} : { basis }) });
  return [
    ask(
      'In park or neutral, brake on, accelerator untouched',
      input.parked,
      'The engine raises its speed by itself.',
      'Set park or neutral and the brake.',
      true,
      networkReasons,
    ),
    ask('Wheels chocked', input.wheelsChocked, 'The vehicle must not move.', 'Chock the wheels.'),
    ask(
      'Power take-off engaged',
      input.powerTakeOff,
      'Load changes flow and temperature.',
      'Disengage the power take-off.',
      false,
      networkReasons,
    ),
    ask(
      'Somebody stays with the vehicle all the time',
      input.attended,
      'A fire is stopped in its first minute or not at all.',
      'Make sure that somebody stays.',
    ),
    ask('Extinguisher ready', input.extinguisher, 'A fire is stopped in its first minute or not at all.', 'Have an extinguisher ready.'),
    ask(
      'Engine stop within reach',
      input.stopReachable,
      'An engine that runs away must be stopped at once.',
      'Keep the engine stop within reach.',
    ),
  ];
}
