import { choiceWithDefault, quantity, quantityWithDefault, type UsualReason } from '@wallflow/calculation';
import { absolutePressure, massRatio, ratio, temperature } from '@wallflow/units';

/** The fuel as CHαOβ. */
export const fuelFields = {
  hydrogenToCarbon: quantityWithDefault(ratio, {
    symbol: '\\alpha',
    label: 'Hydrogen to carbon of the fuel',
    description: 'Atoms of hydrogen per atom of carbon.',
    min: '0',
    max: '4',
    usual: ['1.7', '2.2'],
    usualReason: 'diesel, biodiesel and paraffinic diesel lie in this range',
    example: '1.8',
    default: '1.8',
    defaultReason: 'diesel no. 2, 40 CFR 1065.655 Table 2 (from memory); its carbon share 0.869 was read',
  }),
  oxygenToCarbon: quantityWithDefault(ratio, {
    symbol: '\\beta',
    label: 'Oxygen to carbon of the fuel',
    description: 'Atoms of oxygen per atom of carbon; about 0.11 for pure biodiesel.',
    min: '0',
    max: '1.5',
    usual: ['0', '0.15'],
    usualReason: 'diesel fuels hold little oxygen',
    example: '0',
    default: '0',
    defaultReason: 'diesel without biodiesel',
  }),
};

export const lambdaField = quantity(ratio, {
  symbol: '\\lambda',
  label: 'Lambda',
  description: 'Air over the air that the fuel needs.',
  min: '1',
  max: '1000',
  usual: ['1.05', '20'],
  usualReason: 'a diesel under load or at idle runs in this range',
  example: '2',
});

export const humidityField = quantityWithDefault(massRatio, {
  symbol: 'H',
  label: 'Humidity of the intake air',
  description: 'Grams of water per kilogram of dry air.',
  min: '0 g/kg',
  max: '100 g/kg',
  usual: ['0 g/kg', '30 g/kg'],
  usualReason: 'outdoor air seldom holds more',
  example: '10.71 g/kg',
  default: '10.71 g/kg',
  defaultReason: 'the reference humidity of the emission test regulations, about 60 % at 24 °C',
  units: ['g/kg'],
});

/** Which gas a mixture property is wanted of. */
export const mixtureFields = {
  gas: choiceWithDefault({
    label: 'Gas',
    options: { exhaust: 'diesel exhaust', air: 'moist air' },
    example: 'exhaust',
    default: 'exhaust',
    defaultReason: 'the gas in the filter',
  }),
  lambda: lambdaField.optional(),
  ...fuelFields,
  humidity: humidityField,
};

export const gasTemperatureField = (limits: { min: string; max: string; usual: readonly [string, string]; usualReason: UsualReason }) =>
  quantity(temperature, { symbol: 'T', label: 'Gas temperature', example: '250 °C', ...limits });

export const pressureField = quantity(absolutePressure, {
  symbol: 'p',
  label: 'Absolute pressure of the gas',
  description: 'Ambient pressure plus what the gauge shows.',
  above: '1 kPa',
  max: '1000 kPa',
  usual: ['60 kPa', '300 kPa'],
  usualReason: 'outside this range an exhaust pressure is probably a gauge pressure or in another unit',
  example: '101.3 kPa',
  units: ['kPa', 'mbar', 'bar', 'Pa', 'psi'],
});
