import { quantityOutput } from '@wallflow/calculation';
import { density, differentialPressure, dynamicViscosity, permeability, ratio, velocity } from '@wallflow/units';

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
  machNumber: quantityOutput(ratio, { symbol: 'Ma', label: 'Largest channel velocity over the speed of sound', digits: 2 }),
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

/** The largest velocity in the channels against sound, in every drop calculation alike. */
export const machStep = {
  gives: 'machNumber',
  text: 'The faster of inlet and outlet channels over the speed of sound at [[gasTemperature]]: [[machNumber]].',
  source: 'soundOfIdealGas',
} as const;

/** What every calculation with one volume flow takes it to be, and where to get it. */
export const middleFlow = {
  code: 'flow_in_the_middle',
  text: 'The volume flow belongs to the pressure in the middle of the filter. With it the sum of the parts also holds for a gas that expands on its way; a flow behind the filter makes the drop too high, by half the drop over the absolute pressure. The volume flow calculation gives the right one from a mass flow, the back-pressure and the drop.',
} as const;

/** How fast the gas may be, in every drop calculation alike. */
export const slowChannels = {
  code: 'mach',
  text: 'Holds up to 0.3 of the speed of sound in the channels, where gas brought to rest is 4.5 % denser. More gets a warning; the speed of sound itself is refused.',
} as const;

export const densityStep = {
  gives: 'density',
  text: 'Density as given, or that of air at [[gasTemperature]] and [[gasPressure]]: [[density]].',
  source: 'siBrochure',
} as const;
