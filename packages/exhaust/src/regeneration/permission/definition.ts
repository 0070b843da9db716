import * as wf from '@wallflow/calculation';
import {
  differentialPressure,
  fraction,
  length,
  massConcentration,
  temperature,
  temperatureDifference,
  voltage,
  volumetricHeatCapacity,
} from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { sensorPractice } from '../../filter/sources.js';
import { ashReview2019 } from '../../soot/sources.js';
import { siBrochure } from '../../sources.js';
import { honeycombConstants } from '../honeycomb.js';
import { sootHeat } from '../simulation/kernel-adiabatic.js';
import { heatConstants } from '../soot-heat.js';
import {
  carbonHeats,
  estimateError2019,
  freeJet,
  honeycombData,
  inhibitReasons,
  loadBandPractice,
  massBalanceEstimate,
  outerBoundPractice,
  permissionPractice,
  triana2005,
  workSafeBC,
} from '../sources.js';
import { batteryRows, engineRows, readingRows } from './engine-rows.js';
import { permissionInputs, withLoad } from './inputs.js';
import { permissionVerdict } from './kernel.js';
import { cordieriteBands, siliconCarbideBands } from './kernel-load-band.js';
import { heatBoundLoad } from './kernel-maker-limit.js';
import type { EstimatedLoad } from './kernel-two-loads.js';
import { believedMakers } from './maker-limits.js';
import { filterRows, placeRows, safetyRows } from './place-rows.js';
import { namedRows } from './row.js';
import { enteredTwiceRows, fuelLevelRow, sootRows } from './soot-rows.js';

const celsius = 273.15;
const practiceLimit = { source: permissionPractice };
const outer = { source: outerBoundPractice };
const load = (symbol: string, label: string, digits = 3) => wf.quantityOutput(massConcentration, { symbol, label, digits, units: ['g/L'] });
const band = (symbol: string, label: string, value: number) =>
  wf.constant(massConcentration, value, { symbol, label, source: loadBandPractice });
/** The end of a band: a share of the maker's limit, or that of the material. */
const bandEnd = <const Key extends string>(gives: Key, share: number, hard: string, soft: string) =>
  wf.cases(
    gives,
    {
      'known(makerMaximumSootLoad) and makerMaximumSootLoad <= outerLoad': `${share} * makerMaximumSootLoad`,
      "substrate == 'silicon-carbide'": hard,
      otherwise: soft,
    },
    loadBandPractice,
  );

