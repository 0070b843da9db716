// Generated from data/ by scripts/generate.mjs. Do not edit.

export const lengthData = {
  kind: 'length',
  label: 'length',
  dimension: {length: 1, mass: 0, time: 0, temperature: 0, amount: 0, current: 0},
  base: 'm',
  floor: false,
  order: ['mm', 'in', 'm', 'cm', 'km', 'mi', 'ft', 'mil', 'um', 'nm', 'yd'],
  ambiguous: {  },
  units: {
    'm': { symbol: 'm', factor: 1, aliases: 'metre metres meter meters' },
    'km': { symbol: 'km', factor: 1000, aliases: 'kilometre kilometres kilometer kilometers' },
    'cm': { symbol: 'cm', factor: 0.01, aliases: 'centimetre centimeter' },
    'mm': { symbol: 'mm', factor: 0.001, aliases: 'millimetre millimeter millimetres millimeters' },
    'um': { symbol: 'µm', factor: 0.000001, aliases: 'micron microns micrometre micrometer' },
    'nm': { symbol: 'nm', factor: 1e-9, aliases: 'nanometre nanometer' },
    'in': { symbol: 'in', factor: 0.0254, aliases: 'inch inches " ″' },
    'ft': { symbol: 'ft', factor: 0.3048, aliases: 'foot feet \' ′' },
    'yd': { symbol: 'yd', factor: 0.9144, aliases: 'yard yards' },
    'mi': { symbol: 'mi', factor: 1609.344, aliases: 'mile miles' },
    'mil': { symbol: 'mil', factor: 0.0000254, aliases: 'thou mils' },
  },
} as const;

export const areaData = {
  kind: 'area',
  label: 'area',
  dimension: {length: 2, mass: 0, time: 0, temperature: 0, amount: 0, current: 0},
  base: 'm2',
  floor: false,
  order: ['m2', 'cm2', 'mm2', 'in2', 'ft2'],
  ambiguous: {  },
  units: {
    'm2': { symbol: 'm²', factor: 1, aliases: 'sqm' },
    'cm2': { symbol: 'cm²', factor: 0.0001, aliases: '' },
    'mm2': { symbol: 'mm²', factor: 0.000001, aliases: '' },
    'in2': { symbol: 'in²', factor: 0.00064516, aliases: 'sqin' },
    'ft2': { symbol: 'ft²', factor: 0.09290304, aliases: 'sqft' },
  },
} as const;

export const volumeData = {
  kind: 'volume',
  label: 'volume',
  dimension: {length: 3, mass: 0, time: 0, temperature: 0, amount: 0, current: 0},
  base: 'm3',
  floor: false,
  order: ['L', 'mL', 'cm3', 'm3', 'in3', 'ft3', 'gal_US', 'gal_imp', 'cL', 'mm3', 'qt_US', 'pt_US', 'floz_US', 'qt_imp', 'pt_imp', 'floz_imp'],
  ambiguous: { 'gal': ['gal_US', 'gal_imp'], 'gallon': ['gal_US', 'gal_imp'], 'gallons': ['gal_US', 'gal_imp'], 'qt': ['qt_US', 'qt_imp'], 'quart': ['qt_US', 'qt_imp'], 'pt': ['pt_US', 'pt_imp'], 'pint': ['pt_US', 'pt_imp'], 'floz': ['floz_US', 'floz_imp'], 'fl.oz': ['floz_US', 'floz_imp'], 'oz': ['floz_US', 'floz_imp'] },
  units: {
    'm3': { symbol: 'm³', factor: 1, aliases: '' },
    'L': { symbol: 'L', factor: 0.001, aliases: 'l ℓ litre litres liter liters dm3 ltr' },
    'mL': { symbol: 'mL', factor: 0.000001, aliases: 'ml millilitre milliliter' },
    'cL': { symbol: 'cL', factor: 0.00001, aliases: 'cl' },
    'cm3': { symbol: 'cm³', factor: 0.000001, aliases: 'cc ccm' },
    'mm3': { symbol: 'mm³', factor: 1e-9, aliases: '' },
    'in3': { symbol: 'in³', factor: 0.000016387064, aliases: 'cuin ci' },
    'ft3': { symbol: 'ft³', factor: 0.028316846592, aliases: 'cuft cf' },
    'gal_US': { symbol: 'US gal', factor: 0.003785411784, aliases: 'USgal galUS usgallon' },
    'qt_US': { symbol: 'US qt', factor: 0.000946352946, aliases: 'USqt qtUS' },
    'pt_US': { symbol: 'US pt', factor: 0.000473176473, aliases: 'USpt ptUS' },
    'floz_US': { symbol: 'US fl oz', factor: 0.0000295735295625, aliases: 'USfloz flozUS' },
    'gal_imp': { symbol: 'imp gal', factor: 0.00454609, aliases: 'impgal galUK UKgal galimp imperialgallon' },
    'qt_imp': { symbol: 'imp qt', factor: 0.0011365225, aliases: 'impqt qtUK UKqt' },
    'pt_imp': { symbol: 'imp pt', factor: 0.00056826125, aliases: 'imppt ptUK UKpt' },
    'floz_imp': { symbol: 'imp fl oz', factor: 0.0000284130625, aliases: 'impfloz flozUK UKfloz' },
  },
} as const;

export const cellDensityData = {
  kind: 'cellDensity',
  label: 'cell density',
  dimension: {length: -2, mass: 0, time: 0, temperature: 0, amount: 0, current: 0},
  base: '1/m2',
  floor: false,
  order: ['cpsi', '1/cm2', '1/m2'],
  ambiguous: {  },
  units: {
    '1/m2': { symbol: '1/m²', factor: 1, aliases: 'cells/m2 m-2' },
    '1/cm2': { symbol: '1/cm²', factor: 10000, aliases: 'cells/cm2 cm-2 cpscm' },
    'cpsi': { symbol: 'cpsi', factor: 1550.0031000062, aliases: 'cells/in2 1/in2 cells/sqin' },
  },
} as const;

export const permeabilityData = {
  kind: 'permeability',
  label: 'permeability',
  dimension: {length: 2, mass: 0, time: 0, temperature: 0, amount: 0, current: 0},
  base: 'm2',
  floor: false,
  order: ['m2', 'um2', 'mD', 'darcy'],
  ambiguous: {  },
  units: {
    'm2': { symbol: 'm²', factor: 1, aliases: '' },
    'um2': { symbol: 'µm²', factor: 1e-12, aliases: '' },
    'darcy': { symbol: 'D', factor: 9.869232667160128e-13, aliases: 'Da' },
    'mD': { symbol: 'mD', factor: 9.869232667160128e-16, aliases: 'millidarcy' },
  },
} as const;

export const inertialCoefficientData = {
  kind: 'inertialCoefficient',
  label: 'inertial (Forchheimer) coefficient',
  dimension: {length: -1, mass: 0, time: 0, temperature: 0, amount: 0, current: 0},
  base: '1/m',
  floor: false,
  order: ['1/m'],
  ambiguous: {  },
  units: {
    '1/m': { symbol: '1/m', factor: 1, aliases: 'm-1' },
  },
} as const;

export const absorptionCoefficientData = {
  kind: 'absorptionCoefficient',
  label: 'absorption coefficient',
  dimension: {length: -1, mass: 0, time: 0, temperature: 0, amount: 0, current: 0},
  base: '1/m',
  floor: false,
  order: ['1/m', '1/ft'],
  ambiguous: {  },
  units: {
    '1/m': { symbol: '1/m', factor: 1, aliases: 'm-1' },
    '1/ft': { symbol: '1/ft', factor: 3.2808398950131235, aliases: 'ft-1' },
  },
} as const;

export const massData = {
  kind: 'mass',
  label: 'mass',
  dimension: {length: 0, mass: 1, time: 0, temperature: 0, amount: 0, current: 0},
  base: 'kg',
  floor: false,
  order: ['g', 'kg', 'mg', 'lb', 'oz', 't', 'ug', 'gr', 'ton_short', 'ton_long'],
  ambiguous: { 'ton': ['t', 'ton_short', 'ton_long'], 'tons': ['t', 'ton_short', 'ton_long'] },
  units: {
    'kg': { symbol: 'kg', factor: 1, aliases: 'kilogram kilograms kilo' },
    'g': { symbol: 'g', factor: 0.001, aliases: 'gram grams gramme' },
    'mg': { symbol: 'mg', factor: 0.000001, aliases: 'milligram' },
    'ug': { symbol: 'µg', factor: 1e-9, aliases: 'microgram' },
    't': { symbol: 't', factor: 1000, aliases: 'tonne tonnes' },
    'lb': { symbol: 'lb', factor: 0.45359237, aliases: 'lbs pound pounds lbm' },
    'oz': { symbol: 'oz', factor: 0.028349523125, aliases: 'ounce ounces' },
    'gr': { symbol: 'gr', factor: 0.00006479891, aliases: 'grain grains' },
    'ton_short': { symbol: 'short ton', factor: 907.18474, aliases: 'shortton' },
    'ton_long': { symbol: 'long ton', factor: 1016.0469088, aliases: 'longton' },
  },
} as const;

