const percentUnits = (basis) => [
  ['1', '', 'one', '1', 'fraction', 'RATIO'],
  ['%', '%', `per cent${basis}`, '0.01', 'pct', 'RATIO'],
  ['permille', '‰', `per mille${basis}`, '0.001', '', 'RATIO'],
  ['ppm', 'ppm', `parts per million${basis}`, '0.000001', 'ppmv vppm', 'RATIO'],
];
const concentrationUnits = [
  ['kg/m3', 'kg/m³', 'kilogram per cubic metre', '1', '', 'SI'],
  ['g/L', 'g/L', 'gram per litre', '1', 'g/dm3', 'SI'],
  ['g/m3', 'g/m³', 'gram per cubic metre', '0.001', '', 'SI'],
  ['mg/m3', 'mg/m³', 'milligram per cubic metre', '0.000001', '', 'SI'],
  ['ug/m3', 'µg/m³', 'microgram per cubic metre', '0.000000001', '', 'SI'],
  ['mg/L', 'mg/L', 'milligram per litre', '0.001', '', 'SI'],
  ['g/ft3', 'g/ft³', 'gram per cubic foot', '0.001/0.028316846592', 'g/cuft', 'YARD'],
  ['g/in3', 'g/in³', 'gram per cubic inch', '0.001/0.000016387064', 'g/cuin', 'YARD'],
];

