// Generated from data/ by scripts/generate.mjs. Do not edit.

import { type Kind, makeKind } from '../kind.js';
import type { KindName } from '../types.js';

/** Kind of quantity: length. Coherent SI unit `m`. */
export const length: Kind<'length'> = /* @__PURE__ */ makeKind({
  kind: 'length',
  dimension: [1, 0, 0, 0, 0, 0],
  base: 'm',
  units: [
    ['mm', null, 'millimetre', 'millimetres', 'SI', 0.001],
    ['in', null, 'inch', 'inches "', 'YARD', 0.0254],
    ['m', null, 'metre', 'metres', 'SI', 1],
    ['cm', null, 'centimetre', 'centimetres', 'SI', 0.01],
    ['km', null, 'kilometre', 'kilometres', 'SI', 1000],
    ['mi', null, 'mile', 'miles', 'YARD', 1609.344],
    ['ft', null, 'foot', 'feet \'', 'YARD', 0.3048],
    ['mil', null, 'thousandth of an inch', 'thou mils', 'YARD', 0.0000254],
    ['um', null, 'micrometre', 'micron microns', 'SI', 0.000001],
    ['dm', null, 'decimetre', '', 'SI', 0.1],
    ['nm', null, 'nanometre', '', 'SI', 1e-9],
    ['yd', null, 'yard', 'yards', 'YARD', 0.9144],
  ],
});

/** Kind of quantity: area. Coherent SI unit `m2`. */
export const area: Kind<'area'> = /* @__PURE__ */ makeKind({
  kind: 'area',
  dimension: [2, 0, 0, 0, 0, 0],
  base: 'm2',
  units: [
    ['m2', null, 'square metre', 'sqm', 'SI', 1],
    ['cm2', null, 'square centimetre', 'sqcm', 'SI', 0.0001],
    ['mm2', null, 'square millimetre', 'sqmm', 'SI', 0.000001],
    ['in2', null, 'square inch', 'sqin', 'YARD', 0.00064516],
    ['ft2', null, 'square foot', 'sqft', 'YARD', 0.09290304],
  ],
});

/** Kind of quantity: volume. Coherent SI unit `m3`. */
export const volume: Kind<'volume'> = /* @__PURE__ */ makeKind({
  kind: 'volume',
  dimension: [3, 0, 0, 0, 0, 0],
  base: 'm3',
  ambiguous: [
    ['gal gals gallon gallons', 'gal_US gal_imp'],
    ['qt quart quarts', 'qt_US qt_imp'],
    ['pt pint pints', 'pt_US pt_imp'],
    ['floz fluidounce fluidounces oz', 'floz_US floz_imp'],
  ],
  units: [
    ['L', null, 'litre', 'litres dm3 ltr', 'SI', 0.001],
    ['mL', null, 'millilitre', 'millilitres', 'SI', 0.000001],
    ['cm3', null, 'cubic centimetre', 'cc ccm', 'SI', 0.000001],
    ['m3', null, 'cubic metre', 'cbm', 'SI', 1],
    ['in3', null, 'cubic inch', 'cuin ci cid', 'YARD', 0.000016387064],
    ['ft3', null, 'cubic foot', 'cuft cf', 'YARD', 0.028316846592],
    ['gal_US', 'US gal', 'US gallon', 'USgallons', 'USGAL', 0.003785411784],
    ['gal_imp', 'imp gal', 'imperial gallon', 'galUK UKgal imperialgallons', 'UKWM', 0.00454609],
    ['dL', null, 'decilitre', '', 'SI', 0.0001],
    ['cL', null, 'centilitre', '', 'SI', 0.00001],
    ['uL', null, 'microlitre', '', 'SI', 1e-9],
    ['mm3', null, 'cubic millimetre', 'cmm', 'SI', 1e-9],
    ['qt_US', 'US qt', 'US liquid quart', 'USquart USquarts', 'USGAL', 0.000946352946],
    ['pt_US', 'US pt', 'US liquid pint', 'USpint USpints', 'USGAL', 0.000473176473],
    ['floz_US', 'US fl oz', 'US fluid ounce', '', 'USGAL', 0.0000295735295625],
    ['qt_imp', 'imp qt', 'imperial quart', 'qtUK UKqt', 'UKWM', 0.0011365225],
    ['pt_imp', 'imp pt', 'imperial pint', 'ptUK UKpt', 'UKWM', 0.00056826125],
    ['floz_imp', 'imp fl oz', 'imperial fluid ounce', 'flozUK UKfloz', 'UKWM', 0.0000284130625],
  ],
});

/** Kind of quantity: cell density. Coherent SI unit `1/m2`. */
export const cellDensity: Kind<'cellDensity'> = /* @__PURE__ */ makeKind({
  kind: 'cellDensity',
  dimension: [-2, 0, 0, 0, 0, 0],
  base: '1/m2',
  units: [
    ['cpsi', null, 'cells per square inch', 'cells/in2 1/in2 cells/sqin', 'YARD', 1550.0031000062, '1/0.00064516'],
    ['1/cm2', null, 'cells per square centimetre', 'cells/cm2 cm-2 cpscm', 'SI', 10000],
    ['1/m2', null, 'cells per square metre', 'cells/m2 m-2', 'SI', 1],
  ],
});

/** Kind of quantity: permeability. Of a porous wall or layer, by the law of Darcy. Coherent SI unit `m2`. */
export const permeability: Kind<'permeability'> = /* @__PURE__ */ makeKind({
  kind: 'permeability',
  dimension: [2, 0, 0, 0, 0, 0],
  base: 'm2',
  units: [
    ['m2', null, 'square metre', '', 'SI', 1],
    ['um2', null, 'square micrometre', '', 'SI', 1e-12],
    ['mD', null, 'millidarcy', '', 'SP811', 9.869232667160128e-16, '0.000000000000001/1.01325'],
    ['cm2', null, 'square centimetre', '', 'SI', 0.0001],
    ['darcy', 'D', 'darcy', 'Da', 'SP811', 9.869232667160128e-13, '0.000000000001/1.01325'],
  ],
});

/** Kind of quantity: inertial (Forchheimer) coefficient. The coefficient β in dp/dx = µu/k + βρu². Coherent SI unit `1/m`. */
export const inertialCoefficient: Kind<'inertialCoefficient'> = /* @__PURE__ */ makeKind({
  kind: 'inertialCoefficient',
  label: 'inertial (Forchheimer) coefficient',
  dimension: [-1, 0, 0, 0, 0, 0],
  base: '1/m',
  units: [
    ['1/m', null, 'per metre', 'm-1', 'SI', 1],
  ],
});

/** Kind of quantity: absorption coefficient. Light absorption of smoke by length of path. Coherent SI unit `1/m`. */
export const absorptionCoefficient: Kind<'absorptionCoefficient'> = /* @__PURE__ */ makeKind({
  kind: 'absorptionCoefficient',
  dimension: [-1, 0, 0, 0, 0, 0],
  base: '1/m',
  units: [
    ['1/m', null, 'per metre', 'm-1', 'SI', 1],
    ['1/ft', null, 'per foot', 'ft-1', 'YARD', 3.2808398950131235, '1/0.3048'],
  ],
});

/** Kind of quantity: mass. Coherent SI unit `kg`. */
export const mass: Kind<'mass'> = /* @__PURE__ */ makeKind({
  kind: 'mass',
  dimension: [0, 1, 0, 0, 0, 0],
  base: 'kg',
  ambiguous: [
    ['ton tons', 't ton_short ton_long'],
  ],
  units: [
    ['g', null, 'gram', 'grams gramme', 'SI', 0.001],
    ['kg', null, 'kilogram', 'kilograms kilo', 'SI', 1],
    ['mg', null, 'milligram', 'milligrams', 'SI', 0.000001],
    ['lb', null, 'pound', 'lbs pounds lbm', 'YARD', 0.45359237],
    ['oz', null, 'ounce', 'ounces', 'YARD', 0.028349523125],
    ['t', null, 'tonne', 'tonnes', 'SI', 1000],
    ['ug', null, 'microgram', '', 'SI', 1e-9],
    ['gr', null, 'grain', 'grains', 'YARD', 0.00006479891],
    ['ton_short', 'short ton', 'short ton', '', 'YARD', 907.18474],
    ['ton_long', 'long ton', 'long ton', '', 'YARD', 1016.0469088],
  ],
});

/** Kind of quantity: time. Coherent SI unit `s`. */
export const time: Kind<'time'> = /* @__PURE__ */ makeKind({
  kind: 'time',
  dimension: [0, 0, 1, 0, 0, 0],
  base: 's',
  units: [
    ['s', null, 'second', 'sec secs seconds', 'SI', 1],
    ['min', null, 'minute', 'minutes mins', 'SI', 60],
    ['h', null, 'hour', 'hours hr hrs', 'SI', 3600],
    ['d', null, 'day', 'days', 'SI', 86400],
    ['ms', null, 'millisecond', 'milliseconds', 'SI', 0.001],
    ['week', 'weeks', 'week of 7 days', 'wk', 'JULIAN', 604800],
    ['month', 'months', 'month of a twelfth of 365.25 days', '', 'JULIAN', 2629800],
    ['year', 'years', 'year of 365.25 days', 'yr yrs', 'JULIAN', 31557600],
  ],
});