export const timeData = {
  kind: 'time',
  label: 'time',
  dimension: {length: 0, mass: 0, time: 1, temperature: 0, amount: 0, current: 0},
  base: 's',
  floor: false,
  order: ['s', 'min', 'h', 'd', 'ms', 'month', 'year'],
  ambiguous: {  },
  units: {
    's': { symbol: 's', factor: 1, aliases: 'sec second seconds' },
    'ms': { symbol: 'ms', factor: 0.001, aliases: 'millisecond' },
    'min': { symbol: 'min', factor: 60, aliases: 'minute minutes mins' },
    'h': { symbol: 'h', factor: 3600, aliases: 'hour hours hr hrs' },
    'd': { symbol: 'd', factor: 86400, aliases: 'day days' },
    'month': { symbol: 'month', factor: 2629800, aliases: 'months' },
    'year': { symbol: 'year', factor: 31557600, aliases: 'years yr' },
  },
} as const;

export const absolutePressureData = {
  kind: 'absolutePressure',
  label: 'absolute pressure',
  dimension: {length: -1, mass: 1, time: -2, temperature: 0, amount: 0, current: 0},
  base: 'Pa',
  floor: true,
  order: ['kPa', 'mbar', 'hPa', 'bar', 'Pa', 'psi', 'inHg_conventional', 'mmHg_conventional', 'atm', 'MPa', 'inH2O_4C', 'inH2O_60F', 'inH2O_conventional', 'ftH2O_conventional', 'mmH2O_conventional', 'cmH2O_conventional', 'Torr', 'inHg_32F', 'inHg_60F', 'at', 'psia', 'bara'],
  ambiguous: { 'inH2O': ['inH2O_4C', 'inH2O_60F', 'inH2O_conventional'], 'inWC': ['inH2O_4C', 'inH2O_60F', 'inH2O_conventional'], 'inWG': ['inH2O_4C', 'inH2O_60F', 'inH2O_conventional'], '"H2O': ['inH2O_4C', 'inH2O_60F', 'inH2O_conventional'], 'inHg': ['inHg_32F', 'inHg_60F', 'inHg_conventional'], '"Hg': ['inHg_32F', 'inHg_60F', 'inHg_conventional'] },
  units: {
    'Pa': { symbol: 'Pa', factor: 1, aliases: 'pascal N/m2' },
    'hPa': { symbol: 'hPa', factor: 100, aliases: 'hectopascal' },
    'kPa': { symbol: 'kPa', factor: 1000, aliases: 'kilopascal' },
    'MPa': { symbol: 'MPa', factor: 1000000, aliases: 'megapascal' },
    'mbar': { symbol: 'mbar', factor: 100, aliases: 'millibar' },
    'bar': { symbol: 'bar', factor: 100000, aliases: '' },
    'psi': { symbol: 'psi', factor: 6894.757293168362, aliases: 'lbf/in2' },
    'inH2O_4C': { symbol: 'inH₂O (4 °C)', factor: 249.082, aliases: 'inH2O(4C) inWC_4C' },
    'inH2O_60F': { symbol: 'inH₂O (60 °F)', factor: 248.84, aliases: 'inH2O(60F) inWC_60F' },
    'inH2O_conventional': { symbol: 'inH₂O (conv.)', factor: 249.08891, aliases: 'inH2O(conv) inH2O(conv.) inWC_conventional' },
    'ftH2O_conventional': { symbol: 'ftH₂O (conv.)', factor: 2989.06692, aliases: 'ftH2O(conv) ftH2O(conv.)' },
    'mmH2O_conventional': { symbol: 'mmH₂O', factor: 9.80665, aliases: 'mmH2O mmWC mmWS' },
    'cmH2O_conventional': { symbol: 'cmH₂O', factor: 98.0665, aliases: 'cmH2O cmWC' },
    'mmHg_conventional': { symbol: 'mmHg', factor: 133.322387415, aliases: 'mmHg' },
    'Torr': { symbol: 'Torr', factor: 133.32236842105263, aliases: 'torr' },
    'inHg_32F': { symbol: 'inHg (32 °F)', factor: 3386.38, aliases: 'inHg_0C inHg(32F)' },
    'inHg_60F': { symbol: 'inHg (60 °F)', factor: 3376.85, aliases: 'inHg(60F)' },
    'inHg_conventional': { symbol: 'inHg (conv.)', factor: 3386.388640341, aliases: 'inHg(conv) inHg(conv.)' },
    'atm': { symbol: 'atm', factor: 101325, aliases: 'atmosphere' },
    'at': { symbol: 'at', factor: 98066.5, aliases: 'kgf/cm2' },
    'psia': { symbol: 'psia', factor: 6894.757293168362, aliases: 'psi(abs)' },
    'bara': { symbol: 'bara', factor: 100000, aliases: 'bar(abs) bar(a)' },
  },
} as const;

export const gaugePressureData = {
  kind: 'gaugePressure',
  label: 'gauge pressure',
  dimension: {length: -1, mass: 1, time: -2, temperature: 0, amount: 0, current: 0},
  base: 'Pa',
  floor: false,
  order: ['mbar', 'kPa', 'hPa', 'Pa', 'bar', 'psi', 'inH2O_conventional', 'inHg_conventional', 'mmHg_conventional', 'MPa', 'inH2O_4C', 'inH2O_60F', 'ftH2O_conventional', 'mmH2O_conventional', 'cmH2O_conventional', 'Torr', 'inHg_32F', 'inHg_60F', 'atm', 'at', 'psig', 'barg'],
  ambiguous: { 'inH2O': ['inH2O_4C', 'inH2O_60F', 'inH2O_conventional'], 'inWC': ['inH2O_4C', 'inH2O_60F', 'inH2O_conventional'], 'inWG': ['inH2O_4C', 'inH2O_60F', 'inH2O_conventional'], '"H2O': ['inH2O_4C', 'inH2O_60F', 'inH2O_conventional'], 'inHg': ['inHg_32F', 'inHg_60F', 'inHg_conventional'], '"Hg': ['inHg_32F', 'inHg_60F', 'inHg_conventional'] },
  units: {
    'Pa': { symbol: 'Pa', factor: 1, aliases: 'pascal N/m2' },
    'hPa': { symbol: 'hPa', factor: 100, aliases: 'hectopascal' },
    'kPa': { symbol: 'kPa', factor: 1000, aliases: 'kilopascal' },
    'MPa': { symbol: 'MPa', factor: 1000000, aliases: 'megapascal' },
    'mbar': { symbol: 'mbar', factor: 100, aliases: 'millibar' },
    'bar': { symbol: 'bar', factor: 100000, aliases: '' },
    'psi': { symbol: 'psi', factor: 6894.757293168362, aliases: 'lbf/in2' },
    'inH2O_4C': { symbol: 'inH₂O (4 °C)', factor: 249.082, aliases: 'inH2O(4C) inWC_4C' },
    'inH2O_60F': { symbol: 'inH₂O (60 °F)', factor: 248.84, aliases: 'inH2O(60F) inWC_60F' },
    'inH2O_conventional': { symbol: 'inH₂O (conv.)', factor: 249.08891, aliases: 'inH2O(conv) inH2O(conv.) inWC_conventional' },
    'ftH2O_conventional': { symbol: 'ftH₂O (conv.)', factor: 2989.06692, aliases: 'ftH2O(conv) ftH2O(conv.)' },
    'mmH2O_conventional': { symbol: 'mmH₂O', factor: 9.80665, aliases: 'mmH2O mmWC mmWS' },
    'cmH2O_conventional': { symbol: 'cmH₂O', factor: 98.0665, aliases: 'cmH2O cmWC' },
    'mmHg_conventional': { symbol: 'mmHg', factor: 133.322387415, aliases: 'mmHg' },
    'Torr': { symbol: 'Torr', factor: 133.32236842105263, aliases: 'torr' },
    'inHg_32F': { symbol: 'inHg (32 °F)', factor: 3386.38, aliases: 'inHg_0C inHg(32F)' },
    'inHg_60F': { symbol: 'inHg (60 °F)', factor: 3376.85, aliases: 'inHg(60F)' },
    'inHg_conventional': { symbol: 'inHg (conv.)', factor: 3386.388640341, aliases: 'inHg(conv) inHg(conv.)' },
    'atm': { symbol: 'atm', factor: 101325, aliases: 'atmosphere' },
    'at': { symbol: 'at', factor: 98066.5, aliases: 'kgf/cm2' },
    'psig': { symbol: 'psig', factor: 6894.757293168362, aliases: 'psi(g)' },
    'barg': { symbol: 'barg', factor: 100000, aliases: 'bar(g)' },
  },
} as const;

