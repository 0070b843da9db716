const volumeRates = [
  ['m3/s', 'm³/s', 'cubic metre per second', '1'],
  ['m3/min', 'm³/min', 'cubic metre per minute', '1/60'],
  ['m3/h', 'm³/h', 'cubic metre per hour', '1/3600'],
  ['L/s', 'L/s', 'litre per second', '0.001'],
  ['L/min', 'L/min', 'litre per minute', '0.001/60'],
  ['ft3/min', 'ft³/min', 'cubic foot per minute', '0.028316846592/60'],
];
/** Reference states at 101.325 kPa: id suffix, temperature text, ratio to 0 °C. */
const states = [
  ['0C', '0 °C', '1'],
  ['15C', '15 °C', '273.15/288.15'],
  ['20C', '20 °C', '273.15/293.15'],
  ['25C', '25 °C', '273.15/298.15'],
  ['60F', '60 °F', '273.15*9/5/519.67'],
];
// "N" before the unit is read as normal: 0 °C. "S" for standard says no temperature and stays ambiguous.
const standardUnits = states.flatMap(([suffix, text, ratio]) =>
  volumeRates.map(([id, symbol, name, factor]) => [
    `${id}_${suffix}`,
    `${symbol} (${text})`,
    `${name} at ${text}, 101.325 kPa`,
    ratio === '1' ? factor : `${factor}*${ratio}`,
    suffix === '0C' ? `N${id}` : '',
    'REF',
  ]),
);
const anyState = (rate) => states.map(([suffix]) => `${rate}_${suffix}`);