/** Kind of quantity: density. Coherent SI unit `kg/m3`. */
export const density: Kind<'density'> = /* @__PURE__ */ makeKind({
  kind: 'density',
  dimension: [-3, 1, 0, 0, 0, 0],
  base: 'kg/m3',
  ambiguous: [
    ['lb/gal lbs/gal', 'lb/gal_US lb/gal_imp'],
  ],
  units: [
    ['kg/m3', null, 'kilogram per cubic metre', '', 'SI', 1],
    ['kg/L', null, 'kilogram per litre', 'kg/dm3', 'SI', 1000],
    ['g/cm3', null, 'gram per cubic centimetre', 'g/cc', 'SI', 1000],
    ['g/L', null, 'gram per litre', 'g/dm3', 'SI', 1],
    ['lb/ft3', null, 'pound per cubic foot', 'lb/cuft lbs/ft3', 'YARD', 16.018463373960138, '0.45359237/0.028316846592'],
    ['lb/gal_US', 'lb/US gal', 'pound per US gallon', '', 'USGAL', 119.82642731689663, '0.45359237/0.003785411784'],
    ['g/mL', null, 'gram per millilitre', '', 'SI', 1000],
    ['lb/gal_imp', 'lb/imp gal', 'pound per imperial gallon', '', 'UKWM', 99.7763726631017, '0.45359237/0.00454609'],
  ],
});

/** Kind of quantity: dynamic viscosity. Coherent SI unit `Pa.s`. */
export const dynamicViscosity: Kind<'dynamicViscosity'> = /* @__PURE__ */ makeKind({
  kind: 'dynamicViscosity',
  dimension: [-1, 1, -1, 0, 0, 0],
  base: 'Pa.s',
  units: [
    ['uPa.s', null, 'micropascal second', '', 'SI', 0.000001],
    ['mPa.s', null, 'millipascal second', '', 'SI', 0.001],
    ['Pa.s', null, 'pascal second', 'kg/(m.s) N.s/m2', 'SI', 1],
    ['cP', null, 'centipoise', '', 'SP811', 0.001],
    ['P', null, 'poise', '', 'SP811', 0.1],
  ],
});

/** Kind of quantity: kinematic viscosity. Coherent SI unit `m2/s`. */
export const kinematicViscosity: Kind<'kinematicViscosity'> = /* @__PURE__ */ makeKind({
  kind: 'kinematicViscosity',
  dimension: [2, 0, -1, 0, 0, 0],
  base: 'm2/s',
  units: [
    ['mm2/s', null, 'square millimetre per second', '', 'SI', 0.000001],
    ['m2/s', null, 'square metre per second', '', 'SI', 1],
    ['cSt', null, 'centistokes', '', 'SP811', 0.000001],
  ],
});

/** Kind of quantity: diffusivity. Coherent SI unit `m2/s`. */
export const diffusivity: Kind<'diffusivity'> = /* @__PURE__ */ makeKind({
  kind: 'diffusivity',
  dimension: [2, 0, -1, 0, 0, 0],
  base: 'm2/s',
  units: [
    ['mm2/s', null, 'square millimetre per second', '', 'SI', 0.000001],
    ['cm2/s', null, 'square centimetre per second', '', 'SI', 0.0001],
    ['m2/s', null, 'square metre per second', '', 'SI', 1],
  ],
});

/** Kind of quantity: velocity. Coherent SI unit `m/s`. */
export const velocity: Kind<'velocity'> = /* @__PURE__ */ makeKind({
  kind: 'velocity',
  dimension: [1, 0, -1, 0, 0, 0],
  base: 'm/s',
  units: [
    ['m/s', null, 'metre per second', '', 'SI', 1],
    ['km/h', null, 'kilometre per hour', 'kmh kph km/hr', 'SI', 0.2777777777777778, '1/3.6'],
    ['mph', null, 'mile per hour', 'mi/h', 'YARD', 0.44704],
    ['ft/s', null, 'foot per second', 'fps', 'YARD', 0.3048],
    ['cm/s', null, 'centimetre per second', '', 'SI', 0.01],
    ['mm/s', null, 'millimetre per second', '', 'SI', 0.001],
    ['ft/min', null, 'foot per minute', 'fpm', 'YARD', 0.00508],
  ],
});

/** Kind of quantity: acceleration. Coherent SI unit `m/s2`. */
export const acceleration: Kind<'acceleration'> = /* @__PURE__ */ makeKind({
  kind: 'acceleration',
  dimension: [1, 0, -2, 0, 0, 0],
  base: 'm/s2',
  units: [
    ['m/s2', null, 'metre per second squared', '', 'SI', 1],
    ['g_n', 'gₙ', 'standard acceleration of free fall', '', 'GN', 9.80665],
  ],
});

/** Kind of quantity: rotational speed. Counts revolutions, not radians. Coherent SI unit `r/s`. */
export const rotationalSpeed: Kind<'rotationalSpeed'> = /* @__PURE__ */ makeKind({
  kind: 'rotationalSpeed',
  dimension: [0, 0, -1, 0, 0, 0],
  base: 'r/s',
  units: [
    ['rpm', null, 'revolution per minute', 'r/min rev/min 1/min min-1 u/min', 'SI', 0.016666666666666666, '1/60'],
    ['r/s', null, 'revolution per second', 'rps rev/s 1/s s-1', 'SI', 1],
  ],
});

/** Kind of quantity: frequency. Coherent SI unit `Hz`. */
export const frequency: Kind<'frequency'> = /* @__PURE__ */ makeKind({
  kind: 'frequency',
  dimension: [0, 0, -1, 0, 0, 0],
  base: 'Hz',
  units: [
    ['Hz', null, 'hertz', '1/s s-1', 'SI', 1],
    ['kHz', null, 'kilohertz', '', 'SI', 1000],
    ['1/min', null, 'per minute', 'min-1', 'SI', 0.016666666666666666, '1/60'],
    ['1/h', null, 'per hour', 'h-1', 'SI', 0.0002777777777777778, '1/3600'],
  ],
});

/** Kind of quantity: force. Coherent SI unit `N`. */
export const force: Kind<'force'> = /* @__PURE__ */ makeKind({
  kind: 'force',
  dimension: [1, 1, -2, 0, 0, 0],
  base: 'N',
  units: [
    ['N', null, 'newton', 'newtons', 'SI', 1],
    ['kN', null, 'kilonewton', '', 'SI', 1000],
    ['lbf', null, 'pound-force', '', 'SP811', 4.4482216152605],
    ['kgf', null, 'kilogram-force', 'kp', 'SP811', 9.80665],
  ],
});

/** Kind of quantity: torque. Coherent SI unit `N.m`. */
export const torque: Kind<'torque'> = /* @__PURE__ */ makeKind({
  kind: 'torque',
  dimension: [2, 1, -2, 0, 0, 0],
  base: 'N.m',
  units: [
    ['N.m', null, 'newton metre', '', 'SI', 1],
    ['lbf.ft', null, 'pound-force foot', 'lb.ft ft.lb ft.lbf', 'SP811', 1.3558179483314003, '1.3558179483314004'],
    ['lbf.in', null, 'pound-force inch', 'lb.in in.lb in.lbf', 'SP811', 0.1129848290276167],
    ['kgf.m', null, 'kilogram-force metre', 'kgm kpm', 'SP811', 9.80665],
    ['N.cm', null, 'newton centimetre', '', 'SI', 0.01],
  ],
});

/** Kind of quantity: absolute pressure. Counted from vacuum; never negative. Coherent SI unit `Pa`. */
export const absolutePressure: Kind<'absolutePressure'> = /* @__PURE__ */ makeKind({
  kind: 'absolutePressure',
  dimension: [-1, 1, -2, 0, 0, 0],
  base: 'Pa',
  floor: true,
  ambiguous: [
    ['inH2O inWC inWG inchH2O inchesH2O "H2O "WC "WG', 'inH2O_4C inH2O_60F inH2O_conventional'],
    ['inHg inchHg inchesHg "Hg', 'inHg_32F inHg_60F inHg_conventional'],
    ['ftH2O ftWC', 'ftH2O_4C ftH2O_conventional'],
  ],
  units: [
    ['kPa', null, 'kilopascal', 'kPa(a) kPa(abs)', 'SI', 1000],
    ['mbar', null, 'millibar', 'millibars mbar(a) mbar(abs)', 'SI', 100],
    ['hPa', null, 'hectopascal', 'hPa(a) hPa(abs)', 'SI', 100],
    ['bar', null, 'bar', 'bars', 'SI', 100000],
    ['Pa', null, 'pascal', 'pascals N/m2 Pa(a) Pa(abs)', 'SI', 1],
    ['psi', null, 'pound-force per square inch', 'lbf/in2 lb/in2', 'SP811', 6894.757293168362, '4.4482216152605/0.00064516'],
    ['inHg_conventional', 'inHg (conv.)', 'conventional inch of mercury', '', 'SP811', 3386.388640341],
    ['mmHg_conventional', 'mmHg', 'conventional millimetre of mercury', '', 'SP811', 133.322387415],
    ['atm', null, 'standard atmosphere', 'atmosphere', 'SP811', 101325],
    ['MPa', null, 'megapascal', 'N/mm2 MPa(a) MPa(abs)', 'SI', 1000000],
    ['inH2O_4C', null, 'inch of water at 4 °C', 'inWC_4C', 'SP811C', 249.082, '~249.082'],
    ['inH2O_60F', null, 'inch of water at 60 °F', 'inWC_60F', 'SP811C', 248.84, '~248.84'],
    ['inH2O_conventional', 'inH₂O (conv.)', 'conventional inch of water', 'inWC_conventional inWC(conv)', 'SP811', 249.08891],
    ['ftH2O_4C', null, 'foot of water at 4 °C', '', 'SP811C', 2988.98, '~2988.98'],
    ['ftH2O_conventional', 'ftH₂O (conv.)', 'conventional foot of water', '', 'SP811', 2989.06692],
    ['mmH2O_conventional', 'mmH₂O', 'conventional millimetre of water', 'mmWC mmWG mmWS', 'SP811', 9.80665],
    ['cmH2O_conventional', 'cmH₂O', 'conventional centimetre of water', 'cmWC cmWS', 'SP811', 98.0665],
    ['Torr', null, 'torr', '', 'SP811', 133.32236842105263, '101325/760'],
    ['inHg_32F', null, 'inch of mercury at 32 °F', 'inHg_0C', 'SP811C', 3386.38, '~3386.38'],
    ['inHg_60F', null, 'inch of mercury at 60 °F', '', 'SP811C', 3376.85, '~3376.85'],
    ['at', null, 'technical atmosphere', 'kgf/cm2 kp/cm2', 'SP811', 98066.5],
    ['psia', null, 'pound-force per square inch absolute', 'psi(abs)', 'SP811', 6894.757293168362, '4.4482216152605/0.00064516'],
    ['bara', null, 'bar absolute', 'bar(abs)', 'SI', 100000],
  ],
});

