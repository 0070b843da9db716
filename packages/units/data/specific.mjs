const hpHour = '2684519.537696172792';

/** Emissions, consumption and counts per distance, energy, time and volume. */
export const kinds = {
  massPerDistance: {
    label: 'mass per distance',
    dimension: 'M L-1',
    prefer: ['g/km', 'mg/km', 'g/mi', 'g/1000km'],
    units: [
      ['kg/m', 'kg/m', 'kilogram per metre', '1', '', 'SI'],
      ['kg/km', 'kg/km', 'kilogram per kilometre', '0.001', '', 'SI'],
      ['g/km', 'g/km', 'gram per kilometre', '0.000001', 'kg/1000km', 'SI'],
      ['mg/km', 'mg/km', 'milligram per kilometre', '0.000000001', '', 'SI'],
      ['g/100km', 'g/100 km', 'gram per 100 kilometres', '0.00000001', '', 'SI'],
      ['g/1000km', 'g/1000 km', 'gram per 1000 kilometres', '0.000000001', '', 'SI'],
      ['g/mi', 'g/mi', 'gram per mile', '0.001/1609.344', 'g/mile', 'YARD'],
      ['mg/mi', 'mg/mi', 'milligram per mile', '0.000001/1609.344', 'mg/mile', 'YARD'],
    ],
  },
  massPerEnergy: {
    label: 'mass per energy',
    dimension: 'T2 L-2',
    prefer: ['g/kWh', 'mg/kWh', 'g/(hp.h)', 'lb/(hp.h)'],
    units: [
      ['kg/J', 'kg/J', 'kilogram per joule', '1', '', 'SI'],
      ['g/MJ', 'g/MJ', 'gram per megajoule', '0.000000001', '', 'SI'],
      ['g/kWh', 'g/kWh', 'gram per kilowatt hour', '0.001/3600000', 'g/kWhr', 'SI'],
      ['mg/kWh', 'mg/kWh', 'milligram per kilowatt hour', '0.000001/3600000', '', 'SI'],
      ['g/(hp.h)', 'g/(hp·h)', 'gram per mechanical horsepower hour', `0.001/${hpHour}`, 'g/bhp.h g/hp.hr g/bhp.hr', 'SP811'],
      ['lb/(hp.h)', 'lb/(hp·h)', 'pound per mechanical horsepower hour', `0.45359237/${hpHour}`, 'lb/bhp.h lb/hp.hr lb/bhp.hr', 'SP811'],
    ],
  },
  volumePerDistance: {
    label: 'volume per distance',
    note: 'Fuel or reductant use; miles per gallon count the other way round.',
    dimension: 'L2',
    prefer: ['L/100km', 'L/1000km', 'mpg_US', 'mpg_imp', 'L/km'],
    ambiguous: { 'mpg mi/gal miles/gallon milespergallon': ['mpg_US', 'mpg_imp'], 'gal/100mi': ['gal_US/100mi', 'gal_imp/100mi'] },
    units: [
      ['m3/m', 'm³/m', 'cubic metre per metre', '1', '', 'SI'],
      ['L/km', 'L/km', 'litre per kilometre', '0.000001', '', 'SI'],
      ['mL/km', 'mL/km', 'millilitre per kilometre', '0.000000001', '', 'SI'],
      ['L/100km', 'L/100 km', 'litre per 100 kilometres', '0.00000001', '', 'SI'],
      ['L/1000km', 'L/1000 km', 'litre per 1000 kilometres', '0.000000001', '', 'SI'],
      ['gal_US/100mi', 'US gal/100 mi', 'US gallon per 100 miles', '0.003785411784/160934.4', '', 'USGAL'],
      ['gal_imp/100mi', 'imp gal/100 mi', 'imperial gallon per 100 miles', '0.00454609/160934.4', '', 'UKWM'],
      ['mpg_US', 'mpg (US)', 'mile per US gallon', '0.003785411784/1609.344', 'mi/gal_US', 'USGAL', 'reciprocal'],
      ['mpg_imp', 'mpg (imp)', 'mile per imperial gallon', '0.00454609/1609.344', 'mi/gal_imp mpg(UK)', 'UKWM', 'reciprocal'],
      ['km/L', 'km/L', 'kilometre per litre', '0.000001', '', 'SI', 'reciprocal'],
    ],
  },
  volumePerEnergy: {
    label: 'volume per energy',
    dimension: 'L M-1 T2',
    prefer: ['L/kWh', 'mL/kWh'],
    units: [
      ['m3/J', 'm³/J', 'cubic metre per joule', '1', '', 'SI'],
      ['L/kWh', 'L/kWh', 'litre per kilowatt hour', '0.001/3600000', '', 'SI'],
      ['mL/kWh', 'mL/kWh', 'millilitre per kilowatt hour', '0.000001/3600000', '', 'SI'],
    ],
  },
  particleNumberConcentration: {
    label: 'particle number concentration',
    dimension: 'L-3',
    prefer: ['1/cm3', '1/m3'],
    units: [
      ['1/m3', '1/m³', 'per cubic metre', '1', 'm-3 #/m3', 'SI'],
      ['1/cm3', '1/cm³', 'per cubic centimetre', '1000000', 'cm-3 #/cm3 1/cc #/cc p/cm3 p/cc', 'SI'],
      ['1/L', '1/L', 'per litre', '1000', '', 'SI'],
    ],
  },
  particleNumberFlow: {
    label: 'particle number per time',
    dimension: 'T-1',
    prefer: ['1/s'],
    units: [
      ['1/s', '1/s', 'per second', '1', '#/s s-1 p/s', 'SI'],
      ['1/h', '1/h', 'per hour', '1/3600', '#/h', 'SI'],
    ],
  },
  particleNumberPerDistance: {
    label: 'particle number per distance',
    dimension: 'L-1',
    prefer: ['1/km', '1/m'],
    units: [
      ['1/m', '1/m', 'per metre', '1', 'm-1', 'SI'],
      ['1/km', '1/km', 'per kilometre', '0.001', '#/km km-1 p/km', 'SI'],
      ['1/mi', '1/mi', 'per mile', '1/1609.344', '#/mi', 'YARD'],
    ],
  },
  particleNumberPerEnergy: {
    label: 'particle number per energy',
    dimension: 'T2 L-2 M-1',
    prefer: ['1/kWh', '1/J'],
    units: [
      ['1/J', '1/J', 'per joule', '1', '', 'SI'],
      ['1/kWh', '1/kWh', 'per kilowatt hour', '1/3600000', '#/kWh p/kWh', 'SI'],
    ],
  },
};
