import { choice, oneOf, optional, quantity, whenGiven } from '@wallflow/calculation';
import {
  absolutePressure,
  cellDensity,
  density,
  differentialPressure,
  dynamicViscosity,
  fraction,
  inertialCoefficient,
  length,
  mass,
  permeability,
  ratio,
  temperature,
  volume,
  volumeFlow,
} from '@wallflow/units';

/** Inputs that more than one filter calculation asks for, so that they mean and say the same everywhere. */
export const geometryInputs = {
  cellDensity: quantity(cellDensity, {
    symbol: '\\sigma',
    label: 'Cell density',
    description: 'Cells per face area, inlet and outlet cells together, as the data sheet gives it.',
    range: '20 <= x <= 1000 cpsi',
    usual: ['90 cpsi', '400 cpsi', 'wall-flow filters are made in this range'],
    example: '200 cpsi',
  }),
  wallThickness: quantity(length, {
    symbol: 'w_s',
    label: 'Wall thickness',
    range: '1 <= x <= 40 mil',
    usual: ['5 mil', '20 mil', 'wall-flow filters are made in this range'],
    example: '12 mil',
    units: ['mm', 'mil', 'in', 'um'],
  }),
  ...oneOf(
    {
      filterDiameter: quantity(length, {
        symbol: 'D',
        label: 'Filter diameter',
        description: 'Of a round filter.',
        range: '30 <= D <= 1000 mm',
        usual: ['80 mm', '400 mm', 'vehicle filters are made in this range'],
        example: '190.5 mm',
        units: ['mm', 'in', 'cm'],
      }),
      filterVolume: quantity(volume, {
        symbol: 'V',
        label: 'Filter volume',
        description: 'Of the whole body, plugs included. For an oval filter enter the volume, not a diameter.',
        range: '0.1 <= V <= 200 L',
        usual: ['0.5 L', '60 L', 'vehicle filters are made in this range'],
        example: '5.79 L',
        units: ['L', 'in3', 'cm3'],
      }),
    },
    { both: 'allowed' },
  ),
  filterLength: quantity(length, {
    symbol: 'L_f',
    label: 'Filter length',
    description: 'Of the whole body, plugs included.',
    range: '30 <= x <= 1000 mm',
    usual: ['80 mm', '400 mm', 'vehicle filters are made in this range'],
    example: '203.2 mm',
    units: ['mm', 'in', 'cm'],
  }),
  plugLength: quantity(length, {
    symbol: 'L_p',
    label: 'Length of one plug',
    description: 'Every channel is closed at one end; the plug there filters nothing.',
    range: '0 <= x <= 50 mm',
    usual: ['0 mm', '15 mm', 'longer plugs are unusual; ash plugs are a separate input'],
    example: '8 mm',
    units: ['mm', 'in'],
    default: ['0 mm', 'the whole length is taken to filter, which makes the area a few per cent too large'],
  }),
  layout: choice({
    label: 'Plug pattern',
    options: { alternate: 'every second cell plugged', 'three-to-one': 'three inlet cells for each outlet cell' },
    default: ['alternate', 'the usual pattern'],
  }),
  inletWidthRatio: quantity(ratio, {
    symbol: 'r_\\alpha',
    label: 'Inlet cell width over outlet cell width',
    description: '1 for equal cells; more than 1 where wider inlet cells leave room for ash.',
    range: '0.5 <= x <= 3',
    usual: [
      '1',
      '1.25',
      'square cells of common filters meet at their corners from about 1.3 on; cells with cut corners are narrower than this form says',
    ],
    default: ['1', 'equal cells'],
  }),
} as const;

export const gasInputs = {
  exhaustVolumeFlow: quantity(volumeFlow, {
    symbol: 'Q',
    label: 'Exhaust volume flow',
    description:
      'Actual flow, not a standard flow: at the gas temperature, and at the pressure in the middle of the filter, that is, the pressure after it plus half the drop.',
    range: '0 < x <= 10000 m3/h',
    usual: ['5 m3/h', '4000 m3/h', { below: 'an engine that idles gives more', above: 'a vehicle engine at full load gives less' }],
    example: '414 m3/h',
  }),
  gasTemperature: quantity(temperature, {
    symbol: 'T',
    label: 'Gas temperature in the filter',
    range: '-40 <= x <= 1200 °C',
    usual: [
      '0 °C',
      '750 °C',
      {
        below: 'the gas of an engine that runs is warmer',
        above: "the viscosity by Sutherland's formula is more than 4 % below the dilute-gas value there",
      },
    ],
    example: '206 °C',
  }),
  gasViscosity: optional(
    quantity(dynamicViscosity, {
      symbol: '\\mu_g',
      label: 'Viscosity of the gas, if known',
      description: 'Leave blank to use that of air at the gas temperature.',
      range: '5 <= x <= 100 uPa.s',
      usual: ['15 uPa.s', '50 uPa.s', 'air has this viscosity between about −20 and 1000 °C'],
      example: '26 uPa.s',
    }),
  ),
} as const;