export const kinds = {
  amount: {
    label: 'amount of substance',
    dimension: 'N',
    prefer: ['mol', 'mmol', 'kmol'],
    units: [
      ['mol', 'mol', 'mole', '1', 'moles', 'SI'],
      ['mmol', 'mmol', 'millimole', '0.001', '', 'SI'],
      ['umol', 'µmol', 'micromole', '0.000001', '', 'SI'],
      ['kmol', 'kmol', 'kilomole', '1000', '', 'SI'],
    ],
  },
  molarMass: {
    label: 'molar mass',
    dimension: 'M N-1',
    prefer: ['g/mol', 'kg/mol'],
    units: [
      ['kg/mol', 'kg/mol', 'kilogram per mole', '1', '', 'SI'],
      ['g/mol', 'g/mol', 'gram per mole', '0.001', 'kg/kmol', 'SI'],
    ],
  },
  molarVolume: {
    label: 'molar volume',
    dimension: 'L3 N-1',
    prefer: ['L/mol', 'm3/mol'],
    units: [
      ['m3/mol', 'm³/mol', 'cubic metre per mole', '1', '', 'SI'],
      ['L/mol', 'L/mol', 'litre per mole', '0.001', 'm3/kmol', 'SI'],
    ],
  },
  molarConcentration: {
    label: 'amount concentration',
    dimension: 'N L-3',
    prefer: ['mol/L', 'mol/m3', 'mmol/L'],
    units: [
      ['mol/m3', 'mol/m³', 'mole per cubic metre', '1', '', 'SI'],
      ['mol/L', 'mol/L', 'mole per litre', '1000', '', 'SI'],
      ['mmol/L', 'mmol/L', 'millimole per litre', '1', '', 'SI'],
    ],
  },
  molality: {
    label: 'molality',
    dimension: 'N M-1',
    prefer: ['mol/kg'],
    units: [
      ['mol/kg', 'mol/kg', 'mole per kilogram', '1', '', 'SI'],
      ['mmol/kg', 'mmol/kg', 'millimole per kilogram', '0.001', '', 'SI'],
    ],
  },
  moleFraction: {
    label: 'mole fraction',
    note: 'Of a gas; for ideal gases the same as parts by volume.',
    dimension: '',
    prefer: ['ppm', '%', '1', 'ppb'],
    units: [
      ...percentUnits(' by volume of gas (mole)'),
      ['ppb', 'ppb', 'parts per billion', '0.000000001', '', 'RATIO'],
      ['umol/mol', 'µmol/mol', 'micromole per mole', '0.000001', '', 'SI'],
      ['mol/mol', 'mol/mol', 'mole per mole', '1', '', 'SI'],
      ['%vol', '% vol', 'volume per cent of gas', '0.01', 'vol% vol-% %v/v', 'RATIO'],
    ],
  },
  massFraction: {
    label: 'mass fraction',
    note: 'Parts by mass of the whole.',
    dimension: '',
    prefer: ['%', '1', 'g/kg', 'mg/kg'],
    units: [
      ...percentUnits(' by mass'),
      ['g/kg', 'g/kg', 'gram per kilogram', '0.001', '', 'SI'],
      ['mg/kg', 'mg/kg', 'milligram per kilogram', '0.000001', '', 'SI'],
      ['%m', '% m/m', 'mass per cent', '0.01', 'wt% wt-% %w/w mass% mass-%', 'RATIO'],
    ],
  },
  volumeFraction: {
    label: 'volume fraction',
    note: 'Parts by volume of the whole, volumes measured before mixing.',
    dimension: '',
    prefer: ['%', '1', 'mL/L'],
    units: [
      ...percentUnits(' by volume'),
      ['mL/L', 'mL/L', 'millilitre per litre', '0.001', '', 'SI'],
      ['%vol', '% vol', 'volume per cent', '0.01', 'vol% vol-% %v/v', 'RATIO'],
    ],
  },
  fraction: {
    label: 'fraction',
    note: 'A share of a stated whole: efficiency, opacity, humidity of saturation.',
    dimension: '',
    prefer: ['%', '1'],
    units: percentUnits(''),
  },
  ratio: {
    label: 'ratio',
    note: 'A quotient that nobody writes in percent, such as lambda.',
    dimension: '',
    prefer: ['1'],
    units: [['1', '', 'one', '1', '', 'RATIO']],
  },
  refractiveIndex: {
    label: 'refractive index',
    dimension: '',
    prefer: ['1'],
    units: [['1', '', 'one', '1', 'nD', 'RATIO']],
  },
  dilutionRatio: {
    label: 'dilution ratio',
    note: 'Parts of diluent to one part of concentrate; written `1:4`.',
    dimension: '',
    prefer: ['1'],
    units: [['1', '', 'parts of diluent per part of concentrate', '1', '', 'RATIO']],
  },
  massRatio: {
    label: 'mass ratio',
    note: 'Mass of one to mass of another, such as water to dry air.',
    dimension: '',
    prefer: ['g/kg', '1', '%'],
    units: [
      ['1', '', 'kilogram per kilogram', '1', 'kg/kg', 'RATIO'],
      ['g/kg', 'g/kg', 'gram per kilogram', '0.001', '', 'SI'],
      ['gr/lb', 'gr/lb', 'grain per pound', '1/7000', '', 'YARD'],
      ['%', '%', 'per cent of mass', '0.01', 'pct', 'RATIO'],
    ],
  },
  massConcentration: {
    label: 'mass concentration',
    note: 'Mass in a volume, such as soot in a filter or dust in air.',
    dimension: 'M L-3',
    prefer: ['g/L', 'g/m3', 'mg/m3', 'kg/m3', 'g/ft3', 'g/in3'],
    units: concentrationUnits,
  },
  surfaceLoad: {
    label: 'load per area',
    note: 'Mass on an area, such as soot on a wall.',
    dimension: 'M L-2',
    prefer: ['g/m2', 'kg/m2', 'mg/cm2', 'g/ft2'],
    units: [
      ['kg/m2', 'kg/m²', 'kilogram per square metre', '1', '', 'SI'],
      ['g/m2', 'g/m²', 'gram per square metre', '0.001', '', 'SI'],
      ['mg/cm2', 'mg/cm²', 'milligram per square centimetre', '0.01', '', 'SI'],
      ['g/ft2', 'g/ft²', 'gram per square foot', '0.001/0.3048/0.3048', '', 'YARD'],
    ],
  },
};
