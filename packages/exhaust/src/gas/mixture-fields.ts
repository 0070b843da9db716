import { choice, quantity, relevantWhen } from '@wallflow/calculation';
import { massRatio, ratio } from '@wallflow/units';

/** The fuel as CHαOβ. */
export const fuelFields = {
  hydrogenToCarbon: quantity(ratio, {
    symbol: '\\alpha',
    label: 'Hydrogen to carbon of the fuel',
    description: 'Atoms of hydrogen per atom of carbon.',
    range: '0 <= x <= 4',
    usual: ['1.7', '2.2', 'diesel, biodiesel and paraffinic diesel lie in this range'],
    default: ['1.8', 'diesel no. 2, 40 CFR 1065.655 Table 2 (from memory); its carbon share 0.869 was read'],
  }),
  oxygenToCarbon: quantity(ratio, {
    symbol: '\\beta',
    label: 'Oxygen to carbon of the fuel',
    description: 'Atoms of oxygen per atom of carbon; about 0.11 for pure biodiesel.',
    range: '0 <= x <= 1.5',
    usual: ['0', '0.15', 'diesel fuels hold little oxygen'],
    default: ['0', 'diesel without biodiesel'],
  }),
};

export const lambdaField = quantity(ratio, {
  symbol: '\\lambda',
  label: 'Lambda',
  description: 'Air over the air that the fuel needs.',
  range: '1 <= x <= 1000',
  usual: ['1.05', '20', 'a diesel under load or at idle runs in this range'],
  example: '2',
});

export const humidityField = quantity(massRatio, {
  symbol: 'H',
  label: 'Humidity of the intake air',
  description: 'Grams of water per kilogram of dry air.',
  range: '0 <= x <= 100 g/kg',
  usual: ['0 g/kg', '30 g/kg', 'outdoor air seldom holds more'],
  default: ['10.71 g/kg', 'the reference humidity of the emission test regulations, about 60 % at 24 °C'],
  units: ['g/kg'],
});

/** Which gas a mixture property is wanted of. */
export const mixtureFields = {
  gas: choice({ label: 'Gas', options: { exhaust: 'diesel exhaust', air: 'moist air' }, default: ['exhaust', 'the gas in the filter'] }),
  ...relevantWhen('gas', 'exhaust', { lambda: lambdaField, ...fuelFields }),
  humidity: humidityField,
};