export const differentialPressureData = {
  kind: 'differentialPressure',
  label: 'differential pressure',
  dimension: {length: -1, mass: 1, time: -2, temperature: 0, amount: 0, current: 0},
  base: 'Pa',
  floor: false,
  order: ['mbar', 'kPa', 'hPa', 'Pa', 'bar', 'psi', 'inH2O_conventional', 'inHg_conventional', 'mmHg_conventional', 'MPa', 'inH2O_4C', 'inH2O_60F', 'ftH2O_conventional', 'mmH2O_conventional', 'cmH2O_conventional', 'Torr', 'inHg_32F', 'inHg_60F', 'atm', 'at', 'psid', 'bard'],
  ambiguous: { 'inH2O': ['inH2O_4C', 'inH2O_60F', 'inH2O_conventional'], 'inWC': ['inH2O_4C', 'inH2O_60F', 'inH2O_conventional'], 'inWG': ['inH2O_4C', 'inH2O_60F', 'inH2O_conventional'], '"H2O': ['inH2O_4C', 'inH2O_60F', 'inH2O_conventional'], 'inHg': ['inHg_32F', 'inHg_60F', 'inHg_conventional'], '"Hg': ['inHg_32F', 'inHg_60F', 'inHg_conventional'] },
  units: {
    'Pa': { symbol: 'Pa', factor: 1, aliases: 'pascal N/m2' },
    'hPa': { symbol: 'hPa', factor: 100, aliases: 'hectopascal' },
    'kPa': { symbol: 'kPa', factor: 1000, aliases: 'kilopascal' },
    'MPa': { symbol: 'MPa', factor: 1000000, aliases: 'megapascal' },
    'mbar': { symbol: 'mbar', factor: 100, aliases: 'millibar' },
    'bar': { symbol: 'bar', factor: 100000, aliases: '' },
    'psi': { symbol: 'psi', factor: 6894.757293168362, aliases: 'lbf/in2' },
    'inH2O_4C': { symbol: 'inH₂O (4 °C)', factor: 249.082, aliases: 'inH2O(4C) inWC_4C' },
    'inH2O_60F': { symbol: 'inH₂O (60 °F)', factor: 248.84, aliases: 'inH2O(60F) inWC_60F' },
    'inH2O_conventional': { symbol: 'inH₂O (conv.)', factor: 249.08891, aliases: 'inH2O(conv) inH2O(conv.) inWC_conventional' },
    'ftH2O_conventional': { symbol: 'ftH₂O (conv.)', factor: 2989.06692, aliases: 'ftH2O(conv) ftH2O(conv.)' },
    'mmH2O_conventional': { symbol: 'mmH₂O', factor: 9.80665, aliases: 'mmH2O mmWC mmWS' },
    'cmH2O_conventional': { symbol: 'cmH₂O', factor: 98.0665, aliases: 'cmH2O cmWC' },
    'mmHg_conventional': { symbol: 'mmHg', factor: 133.322387415, aliases: 'mmHg' },
    'Torr': { symbol: 'Torr', factor: 133.32236842105263, aliases: 'torr' },
    'inHg_32F': { symbol: 'inHg (32 °F)', factor: 3386.38, aliases: 'inHg_0C inHg(32F)' },
    'inHg_60F': { symbol: 'inHg (60 °F)', factor: 3376.85, aliases: 'inHg(60F)' },
    'inHg_conventional': { symbol: 'inHg (conv.)', factor: 3386.388640341, aliases: 'inHg(conv) inHg(conv.)' },
    'atm': { symbol: 'atm', factor: 101325, aliases: 'atmosphere' },
    'at': { symbol: 'at', factor: 98066.5, aliases: 'kgf/cm2' },
    'psid': { symbol: 'psid', factor: 6894.757293168362, aliases: 'psi(d)' },
    'bard': { symbol: 'bard', factor: 100000, aliases: 'bar(d)' },
  },
} as const;

export const pressureRateData = {
  kind: 'pressureRate',
  label: 'rate of pressure change',
  dimension: {length: -1, mass: 1, time: -3, temperature: 0, amount: 0, current: 0},
  base: 'Pa/s',
  floor: false,
  order: ['mbar/min', 'Pa/s', 'kPa/min', 'mbar/s'],
  ambiguous: {  },
  units: {
    'Pa/s': { symbol: 'Pa/s', factor: 1, aliases: '' },
    'kPa/min': { symbol: 'kPa/min', factor: 16.666666666666668, aliases: '' },
    'mbar/min': { symbol: 'mbar/min', factor: 1.6666666666666667, aliases: '' },
    'mbar/s': { symbol: 'mbar/s', factor: 100, aliases: '' },
  },
} as const;

export const densityData = {
  kind: 'density',
  label: 'density',
  dimension: {length: -3, mass: 1, time: 0, temperature: 0, amount: 0, current: 0},
  base: 'kg/m3',
  floor: false,
  order: ['kg/m3', 'kg/L', 'g/cm3', 'g/L', 'lb/ft3', 'lb/gal_US', 'g/mL', 'lb/gal_imp'],
  ambiguous: { 'lb/gal': ['lb/gal_US', 'lb/gal_imp'] },
  units: {
    'kg/m3': { symbol: 'kg/m³', factor: 1, aliases: '' },
    'kg/L': { symbol: 'kg/L', factor: 1000, aliases: 'kg/dm3 kg/l' },
    'g/cm3': { symbol: 'g/cm³', factor: 1000, aliases: 'g/cc' },
    'g/mL': { symbol: 'g/mL', factor: 1000, aliases: 'g/ml' },
    'g/L': { symbol: 'g/L', factor: 1, aliases: 'g/l g/dm3' },
    'lb/ft3': { symbol: 'lb/ft³', factor: 16.018463373960138, aliases: 'lb/cuft' },
    'lb/gal_US': { symbol: 'lb/US gal', factor: 119.82642731689663, aliases: 'lb/USgal' },
    'lb/gal_imp': { symbol: 'lb/imp gal', factor: 99.7763726631017, aliases: 'lb/impgal' },
  },
} as const;

export const dynamicViscosityData = {
  kind: 'dynamicViscosity',
  label: 'dynamic viscosity',
  dimension: {length: -1, mass: 1, time: -1, temperature: 0, amount: 0, current: 0},
  base: 'Pa.s',
  floor: false,
  order: ['uPa.s', 'mPa.s', 'Pa.s', 'cP', 'P'],
  ambiguous: {  },
  units: {
    'Pa.s': { symbol: 'Pa·s', factor: 1, aliases: 'Pas kg/(m.s) kg/ms N.s/m2' },
    'mPa.s': { symbol: 'mPa·s', factor: 0.001, aliases: 'mPas' },
    'uPa.s': { symbol: 'µPa·s', factor: 0.000001, aliases: 'uPas' },
    'cP': { symbol: 'cP', factor: 0.001, aliases: 'centipoise' },
    'P': { symbol: 'P', factor: 0.1, aliases: 'poise' },
  },
} as const;

export const kinematicViscosityData = {
  kind: 'kinematicViscosity',
  label: 'kinematic viscosity',
  dimension: {length: 2, mass: 0, time: -1, temperature: 0, amount: 0, current: 0},
  base: 'm2/s',
  floor: false,
  order: ['mm2/s', 'm2/s', 'cSt'],
  ambiguous: {  },
  units: {
    'm2/s': { symbol: 'm²/s', factor: 1, aliases: '' },
    'mm2/s': { symbol: 'mm²/s', factor: 0.000001, aliases: '' },
    'cSt': { symbol: 'cSt', factor: 0.000001, aliases: 'centistokes' },
  },
} as const;

export const velocityData = {
  kind: 'velocity',
  label: 'velocity',
  dimension: {length: 1, mass: 0, time: -1, temperature: 0, amount: 0, current: 0},
  base: 'm/s',
  floor: false,
  order: ['m/s', 'km/h', 'mph', 'ft/s', 'cm/s', 'mm/s', 'ft/min'],
  ambiguous: {  },
  units: {
    'm/s': { symbol: 'm/s', factor: 1, aliases: '' },
    'km/h': { symbol: 'km/h', factor: 0.2777777777777778, aliases: 'kmh kph' },
    'cm/s': { symbol: 'cm/s', factor: 0.01, aliases: '' },
    'mm/s': { symbol: 'mm/s', factor: 0.001, aliases: '' },
    'mph': { symbol: 'mph', factor: 0.44704, aliases: 'mi/h' },
    'ft/s': { symbol: 'ft/s', factor: 0.3048, aliases: 'fps' },
    'ft/min': { symbol: 'ft/min', factor: 0.00508, aliases: 'fpm' },
  },
} as const;

