import { quantityOutput } from '@wallflow/calculation';
import { density, differentialPressure, dynamicViscosity, permeability, velocity } from '@wallflow/units';

export const dropOutput = (symbol: string, label: string) =>
  quantityOutput(differentialPressure, { symbol, label, units: ['mbar', 'kPa', 'Pa', 'inH2O_4C', 'psi'] });

/** The parts of a drop that a clean filter has too. */
export const cleanPartOutputs = {
  wallDrop: dropOutput('\\Delta p_w', 'Wall'),
  inletChannelDrop: dropOutput('\\Delta p_{in}', 'Inlet channels'),
  outletChannelDrop: dropOutput('\\Delta p_{out}', 'Outlet channels'),
  contractionDrop: dropOutput('\\Delta p_{c}', 'Contraction at the entrance'),
  expansionDrop: dropOutput('\\Delta p_{e}', 'Expansion at the exit'),
  forchheimerDrop: dropOutput('\\Delta p_{F}', 'Inertia in the wall (Forchheimer)'),
};

export const flowStateOutputs = {
  viscosity: quantityOutput(dynamicViscosity, { symbol: '\\mu', label: 'Viscosity of the gas', units: ['uPa.s', 'Pa.s'] }),
  density: quantityOutput(density, { symbol: '\\rho', label: 'Density of the gas', units: ['kg/m3'] }),
  channelVelocity: quantityOutput(velocity, { symbol: 'U_{in}', label: 'Velocity into an inlet channel', units: ['m/s'] }),
  wallVelocity: quantityOutput(velocity, { symbol: 'u_w', label: 'Mean velocity through the wall', units: ['m/s'] }),
};

/** The soot cake's permeability as it was used. */
export const cakePermeabilityOutput = quantityOutput(permeability, {
  symbol: 'k_s',
  label: 'Permeability of the cake as used',
  units: ['m2', 'um2'],
});

export const cakePermeabilityStep = {
  gives: 'cakePermeability',
  text: 'Permeability of the cake, corrected for gas slip if the size of the primary particles is given: [[cakePermeability]].',
  source: 'konstandopoulos2000',
  locator: 'App. II, Eqs A17 to A20',
} as const;

/** The working starts with the gas, in every drop calculation alike. */
export const viscosityStep = {
  gives: 'viscosity',
  text: 'Viscosity as given, or that of air at [[gasTemperature]]: [[viscosity]].',
  source: 'cfr1065',
  locator: '1065.640 Table 4',
} as const;

export const densityStep = {
  gives: 'density',
  text: 'Density as given, or that of air at [[gasTemperature]] and [[gasPressure]]: [[density]].',
  source: 'siBrochure',
} as const;