/** Kind of quantity: gauge pressure. Counted from the ambient pressure; `toAbsolute` needs that pressure. Coherent SI unit `Pa`. */
export const gaugePressure: Kind<'gaugePressure'> = /* @__PURE__ */ makeKind({
  kind: 'gaugePressure',
  dimension: [-1, 1, -2, 0, 0, 0],
  base: 'Pa',
  ambiguous: [
    ['inH2O inWC inWG inchH2O inchesH2O "H2O "WC "WG', 'inH2O_4C inH2O_60F inH2O_conventional'],
    ['inHg inchHg inchesHg "Hg', 'inHg_32F inHg_60F inHg_conventional'],
    ['ftH2O ftWC', 'ftH2O_4C ftH2O_conventional'],
  ],
  units: [
    ['mbar', null, 'millibar', 'millibars mbar(g) mbar(gauge)', 'SI', 100],
    ['kPa', null, 'kilopascal', 'kPa(g) kPa(gauge)', 'SI', 1000],
    ['hPa', null, 'hectopascal', 'hPa(g) hPa(gauge)', 'SI', 100],
    ['Pa', null, 'pascal', 'pascals N/m2 Pa(g) Pa(gauge)', 'SI', 1],
    ['bar', null, 'bar', 'bars', 'SI', 100000],
    ['psi', null, 'pound-force per square inch', 'lbf/in2 lb/in2', 'SP811', 6894.757293168362, '4.4482216152605/0.00064516'],
    ['inH2O_conventional', 'inH₂O (conv.)', 'conventional inch of water', 'inWC_conventional inWC(conv)', 'SP811', 249.08891],
    ['inHg_conventional', 'inHg (conv.)', 'conventional inch of mercury', '', 'SP811', 3386.388640341],
    ['mmHg_conventional', 'mmHg', 'conventional millimetre of mercury', '', 'SP811', 133.322387415],
    ['MPa', null, 'megapascal', 'N/mm2 MPa(g) MPa(gauge)', 'SI', 1000000],
    ['inH2O_4C', null, 'inch of water at 4 °C', 'inWC_4C', 'SP811C', 249.082, '~249.082'],
    ['inH2O_60F', null, 'inch of water at 60 °F', 'inWC_60F', 'SP811C', 248.84, '~248.84'],
    ['ftH2O_4C', null, 'foot of water at 4 °C', '', 'SP811C', 2988.98, '~2988.98'],
    ['ftH2O_conventional', 'ftH₂O (conv.)', 'conventional foot of water', '', 'SP811', 2989.06692],
    ['mmH2O_conventional', 'mmH₂O', 'conventional millimetre of water', 'mmWC mmWG mmWS', 'SP811', 9.80665],
    ['cmH2O_conventional', 'cmH₂O', 'conventional centimetre of water', 'cmWC cmWS', 'SP811', 98.0665],
    ['Torr', null, 'torr', '', 'SP811', 133.32236842105263, '101325/760'],
    ['inHg_32F', null, 'inch of mercury at 32 °F', 'inHg_0C', 'SP811C', 3386.38, '~3386.38'],
    ['inHg_60F', null, 'inch of mercury at 60 °F', '', 'SP811C', 3376.85, '~3376.85'],
    ['atm', null, 'standard atmosphere', 'atmosphere', 'SP811', 101325],
    ['at', null, 'technical atmosphere', 'kgf/cm2 kp/cm2', 'SP811', 98066.5],
    ['psig', null, 'pound-force per square inch gauge', 'psi(gauge)', 'SP811', 6894.757293168362, '4.4482216152605/0.00064516'],
    ['barg', null, 'bar gauge', '', 'SI', 100000],
  ],
});

/** Kind of quantity: differential pressure. Between two places, such as before and after a filter. Coherent SI unit `Pa`. */
export const differentialPressure: Kind<'differentialPressure'> = /* @__PURE__ */ makeKind({
  kind: 'differentialPressure',
  dimension: [-1, 1, -2, 0, 0, 0],
  base: 'Pa',
  ambiguous: [
    ['inH2O inWC inWG inchH2O inchesH2O "H2O "WC "WG', 'inH2O_4C inH2O_60F inH2O_conventional'],
    ['inHg inchHg inchesHg "Hg', 'inHg_32F inHg_60F inHg_conventional'],
    ['ftH2O ftWC', 'ftH2O_4C ftH2O_conventional'],
  ],
  units: [
    ['mbar', null, 'millibar', 'millibars mbar(d) mbar(diff)', 'SI', 100],
    ['kPa', null, 'kilopascal', 'kPa(d) kPa(diff)', 'SI', 1000],
    ['hPa', null, 'hectopascal', 'hPa(d) hPa(diff)', 'SI', 100],
    ['Pa', null, 'pascal', 'pascals N/m2 Pa(d) Pa(diff)', 'SI', 1],
    ['bar', null, 'bar', 'bars', 'SI', 100000],
    ['psi', null, 'pound-force per square inch', 'lbf/in2 lb/in2', 'SP811', 6894.757293168362, '4.4482216152605/0.00064516'],
    ['inH2O_conventional', 'inH₂O (conv.)', 'conventional inch of water', 'inWC_conventional inWC(conv)', 'SP811', 249.08891],
    ['inHg_conventional', 'inHg (conv.)', 'conventional inch of mercury', '', 'SP811', 3386.388640341],
    ['mmHg_conventional', 'mmHg', 'conventional millimetre of mercury', '', 'SP811', 133.322387415],
    ['MPa', null, 'megapascal', 'N/mm2 MPa(d) MPa(diff)', 'SI', 1000000],
    ['inH2O_4C', null, 'inch of water at 4 °C', 'inWC_4C', 'SP811C', 249.082, '~249.082'],
    ['inH2O_60F', null, 'inch of water at 60 °F', 'inWC_60F', 'SP811C', 248.84, '~248.84'],
    ['ftH2O_4C', null, 'foot of water at 4 °C', '', 'SP811C', 2988.98, '~2988.98'],
    ['ftH2O_conventional', 'ftH₂O (conv.)', 'conventional foot of water', '', 'SP811', 2989.06692],
    ['mmH2O_conventional', 'mmH₂O', 'conventional millimetre of water', 'mmWC mmWG mmWS', 'SP811', 9.80665],
    ['cmH2O_conventional', 'cmH₂O', 'conventional centimetre of water', 'cmWC cmWS', 'SP811', 98.0665],
    ['Torr', null, 'torr', '', 'SP811', 133.32236842105263, '101325/760'],
    ['inHg_32F', null, 'inch of mercury at 32 °F', 'inHg_0C', 'SP811C', 3386.38, '~3386.38'],
    ['inHg_60F', null, 'inch of mercury at 60 °F', '', 'SP811C', 3376.85, '~3376.85'],
    ['atm', null, 'standard atmosphere', 'atmosphere', 'SP811', 101325],
    ['at', null, 'technical atmosphere', 'kgf/cm2 kp/cm2', 'SP811', 98066.5],
    ['psid', null, 'pound-force per square inch differential', 'psi(diff)', 'SP811', 6894.757293168362, '4.4482216152605/0.00064516'],
    ['bard', null, 'bar differential', 'bar(diff)', 'SI', 100000],
  ],
});

/** Kind of quantity: rate of pressure change. Coherent SI unit `Pa/s`. */
export const pressureRate: Kind<'pressureRate'> = /* @__PURE__ */ makeKind({
  kind: 'pressureRate',
  label: 'rate of pressure change',
  dimension: [-1, 1, -3, 0, 0, 0],
  base: 'Pa/s',
  units: [
    ['mbar/min', null, 'millibar per minute', 'hPa/min', 'SI', 1.6666666666666667, '100/60'],
    ['Pa/s', null, 'pascal per second', '', 'SI', 1],
    ['kPa/min', null, 'kilopascal per minute', '', 'SI', 16.666666666666668, '1000/60'],
    ['mbar/s', null, 'millibar per second', 'hPa/s', 'SI', 100],
    ['kPa/s', null, 'kilopascal per second', '', 'SI', 1000],
    ['mbar/h', null, 'millibar per hour', 'hPa/h', 'SI', 0.027777777777777776, '100/3600'],
    ['psi/min', null, 'pound-force per square inch per minute', '', 'SP811', 114.91262155280602, '4.4482216152605/0.00064516/60'],
  ],
});

/** Kind of quantity: pressure drop per volume flow. Coherent SI unit `Pa.s/m3`. */
export const pressurePerVolumeFlow: Kind<'pressurePerVolumeFlow'> = /* @__PURE__ */ makeKind({
  kind: 'pressurePerVolumeFlow',
  label: 'pressure drop per volume flow',
  dimension: [-4, 1, -1, 0, 0, 0],
  base: 'Pa.s/m3',
  units: [
    ['mbar/(m3/h)', null, 'millibar per cubic metre per hour', 'mbar.h/m3', 'SI', 360000],
    ['Pa/(m3/h)', null, 'pascal per cubic metre per hour', 'Pa.h/m3', 'SI', 3600],
    ['Pa.s/m3', null, 'pascal second per cubic metre', 'Pa/(m3/s)', 'SI', 1],
  ],
});

