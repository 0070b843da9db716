const percentUnits = (basis) => [
  ['1', '', 'one', '1', 'fraction', 'RATIO'],
  ['%', '%', `per cent${basis}`, '0.01', 'percent pct', 'RATIO'],
  ['ppm', 'ppm', `parts per million${basis}`, '0.000001', '', 'RATIO'],
];
const concentrationUnits = [
  ['kg/m3', 'kg/m³', 'kilogram per cubic metre', '1', '', 'SI'],
  ['g/L', 'g/L', 'gram per litre', '1', 'g/l g/dm3', 'SI'],
  ['g/m3', 'g/m³', 'gram per cubic metre', '0.001', '', 'SI'],
  ['mg/m3', 'mg/m³', 'milligram per cubic metre', '0.000001', '', 'SI'],
  ['ug/m3', 'µg/m³', 'microgram per cubic metre', '0.000000001', '', 'SI'],
  ['mg/L', 'mg/L', 'milligram per litre', '0.001', 'mg/l', 'SI'],
  ['g/ft3', 'g/ft³', 'gram per cubic foot', '0.001/0.028316846592', 'g/cuft', 'YARD'],
  ['g/in3', 'g/in³', 'gram per cubic inch', '0.001/0.000016387064', '', 'YARD'],
];

export const kinds = {
  amount: {
    label: 'amount of substance',
    dimension: 'N',
    prefer: ['mol', 'mmol', 'kmol'],
    units: [
      ['mol', 'mol', 'mole', '1', 'mole moles', 'SI'],
      ['mmol', 'mmol', 'millimole', '0.001', '', 'SI'],
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
      ['L/mol', 'L/mol', 'litre per mole', '0.001', 'l/mol m3/kmol', 'SI'],
    ],
  },
  molarConcentration: {
    label: 'amount concentration',
    dimension: 'N L-3',
    prefer: ['mol/L', 'mol/m3', 'mmol/L'],
    units: [
      ['mol/m3', 'mol/m³', 'mole per cubic metre', '1', '', 'SI'],
      ['mol/L', 'mol/L', 'mole per litre', '1000', 'mol/l', 'SI'],
      ['mmol/L', 'mmol/L', 'millimole per litre', '1', 'mmol/l', 'SI'],
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
    dimension: '',
    prefer: ['ppm', '%', '1', 'ppb'],
    units: [
      ...percentUnits(' by volume of gas (mole)'),
      ['ppb', 'ppb', 'parts per billion', '0.000000001', '', 'RATIO'],
      ['umol/mol', 'µmol/mol', 'micromole per mole', '0.000001', '', 'SI'],
      ['mol/mol', 'mol/mol', 'mole per mole', '1', '', 'SI'],
      ['%vol', '% vol', 'per cent by volume of gas', '0.01', 'vol% %vol. %v/v', 'RATIO'],
    ],
  },
  massFraction: {
    label: 'mass fraction',
    dimension: '',
    prefer: ['%', '1', 'g/kg', 'mg/kg'],
    units: [
      ...percentUnits(' by mass'),
      ['g/kg', 'g/kg', 'gram per kilogram', '0.001', '', 'SI'],
      ['mg/kg', 'mg/kg', 'milligram per kilogram', '0.000001', '', 'SI'],
      ['%m', '% m/m', 'per cent by mass', '0.01', 'wt% %m/m %w/w mass%', 'RATIO'],
    ],
  },
  volumeFraction: {
    label: 'volume fraction',
    dimension: '',
    prefer: ['%', '1', 'mL/L'],
    units: [
      ...percentUnits(' by volume'),
      ['mL/L', 'mL/L', 'millilitre per litre', '0.001', 'ml/l', 'SI'],
      ['%vol', '% vol', 'per cent by volume', '0.01', 'vol% %v/v', 'RATIO'],
    ],
  },
  fraction: {
    label: 'fraction',
    dimension: '',
    prefer: ['%', '1'],
    units: percentUnits(''),
  },
  ratio: {
    label: 'ratio',
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
    dimension: '',
    prefer: ['1'],
    units: [['1', '', 'parts of diluent per part of concentrate', '1', '', 'RATIO']],
  },
  massRatio: {
    label: 'mass ratio',
    dimension: '',
    prefer: ['g/kg', '1', '%'],
    units: [
      ['1', '', 'kilogram per kilogram', '1', 'kg/kg', 'RATIO'],
      ['g/kg', 'g/kg', 'gram per kilogram', '0.001', '', 'SI'],
      ['%', '%', 'per cent of mass', '0.01', 'percent', 'RATIO'],
    ],
  },
  massConcentration: {
    label: 'mass concentration',
    dimension: 'M L-3',
    prefer: ['g/L', 'g/m3', 'mg/m3', 'kg/m3', 'g/ft3', 'g/in3'],
    units: concentrationUnits,
  },
  surfaceLoad: {
    label: 'load per area',
    dimension: 'M L-2',
    prefer: ['g/m2', 'kg/m2', 'mg/cm2'],
    units: [
      ['kg/m2', 'kg/m²', 'kilogram per square metre', '1', '', 'SI'],
      ['g/m2', 'g/m²', 'gram per square metre', '0.001', '', 'SI'],
      ['mg/cm2', 'mg/cm²', 'milligram per square centimetre', '0.01', '', 'SI'],
    ],
  },
  massPerDistance: {
    label: 'mass per distance',
    dimension: 'M L-1',
    prefer: ['g/km', 'mg/km', 'g/mi', 'g/1000km'],
    units: [
      ['kg/m', 'kg/m', 'kilogram per metre', '1', '', 'SI'],
      ['g/km', 'g/km', 'gram per kilometre', '0.000001', 'kg/1000km', 'SI'],
      ['mg/km', 'mg/km', 'milligram per kilometre', '0.000000001', '', 'SI'],
      ['g/1000km', 'g/1000 km', 'gram per 1000 kilometres', '0.000000001', '', 'SI'],
      ['g/mi', 'g/mi', 'gram per mile', '0.001/1609.344', 'g/mile', 'YARD'],
    ],
  },
  massPerEnergy: {
    label: 'mass per energy',
    dimension: 'T2 L-2',
    prefer: ['g/kWh', 'mg/kWh', 'g/(hp.h)', 'lb/(hp.h)'],
    units: [
      ['kg/J', 'kg/J', 'kilogram per joule', '1', '', 'SI'],
      ['g/kWh', 'g/kWh', 'gram per kilowatt hour', '0.001/3600000', 'g/(kW.h) g/kW.h', 'SI'],
      ['mg/kWh', 'mg/kWh', 'milligram per kilowatt hour', '0.000001/3600000', '', 'SI'],
      [
        'g/(hp.h)',
        'g/(hp·h)',
        'gram per mechanical horsepower hour',
        '0.001/2684519.537696172792',
        'g/hph g/bhph g/hphr g/bhphr g/hp.h g/bhp.h',
        'SP811',
      ],
      [
        'lb/(hp.h)',
        'lb/(hp·h)',
        'pound per mechanical horsepower hour',
        '0.45359237/2684519.537696172792',
        'lb/hph lb/bhph lb/hphr lb/hp.h',
        'SP811',
      ],
    ],
  },
  volumePerDistance: {
    label: 'volume per distance',
    dimension: 'L2',
    prefer: ['L/100km', 'L/1000km', 'mpg_US', 'mpg_imp', 'L/km'],
    ambiguous: { mpg: ['mpg_US', 'mpg_imp'], 'mi/gal': ['mpg_US', 'mpg_imp'], MPG: ['mpg_US', 'mpg_imp'] },
    units: [
      ['m3/m', 'm³/m', 'cubic metre per metre', '1', '', 'SI'],
      ['L/km', 'L/km', 'litre per kilometre', '0.000001', 'l/km', 'SI'],
      ['L/100km', 'L/100 km', 'litre per 100 kilometres', '0.00000001', 'l/100km', 'SI'],
      ['L/1000km', 'L/1000 km', 'litre per 1000 kilometres', '0.000000001', 'l/1000km', 'SI'],
      ['mpg_US', 'mpg (US)', 'mile per US gallon', '0.003785411784/1609.344', 'mpg(US) mi/gal_US mpgUS', 'USGAL', 'reciprocal'],
      [
        'mpg_imp',
        'mpg (imp)',
        'mile per imperial gallon',
        '0.00454609/1609.344',
        'mpg(imp) mi/gal_imp mpgUK mpg(UK)',
        'UKWM',
        'reciprocal',
      ],
      ['km/L', 'km/L', 'kilometre per litre', '0.000001', 'km/l', 'SI', 'reciprocal'],
    ],
  },
  volumePerEnergy: {
    label: 'volume per energy',
    dimension: 'L M-1 T2',
    prefer: ['L/kWh', 'mL/kWh'],
    units: [
      ['m3/J', 'm³/J', 'cubic metre per joule', '1', '', 'SI'],
      ['L/kWh', 'L/kWh', 'litre per kilowatt hour', '0.001/3600000', 'l/kWh', 'SI'],
      ['mL/kWh', 'mL/kWh', 'millilitre per kilowatt hour', '0.000001/3600000', 'ml/kWh', 'SI'],
    ],
  },
  particleNumberConcentration: {
    label: 'particle number concentration',
    dimension: 'L-3',
    prefer: ['1/cm3', '1/m3'],
    units: [
      ['1/m3', '1/m³', 'per cubic metre', '1', 'm-3', 'SI'],
      ['1/cm3', '1/cm³', 'per cubic centimetre', '1000000', 'cm-3 #/cm3 1/cc #/cc p/cm3', 'SI'],
      ['1/L', '1/L', 'per litre', '1000', '', 'SI'],
    ],
  },
  particleNumberFlow: {
    label: 'particle number per time',
    dimension: 'T-1',
    prefer: ['1/s'],
    units: [
      ['1/s', '1/s', 'per second', '1', '#/s s-1', 'SI'],
      ['1/h', '1/h', 'per hour', '1/3600', '#/h', 'SI'],
    ],
  },
  particleNumberPerDistance: {
    label: 'particle number per distance',
    dimension: 'L-1',
    prefer: ['1/km', '1/m'],
    units: [
      ['1/m', '1/m', 'per metre', '1', '', 'SI'],
      ['1/km', '1/km', 'per kilometre', '0.001', '#/km', 'SI'],
    ],
  },
};
