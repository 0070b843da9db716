export const kinds = {
  temperature: {
    label: 'temperature',
    note: 'A point on a scale; differences are `temperatureDifference`.',
    dimension: 'K',
    floor: true,
    prefer: ['degC', 'K', 'degF'],
    units: [
      ['K', 'K', 'kelvin', '1', 'kelvins', 'SI'],
      ['degC', '°C', 'degree Celsius', '1', 'C celsius degreeC degreesC', 'SI', '273.15'],
      ['degF', '°F', 'degree Fahrenheit', '5/9', 'F fahrenheit degreeF degreesF', 'SP811', '459.67'],
      ['degR', '°R', 'degree Rankine', '5/9', 'R rankine', 'SP811'],
    ],
  },
  temperatureDifference: {
    label: 'temperature difference',
    note: 'Scaled but never shifted: 5 °C is 5 K.',
    dimension: 'K',
    prefer: ['K', 'degC', 'degF'],
    units: [
      ['K', 'K', 'kelvin', '1', 'kelvins', 'SI'],
      ['degC', '°C', 'degree Celsius (difference)', '1', 'C celsius', 'SI'],
      ['degF', '°F', 'degree Fahrenheit (difference)', '5/9', 'F fahrenheit R degR', 'SP811'],
    ],
  },
  temperatureRate: {
    label: 'rate of temperature change',
    dimension: 'K T-1',
    prefer: ['K/s', 'K/min', 'K/h'],
    units: [
      ['K/s', 'K/s', 'kelvin per second', '1', 'degC/s C/s', 'SI'],
      ['K/min', 'K/min', 'kelvin per minute', '1/60', 'degC/min C/min', 'SI'],
      ['K/h', 'K/h', 'kelvin per hour', '1/3600', 'degC/h C/h', 'SI'],
      ['degF/s', '°F/s', 'degree Fahrenheit per second', '5/9', 'F/s', 'SP811'],
      ['degF/min', '°F/min', 'degree Fahrenheit per minute', '5/9/60', 'F/min', 'SP811'],
    ],
  },
  specificHeatCapacity: {
    label: 'specific heat capacity',
    dimension: 'L2 T-2 K-1',
    prefer: ['J/(kg.K)', 'kJ/(kg.K)'],
    ambiguous: { 'Btu/lbF Btu/lb/F Btu/lbdegF': ['Btu_IT/(lb.degF)', 'Btu_th/(lb.degF)'] },
    units: [
      ['J/(kg.K)', 'J/(kg·K)', 'joule per kilogram kelvin', '1', 'J/kg/K', 'SI'],
      ['kJ/(kg.K)', 'kJ/(kg·K)', 'kilojoule per kilogram kelvin', '1000', 'kJ/kg/K J/(g.K) J/g/K', 'SI'],
      ['Btu_IT/(lb.degF)', 'Btu (IT)/(lb·°F)', 'international table British thermal unit per pound degree Fahrenheit', '4186.8', '', 'IT'],
      ['Btu_th/(lb.degF)', 'Btu (th)/(lb·°F)', 'thermochemical British thermal unit per pound degree Fahrenheit', '4184', '', 'SP811'],
    ],
  },
  molarHeatCapacity: {
    label: 'molar heat capacity',
    dimension: 'M L2 T-2 K-1 N-1',
    prefer: ['J/(mol.K)', 'kJ/(mol.K)'],
    units: [
      ['J/(mol.K)', 'J/(mol·K)', 'joule per mole kelvin', '1', 'J/mol/K kJ/(kmol.K)', 'SI'],
      ['kJ/(mol.K)', 'kJ/(mol·K)', 'kilojoule per mole kelvin', '1000', 'kJ/mol/K', 'SI'],
    ],
  },
  volumetricHeatCapacity: {
    label: 'volumetric heat capacity',
    dimension: 'M L-1 T-2 K-1',
    prefer: ['kJ/(L.K)', 'J/(m3.K)'],
    units: [
      ['J/(m3.K)', 'J/(m³·K)', 'joule per cubic metre kelvin', '1', 'J/m3/K', 'SI'],
      ['kJ/(m3.K)', 'kJ/(m³·K)', 'kilojoule per cubic metre kelvin', '1000', 'J/(L.K) J/L/K kJ/m3/K', 'SI'],
      ['kJ/(L.K)', 'kJ/(L·K)', 'kilojoule per litre kelvin', '1000000', 'kJ/L/K', 'SI'],
    ],
  },
  heatCapacity: {
    label: 'heat capacity',
    dimension: 'M L2 T-2 K-1',
    prefer: ['kJ/K', 'J/K'],
    units: [
      ['J/K', 'J/K', 'joule per kelvin', '1', '', 'SI'],
      ['kJ/K', 'kJ/K', 'kilojoule per kelvin', '1000', '', 'SI'],
    ],
  },
  thermalConductivity: {
    label: 'thermal conductivity',
    dimension: 'M L T-3 K-1',
    prefer: ['mW/(m.K)', 'W/(m.K)'],
    units: [
      ['W/(m.K)', 'W/(m·K)', 'watt per metre kelvin', '1', 'W/m/K', 'SI'],
      ['mW/(m.K)', 'mW/(m·K)', 'milliwatt per metre kelvin', '0.001', 'mW/m/K', 'SI'],
    ],
  },
  heatTransferCoefficient: {
    label: 'heat transfer coefficient',
    dimension: 'M T-3 K-1',
    prefer: ['W/(m2.K)'],
    units: [
      ['W/(m2.K)', 'W/(m²·K)', 'watt per square metre kelvin', '1', 'W/m2/K', 'SI'],
      ['kW/(m2.K)', 'kW/(m²·K)', 'kilowatt per square metre kelvin', '1000', 'kW/m2/K', 'SI'],
    ],
  },
  heatFlux: {
    label: 'heat flux',
    dimension: 'M T-3',
    prefer: ['kW/m2', 'W/m2'],
    units: [
      ['W/m2', 'W/m²', 'watt per square metre', '1', '', 'SI'],
      ['kW/m2', 'kW/m²', 'kilowatt per square metre', '1000', '', 'SI'],
    ],
  },
  temperatureCoefficient: {
    label: 'change per temperature',
    dimension: 'K-1',
    prefer: ['1/K', '%/K'],
    units: [
      ['1/K', '1/K', 'per kelvin', '1', 'K-1 1/degC 1/C', 'SI'],
      ['%/K', '%/K', 'per cent per kelvin', '0.01', '%/degC %/C', 'RATIO'],
    ],
  },
};
