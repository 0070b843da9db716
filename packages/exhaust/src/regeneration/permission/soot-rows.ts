import { say } from '@wallflow/calculation';
import { fraction, massConcentration } from '@wallflow/units';
import { loadOfGrams, type PermissionInput } from './inputs.js';
import { type SootBand, type SootBands, sootBand, sootBandsAround, sootBandsOf } from './kernel-load-band.js';
import { countedLoad, type EstimatedLoad, loadsContradict } from './kernel-two-loads.js';
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
  /** Ends of the bands in kg/m³. */
  readonly bands: SootBands;
  /** The load entered and the one from the readings, as they were taken; undefined where there is none. */
  readonly entered: EstimatedLoad | undefined;
  readonly measured: EstimatedLoad | undefined;
  /** The load that counted; undefined when none is known. */
  readonly counted: EstimatedLoad | undefined;
}

const remedies = {
  tooLittle: 'Leave it: there is too little soot to burn. Look for another cause of the complaint.',
  high: 'Do not heat it yet: take soot out first by a chemical clean on the vehicle, then estimate the load again.',
  tooHigh: 'Do not heat it: remove the filter and clean it off the vehicle, or replace it.',
  unsure: 'Do not heat it: the load is not known well enough. Find one that you can trust, or clean the filter off the vehicle.',
};

/** What was typed and what the readings give, as far as known. */
function loadsOf({ sootLoad, sootLoadUncertainty, measuredSootLoad, measuredSootLoadUncertainty }: PermissionInput) {
  const typed = sootLoad === undefined ? undefined : { load: sootLoad, uncertainty: sootLoadUncertainty };
  const measured =
    measuredSootLoad === undefined
      ? undefined
      : { load: measuredSootLoad, uncertainty: measuredSootLoadUncertainty ?? sootLoadUncertainty };
  return { typed, measured };
}

/** The conditions on the soot load and on earlier attempts. */
export function sootRows(input: PermissionInput, limits: SootLimits): SootJudgement {
  const { failedAttempts, makerMaximumSootLoad: maker } = input;
  const { typed, measured } = loadsOf(input);
  const counted = countedLoad(typed, measured);
  const bands = maker === undefined ? sootBandsOf(input.substrate) : sootBandsAround(maker);
  const uncertainty = counted?.uncertainty ?? input.sootLoadUncertainty;
  const highest = Math.max(0, bands.service - uncertainty);
  const lowest = limits.leastShare * bands.service;
  const band = counted === undefined ? 'unknown' : sootBand(counted.load, uncertainty, bands);
  const usedUp = uncertainty >= bands.service;
  const spanned = spanRow({
    condition: 'Soot load not above the limit less its uncertainty',
    kind: massConcentration,
    unit: 'g/L',
    value: counted?.load,
    most: { usual: highest, maker: maker === undefined ? undefined : highest },
    reason: 'Too much soot burns out of control and melts or cracks the filter.',
    repair: usedUp && (counted?.load ?? 0) <= bands.service ? remedies.unsure : band === 'high' ? remedies.high : remedies.tooHigh,
    find: 'Get a soot load that you can trust: from the pressure drop at known flow and temperature, compared with the figure of the control unit.',
    basis: maker === undefined ? say`${practice}; ${substrateWords(input.substrate)}` : makersLimit,
  });
  const upper = usedUp ? { ...spanned, limit: usedUpText(uncertainty, bands.service) } : spanned;
  // A load that nobody knows after an attempt that did not complete counts as too high, not as unknown.
  const blind = counted === undefined && (failedAttempts ?? 0) > 0;
  const lower = spanRow({
    condition: 'Enough soot to be worth burning',
    kind: massConcentration,
    unit: 'g/L',
    value: counted?.load,
    least: { usual: lowest, maker: input.makerMinimumSootLoad },
    reason: 'A regeneration without soot wastes fuel and thins the oil.',
    repair: remedies.tooLittle,
    find: 'Get a soot load you can trust first.',
  });
  const shownBoth = typed === undefined || measured === undefined ? upper : { ...upper, measured: bothText(typed, measured, counted) };
  const agreement = typed === undefined || measured === undefined ? [] : [agreementRow(typed, measured)];
  return {
    rows: [blind ? blindRow(upper) : shownBoth, ...agreement, lower, attemptsRow(input, limits)],
    band,
    highest,
    bands,
    entered: typed,
    measured,
    counted,
  };
}

