const energyUnits = [
  ['J', 'J', 'joule', '1', 'joule joules W.s Ws', 'SI'],
  ['kJ', 'kJ', 'kilojoule', '1000', 'kilojoule', 'SI'],
  ['MJ', 'MJ', 'megajoule', '1000000', 'megajoule', 'SI'],
  ['Wh', 'Wh', 'watt hour', '3600', 'W.h', 'SI'],
  ['kWh', 'kWh', 'kilowatt hour', '3600000', 'kW.h', 'SI'],
  ['hp.h', 'hp·h', 'mechanical horsepower hour', '2684519.537696172792', 'hph hphr hp.hr bhp.h bhph', 'SP811'],
  ['cal_th', 'cal (th)', 'thermochemical calorie', '4.184', 'calth cal(th)', 'SP811'],
  ['cal_IT', 'cal (IT)', 'international table calorie', '4.1868', 'calIT cal(IT)', 'IT'],
  ['kcal_IT', 'kcal (IT)', 'international table kilocalorie', '4186.8', 'kcalIT kcal(IT)', 'IT'],
  ['Btu_IT', 'Btu (IT)', 'international table British thermal unit', '1055.05585262', 'BtuIT Btu(IT)', 'IT'],
  ['Btu_th', 'Btu (th)', 'thermochemical British thermal unit', '4184*0.45359237*5/9', 'Btuth Btu(th)', 'SP811'],
];
const ambiguousEnergy = {
  cal: ['cal_th', 'cal_IT'],
  Btu: ['Btu_IT', 'Btu_th'],
  BTU: ['Btu_IT', 'Btu_th'],
};