/** Kind of quantity: power. Coherent SI unit `W`. */
export const power: Kind<'power'> = /* @__PURE__ */ makeKind({
  kind: 'power',
  dimension: [2, 1, -3, 0, 0, 0],
  base: 'W',
  ambiguous: [
    ['hp horsepower', 'hp_mechanical hp_metric'],
    ['Btu/h Btu/hr', 'Btu_IT/h Btu_th/h'],
  ],
  units: [
    ['kW', null, 'kilowatt', 'kilowatts kJ/s', 'SI', 1000],
    ['W', null, 'watt', 'watts J/s', 'SI', 1],
    ['hp_mechanical', 'hp (mech.)', 'mechanical horsepower, 550 ft·lbf/s', 'bhp hp_UK hp_US', 'SP811', 745.6998715822702, '745.69987158227022'],
    ['hp_metric', 'PS', 'metric horsepower', 'cv ch pk', 'SP811', 735.49875],
    ['MW', null, 'megawatt', '', 'SI', 1000000],
    ['Btu_IT/h', null, 'international table British thermal unit per hour', '', 'IT', 0.2930710701722222, '1055.05585262/3600'],
    ['Btu_th/h', null, 'thermochemical British thermal unit per hour', '', 'SP811', 0.2928750734691358, '4184*0.45359237*5/9/3600'],
  ],
});

/** Kind of quantity: energy. Coherent SI unit `J`. */
export const energy: Kind<'energy'> = /* @__PURE__ */ makeKind({
  kind: 'energy',
  dimension: [2, 1, -2, 0, 0, 0],
  base: 'J',
  ambiguous: [
    ['cal', 'cal_th cal_IT'],
    ['kcal', 'kcal_th kcal_IT'],
    ['Btu', 'Btu_IT Btu_th'],
  ],
  units: [
    ['kJ', null, 'kilojoule', 'kilojoules', 'SI', 1000],
    ['MJ', null, 'megajoule', 'megajoules', 'SI', 1000000],
    ['J', null, 'joule', 'joules W.s', 'SI', 1],
    ['kWh', null, 'kilowatt hour', 'kW.hr', 'SI', 3600000],
    ['Btu_IT', null, 'international table British thermal unit', '', 'IT', 1055.05585262],
    ['GJ', null, 'gigajoule', '', 'SI', 1000000000],
    ['Wh', null, 'watt hour', '', 'SI', 3600],
    ['MWh', null, 'megawatt hour', '', 'SI', 3600000000],
    ['hp.h', null, 'mechanical horsepower hour', 'hp.hr bhp.h bhp.hr', 'SP811', 2684519.537696173, '2684519.537696172792'],
    ['ft.lbf', null, 'foot pound-force', '', 'SP811', 1.3558179483314003, '1.3558179483314004'],
    ['cal_th', null, 'thermochemical calorie', '', 'SP811', 4.184],
    ['cal_IT', null, 'international table calorie', '', 'IT', 4.1868],
    ['kcal_th', null, 'thermochemical kilocalorie', '', 'SP811', 4184],
    ['kcal_IT', null, 'international table kilocalorie', '', 'IT', 4186.8],
    ['Btu_th', null, 'thermochemical British thermal unit', '', 'SP811', 1054.3502644888888, '4184*0.45359237*5/9'],
  ],
});

/** Kind of quantity: specific energy. Coherent SI unit `J/kg`. */
export const specificEnergy: Kind<'specificEnergy'> = /* @__PURE__ */ makeKind({
  kind: 'specificEnergy',
  dimension: [2, 0, -2, 0, 0, 0],
  base: 'J/kg',
  ambiguous: [
    ['Btu/lb Btu/lbm', 'Btu_IT/lb Btu_th/lb'],
    ['kcal/kg cal/g', 'kcal_th/kg kcal_IT/kg'],
  ],
  units: [
    ['MJ/kg', null, 'megajoule per kilogram', 'kJ/g', 'SI', 1000000],
    ['kJ/kg', null, 'kilojoule per kilogram', '', 'SI', 1000],
    ['J/kg', null, 'joule per kilogram', '', 'SI', 1],
    ['Btu_IT/lb', null, 'international table British thermal unit per pound', '', 'IT', 2326],
    ['J/g', null, 'joule per gram', '', 'SI', 1000],
    ['kWh/kg', null, 'kilowatt hour per kilogram', '', 'SI', 3600000],
    ['kcal_th/kg', null, 'thermochemical kilocalorie per kilogram', '', 'SP811', 4184],
    ['kcal_IT/kg', null, 'international table kilocalorie per kilogram', '', 'IT', 4186.8],
    ['Btu_th/lb', null, 'thermochemical British thermal unit per pound', '', 'SP811', 2324.4444444444443, '4184*5/9'],
  ],
});

/** Kind of quantity: molar energy. Coherent SI unit `J/mol`. */
export const molarEnergy: Kind<'molarEnergy'> = /* @__PURE__ */ makeKind({
  kind: 'molarEnergy',
  dimension: [2, 1, -2, 0, -1, 0],
  base: 'J/mol',
  units: [
    ['kJ/mol', null, 'kilojoule per mole', 'MJ/kmol', 'SI', 1000],
    ['J/mol', null, 'joule per mole', 'kJ/kmol', 'SI', 1],
    ['kcal_th/mol', null, 'thermochemical kilocalorie per mole', 'kcal/mol', 'SP811', 4184],
  ],
});

/** Kind of quantity: temperature. A point on a scale; differences are `temperatureDifference`. Coherent SI unit `K`. */
export const temperature: Kind<'temperature'> = /* @__PURE__ */ makeKind({
  kind: 'temperature',
  dimension: [0, 0, 0, 1, 0, 0],
  base: 'K',
  floor: true,
  units: [
    ['degC', null, 'degree Celsius', 'C celsius degreeC degreesC', 'SI', 1, '', 273.15],
    ['K', null, 'kelvin', 'kelvins', 'SI', 1],
    ['degF', null, 'degree Fahrenheit', 'F fahrenheit degreeF degreesF', 'SP811', 0.5555555555555556, '5/9', 459.67],
    ['degR', null, 'degree Rankine', 'R rankine', 'SP811', 0.5555555555555556, '5/9'],
  ],
});

/** Kind of quantity: temperature difference. Scaled but never shifted: 5 °C is 5 K. Coherent SI unit `K`. */
export const temperatureDifference: Kind<'temperatureDifference'> = /* @__PURE__ */ makeKind({
  kind: 'temperatureDifference',
  dimension: [0, 0, 0, 1, 0, 0],
  base: 'K',
  units: [
    ['K', null, 'kelvin', 'kelvins', 'SI', 1],
    ['degC', null, 'degree Celsius (difference)', 'C celsius', 'SI', 1],
    ['degF', null, 'degree Fahrenheit (difference)', 'F fahrenheit R degR', 'SP811', 0.5555555555555556, '5/9'],
  ],
});

/** Kind of quantity: rate of temperature change. Coherent SI unit `K/s`. */
export const temperatureRate: Kind<'temperatureRate'> = /* @__PURE__ */ makeKind({
  kind: 'temperatureRate',
  label: 'rate of temperature change',
  dimension: [0, 0, -1, 1, 0, 0],
  base: 'K/s',
  units: [
    ['K/s', null, 'kelvin per second', 'degC/s C/s', 'SI', 1],
    ['K/min', null, 'kelvin per minute', 'degC/min C/min', 'SI', 0.016666666666666666, '1/60'],
    ['K/h', null, 'kelvin per hour', 'degC/h C/h', 'SI', 0.0002777777777777778, '1/3600'],
    ['degF/s', null, 'degree Fahrenheit per second', 'F/s', 'SP811', 0.5555555555555556, '5/9'],
    ['degF/min', null, 'degree Fahrenheit per minute', 'F/min', 'SP811', 0.009259259259259259, '5/9/60'],
  ],
});

/** Kind of quantity: specific heat capacity. Coherent SI unit `J/(kg.K)`. */
export const specificHeatCapacity: Kind<'specificHeatCapacity'> = /* @__PURE__ */ makeKind({
  kind: 'specificHeatCapacity',
  dimension: [2, 0, -2, -1, 0, 0],
  base: 'J/(kg.K)',
  ambiguous: [
    ['Btu/lbF Btu/lb/F Btu/lbdegF', 'Btu_IT/(lb.degF) Btu_th/(lb.degF)'],
  ],
  units: [
    ['J/(kg.K)', null, 'joule per kilogram kelvin', 'J/kg/K', 'SI', 1],
    ['kJ/(kg.K)', null, 'kilojoule per kilogram kelvin', 'kJ/kg/K J/(g.K) J/g/K', 'SI', 1000],
    ['Btu_IT/(lb.degF)', null, 'international table British thermal unit per pound degree Fahrenheit', '', 'IT', 4186.8],
    ['Btu_th/(lb.degF)', null, 'thermochemical British thermal unit per pound degree Fahrenheit', '', 'SP811', 4184],
  ],
});

/** Kind of quantity: molar heat capacity. Coherent SI unit `J/(mol.K)`. */
export const molarHeatCapacity: Kind<'molarHeatCapacity'> = /* @__PURE__ */ makeKind({
  kind: 'molarHeatCapacity',
  dimension: [2, 1, -2, -1, -1, 0],
  base: 'J/(mol.K)',
  units: [
    ['J/(mol.K)', null, 'joule per mole kelvin', 'J/mol/K kJ/(kmol.K)', 'SI', 1],
    ['kJ/(mol.K)', null, 'kilojoule per mole kelvin', 'kJ/mol/K', 'SI', 1000],
  ],
});

