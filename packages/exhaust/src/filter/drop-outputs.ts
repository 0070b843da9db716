import { quantityOutput } from '@wallflow/calculation';
import {
  area,
  differentialPressure,
  flowResistance as flowResistanceKind,
  fraction,
  length,
  permeability,
  ratio,
  velocity,
} from '@wallflow/units';
import { filterGeometryCalculation } from './filter-geometry/definition.js';
import { gasDensity, gasViscosity } from './gas-steps.js';

export const dropOutput = (symbol: string, label: string) =>
  quantityOutput(differentialPressure, { symbol, label, units: ['mbar', 'kPa', 'Pa', 'inH2O_4C', 'psi'] });

const speed = (symbol: string, label: string) => quantityOutput(velocity, { symbol, label, units: ['m/s'] });
const thickness = (symbol: string, label: string) => quantityOutput(length, { symbol, label, units: ['um', 'mm', 'mil'] });
const filled = (symbol: string, label: string) => quantityOutput(fraction, { symbol, label, units: ['%', '1'] });

/** The parts of a drop that a clean filter has too. */
export const cleanPartOutputs = {
  wallDrop: dropOutput('\\Delta p_w', 'Wall'),
  inletChannelDrop: dropOutput('\\Delta p_{in}', 'Inlet channels'),
  outletChannelDrop: dropOutput('\\Delta p_{out}', 'Outlet channels'),
  contractionDrop: dropOutput('\\Delta p_{c}', 'Contraction at the entrance'),
  expansionDrop: dropOutput('\\Delta p_{e}', 'Expansion at the exit'),
  forchheimerDrop: dropOutput('\\Delta p_{F}', 'Inertia in the wall (Forchheimer)'),
};

export const loadedPartOutputs = {
  ...cleanPartOutputs,
  sootDrop: dropOutput('\\Delta p_s', 'Soot cake'),
  ashDrop: dropOutput('\\Delta p_a', 'Ash layer'),
};

const { inletWidth, outletWidth, filtrationArea } = filterGeometryCalculation.spec.outputs;
const { openLength, inletCells, outletCells } = filterGeometryCalculation.spec.intermediates;

/** Channels, gas and velocities, which every drop calculation starts from. */
export const flowStateOutputs = {
  inletWidth,
  outletWidth,
  inletCells,
  outletCells,
  openLength,
  filtrationArea,
  ...gasViscosity.outputs,
  ...gasDensity.outputs,
  channelVelocity: speed('U_{in}', 'Velocity into an inlet channel'),
  outletVelocity: speed('U_{out}', 'Velocity out of an outlet channel'),
  wallVelocity: speed('u_w', 'Mean velocity through the wall'),
  soundSpeed: speed('a', 'Speed of sound'),
  machNumber: quantityOutput(ratio, { symbol: 'Ma', label: 'Largest channel velocity over the speed of sound', digits: 2 }),
};

/** What soot and ash leave of the inlet channels, and the cake's permeability as it was used. */
export const depositOutputs = {
  cakePermeability: quantityOutput(permeability, { symbol: "k_s'", label: 'Permeability of the cake as used', units: ['m2', 'um2'] }),
  ashPlugLength: quantityOutput(length, { symbol: 'L_a', label: 'Length of the ash plug', units: ['mm', 'in'] }),
  cakeLength: quantityOutput(length, { symbol: "L'", label: 'Length that the ash plug leaves', digits: 5, units: ['mm', 'in'] }),
  layerArea: quantityOutput(area, { symbol: "A_w'", label: 'Filtration area that the ash plug leaves', units: ['m2', 'ft2'] }),
  ashFill: filled('f_a', 'Part of the channel that the ash layer fills'),
  widthOnAsh: quantityOutput(length, {
    symbol: '\\alpha_a',
    label: 'Width that the ash layer leaves open',
    digits: 5,
    units: ['mm', 'um'],
  }),
  ashThickness: thickness('w_a', 'Thickness of the ash layer'),
  sootFill: filled('f_s', 'Part of what the ash leaves that the soot cake fills'),
  openWidth: quantityOutput(length, { symbol: '\\alpha_1', label: 'Width left open in the inlet channels', units: ['mm', 'um'] }),
  sootThickness: thickness('w', 'Thickness of the soot cake'),
};

export const flowResistanceOutput = quantityOutput(flowResistanceKind, { symbol: 'R', label: 'Flow resistance', units: ['1/mm3', '1/m3'] });