export const kinds = {
  volumeFlow: {
    label: 'actual volume flow',
    note: 'Volume at the pressure and temperature that the gas has.',
    dimension: 'L3 T-1',
    prefer: ['m3/h', 'L/s', 'L/min', 'm3/s', 'ft3/min'],
    ambiguous: { 'gpm gal/min': ['gal_US/min', 'gal_imp/min'] },
    units: [
      ['m3/s', 'm³/s', 'cubic metre per second', '1', '', 'SI'],
      ['m3/min', 'm³/min', 'cubic metre per minute', '1/60', '', 'SI'],
      ['m3/h', 'm³/h', 'cubic metre per hour', '1/3600', 'cbm/h cmh m3/hr', 'SI'],
      ['L/s', 'L/s', 'litre per second', '0.001', '', 'SI'],
      ['L/min', 'L/min', 'litre per minute', '0.001/60', 'lpm', 'SI'],
      ['L/h', 'L/h', 'litre per hour', '0.001/3600', 'L/hr', 'SI'],
      ['mL/s', 'mL/s', 'millilitre per second', '0.000001', 'cm3/s cc/s', 'SI'],
      ['mL/min', 'mL/min', 'millilitre per minute', '0.000001/60', 'cm3/min cc/min', 'SI'],
      ['mL/h', 'mL/h', 'millilitre per hour', '0.000001/3600', 'cm3/h', 'SI'],
      ['ft3/min', 'ft³/min', 'cubic foot per minute', '0.028316846592/60', 'cfm acfm cuft/min', 'YARD'],
      ['ft3/h', 'ft³/h', 'cubic foot per hour', '0.028316846592/3600', 'cfh', 'YARD'],
      ['gal_US/min', 'US gal/min', 'US gallon per minute', '0.003785411784/60', 'gpm_US', 'USGAL'],
      ['gal_imp/min', 'imp gal/min', 'imperial gallon per minute', '0.00454609/60', 'gpm_imp', 'UKWM'],
    ],
  },
  standardVolumeFlow: {
    label: 'standard volume flow',
    note: 'A flow of molecules told as volume at 101.325 kPa and the temperature that the unit names; conversion between the states is the ideal-gas ratio.',
    dimension: 'L3 T-1',
    prefer: ['m3/h_0C', 'm3/h_15C', 'm3/h_20C', 'm3/h_25C', 'L/min_0C', 'L/min_20C', 'ft3/min_60F', 'ft3/min_20C'],
    ambiguous: {
      'scfm cfm ft3/min': ['ft3/min_60F', 'ft3/min_20C', 'ft3/min_15C', 'ft3/min_0C', 'ft3/min_25C'],
      'slm slpm sL/min L/min lpm': anyState('L/min'),
      'sm3/h m3/h': anyState('m3/h'),
      'sm3/min m3/min': anyState('m3/min'),
      'sm3/s m3/s': anyState('m3/s'),
      'sL/s L/s': anyState('L/s'),
    },
    units: standardUnits,
  },
  massFlow: {
    label: 'mass flow',
    dimension: 'M T-1',
    prefer: ['kg/h', 'g/s', 'kg/s', 'g/h', 'lb/min', 'lb/h'],
    units: [
      ['kg/s', 'kg/s', 'kilogram per second', '1', '', 'SI'],
      ['kg/min', 'kg/min', 'kilogram per minute', '1/60', '', 'SI'],
      ['kg/h', 'kg/h', 'kilogram per hour', '1/3600', 'kg/hr', 'SI'],
      ['t/h', 't/h', 'tonne per hour', '1000/3600', '', 'SI'],
      ['g/s', 'g/s', 'gram per second', '0.001', 'g/sec', 'SI'],
      ['g/min', 'g/min', 'gram per minute', '0.001/60', '', 'SI'],
      ['g/h', 'g/h', 'gram per hour', '0.001/3600', 'g/hr', 'SI'],
      ['mg/s', 'mg/s', 'milligram per second', '0.000001', 'mg/sec', 'SI'],
      ['mg/min', 'mg/min', 'milligram per minute', '0.000001/60', '', 'SI'],
      ['mg/h', 'mg/h', 'milligram per hour', '0.000001/3600', '', 'SI'],
      ['lb/s', 'lb/s', 'pound per second', '0.45359237', 'lbs/s', 'YARD'],
      ['lb/min', 'lb/min', 'pound per minute', '0.45359237/60', 'lbs/min', 'YARD'],
      ['lb/h', 'lb/h', 'pound per hour', '0.45359237/3600', 'lbs/h lb/hr lbs/hr pph', 'YARD'],
    ],
  },
  molarFlow: {
    label: 'molar flow',
    dimension: 'N T-1',
    prefer: ['mol/s', 'mol/h', 'kmol/h'],
    units: [
      ['mol/s', 'mol/s', 'mole per second', '1', '', 'SI'],
      ['mmol/s', 'mmol/s', 'millimole per second', '0.001', '', 'SI'],
      ['mol/min', 'mol/min', 'mole per minute', '1/60', '', 'SI'],
      ['mol/h', 'mol/h', 'mole per hour', '1/3600', '', 'SI'],
      ['kmol/h', 'kmol/h', 'kilomole per hour', '1000/3600', '', 'SI'],
    ],
  },
  spaceVelocity: {
    label: 'space velocity',
    note: 'Volume flow at a stated reference state over the volume of the part.',
    dimension: 'T-1',
    prefer: ['1/h', '1/s'],
    units: [
      ['1/s', '1/s', 'per second', '1', 's-1', 'SI'],
      ['1/h', '1/h', 'per hour', '1/3600', 'h-1 1/hr', 'SI'],
    ],
  },
  reactionRate: {
    label: 'first-order rate',
    dimension: 'T-1',
    prefer: ['1/s', '1/min', '%/min', '1/h'],
    units: [
      ['1/s', '1/s', 'per second', '1', 's-1', 'SI'],
      ['1/min', '1/min', 'per minute', '1/60', 'min-1', 'SI'],
      ['1/h', '1/h', 'per hour', '1/3600', 'h-1', 'SI'],
      ['%/s', '%/s', 'per cent per second', '0.01', '', 'RATIO'],
      ['%/min', '%/min', 'per cent per minute', '0.01/60', '', 'RATIO'],
      ['%/h', '%/h', 'per cent per hour', '0.01/3600', '', 'RATIO'],
    ],
  },
  flowResistance: {
    label: 'flow resistance',
    note: 'Pressure drop over viscosity and volume flow.',
    dimension: 'L-3',
    prefer: ['1/m3'],
    units: [
      ['1/m3', '1/m³', 'per cubic metre', '1', 'm-3', 'SI'],
      ['1/mm3', '1/mm³', 'per cubic millimetre', '1000000000', 'mm-3', 'SI'],
    ],
  },
  inertialFlowResistance: {
    label: 'inertial flow resistance',
    note: 'Pressure drop over density and the square of the volume flow.',
    dimension: 'L-4',
    prefer: ['1/m4'],
    units: [
      ['1/m4', '1/m⁴', 'per metre to the fourth', '1', 'm-4', 'SI'],
      ['1/cm4', '1/cm⁴', 'per centimetre to the fourth', '100000000', 'cm-4', 'SI'],
    ],
  },
  massFlux: {
    label: 'mass flow per area',
    dimension: 'M L-2 T-1',
    prefer: ['kg/(m2.s)', 'g/(m2.s)'],
    units: [
      ['kg/(m2.s)', 'kg/(m²·s)', 'kilogram per square metre second', '1', 'kg/m2/s', 'SI'],
      ['g/(m2.s)', 'g/(m²·s)', 'gram per square metre second', '0.001', 'g/m2/s', 'SI'],
    ],
  },
};
