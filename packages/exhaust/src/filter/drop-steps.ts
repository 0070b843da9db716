import { cases, formula, nested } from '@wallflow/calculation';
import { soundOfIdealGas } from '../flow/sources.js';
import { konstandopoulos2000, konstandopoulos2008 } from '../sources.js';
import { filterGeometryCalculation } from './filter-geometry/definition.js';
import { gasDensity, gasViscosity } from './gas-steps.js';
import { geometryInputs } from './inputs.js';
import { slipCorrectionCalculation } from './slip-correction/definition.js';
import { wang2021 } from './sources.js';

// The working of a pressure drop, each step written once. Formulas that a clean filter shares with a loaded one take the names of
// the open width and of the length that filters.

/** Inputs that another calculation takes as they are here. */
export const asGiven = (keys: readonly string[]) => Object.fromEntries(keys.map((key) => [key, key]));

/** Channels of the filter, from its geometry. */
export const channelSteps = (['inletWidth', 'outletWidth', 'inletCells', 'outletCells', 'openLength', 'filtrationArea'] as const).map(
  (key) => nested(key, filterGeometryCalculation, asGiven(Object.keys(geometryInputs))),
);

/** The working starts with channels and gas, in every drop calculation alike. */
export const startSteps = [...channelSteps, gasViscosity.step, gasDensity.step] as const;

/** The cake's permeability as it is in this gas. */
export const cakePermeabilityOf = (known: string) =>
  cases('cakePermeability', {
    'known(sootPrimaryDiameter)': nested(
      'cakePermeability',
      slipCorrectionCalculation,
      {
        gasTemperature: 'gasTemperature',
        gasPressure: 'gasPressure',
        gasViscosity: 'viscosity',
        grainDiameter: 'sootPrimaryDiameter',
        knownPermeability: known,
        knownTemperature: 'sootPermeabilityTemperature',
      },
      'permeability',
    ),
    otherwise: known,
  });
export const cakePermeabilityStep = cakePermeabilityOf('sootPermeability');

/** Ash plug and ash layer, each even along the channel. */
export const ashSteps = [
  formula('ashPlugLength', 'ashPlugShare * ashMass / (ashPackingDensity * inletCells * inletWidth ^ 2)'),
  formula('cakeLength', 'openLength - ashPlugLength'),
  formula('layerArea', 'filtrationArea * cakeLength / openLength'),
  formula(
    'ashFill',
    '(1 - ashPlugShare) * ashMass / (ashPackingDensity * inletCells * cakeLength * inletWidth ^ 2)',
    wang2021,
    'Eqs 9 and 10',
  ),
  formula('widthOnAsh', 'inletWidth * sqrt(1 - ashFill)', konstandopoulos2000, 'Eqs A9 and A10'),
  cases('ashThickness', {
    "layout == 'alternate'": 'inletWidth * ashFill / (2 * (1 + sqrt(1 - ashFill)))',
    otherwise: '3 / 4 * inletWidth * ashFill',
  }),
] as const;

/** The soot cake on it; `soot` is the soot that lies in the cake. */
export const cakeSteps = (soot: string, packing = 'sootPackingDensity') =>
  [
    formula('sootFill', `${soot} / (${packing} * inletCells * cakeLength * widthOnAsh ^ 2)`, konstandopoulos2000, 'Eq. A9'),
    formula('openWidth', 'widthOnAsh * sqrt(1 - sootFill)', konstandopoulos2000, 'Eqs A9 and A10'),
    cases('sootThickness', {
      "layout == 'alternate'": 'widthOnAsh * sootFill / (2 * (1 + sqrt(1 - sootFill)))',
      otherwise: '3 / 4 * widthOnAsh ^ 2 * sootFill / inletWidth',
    }),
  ] as const;

interface Names {
  /** Width left open, and area that filters. */
  readonly width?: string;
  readonly area?: string;
  /** Volume flow after the filter, or throughout where the gas does not expand. */
  readonly flow?: string;
}

/** Velocities in the channels and through the wall. */
export const velocitySteps = ({ width = 'openWidth', area = 'layerArea', flow = 'exhaustVolumeFlow' }: Names = {}) =>
  [
    formula('channelVelocity', `exhaustVolumeFlow / (inletCells * ${width} ^ 2)`, konstandopoulos2000, 'Eq. A2'),
    ...passingSteps({ area, flow }),
  ] as const;

/** Velocities out of the outlet channels and through the wall. */
export const passingSteps = ({ area = 'layerArea', flow = 'exhaustVolumeFlow' }: Names = {}) =>
  [
    formula('outletVelocity', `${flow} / (outletCells * outletWidth ^ 2)`, konstandopoulos2000, 'Eq. A2'),
    formula('wallVelocity', `${flow} / (${area} * min(1, outletWidth / inletWidth))`, konstandopoulos2000, 'Eq. A1'),
  ] as const;