/** Kind of quantity: volumetric heat capacity. Coherent SI unit `J/(m3.K)`. */
export const volumetricHeatCapacity: Kind<'volumetricHeatCapacity'> = /* @__PURE__ */ makeKind({
  kind: 'volumetricHeatCapacity',
  dimension: [-1, 1, -2, -1, 0, 0],
  base: 'J/(m3.K)',
  units: [
    ['kJ/(L.K)', null, 'kilojoule per litre kelvin', 'kJ/L/K', 'SI', 1000000],
    ['J/(m3.K)', null, 'joule per cubic metre kelvin', 'J/m3/K', 'SI', 1],
    ['kJ/(m3.K)', null, 'kilojoule per cubic metre kelvin', 'J/(L.K) J/L/K kJ/m3/K', 'SI', 1000],
  ],
});

/** Kind of quantity: heat capacity. Coherent SI unit `J/K`. */
export const heatCapacity: Kind<'heatCapacity'> = /* @__PURE__ */ makeKind({
  kind: 'heatCapacity',
  dimension: [2, 1, -2, -1, 0, 0],
  base: 'J/K',
  units: [
    ['kJ/K', null, 'kilojoule per kelvin', '', 'SI', 1000],
    ['J/K', null, 'joule per kelvin', '', 'SI', 1],
  ],
});

/** Kind of quantity: thermal conductivity. Coherent SI unit `W/(m.K)`. */
export const thermalConductivity: Kind<'thermalConductivity'> = /* @__PURE__ */ makeKind({
  kind: 'thermalConductivity',
  dimension: [1, 1, -3, -1, 0, 0],
  base: 'W/(m.K)',
  units: [
    ['mW/(m.K)', null, 'milliwatt per metre kelvin', 'mW/m/K', 'SI', 0.001],
    ['W/(m.K)', null, 'watt per metre kelvin', 'W/m/K', 'SI', 1],
  ],
});

/** Kind of quantity: heat transfer coefficient. Coherent SI unit `W/(m2.K)`. */
export const heatTransferCoefficient: Kind<'heatTransferCoefficient'> = /* @__PURE__ */ makeKind({
  kind: 'heatTransferCoefficient',
  dimension: [0, 1, -3, -1, 0, 0],
  base: 'W/(m2.K)',
  units: [
    ['W/(m2.K)', null, 'watt per square metre kelvin', 'W/m2/K', 'SI', 1],
    ['kW/(m2.K)', null, 'kilowatt per square metre kelvin', 'kW/m2/K', 'SI', 1000],
  ],
});

/** Kind of quantity: heat flux. Coherent SI unit `W/m2`. */
export const heatFlux: Kind<'heatFlux'> = /* @__PURE__ */ makeKind({
  kind: 'heatFlux',
  dimension: [0, 1, -3, 0, 0, 0],
  base: 'W/m2',
  units: [
    ['kW/m2', null, 'kilowatt per square metre', '', 'SI', 1000],
    ['W/m2', null, 'watt per square metre', '', 'SI', 1],
  ],
});

/** Kind of quantity: change per temperature. Coherent SI unit `1/K`. */
export const temperatureCoefficient: Kind<'temperatureCoefficient'> = /* @__PURE__ */ makeKind({
  kind: 'temperatureCoefficient',
  label: 'change per temperature',
  dimension: [0, 0, 0, -1, 0, 0],
  base: '1/K',
  units: [
    ['1/K', null, 'per kelvin', 'K-1 1/degC 1/C', 'SI', 1],
    ['%/K', null, 'per cent per kelvin', '%/degC %/C', 'RATIO', 0.01],
  ],
});

/** Kind of quantity: voltage. Coherent SI unit `V`. */
export const voltage: Kind<'voltage'> = /* @__PURE__ */ makeKind({
  kind: 'voltage',
  dimension: [2, 1, -3, 0, 0, -1],
  base: 'V',
  units: [
    ['V', null, 'volt', 'volts', 'SI', 1],
    ['mV', null, 'millivolt', 'millivolts', 'SI', 0.001],
  ],
});

/** Kind of quantity: electric current. Coherent SI unit `A`. */
export const electricCurrent: Kind<'electricCurrent'> = /* @__PURE__ */ makeKind({
  kind: 'electricCurrent',
  dimension: [0, 0, 0, 0, 0, 1],
  base: 'A',
  units: [
    ['A', null, 'ampere', 'amp amps amperes', 'SI', 1],
    ['mA', null, 'milliampere', '', 'SI', 0.001],
  ],
});

/** Kind of quantity: electric resistance. Coherent SI unit `ohm`. */
export const electricResistance: Kind<'electricResistance'> = /* @__PURE__ */ makeKind({
  kind: 'electricResistance',
  dimension: [2, 1, -3, 0, 0, -2],
  base: 'ohm',
  units: [
    ['ohm', null, 'ohm', 'ohms', 'SI', 1],
    ['kohm', null, 'kiloohm', 'kilohm', 'SI', 1000],
    ['Mohm', null, 'megaohm', 'megohm', 'SI', 1000000],
    ['mohm', null, 'milliohm', '', 'SI', 0.001],
  ],
});

/** Kind of quantity: actual volume flow. Volume at the pressure and temperature that the gas has. Coherent SI unit `m3/s`. */
export const volumeFlow: Kind<'volumeFlow'> = /* @__PURE__ */ makeKind({
  kind: 'volumeFlow',
  label: 'actual volume flow',
  dimension: [3, 0, -1, 0, 0, 0],
  base: 'm3/s',
  ambiguous: [
    ['gpm gal/min', 'gal_US/min gal_imp/min'],
  ],
  units: [
    ['m3/h', null, 'cubic metre per hour', 'cbm/h cmh m3/hr', 'SI', 0.0002777777777777778, '1/3600'],
    ['L/s', null, 'litre per second', '', 'SI', 0.001],
    ['L/min', null, 'litre per minute', 'lpm', 'SI', 0.000016666666666666667, '0.001/60'],
    ['m3/s', null, 'cubic metre per second', '', 'SI', 1],
    ['ft3/min', null, 'cubic foot per minute', 'cfm acfm cuft/min', 'YARD', 0.0004719474432],
    ['m3/min', null, 'cubic metre per minute', '', 'SI', 0.016666666666666666, '1/60'],
    ['L/h', null, 'litre per hour', 'L/hr', 'SI', 2.7777777777777776e-7, '0.001/3600'],
    ['mL/s', null, 'millilitre per second', 'cm3/s cc/s', 'SI', 0.000001],
    ['mL/min', null, 'millilitre per minute', 'cm3/min cc/min', 'SI', 1.6666666666666667e-8, '0.000001/60'],
    ['mL/h', null, 'millilitre per hour', 'cm3/h', 'SI', 2.7777777777777777e-10, '0.000001/3600'],
    ['ft3/h', null, 'cubic foot per hour', 'cfh', 'YARD', 0.00000786579072],
    ['gal_US/min', 'US gal/min', 'US gallon per minute', 'gpm_US', 'USGAL', 0.0000630901964],
    ['gal_imp/min', 'imp gal/min', 'imperial gallon per minute', 'gpm_imp', 'UKWM', 0.00007576816666666667, '0.00454609/60'],
  ],
});