const constants = {
  leastShare: wf.constant(fraction, 0.3, { symbol: 'f_{min}', label: 'Least share of the load limit', ...practiceLimit }),
  sensorZero: wf.constant(differentialPressure, 200, {
    symbol: '\\Delta p_{0,max}',
    label: 'Zero error of the sensor that is accepted',
    source: sensorPractice,
  }),
  sensorSpread: wf.constant(temperatureDifference, 10, { symbol: '\\Delta T_{s,max}', label: 'Largest sensor spread', ...practiceLimit }),
  coolantLeast: wf.constant(temperature, 75 + celsius, { symbol: 'T_{c,min}', label: 'Least coolant temperature', ...practiceLimit }),
  coolantMost: wf.constant(temperature, 100 + celsius, {
    symbol: 'T_{c,max}',
    label: 'Coolant temperature to stay below',
    ...practiceLimit,
  }),
  oilLeast: wf.constant(temperature, 60 + celsius, { symbol: 'T_{o,min}', label: 'Least oil temperature', ...practiceLimit }),
  oilMost: wf.constant(temperature, 115 + celsius, { symbol: 'T_{o,max}', label: 'Highest oil temperature', ...practiceLimit }),
  fuelInOilMost: wf.constant(fraction, 0.04, { symbol: 'w_{f,max}', label: 'Fuel content of the oil to stay below', ...practiceLimit }),
  fuelLevelLeast: wf.constant(fraction, 0.25, { symbol: 'L_{f,min}', label: 'Least fuel level', ...practiceLimit }),
  restVoltage: wf.constant(voltage, 12.4, { symbol: 'U_{0,min}', label: 'Least voltage at rest of a 12 V system', ...practiceLimit }),
  runningVoltage: wf.constant(voltage, 13.5, { symbol: 'U_{r,min}', label: 'Least voltage running of a 12 V system', ...practiceLimit }),
  outerSensorZero: wf.constant(differentialPressure, 1000, { symbol: '\\Delta p_{0,o}', label: 'Outer bound: zero error', ...outer }),
  outerCoolantLeast: wf.constant(temperature, 60 + celsius, {
    symbol: 'T_{c,o1}',
    label: 'Outer bound: lowest coolant temperature',
    ...outer,
  }),
  outerCoolantMost: wf.constant(temperature, 110 + celsius, {
    symbol: 'T_{c,o2}',
    label: 'Outer bound: highest coolant temperature',
    ...outer,
  }),
  outerOilLeast: wf.constant(temperature, 40 + celsius, { symbol: 'T_{o,o1}', label: 'Outer bound: lowest oil temperature', ...outer }),
  outerOilMost: wf.constant(temperature, 130 + celsius, { symbol: 'T_{o,o2}', label: 'Outer bound: highest oil temperature', ...outer }),
  outerFuelInOil: wf.constant(fraction, 0.07, { symbol: 'w_{f,o}', label: 'Outer bound: fuel content of the oil', ...outer }),
  outerFuelLevel: wf.constant(fraction, 0.1, { symbol: 'L_{f,o}', label: 'Outer bound: fuel level', ...outer }),
  outerRestVoltage: wf.constant(voltage, 12, { symbol: 'U_{0,o}', label: 'Outer bound: voltage at rest of a 12 V system', ...outer }),
  outerRunningVoltage: wf.constant(voltage, 12.8, { symbol: 'U_{r,o}', label: 'Outer bound: voltage running of a 12 V system', ...outer }),
  outerClearance: wf.constant(length, 1, { symbol: 'd_o', label: 'Outer bound: distance to anything that burns', source: freeJet }),
  burnTemperature: wf.constant(temperature, 600 + celsius, {
    symbol: 'T_1',
    label: 'Outer bound of the load: temperature at the start',
    ...outer,
  }),
  damageTemperature: wf.constant(temperature, 900 + celsius, {
    symbol: 'T_2',
    label: 'Temperature that damages the filter',
    source: ashReview2019,
  }),
  keptShare: wf.constant(fraction, 0.75, {
    symbol: 'f_k',
    label: 'Outer bound of the load: share of the heat that stays in the filter',
    source: triana2005,
  }),
  heatToDioxide: heatConstants.heatToDioxide,
  carbonMolarMass: heatConstants.carbonMolarMass,
  ...honeycombConstants,
  siliconCarbideNormal: band("m'_{SiC,1}", 'Silicon carbide: normal up to', siliconCarbideBands.normal),
  siliconCarbideDue: band("m'_{SiC,2}", 'Silicon carbide: regeneration due up to', siliconCarbideBands.due),
  siliconCarbideService: band("m'_{SiC,3}", 'Silicon carbide: load limit', siliconCarbideBands.service),
  siliconCarbideHigh: band("m'_{SiC,4}", 'Silicon carbide: high up to', siliconCarbideBands.high),
  cordieriteNormal: band("m'_{Co,1}", 'Cordierite: normal up to', cordieriteBands.normal),
  cordieriteDue: band("m'_{Co,2}", 'Cordierite: regeneration due up to', cordieriteBands.due),
  cordieriteService: band("m'_{Co,3}", 'Cordierite: load limit', cordieriteBands.service),
  cordieriteHigh: band("m'_{Co,4}", 'Cordierite: high up to', cordieriteBands.high),
  clearanceLeast: wf.constant(length, 2, { symbol: 'd_{min}', label: 'Least distance to anything that burns', ...practiceLimit }),
};

const counted = <const Key extends string>(gives: Key) =>
  wf.solved(
    gives,
    'passed + refusals + unknowns = count(conditions.result)',
    {},
    undefined,
    undefined,
    'Counted in the table of conditions.',
  );

/** Attempts in a row, this one included. */
const attempts = { usual: 2, outer: 3 };

const startWords =
  'Start it by the procedure of the vehicle maker, stay with it, and watch the temperatures before, in and after the filter until it has cooled.';

const results = { pass: 'pass', refuse: 'refuse', unknown: 'not checked' };