/** The faster of the two channels next to sound. */
export const machSteps = [
  formula('soundSpeed', 'sqrt(heatCapacityRatio * gasConstant * gasTemperature / airMolarMass)', soundOfIdealGas),
  formula('machNumber', 'max(channelVelocity, outletVelocity) / soundSpeed'),
] as const;

export const contractionStep = <const End extends string>(end: End, flow = 'exhaustVolumeFlow') =>
  formula(
    `contraction${end}`,
    `entranceExitCoefficient / 3 * density / 2 * (${flow} / (inletCells * inletWidth ^ 2)) ^ 2`,
    konstandopoulos2008,
    'Eq. 7 and App. A.9',
    'The entrance has a third of the loss coefficient, on the empty channels.',
  );

export const expansionStep = <const End extends string>(end: End) =>
  formula(
    `expansion${end}`,
    'entranceExitCoefficient / 3 * density * outletVelocity ^ 2',
    konstandopoulos2008,
    'Eq. 7 and App. A.3',
    'The exit has the other two thirds.',
  );

interface PartNames extends Names {
  readonly length?: string;
  readonly plug?: string;
}

/** Everything but the wall: channels, ends and inertia. What they are called ends with `Drop` unless another end is given. */
export const otherPartSteps = <const End extends string>(
  end: End,
  { width = 'openWidth', length = 'cakeLength', plug = 'ashPlugLength', flow = 'exhaustVolumeFlow' }: PartNames = {},
) =>
  [
    formula(
      `inletChannel${end}`,
      `channelFriction * viscosity * ${flow} * ${length} / (3 * inletCells * ${width} ^ 4)`,
      konstandopoulos2000,
      'Eqs A4 and A15',
      'Evenly lost flow makes a third of the friction that the whole flow would have.',
    ),
    formula(
      `outletChannel${end}`,
      `channelFriction * viscosity * ${flow} * ${plug === '' ? `${length} / 3` : `(${length} / 3 + ${plug})`} / (outletCells * outletWidth ^ 4)`,
      konstandopoulos2000,
      'Eqs A4 and A5',
      plug === '' ? undefined : 'Beside the ash plug the whole flow passes.',
    ),
    contractionStep(end, flow),
    expansionStep(end),
    formula(`forchheimer${end}`, 'forchheimerCoefficient * density * wallVelocity ^ 2 * wallThickness', konstandopoulos2008, 'Eq. 8'),
  ] as const;

export const wallStep = <const End extends string>(end: End, permeability = 'wallPermeability') =>
  formula(`wall${end}`, `viscosity * wallVelocity * wallThickness / ${permeability}`, konstandopoulos2000, 'Eq. A1');

/** Soot cake and ash layer, with the logarithm of the narrowing channel or as flat layers. */
export const layerSteps = <const End extends string>(end: End, flow = 'exhaustVolumeFlow') =>
  [
    cases(
      `soot${end}`,
      {
        "layout == 'alternate'": `ln(1 / (1 - sootFill)) * viscosity * ${flow} * inletWidth / (4 * cakePermeability * layerArea)`,
        otherwise: `3 / 4 * sootFill * widthOnAsh ^ 2 * viscosity * ${flow} / (inletWidth * cakePermeability * layerArea)`,
      },
      konstandopoulos2000,
      'Eqs 1 and A12',
    ),
    cases(
      `ash${end}`,
      {
        "layout == 'alternate'": `ln(1 / (1 - ashFill)) * viscosity * ${flow} * inletWidth / (4 * ashPermeability * layerArea)`,
        otherwise: `3 / 4 * ashFill * inletWidth * viscosity * ${flow} / (ashPermeability * layerArea)`,
      },
      wang2021,
      'Eqs 49 and 50',
    ),
  ] as const;

export const cleanSum = 'wallDrop + inletChannelDrop + outletChannelDrop + contractionDrop + expansionDrop + forchheimerDrop';
export const loadedSum = `${cleanSum} + sootDrop + ashDrop`;
/** A mass of soot per volume of the whole body. */
export const bodyLoad = <const Key extends string>(gives: Key, soot: string) =>
  cases(gives, {
    'known(filterVolume)': `${soot} / filterVolume`,
    otherwise: `${soot} / (pi / 4 * filterDiameter ^ 2 * filterLength)`,
  });
export const flowResistanceStep = formula('flowResistance', 'pressureDrop / (viscosity * exhaustVolumeFlow)');
