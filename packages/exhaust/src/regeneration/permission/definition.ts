import {
  choiceOutput,
  constant,
  countOutput,
  defineCalculation,
  optional,
  quantityOutput,
  tableOutput,
  textOutput,
} from '@wallflow/calculation';
import { differentialPressure, fraction, length, massConcentration, temperature, temperatureDifference, voltage } from '@wallflow/units';
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
import { permissionInputs } from './inputs.js';
import { permissionVerdict } from './kernel.js';
import { heatBoundLoad } from './kernel-maker-limit.js';
import { believedMakers } from './maker-limits.js';
import { filterRows, placeRows, safetyRows } from './place-rows.js';
import { namedRows } from './row.js';
import { fuelLevelRow, sootRows } from './soot-rows.js';

const celsius = 273.15;
const practiceLimit = { source: 'permissionPractice' };
const outer = { source: 'outerBoundPractice' };

const constants = {
  leastShare: constant(fraction, 0.3, { symbol: 'f_{min}', label: 'Least share of the load limit', ...practiceLimit }),
  sensorZero: constant(differentialPressure, 200, {
    symbol: '\\Delta p_{0,max}',
    label: 'Zero error of the sensor that is accepted',
    source: 'sensorPractice',
  }),
  sensorSpread: constant(temperatureDifference, 10, { symbol: '\\Delta T_{s,max}', label: 'Largest sensor spread', ...practiceLimit }),
  coolantLeast: constant(temperature, 75 + celsius, { symbol: 'T_{c,min}', label: 'Least coolant temperature', ...practiceLimit }),
  coolantMost: constant(temperature, 100 + celsius, { symbol: 'T_{c,max}', label: 'Coolant temperature to stay below', ...practiceLimit }),
  oilLeast: constant(temperature, 60 + celsius, { symbol: 'T_{o,min}', label: 'Least oil temperature', ...practiceLimit }),
  oilMost: constant(temperature, 115 + celsius, { symbol: 'T_{o,max}', label: 'Highest oil temperature', ...practiceLimit }),
  fuelInOil: constant(fraction, 0.04, { symbol: 'w_{f,max}', label: 'Fuel content of the oil to stay below', ...practiceLimit }),
  fuelLevel: constant(fraction, 0.25, { symbol: 'L_{f,min}', label: 'Least fuel level', ...practiceLimit }),
  restVoltage: constant(voltage, 12.4, { symbol: 'U_{0,min}', label: 'Least voltage at rest of a 12 V system', ...practiceLimit }),
  runningVoltage: constant(voltage, 13.5, { symbol: 'U_{r,min}', label: 'Least voltage running of a 12 V system', ...practiceLimit }),
  outerSensorZero: constant(differentialPressure, 1000, { symbol: '\\Delta p_{0,o}', label: 'Outer bound: zero error', ...outer }),
  outerCoolantLeast: constant(temperature, 60 + celsius, {
    symbol: 'T_{c,o1}',
    label: 'Outer bound: lowest coolant temperature',
    ...outer,
  }),
  outerCoolantMost: constant(temperature, 110 + celsius, {
    symbol: 'T_{c,o2}',
    label: 'Outer bound: highest coolant temperature',
    ...outer,
  }),
  outerOilLeast: constant(temperature, 40 + celsius, { symbol: 'T_{o,o1}', label: 'Outer bound: lowest oil temperature', ...outer }),
  outerOilMost: constant(temperature, 130 + celsius, { symbol: 'T_{o,o2}', label: 'Outer bound: highest oil temperature', ...outer }),
  outerFuelInOil: constant(fraction, 0.07, { symbol: 'w_{f,o}', label: 'Outer bound: fuel content of the oil', ...outer }),
  outerFuelLevel: constant(fraction, 0.1, { symbol: 'L_{f,o}', label: 'Outer bound: fuel level', ...outer }),
  outerRestVoltage: constant(voltage, 12, { symbol: 'U_{0,o}', label: 'Outer bound: voltage at rest of a 12 V system', ...outer }),
  outerRunningVoltage: constant(voltage, 12.8, { symbol: 'U_{r,o}', label: 'Outer bound: voltage running of a 12 V system', ...outer }),
  outerClearance: constant(length, 1, { symbol: 'd_o', label: 'Outer bound: distance to anything that burns', source: 'freeJet' }),
  burnTemperature: constant(temperature, 600 + celsius, {
    symbol: 'T_1',
    label: 'Outer bound of the load: temperature at the start',
    ...outer,
  }),
  damageTemperature: constant(temperature, 900 + celsius, {
    symbol: 'T_2',
    label: 'Outer bound of the load: temperature that damages a filter with ash in it',
    source: 'ashReview2019',
  }),
  keptShare: constant(fraction, 0.75, {
    symbol: 'f_k',
    label: 'Outer bound of the load: share of the heat that stays in the filter',
    source: 'triana2005',
  }),
  heatToDioxide: heatConstants.heatToDioxide,
  carbonMolarMass: heatConstants.carbonMolarMass,
  ...honeycombConstants,
  clearance: constant(length, 2, { symbol: 'd_{min}', label: 'Least distance to anything that burns', ...practiceLimit }),
};