export const accelerationData = {
  kind: 'acceleration',
  label: 'acceleration',
  dimension: {length: 1, mass: 0, time: -2, temperature: 0, amount: 0, current: 0},
  base: 'm/s2',
  floor: false,
  order: ['m/s2', 'g_n'],
  ambiguous: {  },
  units: {
    'm/s2': { symbol: 'm/s²', factor: 1, aliases: '' },
    'g_n': { symbol: 'gₙ', factor: 9.80665, aliases: 'gn' },
  },
} as const;

export const rotationalSpeedData = {
  kind: 'rotationalSpeed',
  label: 'rotational speed',
  dimension: {length: 0, mass: 0, time: -1, temperature: 0, amount: 0, current: 0},
  base: 'r/s',
  floor: false,
  order: ['rpm', 'r/s'],
  ambiguous: {  },
  units: {
    'r/s': { symbol: 'r/s', factor: 1, aliases: 'rps rev/s 1/s s-1' },
    'rpm': { symbol: 'rpm', factor: 0.016666666666666666, aliases: 'r/min rev/min 1/min min-1 u/min' },
  },
} as const;

export const frequencyData = {
  kind: 'frequency',
  label: 'frequency',
  dimension: {length: 0, mass: 0, time: -1, temperature: 0, amount: 0, current: 0},
  base: 'Hz',
  floor: false,
  order: ['Hz', 'kHz', '1/min', '1/h'],
  ambiguous: {  },
  units: {
    'Hz': { symbol: 'Hz', factor: 1, aliases: '1/s s-1' },
    'kHz': { symbol: 'kHz', factor: 1000, aliases: '' },
    '1/min': { symbol: '1/min', factor: 0.016666666666666666, aliases: 'min-1' },
    '1/h': { symbol: '1/h', factor: 0.0002777777777777778, aliases: 'h-1' },
  },
} as const;

export const forceData = {
  kind: 'force',
  label: 'force',
  dimension: {length: 1, mass: 1, time: -2, temperature: 0, amount: 0, current: 0},
  base: 'N',
  floor: false,
  order: ['N', 'kN', 'lbf', 'kgf'],
  ambiguous: {  },
  units: {
    'N': { symbol: 'N', factor: 1, aliases: 'newton' },
    'kN': { symbol: 'kN', factor: 1000, aliases: '' },
    'lbf': { symbol: 'lbf', factor: 4.4482216152605, aliases: '' },
    'kgf': { symbol: 'kgf', factor: 9.80665, aliases: 'kp' },
  },
} as const;

export const torqueData = {
  kind: 'torque',
  label: 'torque',
  dimension: {length: 2, mass: 1, time: -2, temperature: 0, amount: 0, current: 0},
  base: 'N.m',
  floor: false,
  order: ['N.m', 'lbf.ft', 'kgf.m'],
  ambiguous: {  },
  units: {
    'N.m': { symbol: 'N·m', factor: 1, aliases: 'Nm' },
    'lbf.ft': { symbol: 'lbf·ft', factor: 1.3558179483314003, aliases: 'lbft lb.ft lbfft ft.lbf' },
    'kgf.m': { symbol: 'kgf·m', factor: 9.80665, aliases: 'kgm kgfm' },
  },
} as const;

export const powerData = {
  kind: 'power',
  label: 'power',
  dimension: {length: 2, mass: 1, time: -3, temperature: 0, amount: 0, current: 0},
  base: 'W',
  floor: false,
  order: ['kW', 'W', 'hp_mechanical', 'hp_metric', 'MW', 'Btu_IT/h'],
  ambiguous: { 'hp': ['hp_mechanical', 'hp_metric'], 'HP': ['hp_mechanical', 'hp_metric'] },
  units: {
    'W': { symbol: 'W', factor: 1, aliases: 'watt watts J/s' },
    'kW': { symbol: 'kW', factor: 1000, aliases: 'kilowatt' },
    'MW': { symbol: 'MW', factor: 1000000, aliases: '' },
    'hp_mechanical': { symbol: 'hp', factor: 745.6998715822702, aliases: 'bhp hp(mech) hp_UK hp_US' },
    'hp_metric': { symbol: 'PS', factor: 735.49875, aliases: 'PS cv ch hp(metric) pk' },
    'Btu_IT/h': { symbol: 'Btu (IT)/h', factor: 0.2930710701722222, aliases: 'BtuIT/h' },
  },
} as const;

export const energyData = {
  kind: 'energy',
  label: 'energy',
  dimension: {length: 2, mass: 1, time: -2, temperature: 0, amount: 0, current: 0},
  base: 'J',
  floor: false,
  order: ['kJ', 'MJ', 'J', 'kWh', 'Btu_IT', 'Wh', 'hp.h', 'cal_th', 'cal_IT', 'kcal_IT', 'Btu_th'],
  ambiguous: { 'cal': ['cal_th', 'cal_IT'], 'Btu': ['Btu_IT', 'Btu_th'], 'BTU': ['Btu_IT', 'Btu_th'] },
  units: {
    'J': { symbol: 'J', factor: 1, aliases: 'joule joules W.s Ws' },
    'kJ': { symbol: 'kJ', factor: 1000, aliases: 'kilojoule' },
    'MJ': { symbol: 'MJ', factor: 1000000, aliases: 'megajoule' },
    'Wh': { symbol: 'Wh', factor: 3600, aliases: 'W.h' },
    'kWh': { symbol: 'kWh', factor: 3600000, aliases: 'kW.h' },
    'hp.h': { symbol: 'hp·h', factor: 2684519.537696173, aliases: 'hph hphr hp.hr bhp.h bhph' },
    'cal_th': { symbol: 'cal (th)', factor: 4.184, aliases: 'calth cal(th)' },
    'cal_IT': { symbol: 'cal (IT)', factor: 4.1868, aliases: 'calIT cal(IT)' },
    'kcal_IT': { symbol: 'kcal (IT)', factor: 4186.8, aliases: 'kcalIT kcal(IT)' },
    'Btu_IT': { symbol: 'Btu (IT)', factor: 1055.05585262, aliases: 'BtuIT Btu(IT)' },
    'Btu_th': { symbol: 'Btu (th)', factor: 1054.3502644888888, aliases: 'Btuth Btu(th)' },
  },
} as const;

export const specificEnergyData = {
  kind: 'specificEnergy',
  label: 'specific energy',
  dimension: {length: 2, mass: 0, time: -2, temperature: 0, amount: 0, current: 0},
  base: 'J/kg',
  floor: false,
  order: ['MJ/kg', 'kJ/kg', 'J/kg', 'Btu_IT/lb', 'J/g', 'kWh/kg'],
  ambiguous: {  },
  units: {
    'J/kg': { symbol: 'J/kg', factor: 1, aliases: '' },
    'J/g': { symbol: 'J/g', factor: 1000, aliases: '' },
    'kJ/kg': { symbol: 'kJ/kg', factor: 1000, aliases: '' },
    'MJ/kg': { symbol: 'MJ/kg', factor: 1000000, aliases: 'kJ/g' },
    'kWh/kg': { symbol: 'kWh/kg', factor: 3600000, aliases: '' },
    'Btu_IT/lb': { symbol: 'Btu (IT)/lb', factor: 2326, aliases: 'Btu/lb' },
  },
} as const;

export const molarEnergyData = {
  kind: 'molarEnergy',
  label: 'molar energy',
  dimension: {length: 2, mass: 1, time: -2, temperature: 0, amount: -1, current: 0},
  base: 'J/mol',
  floor: false,
  order: ['kJ/mol', 'J/mol', 'kcal_th/mol'],
  ambiguous: {  },
  units: {
    'J/mol': { symbol: 'J/mol', factor: 1, aliases: '' },
    'kJ/mol': { symbol: 'kJ/mol', factor: 1000, aliases: '' },
    'kcal_th/mol': { symbol: 'kcal (th)/mol', factor: 4184, aliases: 'kcal/mol' },
  },
} as const;

export const specificHeatCapacityData = {
  kind: 'specificHeatCapacity',
  label: 'specific heat capacity',
  dimension: {length: 2, mass: 0, time: -2, temperature: -1, amount: 0, current: 0},
  base: 'J/(kg.K)',
  floor: false,
  order: ['J/(kg.K)', 'kJ/(kg.K)', 'Btu_IT/(lb.degF)'],
  ambiguous: {  },
  units: {
    'J/(kg.K)': { symbol: 'J/(kg·K)', factor: 1, aliases: 'J/kgK J/kg/K J/(kgK) J/kg.K' },
    'kJ/(kg.K)': { symbol: 'kJ/(kg·K)', factor: 1000, aliases: 'kJ/kgK kJ/kg/K kJ/(kgK) J/(g.K) J/gK' },
    'Btu_IT/(lb.degF)': { symbol: 'Btu (IT)/(lb·°F)', factor: 4186.8, aliases: 'Btu/lbF' },
  },
} as const;