/** Which pressure a volume flow belongs to, where a calculation can convert it. */
export const flowPressureInput = choice({
  label: 'Pressure that the volume flow belongs to',
  description: 'The same gas takes up less room before the filter than after it.',
  options: {
    middle: 'in the middle of the filter: after it plus half the drop',
    before: 'before the filter',
    behind: 'after the filter',
  },
  default: ['middle', 'as in the calculations without this choice; the volume flow calculation gives it'],
});

/** The volume flow of calculations that have that choice. */
export const chosenVolumeFlow = quantity(volumeFlow, {
  symbol: 'Q',
  label: 'Exhaust volume flow',
  description: 'Actual flow, not a standard flow: at the gas temperature, and at the pressure chosen below.',
  range: '0 < x <= 10000 m3/h',
  usual: ['5 m3/h', '4000 m3/h', { below: 'an engine that idles gives more', above: 'a vehicle engine at full load gives less' }],
  example: '414 m3/h',
});

export const densityInputs = {
  gasPressure: quantity(absolutePressure, {
    symbol: 'p',
    label: 'Absolute pressure of the gas after the filter',
    description: 'Ambient pressure, if the exhaust is open after the filter.',
    range: '40 <= x <= 600 kPa',
    usual: ['60 kPa', '250 kPa', 'outside this range it is probably a gauge pressure or in another unit'],
    example: '100 kPa',
    units: ['kPa', 'mbar', 'bar', 'psi'],
    default: ['101.325 kPa', 'sea level; it only enters the small parts that depend on density'],
  }),
  gasDensity: optional(
    quantity(density, {
      symbol: '\\rho_g',
      label: 'Density of the gas, if known',
      description: 'After the filter. Leave blank to use that of air at the temperature and pressure.',
      range: '0.05 <= x <= 10 kg/m3',
      usual: ['0.2 kg/m3', '2 kg/m3', 'exhaust in a vehicle stays in this range'],
      example: '0.72 kg/m3',
    }),
  ),
} as const;

export const wallInputs = {
  wallPermeability: quantity(permeability, {
    symbol: 'k_0',
    label: 'Permeability of the clean wall',
    range: '1e-15 <= x <= 1e-10 m2',
    usual: [
      '1e-13 m2',
      '1e-12 m2',
      {
        below: 'published bare walls begin at 2.4 × 10⁻¹³ m²; a coated wall can be lower',
        above: 'published bare walls end near 5.3 × 10⁻¹³ m²',
      },
    ],
    default: [
      '3e-13 m2',
      'uncoated cordierite; published values run from 2.4 × 10⁻¹³ to 5.3 × 10⁻¹³ m², so the wall part is uncertain by half',
    ],
  }),
  forchheimerCoefficient: quantity(inertialCoefficient, {
    symbol: '\\beta',
    label: 'Forchheimer coefficient of the wall',
    range: '0 <= x <= 1e9 1/m',
    usual: ['0 1/m', '1e7 1/m', 'from 0.34/(porosity^1.5 √k) for granular walls'],
    default: ['0 1/m', 'inertia in the wall is negligible for pores of 10 to 30 µm'],
  }),
  entranceExitCoefficient: quantity(ratio, {
    symbol: '\\zeta',
    label: 'Entrance and exit loss coefficient',
    description: 'Contraction and expansion together, on the dynamic head in the channels.',
    range: '0 <= x <= 10',
    usual: ['0', '2.5', 'published values for contraction and for expansion run from 0.3 to 1.24 each'],
    default: ['0.628', 'published for 100 and 200 cpsi'],
  }),
} as const;

export const ashInputs = {
  ashMass: quantity(mass, {
    symbol: 'm_a',
    label: 'Ash in the filter',
    range: '0 <= x <= 5000 g',
    usual: ['0 g', '100 g', 'more fills the filter of a car or a light bus; in a truck filter it is possible'],
    example: '70 g',
    units: ['g', 'kg', 'oz'],
    default: ['0 g', 'no ash; ash that is there is read as soot or as wall'],
  }),
  ashPlugShare: quantity(fraction, {
    symbol: 'x_p',
    label: 'Part of the ash in end plugs',
    range: '0 <= x <= 100 %',
    example: '60 %',
    default: ['70 %', 'driving with regular regenerations carries most ash to the end; common practice, no source'],
  }),
  ashPermeability: quantity(permeability, {
    symbol: 'k_a',
    label: 'Permeability of the ash layer',
    range: '1e-16 <= x <= 1e-10 m2',
    usual: ['2e-14 m2', '1e-13 m2', 'published pairs: 2.77 × 10⁻¹⁴ m² with 1000 kg/m³, 7.4 × 10⁻¹⁴ m² with 400 kg/m³'],
    default: ['7.4e-14 m2', 'published together with a packing density of 400 kg/m³'],
  }),
  ashPackingDensity: quantity(density, {
    symbol: '\\rho_a',
    label: 'Packing density of the ash',
    range: '50 <= x <= 3000 kg/m3',
    usual: ['200 kg/m3', '1000 kg/m3', 'published values for filter ash'],
    default: ['400 kg/m3', 'published together with a permeability of 7.4 × 10⁻¹⁴ m²'],
  }),
} as const;