/** Attempts in a row, this one included. */
const attempts = { usual: 2, outer: 3 };

const startWords =
  'Start it by the procedure of the vehicle maker, stay with it, and watch the temperatures before, in and after the filter until it has cooled.';

const results = { pass: 'pass', refuse: 'refuse', unknown: 'not known' };

export const regenerationPermissionCalculation = defineCalculation({
  id: 'regeneration-permission',
  version: '2.0.0',
  subject: 'regeneration',
  title: 'May this filter be regenerated now, standing?',
  purpose: 'Is every condition for a forced regeneration fulfilled, and if not, what comes first?',
  usedBy: ['technician', 'trainer', 'developer'],
  keywords: ['forced regeneration', 'service regeneration', 'conditions', 'safe', 'soot limit'],
  method: 'each condition against its limit; refused by one refusal, permitted only by every pass',
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
    countedLoad: optional(quantityOutput(massConcentration, { symbol: "m'_c", label: 'Soot load that counts', digits: 3, units: ['g/L'] })),
    countedUncertainty: optional(
      quantityOutput(massConcentration, { symbol: "u(m'_c)", label: 'Its uncertainty', digits: 2, units: ['g/L'] }),
    ),
    outerLoad: quantityOutput(massConcentration, {
      symbol: "m'_o",
      label: "Outer bound for a maker's highest soot load",
      digits: 3,
      units: ['g/L'],
    }),
    highestLoad: quantityOutput(massConcentration, {
      symbol: "m'_{max}",
      label: 'Highest soot load to start with',
      digits: 3,
      units: ['g/L'],
    }),
    loadMargin: optional(
      quantityOutput(massConcentration, { symbol: "\\Delta m'", label: 'Room to the highest load', digits: 3, units: ['g/L'] }),
    ),
    loadBand: choiceOutput({
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
    verdict: choiceOutput({
      label: 'Verdict',
      options: { permitted: 'permitted', refused: 'refused', unknown: 'not known yet' },
    }),
    refusedBy: optional(
      textOutput({ label: 'Refused by', description: 'Each condition that refuses, what was found and what it must be.' }),
    ),
    notKnown: optional(
      textOutput({ label: 'Not checked, so treated as failed', description: 'Each condition without an answer, and what it must be.' }),
    ),
    next: textOutput({ label: 'Do this next' }),
    conditions: tableOutput({
      label: 'Conditions',
      columns: {
        condition: textOutput({ label: 'Condition' }),
        result: choiceOutput({ label: 'Result', options: results }),
        measured: optional(textOutput({ label: 'Found' })),
        limit: textOutput({ label: 'Limit' }),
        margin: optional(textOutput({ label: 'Margin' })),
        reason: textOutput({ label: 'Why it matters' }),
        basis: textOutput({ label: 'Basis of the limit' }),
        action: optional(textOutput({ label: 'What to do' })),
      },
    }),
    passed: countOutput({ symbol: 'n_p', label: 'Conditions that pass' }),
    refusals: countOutput({ symbol: 'n_r', label: 'Conditions that refuse' }),
    unknowns: countOutput({ symbol: 'n_u', label: 'Conditions not known' }),
  },
  constants,
  steps: [
    {
      gives: 'countedLoad',
      text: 'Of the two soot loads the one that reaches higher with its uncertainty.',
      source: 'permissionPractice',
    },
    { gives: 'countedUncertainty', text: 'That of the load that counts.' },
    {
      gives: 'outerLoad',
      tex: '[[outerLoad]] = \\frac{([[damageTemperature]]-[[burnTemperature]])\\,\\rho_b\\,c_b\\,[[carbonMolarMass]]}{[[keptShare]]\\,[[heatToDioxide]]}',
      source: 'triana2005',
    },
    {
      gives: 'highestLoad',
      text: 'Load limit of the material ([[substrate]]) or of the vehicle maker, less the uncertainty of the load that counts.',
      source: 'loadBandPractice',
    },
    { gives: 'loadMargin', tex: '[[loadMargin]] = [[highestLoad]] - [[countedLoad]]', source: 'loadBandPractice' },
    { gives: 'loadBand', text: 'Band that holds the load plus its uncertainty.', source: 'loadBandPractice' },
    { gives: 'conditions', text: 'Every condition against its limit; what is not known is not a pass.', source: 'permissionPractice' },
    { gives: 'refusedBy', text: 'Those that refuse.' },
    { gives: 'notKnown', text: 'Those that nobody has answered.' },
    {
      gives: 'verdict',
      text: 'Refused by one refusal; permitted only if every condition passes; otherwise not known yet.',
      source: 'permissionPractice',
    },
  ],
  assumptions: [
    { code: 'estimate_can_be_wrong', text: 'The load may be wrong by its uncertainty; the decision is taken at the upper end.' },
    {
      code: 'larger_counts',
      text: 'Of a typed soot load and one from the readings the larger counts; where they contradict each other neither is believed.',
    },
    { code: 'voltage_system', text: 'A battery reading above 18 V is taken as a 24 V system, with twice the limits.' },
  ],
  limits: [
    { code: 'standing_only', text: 'For a forced regeneration with the vehicle standing, not for one while driving.' },
    { code: 'not_the_cause', text: 'A permission does not repair what loaded the filter: without the cause fixed it will load again.' },
    { code: 'drop_to_idle', text: 'A permission at the start does not hold for a burn that is interrupted and dropped to idle.' },
  ],
  cautions: [
    cautions.makerFirst,
    cautions.hotExhaust,
    cautions.fumes,
    cautions.neverUnattended,
    cautions.runaway,
    cautions.sensorFirst,
    cautions.noDefeat,
  ],
  sources: {
    permissionPractice,
    sensorPractice,
    loadBandPractice,
    outerBoundPractice,
    freeJet,
    triana2005,
    ashReview2019,
    carbonHeats,
    honeycombData,
    massBalanceEstimate,
    estimateError2019,
    workSafeBC,
    inhibitReasons,
    siBrochure,
  },
  dimensional: 'the table of conditions is text with units',
  compute(given, { constants: limits, assume, warn }) {
    const hard = given.substrate === 'silicon-carbide';
    const outerLoad = heatBoundLoad({
      start: limits.burnTemperature,
      damage: limits.damageTemperature,
      keptShare: limits.keptShare,
      bulkDensity: hard ? limits.siliconCarbideDensity : limits.cordieriteDensity,
      specificHeat: hard ? limits.siliconCarbideHeat : limits.cordieriteHeat,
      heatOfCombustion: sootHeat(limits.heatToDioxide, 0, 0, limits.carbonMolarMass),
    });
    const makers = believedMakers(given, limits, attempts, outerLoad);
    for (const { key, text } of makers.looser) warn('maker_limit_looser', text, [key]);
    const { input } = makers;
    const soot = sootRows(input, { leastShare: limits.leastShare, attempts: attempts.usual });
    const rows = [
      ...readingRows(input, limits),
      ...soot.rows,
      ...engineRows(input, limits),
      fuelLevelRow(input, limits.fuelLevel),
      ...batteryRows(input, limits),
      ...filterRows(input),
      ...placeRows(input, limits.clearance),
      ...safetyRows(input),
      ...makers.rows,
    ];
    const count = (result: string) => rows.filter((row) => row.result === result).length;
    const first = rows.find((row) => row.result === 'refuse') ?? rows.find((row) => row.result === 'unknown');
    if (input.substrate === 'unknown' && input.makerMaximumSootLoad === undefined) {
      assume('cordierite_assumed', 'The filter material is not known, so the load limit of cordierite counts.');
    }
    if (input.measuredSootLoad !== undefined && input.measuredSootLoadUncertainty === undefined)
      assume('same_uncertainty', 'The soot load from the readings is taken as uncertain as the other one.');
    return {
      countedLoad: soot.counted?.load,
      countedUncertainty: soot.counted?.uncertainty,
      outerLoad,
      highestLoad: soot.highest,
      loadMargin: soot.counted === undefined ? undefined : soot.highest - soot.counted.load,
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
    const slow = { tone: 'do' as const, text: 'The load is in the service band: heat it at a reduced rate.' };
    const road = {
      tone: 'note' as const,
      text: 'Where the road allows it, 20 to 25 min of steady hot driving does the same with less risk.',
    };
    const extra = loadBand === 'service' ? [slow] : loadBand === 'due' ? [road] : [];
    return [...extra, stay];
  },
});