export const molarHeatCapacityData = {
  kind: 'molarHeatCapacity',
  label: 'molar heat capacity',
  dimension: {length: 2, mass: 1, time: -2, temperature: -1, amount: -1, current: 0},
  base: 'J/(mol.K)',
  floor: false,
  order: ['J/(mol.K)', 'kJ/(mol.K)'],
  ambiguous: {  },
  units: {
    'J/(mol.K)': { symbol: 'J/(mol·K)', factor: 1, aliases: 'J/molK J/mol/K J/(molK)' },
    'kJ/(mol.K)': { symbol: 'kJ/(mol·K)', factor: 1000, aliases: 'kJ/molK' },
  },
} as const;

export const volumetricHeatCapacityData = {
  kind: 'volumetricHeatCapacity',
  label: 'volumetric heat capacity',
  dimension: {length: -1, mass: 1, time: -2, temperature: -1, amount: 0, current: 0},
  base: 'J/(m3.K)',
  floor: false,
  order: ['kJ/(L.K)', 'J/(m3.K)', 'kJ/(m3.K)'],
  ambiguous: {  },
  units: {
    'J/(m3.K)': { symbol: 'J/(m³·K)', factor: 1, aliases: 'J/m3K' },
    'kJ/(m3.K)': { symbol: 'kJ/(m³·K)', factor: 1000, aliases: 'J/(L.K) J/LK kJ/m3K' },
    'kJ/(L.K)': { symbol: 'kJ/(L·K)', factor: 1000000, aliases: 'kJ/LK' },
  },
} as const;

export const heatCapacityData = {
  kind: 'heatCapacity',
  label: 'heat capacity',
  dimension: {length: 2, mass: 1, time: -2, temperature: -1, amount: 0, current: 0},
  base: 'J/K',
  floor: false,
  order: ['kJ/K', 'J/K'],
  ambiguous: {  },
  units: {
    'J/K': { symbol: 'J/K', factor: 1, aliases: '' },
    'kJ/K': { symbol: 'kJ/K', factor: 1000, aliases: '' },
  },
} as const;

export const thermalConductivityData = {
  kind: 'thermalConductivity',
  label: 'thermal conductivity',
  dimension: {length: 1, mass: 1, time: -3, temperature: -1, amount: 0, current: 0},
  base: 'W/(m.K)',
  floor: false,
  order: ['mW/(m.K)', 'W/(m.K)'],
  ambiguous: {  },
  units: {
    'W/(m.K)': { symbol: 'W/(m·K)', factor: 1, aliases: 'W/mK W/m/K W/(mK)' },
    'mW/(m.K)': { symbol: 'mW/(m·K)', factor: 0.001, aliases: 'mW/mK' },
  },
} as const;

export const heatTransferCoefficientData = {
  kind: 'heatTransferCoefficient',
  label: 'heat transfer coefficient',
  dimension: {length: 0, mass: 1, time: -3, temperature: -1, amount: 0, current: 0},
  base: 'W/(m2.K)',
  floor: false,
  order: ['W/(m2.K)'],
  ambiguous: {  },
  units: {
    'W/(m2.K)': { symbol: 'W/(m²·K)', factor: 1, aliases: 'W/m2K W/(m2K)' },
  },
} as const;

export const heatFluxData = {
  kind: 'heatFlux',
  label: 'heat flux',
  dimension: {length: 0, mass: 1, time: -3, temperature: 0, amount: 0, current: 0},
  base: 'W/m2',
  floor: false,
  order: ['kW/m2', 'W/m2'],
  ambiguous: {  },
  units: {
    'W/m2': { symbol: 'W/m²', factor: 1, aliases: '' },
    'kW/m2': { symbol: 'kW/m²', factor: 1000, aliases: '' },
  },
} as const;

export const temperatureData = {
  kind: 'temperature',
  label: 'temperature',
  dimension: {length: 0, mass: 0, time: 0, temperature: 1, amount: 0, current: 0},
  base: 'K',
  floor: true,
  order: ['degC', 'K', 'degF', 'degR'],
  ambiguous: {  },
  units: {
    'K': { symbol: 'K', factor: 1, aliases: 'kelvin' },
    'degC': { symbol: '°C', factor: 1, offset: 273.15, aliases: 'C ºC celsius degreeC' },
    'degF': { symbol: '°F', factor: 0.5555555555555556, offset: 459.67, aliases: 'F ºF fahrenheit' },
    'degR': { symbol: '°R', factor: 0.5555555555555556, aliases: 'R rankine' },
  },
} as const;

export const temperatureDifferenceData = {
  kind: 'temperatureDifference',
  label: 'temperature difference',
  dimension: {length: 0, mass: 0, time: 0, temperature: 1, amount: 0, current: 0},
  base: 'K',
  floor: false,
  order: ['K', 'degC', 'degF'],
  ambiguous: {  },
  units: {
    'K': { symbol: 'K', factor: 1, aliases: 'kelvin' },
    'degC': { symbol: '°C', factor: 1, aliases: 'C ºC' },
    'degF': { symbol: '°F', factor: 0.5555555555555556, aliases: 'F ºF' },
  },
} as const;

export const temperatureRateData = {
  kind: 'temperatureRate',
  label: 'rate of temperature change',
  dimension: {length: 0, mass: 0, time: -1, temperature: 1, amount: 0, current: 0},
  base: 'K/s',
  floor: false,
  order: ['K/s', 'K/min', 'K/h'],
  ambiguous: {  },
  units: {
    'K/s': { symbol: 'K/s', factor: 1, aliases: 'degC/s C/s' },
    'K/min': { symbol: 'K/min', factor: 0.016666666666666666, aliases: 'degC/min C/min' },
    'K/h': { symbol: 'K/h', factor: 0.0002777777777777778, aliases: 'degC/h C/h' },
  },
} as const;

export const voltageData = {
  kind: 'voltage',
  label: 'voltage',
  dimension: {length: 2, mass: 1, time: -3, temperature: 0, amount: 0, current: -1},
  base: 'V',
  floor: false,
  order: ['V', 'mV'],
  ambiguous: {  },
  units: {
    'V': { symbol: 'V', factor: 1, aliases: 'volt volts' },
    'mV': { symbol: 'mV', factor: 0.001, aliases: '' },
  },
} as const;

export const electricCurrentData = {
  kind: 'electricCurrent',
  label: 'electric current',
  dimension: {length: 0, mass: 0, time: 0, temperature: 0, amount: 0, current: 1},
  base: 'A',
  floor: false,
  order: ['A', 'mA'],
  ambiguous: {  },
  units: {
    'A': { symbol: 'A', factor: 1, aliases: 'amp amps ampere' },
    'mA': { symbol: 'mA', factor: 0.001, aliases: '' },
  },
} as const;

export const volumeFlowData = {
  kind: 'volumeFlow',
  label: 'actual volume flow',
  dimension: {length: 3, mass: 0, time: -1, temperature: 0, amount: 0, current: 0},
  base: 'm3/s',
  floor: false,
  order: ['m3/h', 'L/s', 'L/min', 'm3/s', 'ft3/min', 'm3/min', 'L/h', 'mL/min', 'mL/s', 'gal_US/min'],
  ambiguous: {  },
  units: {
    'm3/s': { symbol: 'm³/s', factor: 1, aliases: '' },
    'm3/min': { symbol: 'm³/min', factor: 0.016666666666666666, aliases: '' },
    'm3/h': { symbol: 'm³/h', factor: 0.0002777777777777778, aliases: 'cbm/h cmh' },
    'L/s': { symbol: 'L/s', factor: 0.001, aliases: 'l/s' },
    'L/min': { symbol: 'L/min', factor: 0.000016666666666666667, aliases: 'l/min lpm' },
    'L/h': { symbol: 'L/h', factor: 2.7777777777777776e-7, aliases: 'l/h' },
    'mL/min': { symbol: 'mL/min', factor: 1.6666666666666667e-8, aliases: 'ml/min' },
    'mL/s': { symbol: 'mL/s', factor: 0.000001, aliases: 'ml/s' },
    'ft3/min': { symbol: 'ft³/min', factor: 0.0004719474432, aliases: 'cfm acfm' },
    'gal_US/min': { symbol: 'US gal/min', factor: 0.0000630901964, aliases: 'gpm_US' },
  },
} as const;