export const sootMaterialInputs = {
  sootPermeability: quantity(permeability, {
    symbol: 'k_s',
    label: 'Permeability of the soot cake',
    range: '1e-16 <= x <= 1e-11 m2',
    usual: ['1e-14 m2', '1e-13 m2', 'published values run from 1.45 × 10⁻¹⁴ to 7 × 10⁻¹⁴ m²'],
    default: [
      '2.4e-14 m2',
      'middle of the measured values 1.8 × 10⁻¹⁴ (heavy-duty) and 3.2 × 10⁻¹⁴ m² (passenger car); soot masses are uncertain by a factor of two',
    ],
  }),
  sootPackingDensity: quantity(density, {
    symbol: '\\rho_s',
    label: 'Packing density of the soot cake',
    range: '5 <= x <= 1000 kg/m3',
    usual: ['60 kg/m3', '130 kg/m3', 'published values run from 91 to 122 kg/m³'],
    default: ['95 kg/m3', 'between the published 91 (heavy-duty) and 97 kg/m³ (passenger car)'],
  }),
  sootPrimaryDiameter: optional(
    quantity(length, {
      symbol: 'd_p',
      label: 'Diameter of the primary soot particles',
      description: 'With it the permeability of the cake is corrected for gas slip. Leave blank to take the permeability as it is.',
      range: '1 nm <= x <= 1 um',
      usual: ['10 nm', '60 nm', 'primary particles of diesel soot have this size'],
      example: '25 nm',
      units: ['nm', 'um'],
    }),
  ),
  ...whenGiven('sootPrimaryDiameter', {
    sootPermeabilityTemperature: quantity(temperature, {
      symbol: 'T_k',
      label: 'Temperature at which the soot permeability was found',
      range: '-40 <= x <= 1200 °C',
      usual: [
        '0 °C',
        '750 °C',
        {
          below: 'the gas of an engine that runs is warmer',
          above: "the viscosity by Sutherland's formula is more than 4 % below the dilute-gas value there",
        },
      ],
      default: ['280 °C', 'the published soot permeabilities were found at 260 and 280 °C'],
    }),
  }),
} as const;

export const deepBedInputs = {
  wallPorosity: quantity(fraction, {
    symbol: '\\varepsilon_0',
    label: 'Porosity of the clean wall',
    range: '25 <= x <= 80 %',
    usual: ['42 %', '55 %', 'the model was fitted to walls of 48 and 50 %'],
    default: ['48 %', 'cordierite of the heavy-duty filter that the model was fitted to'],
  }),
  wallSootDensity: quantity(density, {
    symbol: '\\rho_w',
    label: 'Packing density of soot inside the wall',
    range: '1 <= x <= 200 kg/m3',
    usual: ['7 kg/m3', '14 kg/m3', 'published values run from 8 to 14 kg/m³'],
    default: ['8.15 kg/m3', 'published for a silicon carbide filter; with it the heavy-duty curves are met'],
  }),
  percolationFactor: quantity(ratio, {
    symbol: '\\psi',
    label: 'Percolation factor',
    description: 'How far the wall fills before a cake forms on it; fitted, not measured.',
    range: '0.6 <= x <= 0.999',
    usual: ['0.84', '0.9', 'fitted values: 0.863 and 0.884 for two cordierites'],
    default: ['0.863', 'fitted to the loaded curve of a heavy-duty cordierite filter'],
  }),
} as const;

export const sootMassInput = quantity(mass, {
  symbol: 'm_s',
  label: 'Soot in the filter',
  range: '0 <= x <= 2000 g',
  usual: ['0 g', '100 g', 'more than the filter of a car or a light bus holds; in a truck filter it is possible'],
  example: '64 g',
  units: ['g', 'kg', 'oz'],
});

export const pressureDropInput = quantity(differentialPressure, {
  symbol: '\\Delta p',
  label: 'Pressure drop over the filter',
  description: 'As measured between the two taps, less the zero reading.',
  range: '0 < x <= 1000 mbar',
  usual: [
    '5 mbar',
    '400 mbar',
    {
      below: 'so small a drop is mostly the zero error of the sensor',
      above: 'so large a drop points to a misread unit or a closed exhaust',
    },
  ],
  example: '95 mbar',
});