/** Kind of quantity: standard volume flow. A flow of molecules told as volume at 101.325 kPa and the temperature that the unit names; conversion between the states is the ideal-gas ratio. Coherent SI unit `m3/s_0C`. */
export const standardVolumeFlow: Kind<'standardVolumeFlow'> = /* @__PURE__ */ makeKind({
  kind: 'standardVolumeFlow',
  dimension: [3, 0, -1, 0, 0, 0],
  base: 'm3/s_0C',
  ambiguous: [
    ['scfm cfm ft3/min', 'ft3/min_60F ft3/min_20C ft3/min_15C ft3/min_0C ft3/min_25C'],
    ['slm slpm sL/min L/min lpm', 'L/min_0C L/min_15C L/min_20C L/min_25C L/min_60F'],
    ['sm3/h m3/h', 'm3/h_0C m3/h_15C m3/h_20C m3/h_25C m3/h_60F'],
    ['sm3/min m3/min', 'm3/min_0C m3/min_15C m3/min_20C m3/min_25C m3/min_60F'],
    ['sm3/s m3/s', 'm3/s_0C m3/s_15C m3/s_20C m3/s_25C m3/s_60F'],
    ['sL/s L/s', 'L/s_0C L/s_15C L/s_20C L/s_25C L/s_60F'],
  ],
  units: [
    ['m3/h_0C', null, 'cubic metre per hour at 0 °C, 101.325 kPa', 'Nm3/h', 'REF', 0.0002777777777777778, '1/3600'],
    ['m3/h_15C', null, 'cubic metre per hour at 15 °C, 101.325 kPa', '', 'REF', 0.00026331771646711784, '1/3600*273.15/288.15'],
    ['m3/h_20C', null, 'cubic metre per hour at 20 °C, 101.325 kPa', '', 'REF', 0.0002588265393143442, '1/3600*273.15/293.15'],
    ['m3/h_25C', null, 'cubic metre per hour at 25 °C, 101.325 kPa', '', 'REF', 0.0002544859969813852, '1/3600*273.15/298.15'],
    ['L/min_0C', null, 'litre per minute at 0 °C, 101.325 kPa', 'NL/min', 'REF', 0.000016666666666666667, '0.001/60'],
    ['L/min_20C', null, 'litre per minute at 20 °C, 101.325 kPa', '', 'REF', 0.000015529592358860652, '0.001/60*273.15/293.15'],
    ['ft3/min_60F', null, 'cubic foot per minute at 60 °F, 101.325 kPa', '', 'REF', 0.00044651875112695363, '0.028316846592/60*273.15*9/5/519.67'],
    ['ft3/min_20C', null, 'cubic foot per minute at 20 °C, 101.325 kPa', '', 'REF', 0.00043974908446215246, '0.028316846592/60*273.15/293.15'],
    ['m3/s_0C', null, 'cubic metre per second at 0 °C, 101.325 kPa', 'Nm3/s', 'REF', 1],
    ['m3/min_0C', null, 'cubic metre per minute at 0 °C, 101.325 kPa', 'Nm3/min', 'REF', 0.016666666666666666, '1/60'],
    ['L/s_0C', null, 'litre per second at 0 °C, 101.325 kPa', 'NL/s', 'REF', 0.001],
    ['ft3/min_0C', null, 'cubic foot per minute at 0 °C, 101.325 kPa', 'Nft3/min', 'REF', 0.0004719474432],
    ['m3/s_15C', null, 'cubic metre per second at 15 °C, 101.325 kPa', '', 'REF', 0.9479437792816241, '1*273.15/288.15'],
    ['m3/min_15C', null, 'cubic metre per minute at 15 °C, 101.325 kPa', '', 'REF', 0.01579906298802707, '1/60*273.15/288.15'],
    ['L/s_15C', null, 'litre per second at 15 °C, 101.325 kPa', '', 'REF', 0.0009479437792816242, '0.001*273.15/288.15'],
    ['L/min_15C', null, 'litre per minute at 15 °C, 101.325 kPa', '', 'REF', 0.00001579906298802707, '0.001/60*273.15/288.15'],
    ['ft3/min_15C', null, 'cubic foot per minute at 15 °C, 101.325 kPa', '', 'REF', 0.00044737964292930764, '0.028316846592/60*273.15/288.15'],
    ['m3/s_20C', null, 'cubic metre per second at 20 °C, 101.325 kPa', '', 'REF', 0.9317755415316391, '1*273.15/293.15'],
    ['m3/min_20C', null, 'cubic metre per minute at 20 °C, 101.325 kPa', '', 'REF', 0.015529592358860651, '1/60*273.15/293.15'],
    ['L/s_20C', null, 'litre per second at 20 °C, 101.325 kPa', '', 'REF', 0.0009317755415316391, '0.001*273.15/293.15'],
    ['m3/s_25C', null, 'cubic metre per second at 25 °C, 101.325 kPa', '', 'REF', 0.9161495891329867, '1*273.15/298.15'],
    ['m3/min_25C', null, 'cubic metre per minute at 25 °C, 101.325 kPa', '', 'REF', 0.015269159818883113, '1/60*273.15/298.15'],
    ['L/s_25C', null, 'litre per second at 25 °C, 101.325 kPa', '', 'REF', 0.0009161495891329868, '0.001*273.15/298.15'],
    ['L/min_25C', null, 'litre per minute at 25 °C, 101.325 kPa', '', 'REF', 0.000015269159818883112, '0.001/60*273.15/298.15'],
    ['ft3/min_25C', null, 'cubic foot per minute at 25 °C, 101.325 kPa', '', 'REF', 0.00043237445618004363, '0.028316846592/60*273.15/298.15'],
    ['m3/s_60F', null, 'cubic metre per second at 60 °F, 101.325 kPa', '', 'REF', 0.9461196528566206, '1*273.15*9/5/519.67'],
    ['m3/min_60F', null, 'cubic metre per minute at 60 °F, 101.325 kPa', '', 'REF', 0.015768660880943676, '1/60*273.15*9/5/519.67'],
    ['m3/h_60F', null, 'cubic metre per hour at 60 °F, 101.325 kPa', '', 'REF', 0.00026281101468239457, '1/3600*273.15*9/5/519.67'],
    ['L/s_60F', null, 'litre per second at 60 °F, 101.325 kPa', '', 'REF', 0.0009461196528566206, '0.001*273.15*9/5/519.67'],
    ['L/min_60F', null, 'litre per minute at 60 °F, 101.325 kPa', '', 'REF', 0.000015768660880943675, '0.001/60*273.15*9/5/519.67'],
  ],
});

/** Kind of quantity: mass flow. Coherent SI unit `kg/s`. */
export const massFlow: Kind<'massFlow'> = /* @__PURE__ */ makeKind({
  kind: 'massFlow',
  dimension: [0, 1, -1, 0, 0, 0],
  base: 'kg/s',
  units: [
    ['kg/h', null, 'kilogram per hour', 'kg/hr', 'SI', 0.0002777777777777778, '1/3600'],
    ['g/s', null, 'gram per second', 'g/sec', 'SI', 0.001],
    ['kg/s', null, 'kilogram per second', '', 'SI', 1],
    ['g/h', null, 'gram per hour', 'g/hr', 'SI', 2.7777777777777776e-7, '0.001/3600'],
    ['lb/min', null, 'pound per minute', 'lbs/min', 'YARD', 0.007559872833333333, '0.45359237/60'],
    ['lb/h', null, 'pound per hour', 'lbs/h lb/hr lbs/hr pph', 'YARD', 0.00012599788055555556, '0.45359237/3600'],
    ['kg/min', null, 'kilogram per minute', '', 'SI', 0.016666666666666666, '1/60'],
    ['t/h', null, 'tonne per hour', '', 'SI', 0.2777777777777778, '1000/3600'],
    ['g/min', null, 'gram per minute', '', 'SI', 0.000016666666666666667, '0.001/60'],
    ['mg/s', null, 'milligram per second', 'mg/sec', 'SI', 0.000001],
    ['mg/min', null, 'milligram per minute', '', 'SI', 1.6666666666666667e-8, '0.000001/60'],
    ['mg/h', null, 'milligram per hour', '', 'SI', 2.7777777777777777e-10, '0.000001/3600'],
    ['lb/s', null, 'pound per second', 'lbs/s', 'YARD', 0.45359237],
  ],
});

/** Kind of quantity: molar flow. Coherent SI unit `mol/s`. */
export const molarFlow: Kind<'molarFlow'> = /* @__PURE__ */ makeKind({
  kind: 'molarFlow',
  dimension: [0, 0, -1, 0, 1, 0],
  base: 'mol/s',
  units: [
    ['mol/s', null, 'mole per second', '', 'SI', 1],
    ['mol/h', null, 'mole per hour', '', 'SI', 0.0002777777777777778, '1/3600'],
    ['kmol/h', null, 'kilomole per hour', '', 'SI', 0.2777777777777778, '1000/3600'],
    ['mmol/s', null, 'millimole per second', '', 'SI', 0.001],
    ['mol/min', null, 'mole per minute', '', 'SI', 0.016666666666666666, '1/60'],
  ],
});

/** Kind of quantity: space velocity. Volume flow at a stated reference state over the volume of the part. Coherent SI unit `1/s`. */
export const spaceVelocity: Kind<'spaceVelocity'> = /* @__PURE__ */ makeKind({
  kind: 'spaceVelocity',
  dimension: [0, 0, -1, 0, 0, 0],
  base: '1/s',
  units: [
    ['1/h', null, 'per hour', 'h-1 1/hr', 'SI', 0.0002777777777777778, '1/3600'],
    ['1/s', null, 'per second', 's-1', 'SI', 1],
  ],
});

/** Kind of quantity: first-order rate. Coherent SI unit `1/s`. */
export const reactionRate: Kind<'reactionRate'> = /* @__PURE__ */ makeKind({
  kind: 'reactionRate',
  label: 'first-order rate',
  dimension: [0, 0, -1, 0, 0, 0],
  base: '1/s',
  units: [
    ['1/s', null, 'per second', 's-1', 'SI', 1],
    ['1/min', null, 'per minute', 'min-1', 'SI', 0.016666666666666666, '1/60'],
    ['%/min', null, 'per cent per minute', '', 'RATIO', 0.00016666666666666666, '0.01/60'],
    ['1/h', null, 'per hour', 'h-1', 'SI', 0.0002777777777777778, '1/3600'],
    ['%/s', null, 'per cent per second', '', 'RATIO', 0.01],
    ['%/h', null, 'per cent per hour', '', 'RATIO', 0.000002777777777777778, '0.01/3600'],
  ],
});

/** Kind of quantity: flow resistance. Pressure drop over viscosity and volume flow. Coherent SI unit `1/m3`. */
export const flowResistance: Kind<'flowResistance'> = /* @__PURE__ */ makeKind({
  kind: 'flowResistance',
  dimension: [-3, 0, 0, 0, 0, 0],
  base: '1/m3',
  units: [
    ['1/m3', null, 'per cubic metre', 'm-3', 'SI', 1],
    ['1/mm3', null, 'per cubic millimetre', 'mm-3', 'SI', 1000000000],
  ],
});

/** Kind of quantity: inertial flow resistance. Pressure drop over density and the square of the volume flow. Coherent SI unit `1/m4`. */
export const inertialFlowResistance: Kind<'inertialFlowResistance'> = /* @__PURE__ */ makeKind({
  kind: 'inertialFlowResistance',
  dimension: [-4, 0, 0, 0, 0, 0],
  base: '1/m4',
  units: [
    ['1/m4', '1/m⁴', 'per metre to the fourth', 'm-4', 'SI', 1],
    ['1/cm4', '1/cm⁴', 'per centimetre to the fourth', 'cm-4', 'SI', 100000000],
  ],
});

/** Kind of quantity: mass flow per area. Coherent SI unit `kg/(m2.s)`. */
export const massFlux: Kind<'massFlux'> = /* @__PURE__ */ makeKind({
  kind: 'massFlux',
  label: 'mass flow per area',
  dimension: [-2, 1, -1, 0, 0, 0],
  base: 'kg/(m2.s)',
  units: [
    ['kg/(m2.s)', null, 'kilogram per square metre second', 'kg/m2/s', 'SI', 1],
    ['g/(m2.s)', null, 'gram per square metre second', 'g/m2/s', 'SI', 0.001],
  ],
});