export const standardVolumeFlowData = {
  kind: 'standardVolumeFlow',
  label: 'standard volume flow',
  dimension: {length: 3, mass: 0, time: -1, temperature: 0, amount: 0, current: 0},
  base: 'm3/s_0C',
  floor: false,
  order: ['m3/h_0C', 'm3/h_15C', 'm3/h_20C', 'm3/h_25C', 'L/min_0C', 'L/min_20C', 'ft3/min_60F', 'ft3/min_20C', 'm3/s_0C', 'm3/min_0C', 'L/s_0C', 'ft3/min_0C', 'm3/s_15C', 'm3/min_15C', 'L/s_15C', 'L/min_15C', 'ft3/min_15C', 'm3/s_20C', 'm3/min_20C', 'L/s_20C', 'm3/s_25C', 'm3/min_25C', 'L/s_25C', 'L/min_25C', 'ft3/min_25C', 'm3/s_60F', 'm3/min_60F', 'm3/h_60F', 'L/s_60F', 'L/min_60F'],
  ambiguous: { 'scfm': ['ft3/min_60F', 'ft3/min_20C', 'ft3/min_15C', 'ft3/min_0C'], 'slm': ['L/min_0C', 'L/min_20C', 'L/min_25C'], 'slpm': ['L/min_0C', 'L/min_20C', 'L/min_25C'], 'Sm3/h': ['m3/h_15C', 'm3/h_20C'], 'm3/h': ['m3/h_0C', 'm3/h_15C', 'm3/h_20C', 'm3/h_25C'], 'L/min': ['L/min_0C', 'L/min_15C', 'L/min_20C', 'L/min_25C'], 'ft3/min': ['ft3/min_60F', 'ft3/min_20C'] },
  units: {
    'm3/s_0C': { symbol: 'm³/s (0 °C)', factor: 1, aliases: 'm3/s(0C) Nm3/s' },
    'm3/min_0C': { symbol: 'm³/min (0 °C)', factor: 0.016666666666666666, aliases: 'm3/min(0C) Nm3/min' },
    'm3/h_0C': { symbol: 'm³/h (0 °C)', factor: 0.0002777777777777778, aliases: 'm3/h(0C) Nm3/h' },
    'L/s_0C': { symbol: 'L/s (0 °C)', factor: 0.001, aliases: 'L/s(0C) NL/s' },
    'L/min_0C': { symbol: 'L/min (0 °C)', factor: 0.000016666666666666667, aliases: 'L/min(0C) NL/min' },
    'ft3/min_0C': { symbol: 'ft³/min (0 °C)', factor: 0.0004719474432, aliases: 'ft3/min(0C) Nft3/min' },
    'm3/s_15C': { symbol: 'm³/s (15 °C)', factor: 0.9479437792816241, aliases: 'm3/s(15C)' },
    'm3/min_15C': { symbol: 'm³/min (15 °C)', factor: 0.01579906298802707, aliases: 'm3/min(15C)' },
    'm3/h_15C': { symbol: 'm³/h (15 °C)', factor: 0.00026331771646711784, aliases: 'm3/h(15C)' },
    'L/s_15C': { symbol: 'L/s (15 °C)', factor: 0.0009479437792816242, aliases: 'L/s(15C)' },
    'L/min_15C': { symbol: 'L/min (15 °C)', factor: 0.00001579906298802707, aliases: 'L/min(15C)' },
    'ft3/min_15C': { symbol: 'ft³/min (15 °C)', factor: 0.00044737964292930764, aliases: 'ft3/min(15C)' },
    'm3/s_20C': { symbol: 'm³/s (20 °C)', factor: 0.9317755415316391, aliases: 'm3/s(20C)' },
    'm3/min_20C': { symbol: 'm³/min (20 °C)', factor: 0.015529592358860651, aliases: 'm3/min(20C)' },
    'm3/h_20C': { symbol: 'm³/h (20 °C)', factor: 0.0002588265393143442, aliases: 'm3/h(20C)' },
    'L/s_20C': { symbol: 'L/s (20 °C)', factor: 0.0009317755415316391, aliases: 'L/s(20C)' },
    'L/min_20C': { symbol: 'L/min (20 °C)', factor: 0.000015529592358860652, aliases: 'L/min(20C)' },
    'ft3/min_20C': { symbol: 'ft³/min (20 °C)', factor: 0.00043974908446215246, aliases: 'ft3/min(20C)' },
    'm3/s_25C': { symbol: 'm³/s (25 °C)', factor: 0.9161495891329867, aliases: 'm3/s(25C)' },
    'm3/min_25C': { symbol: 'm³/min (25 °C)', factor: 0.015269159818883113, aliases: 'm3/min(25C)' },
    'm3/h_25C': { symbol: 'm³/h (25 °C)', factor: 0.0002544859969813852, aliases: 'm3/h(25C)' },
    'L/s_25C': { symbol: 'L/s (25 °C)', factor: 0.0009161495891329868, aliases: 'L/s(25C)' },
    'L/min_25C': { symbol: 'L/min (25 °C)', factor: 0.000015269159818883112, aliases: 'L/min(25C)' },
    'ft3/min_25C': { symbol: 'ft³/min (25 °C)', factor: 0.00043237445618004363, aliases: 'ft3/min(25C)' },
    'm3/s_60F': { symbol: 'm³/s (60 °F)', factor: 0.9461196528566206, aliases: 'm3/s(60F)' },
    'm3/min_60F': { symbol: 'm³/min (60 °F)', factor: 0.015768660880943676, aliases: 'm3/min(60F)' },
    'm3/h_60F': { symbol: 'm³/h (60 °F)', factor: 0.00026281101468239457, aliases: 'm3/h(60F)' },
    'L/s_60F': { symbol: 'L/s (60 °F)', factor: 0.0009461196528566206, aliases: 'L/s(60F)' },
    'L/min_60F': { symbol: 'L/min (60 °F)', factor: 0.000015768660880943675, aliases: 'L/min(60F)' },
    'ft3/min_60F': { symbol: 'ft³/min (60 °F)', factor: 0.00044651875112695363, aliases: 'ft3/min(60F)' },
  },
} as const;

export const massFlowData = {
  kind: 'massFlow',
  label: 'mass flow',
  dimension: {length: 0, mass: 1, time: -1, temperature: 0, amount: 0, current: 0},
  base: 'kg/s',
  floor: false,
  order: ['kg/h', 'g/s', 'kg/s', 'g/h', 'lb/min', 'lb/h', 'kg/min', 'g/min', 'mg/s', 'mg/h'],
  ambiguous: {  },
  units: {
    'kg/s': { symbol: 'kg/s', factor: 1, aliases: '' },
    'kg/min': { symbol: 'kg/min', factor: 0.016666666666666666, aliases: '' },
    'kg/h': { symbol: 'kg/h', factor: 0.0002777777777777778, aliases: 'kg/hr' },
    'g/s': { symbol: 'g/s', factor: 0.001, aliases: '' },
    'g/min': { symbol: 'g/min', factor: 0.000016666666666666667, aliases: '' },
    'g/h': { symbol: 'g/h', factor: 2.7777777777777776e-7, aliases: 'g/hr' },
    'mg/s': { symbol: 'mg/s', factor: 0.000001, aliases: '' },
    'mg/h': { symbol: 'mg/h', factor: 2.7777777777777777e-10, aliases: '' },
    'lb/min': { symbol: 'lb/min', factor: 0.007559872833333333, aliases: 'lbs/min' },
    'lb/h': { symbol: 'lb/h', factor: 0.00012599788055555556, aliases: 'lbs/h lb/hr pph' },
  },
} as const;

export const molarFlowData = {
  kind: 'molarFlow',
  label: 'molar flow',
  dimension: {length: 0, mass: 0, time: -1, temperature: 0, amount: 1, current: 0},
  base: 'mol/s',
  floor: false,
  order: ['mol/s', 'mol/h', 'kmol/h', 'mol/min'],
  ambiguous: {  },
  units: {
    'mol/s': { symbol: 'mol/s', factor: 1, aliases: '' },
    'mol/min': { symbol: 'mol/min', factor: 0.016666666666666666, aliases: '' },
    'mol/h': { symbol: 'mol/h', factor: 0.0002777777777777778, aliases: '' },
    'kmol/h': { symbol: 'kmol/h', factor: 0.2777777777777778, aliases: '' },
  },
} as const;

export const spaceVelocityData = {
  kind: 'spaceVelocity',
  label: 'space velocity',
  dimension: {length: 0, mass: 0, time: -1, temperature: 0, amount: 0, current: 0},
  base: '1/s',
  floor: false,
  order: ['1/h', '1/s'],
  ambiguous: {  },
  units: {
    '1/s': { symbol: '1/s', factor: 1, aliases: 's-1' },
    '1/h': { symbol: '1/h', factor: 0.0002777777777777778, aliases: 'h-1' },
  },
} as const;