const grams = (load: number) => `${Number(massConcentration.in(massConcentration.si(load), 'g/L').toPrecision(3))} g/L`;
const span = ({ load, uncertainty }: EstimatedLoad) => `${grams(load)} ± ${grams(uncertainty)}`;

function bothText(typed: EstimatedLoad, measured: EstimatedLoad, counted: EstimatedLoad | undefined): string {
  return counted === measured
    ? say`${span(measured)} from the readings (entered: ${span(typed)})`
    : say`${span(typed)} as entered (from the readings: ${span(measured)})`;
}

/** Two loads that contradict each other are worth less than one: something that both rest on is wrong. */
function agreementRow(typed: EstimatedLoad, measured: EstimatedLoad): ConditionRow {
  const lowTyped = typed.load < measured.load;
  return decidedRow({
    condition: 'The two soot loads agree',
    result: loadsContradict(typed, measured) ? 'refuse' : 'pass',
    measured: say`${grams(typed.load)} entered, ${grams(measured.load)} from the readings`,
    limit: say`no further apart than ${grams(typed.uncertainty + measured.uncertainty)}, both uncertainties together`,
    reason: lowTyped
      ? 'Probably the control unit believes a wrong sensor, such as an air mass that a leak falsifies, and counts too little soot; or ash or another restriction causes the pressure drop.'
      : 'Probably a hose of the pressure sensor leaks, the filter is cracked, or the soot counter was never reset after a burn.',
    repair: lowTyped
      ? 'Find the wrong signal first: compare air mass with speed and boost, then look for leaks, then for ash. Estimate the load again after the repair.'
      : 'Check the hoses of the pressure sensor and look for soot after the filter. Estimate the load again after the repair.',
    find: 'Compare both loads.',
  });
}

/** A load per litre and a mass in grams, both entered, are of one filter: they must come to the same. */
export function enteredTwiceRows(input: PermissionInput): readonly ConditionRow[] {
  const { sootLoad, sootMass, sootLoadUncertainty: uncertainty } = input;
  const fromGrams = loadOfGrams(input);
  if (sootLoad === undefined || sootMass === undefined || fromGrams === undefined) return [];
  const apart = loadsContradict({ load: sootLoad, uncertainty }, { load: fromGrams, uncertainty });
  return [
    decidedRow({
      condition: 'Soot per litre and soot in grams agree',
      result: apart ? 'refuse' : 'pass',
      measured: say`${grams(sootLoad)} entered, ${grams(fromGrams)} by the grams`,
      limit: say`no further apart than ${grams(2 * uncertainty)}, both uncertainties together`,
      reason: 'Probably the filter volume is of another filter, or one of the two is a limit or an older figure.',
      repair: 'Read both again at the same moment, and check the filter volume.',
      find: 'Compare both.',
    }),
  ];
}

/** The limit of a load whose uncertainty leaves nothing of it. */
function usedUpText(uncertainty: number, limit: number): string {
  return say`0 g/L, as its uncertainty of ${grams(uncertainty)} uses up the limit of ${grams(limit)}`;
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
    condition: 'Attempts in a row, this one included',
    result: done === undefined ? 'unknown' : done + 1 > most ? 'refuse' : 'pass',
    measured: done === undefined ? undefined : String(done + 1),
    limit: say`at most ${most}`,
    reason: 'More attempts than that mean the diagnosis is wrong.',
    repair: 'Stop trying: find out why the last attempts did not complete.',
    find: 'Find out how many attempts did not complete: ask the owner and read the history.',
    basis: input.makerMaximumAttempts === undefined ? practice : makersLimit,
  });
}

function substrateWords(substrate: PermissionInput['substrate']): string {
  if (substrate === 'unknown') return 'material not known, so the limit of cordierite';
  return substrate === 'cordierite' ? 'limit of cordierite' : 'limit of silicon carbide';
}

/** Fuel level, kept here so that all shares are formatted alike. */
export function fuelLevelRow(input: PermissionInput, least: number): ConditionRow {
  return spanRow({
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
