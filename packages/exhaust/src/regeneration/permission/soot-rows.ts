import { fraction, massConcentration } from '@wallflow/units';
import type { PermissionInput } from './inputs.js';
import { type SootBand, sootBand, sootBandsAround, sootBandsOf } from './kernel-load-band.js';
import { type ConditionRow, decidedRow, makersLimit, practice, spanRow } from './row.js';

/** Limits in SI that the definition lists as constants, so that they can be shown and traced. */
export interface SootLimits {
  /** Share of the load limit below which a regeneration is not worth its fuel and its oil dilution. */
  readonly leastShare: number;
  /** Attempts in a row. */
  readonly attempts: number;
}

export interface SootJudgement {
  readonly rows: readonly ConditionRow[];
  readonly band: SootBand | 'unknown';
  /** Highest load to start with, in kg/m³: the limit less the uncertainty. */
  readonly highest: number;
}

const remedies = {
  tooLittle: 'Leave it: there is too little soot to burn. Look for another cause of the complaint.',
  high: 'Do not heat it yet: take soot out first by a chemical clean on the vehicle, then estimate the load again.',
  tooHigh: 'Do not heat it: remove the filter and clean it off the vehicle, or replace it.',
};

/** The conditions on the soot load and on earlier attempts. */
export function sootRows(input: PermissionInput, limits: SootLimits): SootJudgement {
  const { sootLoad, sootLoadUncertainty, failedAttempts, makerMaximumSootLoad: maker } = input;
  const bands = maker === undefined ? sootBandsOf(input.substrate) : sootBandsAround(maker);
  const highest = Math.max(0, bands.service - sootLoadUncertainty);
  const lowest = limits.leastShare * bands.service;
  const band = sootLoad === undefined ? 'unknown' : sootBand(sootLoad, sootLoadUncertainty, bands);
  const upper = spanRow({
    code: 'soot_load_upper',
    condition: 'Soot load not above the limit less its uncertainty',
    kind: massConcentration,
    unit: 'g/L',
    value: sootLoad,
    most: { usual: highest, maker: maker === undefined ? undefined : highest },
    reason: 'Too much soot burns out of control and melts or cracks the filter.',
    repair: band === 'high' ? remedies.high : remedies.tooHigh,
    find: 'Get a soot load you can trust: pressure drop at known flow and temperature, compared with the estimate of the control unit.',
    basis: maker === undefined ? `${practice}; ${substrateWords(input.substrate)}` : makersLimit,
  });
  // A load that nobody knows after an attempt that did not complete counts as too high, not as unknown.
  const blind = sootLoad === undefined && (failedAttempts ?? 0) > 0;
  const lower = spanRow({
    code: 'soot_load_lower',
    condition: 'Enough soot to be worth burning',
    kind: massConcentration,
    unit: 'g/L',
    value: sootLoad,
    least: { usual: lowest, maker: input.makerMinimumSootLoad },
    reason: 'A regeneration without soot wastes fuel and thins the oil.',
    repair: remedies.tooLittle,
    find: 'Get a soot load you can trust first.',
  });
  return { rows: [blind ? blindRow(upper) : upper, lower, attemptsRow(input, limits)], band, highest };
}

function blindRow(upper: ConditionRow): ConditionRow {
  return {
    ...upper,
    result: 'refuse',
    measured: 'not known, after an attempt that did not complete',
    action: 'Do not heat it with an unknown load after a failed attempt: measure the load, or remove the filter and clean it.',
  };
}

function attemptsRow(input: PermissionInput, limits: SootLimits): ConditionRow {
  const most = input.makerMaximumAttempts ?? limits.attempts;
  const done = input.failedAttempts;
  return decidedRow({
    code: 'attempts',
    condition: 'Attempts in a row, this one included',
    result: done === undefined ? 'unknown' : done + 1 > most ? 'refuse' : 'pass',
    measured: done === undefined ? undefined : String(done + 1),
    limit: `at most ${most}`,
    reason: 'An attempt too many means that the diagnosis is wrong.',
    repair: 'Stop trying: find out why the last attempts did not complete.',
    find: 'Find out how many attempts did not complete: ask the owner and read the history.',
    basis: input.makerMaximumAttempts === undefined ? practice : makersLimit,
  });
}

function substrateWords(substrate: PermissionInput['substrate']): string {
  if (substrate === 'unknown') return 'material not known, limit of cordierite';
  return substrate === 'cordierite' ? 'limit of cordierite' : 'limit of silicon carbide';
}

/** Fuel level, kept here so that all shares are formatted alike. */
export function fuelLevelRow(input: PermissionInput, least: number): ConditionRow {
  return spanRow({
    code: 'fuel_level',
    condition: 'Enough fuel in the tank',
    kind: fraction,
    unit: '%',
    value: input.fuelLevel,
    least: { usual: least, maker: input.makerMinimumFuelLevel },
    reason: 'Below it the control unit refuses, or the pump runs dry in the middle of the burn.',
    repair: 'Fill up first.',
    find: 'Read the fuel level.',
  });
}