export const reactionRateData = {
  kind: 'reactionRate',
  label: 'first-order rate',
  dimension: {length: 0, mass: 0, time: -1, temperature: 0, amount: 0, current: 0},
  base: '1/s',
  floor: false,
  order: ['1/s', '1/min', '1/h'],
  ambiguous: {  },
  units: {
    '1/s': { symbol: '1/s', factor: 1, aliases: 's-1' },
    '1/min': { symbol: '1/min', factor: 0.016666666666666666, aliases: 'min-1' },
    '1/h': { symbol: '1/h', factor: 0.0002777777777777778, aliases: 'h-1' },
  },
} as const;

export const flowResistanceData = {
  kind: 'flowResistance',
  label: 'flow resistance',
  dimension: {length: -3, mass: 0, time: 0, temperature: 0, amount: 0, current: 0},
  base: '1/m3',
  floor: false,
  order: ['1/m3', '1/mm3'],
  ambiguous: {  },
  units: {
    '1/m3': { symbol: '1/m³', factor: 1, aliases: 'm-3' },
    '1/mm3': { symbol: '1/mm³', factor: 1000000000, aliases: 'mm-3' },
  },
} as const;

export const pressurePerVolumeFlowData = {
  kind: 'pressurePerVolumeFlow',
  label: 'pressure drop per volume flow',
  dimension: {length: -4, mass: 1, time: -1, temperature: 0, amount: 0, current: 0},
  base: 'Pa.s/m3',
  floor: false,
  order: ['mbar/(m3/h)', 'Pa/(m3/h)', 'Pa.s/m3'],
  ambiguous: {  },
  units: {
    'Pa.s/m3': { symbol: 'Pa·s/m³', factor: 1, aliases: 'Pa/(m3/s)' },
    'Pa/(m3/h)': { symbol: 'Pa/(m³/h)', factor: 3600, aliases: 'Pa.h/m3' },
    'mbar/(m3/h)': { symbol: 'mbar/(m³/h)', factor: 360000, aliases: 'mbar.h/m3' },
  },
} as const;

export const amountData = {
  kind: 'amount',
  label: 'amount of substance',
  dimension: {length: 0, mass: 0, time: 0, temperature: 0, amount: 1, current: 0},
  base: 'mol',
  floor: false,
  order: ['mol', 'mmol', 'kmol'],
  ambiguous: {  },
  units: {
    'mol': { symbol: 'mol', factor: 1, aliases: 'mole moles' },
    'mmol': { symbol: 'mmol', factor: 0.001, aliases: '' },
    'kmol': { symbol: 'kmol', factor: 1000, aliases: '' },
  },
} as const;

export const molarMassData = {
  kind: 'molarMass',
  label: 'molar mass',
  dimension: {length: 0, mass: 1, time: 0, temperature: 0, amount: -1, current: 0},
  base: 'kg/mol',
  floor: false,
  order: ['g/mol', 'kg/mol'],
  ambiguous: {  },
  units: {
    'kg/mol': { symbol: 'kg/mol', factor: 1, aliases: '' },
    'g/mol': { symbol: 'g/mol', factor: 0.001, aliases: 'kg/kmol' },
  },
} as const;

export const molarVolumeData = {
  kind: 'molarVolume',
  label: 'molar volume',
  dimension: {length: 3, mass: 0, time: 0, temperature: 0, amount: -1, current: 0},
  base: 'm3/mol',
  floor: false,
  order: ['L/mol', 'm3/mol'],
  ambiguous: {  },
  units: {
    'm3/mol': { symbol: 'm³/mol', factor: 1, aliases: '' },
    'L/mol': { symbol: 'L/mol', factor: 0.001, aliases: 'l/mol m3/kmol' },
  },
} as const;

export const molarConcentrationData = {
  kind: 'molarConcentration',
  label: 'amount concentration',
  dimension: {length: -3, mass: 0, time: 0, temperature: 0, amount: 1, current: 0},
  base: 'mol/m3',
  floor: false,
  order: ['mol/L', 'mol/m3', 'mmol/L'],
  ambiguous: {  },
  units: {
    'mol/m3': { symbol: 'mol/m³', factor: 1, aliases: '' },
    'mol/L': { symbol: 'mol/L', factor: 1000, aliases: 'mol/l' },
    'mmol/L': { symbol: 'mmol/L', factor: 1, aliases: 'mmol/l' },
  },
} as const;

export const molalityData = {
  kind: 'molality',
  label: 'molality',
  dimension: {length: 0, mass: -1, time: 0, temperature: 0, amount: 1, current: 0},
  base: 'mol/kg',
  floor: false,
  order: ['mol/kg', 'mmol/kg'],
  ambiguous: {  },
  units: {
    'mol/kg': { symbol: 'mol/kg', factor: 1, aliases: '' },
    'mmol/kg': { symbol: 'mmol/kg', factor: 0.001, aliases: '' },
  },
} as const;

export const moleFractionData = {
  kind: 'moleFraction',
  label: 'mole fraction',
  dimension: {length: 0, mass: 0, time: 0, temperature: 0, amount: 0, current: 0},
  base: '1',
  floor: false,
  order: ['ppm', '%', '1', 'ppb', 'umol/mol', 'mol/mol', '%vol'],
  ambiguous: {  },
  units: {
    '1': { symbol: '', factor: 1, aliases: 'fraction' },
    '%': { symbol: '%', factor: 0.01, aliases: 'percent pct' },
    'ppm': { symbol: 'ppm', factor: 0.000001, aliases: '' },
    'ppb': { symbol: 'ppb', factor: 1e-9, aliases: '' },
    'umol/mol': { symbol: 'µmol/mol', factor: 0.000001, aliases: '' },
    'mol/mol': { symbol: 'mol/mol', factor: 1, aliases: '' },
    '%vol': { symbol: '% vol', factor: 0.01, aliases: 'vol% %vol. %v/v' },
  },
} as const;

export const massFractionData = {
  kind: 'massFraction',
  label: 'mass fraction',
  dimension: {length: 0, mass: 0, time: 0, temperature: 0, amount: 0, current: 0},
  base: '1',
  floor: false,
  order: ['%', '1', 'g/kg', 'mg/kg', 'ppm', '%m'],
  ambiguous: {  },
  units: {
    '1': { symbol: '', factor: 1, aliases: 'fraction' },
    '%': { symbol: '%', factor: 0.01, aliases: 'percent pct' },
    'ppm': { symbol: 'ppm', factor: 0.000001, aliases: '' },
    'g/kg': { symbol: 'g/kg', factor: 0.001, aliases: '' },
    'mg/kg': { symbol: 'mg/kg', factor: 0.000001, aliases: '' },
    '%m': { symbol: '% m/m', factor: 0.01, aliases: 'wt% %m/m %w/w mass%' },
  },
} as const;

export const volumeFractionData = {
  kind: 'volumeFraction',
  label: 'volume fraction',
  dimension: {length: 0, mass: 0, time: 0, temperature: 0, amount: 0, current: 0},
  base: '1',
  floor: false,
  order: ['%', '1', 'mL/L', 'ppm', '%vol'],
  ambiguous: {  },
  units: {
    '1': { symbol: '', factor: 1, aliases: 'fraction' },
    '%': { symbol: '%', factor: 0.01, aliases: 'percent pct' },
    'ppm': { symbol: 'ppm', factor: 0.000001, aliases: '' },
    'mL/L': { symbol: 'mL/L', factor: 0.001, aliases: 'ml/l' },
    '%vol': { symbol: '% vol', factor: 0.01, aliases: 'vol% %v/v' },
  },
} as const;

export const fractionData = {
  kind: 'fraction',
  label: 'fraction',
  dimension: {length: 0, mass: 0, time: 0, temperature: 0, amount: 0, current: 0},
  base: '1',
  floor: false,
  order: ['%', '1', 'ppm'],
  ambiguous: {  },
  units: {
    '1': { symbol: '', factor: 1, aliases: 'fraction' },
    '%': { symbol: '%', factor: 0.01, aliases: 'percent pct' },
    'ppm': { symbol: 'ppm', factor: 0.000001, aliases: '' },
  },
} as const;

export const ratioData = {
  kind: 'ratio',
  label: 'ratio',
  dimension: {length: 0, mass: 0, time: 0, temperature: 0, amount: 0, current: 0},
  base: '1',
  floor: false,
  order: ['1'],
  ambiguous: {  },
  units: {
    '1': { symbol: '', factor: 1, aliases: '' },
  },
} as const;

export const refractiveIndexData = {
  kind: 'refractiveIndex',
  label: 'refractive index',
  dimension: {length: 0, mass: 0, time: 0, temperature: 0, amount: 0, current: 0},
  base: '1',
  floor: false,
  order: ['1'],
  ambiguous: {  },
  units: {
    '1': { symbol: '', factor: 1, aliases: 'nD' },
  },
} as const;