/** Kind of quantity: amount of substance. Coherent SI unit `mol`. */
export const amount: Kind<'amount'> = /* @__PURE__ */ makeKind({
  kind: 'amount',
  label: 'amount of substance',
  dimension: [0, 0, 0, 0, 1, 0],
  base: 'mol',
  units: [
    ['mol', null, 'mole', 'moles', 'SI', 1],
    ['mmol', null, 'millimole', '', 'SI', 0.001],
    ['kmol', null, 'kilomole', '', 'SI', 1000],
    ['umol', null, 'micromole', '', 'SI', 0.000001],
  ],
});

/** Kind of quantity: molar mass. Coherent SI unit `kg/mol`. */
export const molarMass: Kind<'molarMass'> = /* @__PURE__ */ makeKind({
  kind: 'molarMass',
  dimension: [0, 1, 0, 0, -1, 0],
  base: 'kg/mol',
  units: [
    ['g/mol', null, 'gram per mole', 'kg/kmol', 'SI', 0.001],
    ['kg/mol', null, 'kilogram per mole', '', 'SI', 1],
  ],
});

/** Kind of quantity: molar volume. Coherent SI unit `m3/mol`. */
export const molarVolume: Kind<'molarVolume'> = /* @__PURE__ */ makeKind({
  kind: 'molarVolume',
  dimension: [3, 0, 0, 0, -1, 0],
  base: 'm3/mol',
  units: [
    ['L/mol', null, 'litre per mole', 'm3/kmol', 'SI', 0.001],
    ['m3/mol', null, 'cubic metre per mole', '', 'SI', 1],
  ],
});

/** Kind of quantity: amount concentration. Coherent SI unit `mol/m3`. */
export const molarConcentration: Kind<'molarConcentration'> = /* @__PURE__ */ makeKind({
  kind: 'molarConcentration',
  label: 'amount concentration',
  dimension: [-3, 0, 0, 0, 1, 0],
  base: 'mol/m3',
  units: [
    ['mol/L', null, 'mole per litre', '', 'SI', 1000],
    ['mol/m3', null, 'mole per cubic metre', '', 'SI', 1],
    ['mmol/L', null, 'millimole per litre', '', 'SI', 1],
  ],
});

/** Kind of quantity: molality. Coherent SI unit `mol/kg`. */
export const molality: Kind<'molality'> = /* @__PURE__ */ makeKind({
  kind: 'molality',
  dimension: [0, -1, 0, 0, 1, 0],
  base: 'mol/kg',
  units: [
    ['mol/kg', null, 'mole per kilogram', '', 'SI', 1],
    ['mmol/kg', null, 'millimole per kilogram', '', 'SI', 0.001],
  ],
});

/** Kind of quantity: mole fraction. Of a gas; for ideal gases the same as parts by volume. Coherent SI unit `1`. */
export const moleFraction: Kind<'moleFraction'> = /* @__PURE__ */ makeKind({
  kind: 'moleFraction',
  dimension: [0, 0, 0, 0, 0, 0],
  base: '1',
  units: [
    ['ppm', null, 'parts per million by volume of gas (mole)', 'ppmv vppm', 'RATIO', 0.000001],
    ['%', null, 'per cent by volume of gas (mole)', 'pct', 'RATIO', 0.01],
    ['1', '', 'one', 'fraction', 'RATIO', 1],
    ['ppb', null, 'parts per billion', '', 'RATIO', 1e-9],
    ['permille', '‰', 'per mille by volume of gas (mole)', '', 'RATIO', 0.001],
    ['umol/mol', null, 'micromole per mole', '', 'SI', 0.000001],
    ['mol/mol', null, 'mole per mole', '', 'SI', 1],
    ['%vol', '% vol', 'volume per cent of gas', 'vol% vol-% %v/v', 'RATIO', 0.01],
  ],
});

/** Kind of quantity: mass fraction. Parts by mass of the whole. Coherent SI unit `1`. */
export const massFraction: Kind<'massFraction'> = /* @__PURE__ */ makeKind({
  kind: 'massFraction',
  dimension: [0, 0, 0, 0, 0, 0],
  base: '1',
  units: [
    ['%', null, 'per cent by mass', 'pct', 'RATIO', 0.01],
    ['1', '', 'one', 'fraction', 'RATIO', 1],
    ['g/kg', null, 'gram per kilogram', '', 'SI', 0.001],
    ['mg/kg', null, 'milligram per kilogram', '', 'SI', 0.000001],
    ['permille', '‰', 'per mille by mass', '', 'RATIO', 0.001],
    ['ppm', null, 'parts per million by mass', 'ppmv vppm', 'RATIO', 0.000001],
    ['%m', '% m/m', 'mass per cent', 'wt% wt-% %w/w mass% mass-%', 'RATIO', 0.01],
  ],
});

/** Kind of quantity: volume fraction. Parts by volume of the whole, volumes measured before mixing. Coherent SI unit `1`. */
export const volumeFraction: Kind<'volumeFraction'> = /* @__PURE__ */ makeKind({
  kind: 'volumeFraction',
  dimension: [0, 0, 0, 0, 0, 0],
  base: '1',
  units: [
    ['%', null, 'per cent by volume', 'pct', 'RATIO', 0.01],
    ['1', '', 'one', 'fraction', 'RATIO', 1],
    ['mL/L', null, 'millilitre per litre', '', 'SI', 0.001],
    ['permille', '‰', 'per mille by volume', '', 'RATIO', 0.001],
    ['ppm', null, 'parts per million by volume', 'ppmv vppm', 'RATIO', 0.000001],
    ['%vol', '% vol', 'volume per cent', 'vol% vol-% %v/v', 'RATIO', 0.01],
  ],
});

/** Kind of quantity: fraction. A share of a stated whole: efficiency, opacity, humidity of saturation. Coherent SI unit `1`. */
export const fraction: Kind<'fraction'> = /* @__PURE__ */ makeKind({
  kind: 'fraction',
  dimension: [0, 0, 0, 0, 0, 0],
  base: '1',
  units: [
    ['%', null, 'per cent', 'pct', 'RATIO', 0.01],
    ['1', '', 'one', 'fraction', 'RATIO', 1],
    ['permille', '‰', 'per mille', '', 'RATIO', 0.001],
    ['ppm', null, 'parts per million', 'ppmv vppm', 'RATIO', 0.000001],
  ],
});

/** Kind of quantity: ratio. A quotient that nobody writes in percent, such as lambda. Coherent SI unit `1`. */
export const ratio: Kind<'ratio'> = /* @__PURE__ */ makeKind({
  kind: 'ratio',
  dimension: [0, 0, 0, 0, 0, 0],
  base: '1',
  units: [
    ['1', '', 'one', '', 'RATIO', 1],
  ],
});

/** Kind of quantity: refractive index. Coherent SI unit `1`. */
export const refractiveIndex: Kind<'refractiveIndex'> = /* @__PURE__ */ makeKind({
  kind: 'refractiveIndex',
  dimension: [0, 0, 0, 0, 0, 0],
  base: '1',
  units: [
    ['1', '', 'one', 'nD', 'RATIO', 1],
  ],
});

/** Kind of quantity: dilution ratio. Parts of diluent to one part of concentrate; written `1:4`. Coherent SI unit `1`. */
export const dilutionRatio: Kind<'dilutionRatio'> = /* @__PURE__ */ makeKind({
  kind: 'dilutionRatio',
  dimension: [0, 0, 0, 0, 0, 0],
  base: '1',
  units: [
    ['1', '', 'parts of diluent per part of concentrate', '', 'RATIO', 1],
  ],
});

/** Kind of quantity: mass ratio. Mass of one to mass of another, such as water to dry air. Coherent SI unit `1`. */
export const massRatio: Kind<'massRatio'> = /* @__PURE__ */ makeKind({
  kind: 'massRatio',
  dimension: [0, 0, 0, 0, 0, 0],
  base: '1',
  units: [
    ['g/kg', null, 'gram per kilogram', '', 'SI', 0.001],
    ['1', '', 'kilogram per kilogram', 'kg/kg', 'RATIO', 1],
    ['%', null, 'per cent of mass', 'pct', 'RATIO', 0.01],
    ['gr/lb', null, 'grain per pound', '', 'YARD', 0.00014285714285714287, '1/7000'],
  ],
});

/** Kind of quantity: mass concentration. Mass in a volume, such as soot in a filter or dust in air. Coherent SI unit `kg/m3`. */
export const massConcentration: Kind<'massConcentration'> = /* @__PURE__ */ makeKind({
  kind: 'massConcentration',
  dimension: [-3, 1, 0, 0, 0, 0],
  base: 'kg/m3',
  units: [
    ['g/L', null, 'gram per litre', 'g/dm3', 'SI', 1],
    ['g/m3', null, 'gram per cubic metre', '', 'SI', 0.001],
    ['mg/m3', null, 'milligram per cubic metre', '', 'SI', 0.000001],
    ['kg/m3', null, 'kilogram per cubic metre', '', 'SI', 1],
    ['g/ft3', null, 'gram per cubic foot', 'g/cuft', 'YARD', 0.03531466672148859, '0.001/0.028316846592'],
    ['g/in3', null, 'gram per cubic inch', 'g/cuin', 'YARD', 61.02374409473229, '0.001/0.000016387064'],
    ['ug/m3', null, 'microgram per cubic metre', '', 'SI', 1e-9],
    ['mg/L', null, 'milligram per litre', '', 'SI', 0.001],
  ],
});

/** Kind of quantity: load per area. Mass on an area, such as soot on a wall. Coherent SI unit `kg/m2`. */
export const surfaceLoad: Kind<'surfaceLoad'> = /* @__PURE__ */ makeKind({
  kind: 'surfaceLoad',
  label: 'load per area',
  dimension: [-2, 1, 0, 0, 0, 0],
  base: 'kg/m2',
  units: [
    ['g/m2', null, 'gram per square metre', '', 'SI', 0.001],
    ['kg/m2', null, 'kilogram per square metre', '', 'SI', 1],
    ['mg/cm2', null, 'milligram per square centimetre', '', 'SI', 0.01],
    ['g/ft2', null, 'gram per square foot', '', 'YARD', 0.010763910416709722, '0.001/0.3048/0.3048'],
  ],
});