export const kinds = {
  power: {
    label: 'power',
    dimension: 'M L2 T-3',
    prefer: ['kW', 'W', 'hp_mechanical', 'hp_metric', 'MW'],
    ambiguous: { hp: ['hp_mechanical', 'hp_metric'], HP: ['hp_mechanical', 'hp_metric'] },
    units: [
      ['W', 'W', 'watt', '1', 'watt watts J/s', 'SI'],
      ['kW', 'kW', 'kilowatt', '1000', 'kilowatt', 'SI'],
      ['MW', 'MW', 'megawatt', '1000000', '', 'SI'],
      ['hp_mechanical', 'hp', 'mechanical horsepower, 550 ft·lbf/s', '745.69987158227022', 'bhp hp(mech) hp_UK hp_US', 'SP811'],
      ['hp_metric', 'PS', 'metric horsepower', '735.49875', 'PS cv ch hp(metric) pk', 'GN'],
      ['Btu_IT/h', 'Btu (IT)/h', 'British thermal unit per hour', '1055.05585262/3600', 'BtuIT/h', 'IT'],
    ],
  },
  energy: {
    label: 'energy',
    dimension: 'M L2 T-2',
    prefer: ['kJ', 'MJ', 'J', 'kWh', 'Btu_IT'],
    ambiguous: ambiguousEnergy,
    units: energyUnits,
  },
  specificEnergy: {
    label: 'specific energy',
    dimension: 'L2 T-2',
    prefer: ['MJ/kg', 'kJ/kg', 'J/kg', 'Btu_IT/lb'],
    units: [
      ['J/kg', 'J/kg', 'joule per kilogram', '1', '', 'SI'],
      ['J/g', 'J/g', 'joule per gram', '1000', '', 'SI'],
      ['kJ/kg', 'kJ/kg', 'kilojoule per kilogram', '1000', '', 'SI'],
      ['MJ/kg', 'MJ/kg', 'megajoule per kilogram', '1000000', 'kJ/g', 'SI'],
      ['kWh/kg', 'kWh/kg', 'kilowatt hour per kilogram', '3600000', '', 'SI'],
      ['Btu_IT/lb', 'Btu (IT)/lb', 'British thermal unit per pound', '2326', 'Btu/lb', 'IT'],
    ],
  },
  molarEnergy: {
    label: 'molar energy',
    dimension: 'M L2 T-2 N-1',
    prefer: ['kJ/mol', 'J/mol'],
    units: [
      ['J/mol', 'J/mol', 'joule per mole', '1', '', 'SI'],
      ['kJ/mol', 'kJ/mol', 'kilojoule per mole', '1000', '', 'SI'],
      ['kcal_th/mol', 'kcal (th)/mol', 'thermochemical kilocalorie per mole', '4184', 'kcal/mol', 'SP811'],
    ],
  },
  specificHeatCapacity: {
    label: 'specific heat capacity',
    dimension: 'L2 T-2 K-1',
    prefer: ['J/(kg.K)', 'kJ/(kg.K)'],
    units: [
      ['J/(kg.K)', 'J/(kg·K)', 'joule per kilogram kelvin', '1', 'J/kgK J/kg/K J/(kgK) J/kg.K', 'SI'],
      ['kJ/(kg.K)', 'kJ/(kg·K)', 'kilojoule per kilogram kelvin', '1000', 'kJ/kgK kJ/kg/K kJ/(kgK) J/(g.K) J/gK', 'SI'],
      ['Btu_IT/(lb.degF)', 'Btu (IT)/(lb·°F)', 'British thermal unit per pound degree Fahrenheit', '4186.8', 'Btu/lbF', 'IT'],
    ],
  },
  molarHeatCapacity: {
    label: 'molar heat capacity',
    dimension: 'M L2 T-2 K-1 N-1',
    prefer: ['J/(mol.K)', 'kJ/(mol.K)'],
    units: [
      ['J/(mol.K)', 'J/(mol·K)', 'joule per mole kelvin', '1', 'J/molK J/mol/K J/(molK)', 'SI'],
      ['kJ/(mol.K)', 'kJ/(mol·K)', 'kilojoule per mole kelvin', '1000', 'kJ/molK', 'SI'],
    ],
  },
  volumetricHeatCapacity: {
    label: 'volumetric heat capacity',
    dimension: 'M L-1 T-2 K-1',
    prefer: ['kJ/(L.K)', 'J/(m3.K)'],
    units: [
      ['J/(m3.K)', 'J/(m³·K)', 'joule per cubic metre kelvin', '1', 'J/m3K', 'SI'],
      ['kJ/(m3.K)', 'kJ/(m³·K)', 'kilojoule per cubic metre kelvin', '1000', 'J/(L.K) J/LK kJ/m3K', 'SI'],
      ['kJ/(L.K)', 'kJ/(L·K)', 'kilojoule per litre kelvin', '1000000', 'kJ/LK', 'SI'],
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
      ['W/(m.K)', 'W/(m·K)', 'watt per metre kelvin', '1', 'W/mK W/m/K W/(mK)', 'SI'],
      ['mW/(m.K)', 'mW/(m·K)', 'milliwatt per metre kelvin', '0.001', 'mW/mK', 'SI'],
    ],
  },
  heatTransferCoefficient: {
    label: 'heat transfer coefficient',
    dimension: 'M T-3 K-1',
    prefer: ['W/(m2.K)'],
    units: [['W/(m2.K)', 'W/(m²·K)', 'watt per square metre kelvin', '1', 'W/m2K W/(m2K)', 'SI']],
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
  temperature: {
    label: 'temperature',
    dimension: 'K',
    floor: true,
    prefer: ['degC', 'K', 'degF'],
    units: [
      ['K', 'K', 'kelvin', '1', 'kelvin', 'SI'],
      ['degC', '°C', 'degree Celsius', '1', 'C ºC celsius degreeC', 'SI', '273.15'],
      ['degF', '°F', 'degree Fahrenheit', '5/9', 'F ºF fahrenheit', 'SP811', '459.67'],
      ['degR', '°R', 'degree Rankine', '5/9', 'R rankine', 'SP811'],
    ],
  },
  temperatureDifference: {
    label: 'temperature difference',
    dimension: 'K',
    prefer: ['K', 'degC', 'degF'],
    units: [
      ['K', 'K', 'kelvin', '1', 'kelvin', 'SI'],
      ['degC', '°C', 'degree Celsius (difference)', '1', 'C ºC', 'SI'],
      ['degF', '°F', 'degree Fahrenheit (difference)', '5/9', 'F ºF', 'SP811'],
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
    ],
  },
  voltage: {
    label: 'voltage',
    dimension: 'M L2 T-3 I-1',
    prefer: ['V', 'mV'],
    units: [
      ['V', 'V', 'volt', '1', 'volt volts', 'SI'],
      ['mV', 'mV', 'millivolt', '0.001', '', 'SI'],
    ],
  },
  electricCurrent: {
    label: 'electric current',
    dimension: 'I',
    prefer: ['A', 'mA'],
    units: [
      ['A', 'A', 'ampere', '1', 'amp amps ampere', 'SI'],
      ['mA', 'mA', 'milliampere', '0.001', '', 'SI'],
    ],
  },
};