export const dilutionRatioData = {
  kind: 'dilutionRatio',
  label: 'dilution ratio',
  dimension: {length: 0, mass: 0, time: 0, temperature: 0, amount: 0, current: 0},
  base: '1',
  floor: false,
  order: ['1'],
  ambiguous: {  },
  units: {
    '1': { symbol: '', factor: 1, aliases: '' },
  },
} as const;

export const massRatioData = {
  kind: 'massRatio',
  label: 'mass ratio',
  dimension: {length: 0, mass: 0, time: 0, temperature: 0, amount: 0, current: 0},
  base: '1',
  floor: false,
  order: ['g/kg', '1', '%'],
  ambiguous: {  },
  units: {
    '1': { symbol: '', factor: 1, aliases: 'kg/kg' },
    'g/kg': { symbol: 'g/kg', factor: 0.001, aliases: '' },
    '%': { symbol: '%', factor: 0.01, aliases: 'percent' },
  },
} as const;

export const massConcentrationData = {
  kind: 'massConcentration',
  label: 'mass concentration',
  dimension: {length: -3, mass: 1, time: 0, temperature: 0, amount: 0, current: 0},
  base: 'kg/m3',
  floor: false,
  order: ['g/L', 'g/m3', 'mg/m3', 'kg/m3', 'g/ft3', 'g/in3', 'ug/m3', 'mg/L'],
  ambiguous: {  },
  units: {
    'kg/m3': { symbol: 'kg/m³', factor: 1, aliases: '' },
    'g/L': { symbol: 'g/L', factor: 1, aliases: 'g/l g/dm3' },
    'g/m3': { symbol: 'g/m³', factor: 0.001, aliases: '' },
    'mg/m3': { symbol: 'mg/m³', factor: 0.000001, aliases: '' },
    'ug/m3': { symbol: 'µg/m³', factor: 1e-9, aliases: '' },
    'mg/L': { symbol: 'mg/L', factor: 0.001, aliases: 'mg/l' },
    'g/ft3': { symbol: 'g/ft³', factor: 0.03531466672148859, aliases: 'g/cuft' },
    'g/in3': { symbol: 'g/in³', factor: 61.02374409473229, aliases: '' },
  },
} as const;

export const surfaceLoadData = {
  kind: 'surfaceLoad',
  label: 'load per area',
  dimension: {length: -2, mass: 1, time: 0, temperature: 0, amount: 0, current: 0},
  base: 'kg/m2',
  floor: false,
  order: ['g/m2', 'kg/m2', 'mg/cm2'],
  ambiguous: {  },
  units: {
    'kg/m2': { symbol: 'kg/m²', factor: 1, aliases: '' },
    'g/m2': { symbol: 'g/m²', factor: 0.001, aliases: '' },
    'mg/cm2': { symbol: 'mg/cm²', factor: 0.01, aliases: '' },
  },
} as const;

export const massPerDistanceData = {
  kind: 'massPerDistance',
  label: 'mass per distance',
  dimension: {length: -1, mass: 1, time: 0, temperature: 0, amount: 0, current: 0},
  base: 'kg/m',
  floor: false,
  order: ['g/km', 'mg/km', 'g/mi', 'g/1000km', 'kg/m'],
  ambiguous: {  },
  units: {
    'kg/m': { symbol: 'kg/m', factor: 1, aliases: '' },
    'g/km': { symbol: 'g/km', factor: 0.000001, aliases: 'kg/1000km' },
    'mg/km': { symbol: 'mg/km', factor: 1e-9, aliases: '' },
    'g/1000km': { symbol: 'g/1000 km', factor: 1e-9, aliases: '' },
    'g/mi': { symbol: 'g/mi', factor: 6.21371192237334e-7, aliases: 'g/mile' },
  },
} as const;

export const massPerEnergyData = {
  kind: 'massPerEnergy',
  label: 'mass per energy',
  dimension: {length: -2, mass: 0, time: 2, temperature: 0, amount: 0, current: 0},
  base: 'kg/J',
  floor: false,
  order: ['g/kWh', 'mg/kWh', 'g/(hp.h)', 'lb/(hp.h)', 'kg/J'],
  ambiguous: {  },
  units: {
    'kg/J': { symbol: 'kg/J', factor: 1, aliases: '' },
    'g/kWh': { symbol: 'g/kWh', factor: 2.7777777777777777e-10, aliases: 'g/(kW.h) g/kW.h' },
    'mg/kWh': { symbol: 'mg/kWh', factor: 2.777777777777778e-13, aliases: '' },
    'g/(hp.h)': { symbol: 'g/(hp·h)', factor: 3.7250613599861885e-10, aliases: 'g/hph g/bhph g/hphr g/bhphr g/hp.h g/bhp.h' },
    'lb/(hp.h)': { symbol: 'lb/(hp·h)', factor: 1.6896594106715585e-7, aliases: 'lb/hph lb/bhph lb/hphr lb/hp.h' },
  },
} as const;

export const volumePerDistanceData = {
  kind: 'volumePerDistance',
  label: 'volume per distance',
  dimension: {length: 2, mass: 0, time: 0, temperature: 0, amount: 0, current: 0},
  base: 'm3/m',
  floor: false,
  order: ['L/100km', 'L/1000km', 'mpg_US', 'mpg_imp', 'L/km', 'm3/m', 'km/L'],
  ambiguous: { 'mpg': ['mpg_US', 'mpg_imp'], 'mi/gal': ['mpg_US', 'mpg_imp'], 'MPG': ['mpg_US', 'mpg_imp'] },
  units: {
    'm3/m': { symbol: 'm³/m', factor: 1, aliases: '' },
    'L/km': { symbol: 'L/km', factor: 0.000001, aliases: 'l/km' },
    'L/100km': { symbol: 'L/100 km', factor: 1e-8, aliases: 'l/100km' },
    'L/1000km': { symbol: 'L/1000 km', factor: 1e-9, aliases: 'l/1000km' },
    'mpg_US': { symbol: 'mpg (US)', factor: 0.0000023521458333333333, reciprocal: true, aliases: 'mpg(US) mi/gal_US mpgUS' },
    'mpg_imp': { symbol: 'mpg (imp)', factor: 0.0000028248093633182216, reciprocal: true, aliases: 'mpg(imp) mi/gal_imp mpgUK mpg(UK)' },
    'km/L': { symbol: 'km/L', factor: 0.000001, reciprocal: true, aliases: 'km/l' },
  },
} as const;

export const volumePerEnergyData = {
  kind: 'volumePerEnergy',
  label: 'volume per energy',
  dimension: {length: 1, mass: -1, time: 2, temperature: 0, amount: 0, current: 0},
  base: 'm3/J',
  floor: false,
  order: ['L/kWh', 'mL/kWh', 'm3/J'],
  ambiguous: {  },
  units: {
    'm3/J': { symbol: 'm³/J', factor: 1, aliases: '' },
    'L/kWh': { symbol: 'L/kWh', factor: 2.7777777777777777e-10, aliases: 'l/kWh' },
    'mL/kWh': { symbol: 'mL/kWh', factor: 2.777777777777778e-13, aliases: 'ml/kWh' },
  },
} as const;

export const particleNumberConcentrationData = {
  kind: 'particleNumberConcentration',
  label: 'particle number concentration',
  dimension: {length: -3, mass: 0, time: 0, temperature: 0, amount: 0, current: 0},
  base: '1/m3',
  floor: false,
  order: ['1/cm3', '1/m3', '1/L'],
  ambiguous: {  },
  units: {
    '1/m3': { symbol: '1/m³', factor: 1, aliases: 'm-3' },
    '1/cm3': { symbol: '1/cm³', factor: 1000000, aliases: 'cm-3 #/cm3 1/cc #/cc p/cm3' },
    '1/L': { symbol: '1/L', factor: 1000, aliases: '' },
  },
} as const;

export const particleNumberFlowData = {
  kind: 'particleNumberFlow',
  label: 'particle number per time',
  dimension: {length: 0, mass: 0, time: -1, temperature: 0, amount: 0, current: 0},
  base: '1/s',
  floor: false,
  order: ['1/s', '1/h'],
  ambiguous: {  },
  units: {
    '1/s': { symbol: '1/s', factor: 1, aliases: '#/s s-1' },
    '1/h': { symbol: '1/h', factor: 0.0002777777777777778, aliases: '#/h' },
  },
} as const;

export const particleNumberPerDistanceData = {
  kind: 'particleNumberPerDistance',
  label: 'particle number per distance',
  dimension: {length: -1, mass: 0, time: 0, temperature: 0, amount: 0, current: 0},
  base: '1/m',
  floor: false,
  order: ['1/km', '1/m'],
  ambiguous: {  },
  units: {
    '1/m': { symbol: '1/m', factor: 1, aliases: '' },
    '1/km': { symbol: '1/km', factor: 0.001, aliases: '#/km' },
  },
} as const;