/** Kind of quantity: mass per distance. Coherent SI unit `kg/m`. */
export const massPerDistance: Kind<'massPerDistance'> = /* @__PURE__ */ makeKind({
  kind: 'massPerDistance',
  dimension: [-1, 1, 0, 0, 0, 0],
  base: 'kg/m',
  units: [
    ['g/km', null, 'gram per kilometre', 'kg/1000km', 'SI', 0.000001],
    ['mg/km', null, 'milligram per kilometre', '', 'SI', 1e-9],
    ['g/mi', null, 'gram per mile', 'g/mile', 'YARD', 6.21371192237334e-7, '0.001/1609.344'],
    ['g/1000km', 'g/1000 km', 'gram per 1000 kilometres', '', 'SI', 1e-9],
    ['kg/m', null, 'kilogram per metre', '', 'SI', 1],
    ['kg/km', null, 'kilogram per kilometre', '', 'SI', 0.001],
    ['g/100km', 'g/100 km', 'gram per 100 kilometres', '', 'SI', 1e-8],
    ['mg/mi', null, 'milligram per mile', 'mg/mile', 'YARD', 6.21371192237334e-10, '0.000001/1609.344'],
  ],
});

/** Kind of quantity: mass per energy. Coherent SI unit `kg/J`. */
export const massPerEnergy: Kind<'massPerEnergy'> = /* @__PURE__ */ makeKind({
  kind: 'massPerEnergy',
  dimension: [-2, 0, 2, 0, 0, 0],
  base: 'kg/J',
  units: [
    ['g/kWh', null, 'gram per kilowatt hour', 'g/kWhr', 'SI', 2.7777777777777777e-10, '0.001/3600000'],
    ['mg/kWh', null, 'milligram per kilowatt hour', '', 'SI', 2.777777777777778e-13, '0.000001/3600000'],
    ['g/(hp.h)', null, 'gram per mechanical horsepower hour', 'g/bhp.h g/hp.hr g/bhp.hr', 'SP811', 3.7250613599861885e-10, '0.001/2684519.537696172792'],
    ['lb/(hp.h)', null, 'pound per mechanical horsepower hour', 'lb/bhp.h lb/hp.hr lb/bhp.hr', 'SP811', 1.6896594106715585e-7, '0.45359237/2684519.537696172792'],
    ['kg/J', null, 'kilogram per joule', '', 'SI', 1],
    ['g/MJ', null, 'gram per megajoule', '', 'SI', 1e-9],
  ],
});

/** Kind of quantity: volume per distance. Fuel or reductant use; miles per gallon count the other way round. Coherent SI unit `m3/m`. */
export const volumePerDistance: Kind<'volumePerDistance'> = /* @__PURE__ */ makeKind({
  kind: 'volumePerDistance',
  dimension: [2, 0, 0, 0, 0, 0],
  base: 'm3/m',
  ambiguous: [
    ['mpg mi/gal miles/gallon milespergallon', 'mpg_US mpg_imp'],
    ['gal/100mi', 'gal_US/100mi gal_imp/100mi'],
  ],
  units: [
    ['L/100km', 'L/100 km', 'litre per 100 kilometres', '', 'SI', 1e-8],
    ['L/1000km', 'L/1000 km', 'litre per 1000 kilometres', '', 'SI', 1e-9],
    ['mpg_US', 'mpg (US)', 'mile per US gallon', 'mi/gal_US', 'USGAL', 0.0000023521458333333333, '0.003785411784/1609.344', 'reciprocal'],
    ['mpg_imp', 'mpg (imp)', 'mile per imperial gallon', 'mi/gal_imp mpg(UK)', 'UKWM', 0.0000028248093633182216, '0.00454609/1609.344', 'reciprocal'],
    ['L/km', null, 'litre per kilometre', '', 'SI', 0.000001],
    ['m3/m', null, 'cubic metre per metre', '', 'SI', 1],
    ['mL/km', null, 'millilitre per kilometre', '', 'SI', 1e-9],
    ['gal_US/100mi', 'US gal/100 mi', 'US gallon per 100 miles', '', 'USGAL', 2.3521458333333332e-8, '0.003785411784/160934.4'],
    ['gal_imp/100mi', 'imp gal/100 mi', 'imperial gallon per 100 miles', '', 'UKWM', 2.8248093633182217e-8, '0.00454609/160934.4'],
    ['km/L', null, 'kilometre per litre', '', 'SI', 0.000001, '', 'reciprocal'],
  ],
});

/** Kind of quantity: volume per energy. Coherent SI unit `m3/J`. */
export const volumePerEnergy: Kind<'volumePerEnergy'> = /* @__PURE__ */ makeKind({
  kind: 'volumePerEnergy',
  dimension: [1, -1, 2, 0, 0, 0],
  base: 'm3/J',
  units: [
    ['L/kWh', null, 'litre per kilowatt hour', '', 'SI', 2.7777777777777777e-10, '0.001/3600000'],
    ['mL/kWh', null, 'millilitre per kilowatt hour', '', 'SI', 2.777777777777778e-13, '0.000001/3600000'],
    ['m3/J', null, 'cubic metre per joule', '', 'SI', 1],
  ],
});

/** Kind of quantity: particle number concentration. Coherent SI unit `1/m3`. */
export const particleNumberConcentration: Kind<'particleNumberConcentration'> = /* @__PURE__ */ makeKind({
  kind: 'particleNumberConcentration',
  dimension: [-3, 0, 0, 0, 0, 0],
  base: '1/m3',
  units: [
    ['1/cm3', null, 'per cubic centimetre', 'cm-3 #/cm3 1/cc #/cc p/cm3 p/cc', 'SI', 1000000],
    ['1/m3', null, 'per cubic metre', 'm-3 #/m3', 'SI', 1],
    ['1/L', null, 'per litre', '', 'SI', 1000],
  ],
});

/** Kind of quantity: particle number per time. Coherent SI unit `1/s`. */
export const particleNumberFlow: Kind<'particleNumberFlow'> = /* @__PURE__ */ makeKind({
  kind: 'particleNumberFlow',
  label: 'particle number per time',
  dimension: [0, 0, -1, 0, 0, 0],
  base: '1/s',
  units: [
    ['1/s', null, 'per second', '#/s s-1 p/s', 'SI', 1],
    ['1/h', null, 'per hour', '#/h', 'SI', 0.0002777777777777778, '1/3600'],
  ],
});

/** Kind of quantity: particle number per distance. Coherent SI unit `1/m`. */
export const particleNumberPerDistance: Kind<'particleNumberPerDistance'> = /* @__PURE__ */ makeKind({
  kind: 'particleNumberPerDistance',
  dimension: [-1, 0, 0, 0, 0, 0],
  base: '1/m',
  units: [
    ['1/km', null, 'per kilometre', '#/km km-1 p/km', 'SI', 0.001],
    ['1/m', null, 'per metre', 'm-1', 'SI', 1],
    ['1/mi', null, 'per mile', '#/mi', 'YARD', 0.0006213711922373339, '1/1609.344'],
  ],
});

/** Kind of quantity: particle number per energy. Coherent SI unit `1/J`. */
export const particleNumberPerEnergy: Kind<'particleNumberPerEnergy'> = /* @__PURE__ */ makeKind({
  kind: 'particleNumberPerEnergy',
  dimension: [-2, -1, 2, 0, 0, 0],
  base: '1/J',
  units: [
    ['1/kWh', null, 'per kilowatt hour', '#/kWh p/kWh', 'SI', 2.7777777777777776e-7, '1/3600000'],
    ['1/J', null, 'per joule', '', 'SI', 1],
  ],
});

/** Kind of quantity: money. Amounts in one currency, which no unit names. Coherent SI unit `1`. */
export const money: Kind<'money'> = /* @__PURE__ */ makeKind({
  kind: 'money',
  dimension: [0, 0, 0, 0, 0, 0],
  base: '1',
  units: [
    ['1', '', 'one in your currency', '', 'RATIO', 1],
  ],
});

/** All kinds by name. */
export const kinds: { readonly [K in KindName]: Kind<K> } = {
  length,
  area,
  volume,
  cellDensity,
  permeability,
  inertialCoefficient,
  absorptionCoefficient,
  mass,
  time,
  density,
  dynamicViscosity,
  kinematicViscosity,
  diffusivity,
  velocity,
  acceleration,
  rotationalSpeed,
  frequency,
  force,
  torque,
  absolutePressure,
  gaugePressure,
  differentialPressure,
  pressureRate,
  pressurePerVolumeFlow,
  power,
  energy,
  specificEnergy,
  molarEnergy,
  temperature,
  temperatureDifference,
  temperatureRate,
  specificHeatCapacity,
  molarHeatCapacity,
  volumetricHeatCapacity,
  heatCapacity,
  thermalConductivity,
  heatTransferCoefficient,
  heatFlux,
  temperatureCoefficient,
  voltage,
  electricCurrent,
  electricResistance,
  volumeFlow,
  standardVolumeFlow,
  massFlow,
  molarFlow,
  spaceVelocity,
  reactionRate,
  flowResistance,
  inertialFlowResistance,
  massFlux,
  amount,
  molarMass,
  molarVolume,
  molarConcentration,
  molality,
  moleFraction,
  massFraction,
  volumeFraction,
  fraction,
  ratio,
  refractiveIndex,
  dilutionRatio,
  massRatio,
  massConcentration,
  surfaceLoad,
  massPerDistance,
  massPerEnergy,
  volumePerDistance,
  volumePerEnergy,
  particleNumberConcentration,
  particleNumberFlow,
  particleNumberPerDistance,
  particleNumberPerEnergy,
  money,
};