export const regenerationPermissionCalculation = wf.defineCalculation({
  id: 'regeneration-permission',
  subject: 'regeneration',
  title: 'Can this filter be regenerated now, stationary?',
  purpose: 'Is every condition for a forced regeneration met, and if not, what comes first?',
  keywords: 'forced regeneration, service regeneration, parked regeneration, conditions, safe, soot limit, DPF, regen, burn-off',
  method: 'each condition against its limit: one refusal refuses, only all passes permit',
  inputs: permissionInputs,
  example: {
    substrate: 'cordierite',
    sootLoad: '3.0 g/L',
    measuredSootLoad: '3.4 g/L',
    measuredSootLoadUncertainty: '1.2 g/L',
    failedAttempts: 0,
    faultCodes: false,
    pressureSensorZero: '1 mbar',
    temperatureSensorSpread: '4 K',
    catalystWarms: true,
    coolantTemperature: '86 °C',
    oilTemperature: '92 °C',
    oilLevel: 'between-marks',
    oilSmellsOfFuel: false,
    fuelLevel: '50 %',
    batteryAtRest: '12.6 V',
    batteryRunning: '14.1 V',
    batterySupport: true,
    leaks: false,
    wetFilter: false,
    freshAdditive: false,
    place: 'outdoors',
    rainOnHotParts: false,
    clearance: '3 m',
    hardGround: true,
    undertrayClean: true,
    attended: true,
    extinguisher: true,
    stopReachable: true,
    parked: true,
    wheelsChocked: true,
    powerTakeOff: false,
  },
  intermediates: {
    enteredLoad: wf.optional(load("m'_e", 'Soot load entered')),
    usedLoadUncertainty: wf.optional(load("u(m'_s)", 'Uncertainty of the load from the readings, as used', 2)),
    enteredUpper: wf.optional(load("m'_u", 'Upper end of the soot load entered')),
    readingUpper: wf.optional(load("m'_s", 'Upper end of the soot load from the readings')),
    countedLoad: wf.optional(load("m'_c", 'Soot load that counts')),
    countedUncertainty: wf.optional(load("u(m'_c)", 'Uncertainty of the soot load that counts', 2)),
    heatPerVolume: wf.quantityOutput(volumetricHeatCapacity, {
      symbol: 's',
      label: 'Heat capacity of the filter per volume',
      digits: 4,
      units: ['kJ/(m3.K)'],
    }),
    outerLoad: load("m'_o", "Outer bound for a maker's highest soot load"),
    normalEnd: load("m'_1", 'Normal up to'),
    dueEnd: load("m'_2", 'Regeneration due up to'),
    loadLimit: load("m'_3", 'Load limit for a forced regeneration'),
    highEnd: load("m'_4", 'High up to; above it too high to heat'),
    highestLoad: load("m'_{max}", 'Highest soot load to start with'),
    loadMargin: wf.optional(load("\\Delta m'", 'Room below the highest load (negative if above)')),
    worstLoad: wf.optional(load("m'_w", 'Soot load at the upper end of the estimate')),
    loadBand: wf.choiceOutput({
      label: 'Load band, at the upper end of the estimate',
      options: {
        normal: 'normal: nothing to burn',
        due: 'regeneration due',
        service: 'workshop regeneration, reduced heating rate, watched',
        high: 'high: take soot out first, then regenerate',
        'too-high': 'too high to heat: remove and clean, or replace',
        unknown: 'not known',
      },
    }),
  },
  outputs: {
    verdict: wf.choiceOutput({
      label: 'Verdict',
      options: { permitted: 'permitted', refused: 'refused', unknown: 'not permitted yet: not everything was checked' },
    }),
    refusedBy: wf.optional(
      wf.textOutput({ label: 'Refused by', description: 'Each condition that refuses, what was found and what it must be.' }),
    ),
    notKnown: wf.optional(
      wf.textOutput({ label: 'Not checked, so treated as failed', description: 'Each condition without an answer, and what it must be.' }),
    ),
    next: wf.textOutput({ label: 'Do this next' }),
    conditions: wf.tableOutput({
      label: 'Conditions',
      columns: {
        condition: wf.textOutput({ label: 'Condition' }),
        result: wf.choiceOutput({ label: 'Result', options: results }),
        measured: wf.optional(wf.textOutput({ label: 'Found' })),
        limit: wf.textOutput({ label: 'Limit' }),
        margin: wf.optional(wf.textOutput({ label: 'Margin' })),
        reason: wf.textOutput({ label: 'Why it matters' }),
        basis: wf.textOutput({ label: 'Basis of the limit' }),
        action: wf.optional(wf.textOutput({ label: 'What to do' })),
      },
    }),
    passed: wf.countOutput({ symbol: 'n_p', label: 'Conditions that pass' }),
    refusals: wf.countOutput({ symbol: 'n_r', label: 'Conditions that refuse' }),
    unknowns: wf.countOutput({ symbol: 'n_u', label: 'Conditions not checked' }),
  },
  constants,
  answer: 'verdict',
  picture: wf.gauge('worstLoad', [
    ['good', 'normal: nothing to burn', 'normalEnd'],
    ['good', 'regeneration due', 'dueEnd'],
    ['mind', 'workshop regeneration, watched', 'loadLimit'],
    ['bad', 'high: take soot out first', 'highEnd'],
    ['bad', 'too high to heat'],
  ]),
  steps: [
    wf.cases('enteredLoad', {
      'known(sootLoad) and known(sootMass)': 'max(sootLoad, sootMass / filterVolume)',
      'known(sootLoad)': 'sootLoad',
      'known(sootMass)': 'sootMass / filterVolume',
    }),
    wf.cases('usedLoadUncertainty', {
      'known(measuredSootLoadUncertainty)': 'measuredSootLoadUncertainty',
      'known(measuredSootLoad)': 'sootLoadUncertainty',
    }),
    wf.formula('enteredUpper', 'enteredLoad + sootLoadUncertainty'),
    wf.formula('readingUpper', 'measuredSootLoad + usedLoadUncertainty'),
    wf.cases(
      'countedLoad',
      { 'readingUpper > enteredUpper': 'measuredSootLoad', 'known(enteredLoad)': 'enteredLoad', otherwise: 'measuredSootLoad' },
      permissionPractice,
    ),
    wf.cases('countedUncertainty', {
      'readingUpper > enteredUpper': 'usedLoadUncertainty',
      'known(enteredLoad)': 'sootLoadUncertainty',
      otherwise: 'usedLoadUncertainty',
    }),
    wf.cases('heatPerVolume', {
      "substrate == 'silicon-carbide'": 'siliconCarbideDensity * siliconCarbideHeat',
      otherwise: 'cordieriteDensity * cordieriteHeat',
    }),
    wf.formula(
      'outerLoad',
      '(damageTemperature - burnTemperature) * heatPerVolume * carbonMolarMass / (keptShare * heatToDioxide)',
      triana2005,
      undefined,
      'So much soot, burnt at once, takes the filter to the temperature that damages it.',
    ),
    bandEnd('normalEnd', 0.45, 'siliconCarbideNormal', 'cordieriteNormal'),
    bandEnd('dueEnd', 0.75, 'siliconCarbideDue', 'cordieriteDue'),
    bandEnd('loadLimit', 1, 'siliconCarbideService', 'cordieriteService'),
    bandEnd('highEnd', 1.1, 'siliconCarbideHigh', 'cordieriteHigh'),
    wf.cases('highestLoad', {
      'known(countedUncertainty)': 'max(0, loadLimit - countedUncertainty)',
      otherwise: 'max(0, loadLimit - sootLoadUncertainty)',
    }),
    wf.formula('loadMargin', 'highestLoad - countedLoad'),
    wf.formula('worstLoad', 'countedLoad + countedUncertainty'),
    wf.verdict(
      'loadBand',
      {
        unknown: 'not known(worstLoad)',
        normal: 'worstLoad <= normalEnd',
        due: 'worstLoad <= dueEnd',
        service: 'worstLoad <= loadLimit',
        high: 'worstLoad <= highEnd',
        'too-high': 'otherwise',
      },
      loadBandPractice,
    ),
    wf.statement('conditions', 'Every condition is compared with its limit; what was not checked is not a pass.', permissionPractice),
    counted('passed'),
    counted('refusals'),
    counted('unknowns'),
    wf.verdict('verdict', { refused: 'refusals > 0', permitted: 'unknowns == 0', unknown: 'otherwise' }, permissionPractice),
  ],
  assumptions: {
    estimate_can_be_wrong: 'The soot load may be wrong by its uncertainty; the upper end decides.',
    larger_counts:
      'Of the soot loads entered, per litre and in grams, and the one from the readings, the larger counts; where they contradict each other, none is believed.',
    voltage_system: 'A battery reading above 18 V is taken as that of a 24 V system, with twice the limits.',
  },
  limits: {
    standing_only: 'For a forced regeneration with the vehicle stationary, not for one while driving.',
    not_the_cause: 'Permission does not repair what loaded the filter: unless the cause is fixed it will load up again.',
    drop_to_idle: 'Permission at the start does not cover a burn that is interrupted or dropped to idle.',
  },
  cautions: [
    cautions.makerFirst,
    cautions.hotExhaust,
    cautions.fumes,
    cautions.neverUnattended,
    cautions.runaway,
    cautions.sensorFirst,
    cautions.noDefeat,
  ],
  dimensional: 'the table of conditions is text with units',
  sources: [outerBoundPractice, carbonHeats, honeycombData, massBalanceEstimate, estimateError2019, workSafeBC, inhibitReasons, siBrochure],
  compute(asked, { constants: limits, assume, warn }) {
    const given = withLoad(asked);
    const hard = given.substrate === 'silicon-carbide';
    const bulkDensity = hard ? limits.siliconCarbideDensity : limits.cordieriteDensity;
    const specificHeat = hard ? limits.siliconCarbideHeat : limits.cordieriteHeat;
    const outerLoad = heatBoundLoad({
      start: limits.burnTemperature,
      damage: limits.damageTemperature,
      keptShare: limits.keptShare,
      bulkDensity,
      specificHeat,
      heatOfCombustion: sootHeat(limits.heatToDioxide, 0, 0, limits.carbonMolarMass),
    });
    const makers = believedMakers(given, limits, attempts, outerLoad);
    for (const { key, text } of makers.looser) warn('maker_limit_looser', text, [key]);
    const { input } = makers;
    const soot = sootRows(input, { leastShare: limits.leastShare, attempts: attempts.usual });
    const rows = [
      ...readingRows(input, limits),
      ...soot.rows,
      ...enteredTwiceRows(asked),
      ...engineRows(input, limits),
      fuelLevelRow(input, limits.fuelLevelLeast),
      ...batteryRows(input, limits),
      ...filterRows(input),
      ...placeRows(input, limits.clearanceLeast),
      ...safetyRows(input),
      ...makers.rows,
    ];
    const upper = (estimate: EstimatedLoad | undefined) => (estimate === undefined ? undefined : estimate.load + estimate.uncertainty);
    const count = (result: string) => rows.filter((row) => row.result === result).length;
    const first = rows.find((row) => row.result === 'refuse') ?? rows.find((row) => row.result === 'unknown');
    if (input.substrate === 'unknown' && input.makerMaximumSootLoad === undefined) {
      assume('cordierite_assumed', 'The filter material is not known, so the load limit of cordierite is used.');
    }
    if (input.measuredSootLoad !== undefined && input.measuredSootLoadUncertainty === undefined)
      assume(
        'same_uncertainty',
        'The soot load from the readings is assumed to be as uncertain as the other one, because its own uncertainty was not entered.',
      );
    return {
      enteredLoad: soot.entered?.load,
      usedLoadUncertainty: soot.measured?.uncertainty,
      enteredUpper: upper(soot.entered),
      readingUpper: upper(soot.measured),
      countedLoad: soot.counted?.load,
      countedUncertainty: soot.counted?.uncertainty,
      heatPerVolume: bulkDensity * specificHeat,
      outerLoad,
      normalEnd: soot.bands.normal,
      dueEnd: soot.bands.due,
      loadLimit: soot.bands.service,
      highEnd: soot.bands.high,
      highestLoad: soot.highest,
      loadMargin: soot.counted === undefined ? undefined : soot.highest - soot.counted.load,
      worstLoad: upper(soot.counted),
      loadBand: soot.band,
      verdict: permissionVerdict(rows.map((row) => row.result)),
      refusedBy: namedRows(rows, 'refuse'),
      notKnown: namedRows(rows, 'unknown'),
      next: first?.action ?? startWords,
      conditions: rows,
      passed: count('pass'),
      refusals: count('refuse'),
      unknowns: count('unknown'),
    };
  },
  advise({ verdict, loadBand }) {
    if (verdict !== 'permitted') return [{ tone: 'do-not', text: 'Do not start a forced regeneration.' }];
    const stay = {
      tone: 'do-not' as const,
      text: 'Never let the engine drop to idle or stop while the filter burns, unless there is fire.',
    };
    const slow = { tone: 'do' as const, text: 'Heat it at a reduced rate: the soot load is near its limit.' };
    const road = {
      tone: 'note' as const,
      text: 'Where the road allows, 20 to 25 min of steady hot driving does the same with less risk.',
    };
    const extra = loadBand === 'service' ? [slow] : loadBand === 'due' ? [road] : [];
    return [...extra, stay];
  },
});
