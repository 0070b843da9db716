import { defineCalculation, flag, list, noSolution, optional, quantity, quantityOutput, tableOutput } from '@wallflow/calculation';
import { area, differentialPressure, flowResistance, fraction, inertialFlowResistance, ratio, volumeFlow } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { cfr1065, konstandopoulos2008, siBrochure } from '../../sources.js';
import { filterConstants } from '../constants.js';
import { dropOutput } from '../drop-outputs.js';
import { densityInputs, gasInputs, pressureDropInput } from '../inputs.js';
import { resolveDensity, resolveViscosity } from '../resolve.js';
import { dropScaling } from '../sources.js';
import { type DropPoint, equivalentLossArea, fitViscousInertial } from './kernel.js';

const point = z.strictObject({ pressureDrop: pressureDropInput, ...gasInputs, ...densityInputs });

export const viscousInertialFitCalculation = defineCalculation({
  id: 'viscous-inertial-fit',
  version: '1.1.0',
  subject: 'filter',
  title: 'Viscous and inertial part of a drop from several points',
  purpose: 'How much of the drop is filter-like, and how much is like a narrow pipe?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['two-point', 'three-point', 'regression', 'Forchheimer', 'plumbing or filter'],
  method: 'least squares on a·μQ + b·ρQ²',
  inputs: z.strictObject({
    points: list(point, {
      label: 'Measured points',
      description: 'Two or more, at flows as different as possible, warm and steady; with two there is no check.',
      min: 2,
      max: 500,
      example: [
        { pressureDrop: '11 mbar', exhaustVolumeFlow: '56 m3/h', gasTemperature: '130 °C' },
        { pressureDrop: '33 mbar', exhaustVolumeFlow: '140 m3/h', gasTemperature: '170 °C' },
        { pressureDrop: '63 mbar', exhaustVolumeFlow: '230 m3/h', gasTemperature: '200 °C' },
      ],
    }),
    dropUncertainty: quantity(differentialPressure, {
      symbol: 'u_p',
      label: 'Standard uncertainty of each drop, if known',
      description: 'Left out, it is judged from the scatter of three or more points.',
      above: '0 mbar',
      max: '100 mbar',
      usual: ['0.2 mbar', '10 mbar'],
      usualReason: 'what sensors and hand gauges reach',
      example: '1 mbar',
    }).optional(),
    fitZero: flag({
      label: 'Fit the zero reading of the sensor as well',
      description: 'Needs three points or more.',
      example: false,
      default: false,
      defaultReason: 'the zero reading is taken off before',
    }),
  }),
  intermediates: {
    zeroReading: optional(dropOutput('\\Delta p_z', 'Zero reading from the fit')),
    fitted: tableOutput({
      label: 'Points and fit',
      columns: {
        volumeFlow: quantityOutput(volumeFlow, { symbol: 'Q', label: 'Flow', units: ['m3/h', 'L/s'] }),
        measured: dropOutput('\\Delta p', 'Measured'),
        fittedDrop: dropOutput('\\Delta p_f', 'Fitted'),
        viscousDrop: dropOutput('\\Delta p_v', 'Viscous part'),
        inertialDrop: dropOutput('\\Delta p_i', 'Inertial part'),
      },
      plot: { x: 'volumeFlow', y: ['measured', 'fittedDrop', 'viscousDrop', 'inertialDrop'] },
    }),
  },
  outputs: {
    resistanceUncertainty: optional(
      quantityOutput(flowResistance, {
        symbol: 'u_a',
        label: 'Standard uncertainty of the flow resistance',
        digits: 2,
        units: ['1/mm3', '1/m3'],
      }),
    ),
    inertialResistance: quantityOutput(inertialFlowResistance, {
      symbol: 'b',
      label: 'Inertial flow resistance',
      description: 'The coefficient of density times the square of the flow. Pipes, catalyst, silencer, and the ends of the channels.',
      digits: 3,
      units: ['1/m4', '1/cm4'],
    }),
    inertialUncertainty: optional(
      quantityOutput(inertialFlowResistance, {
        symbol: 'u_b',
        label: 'Standard uncertainty of the inertial flow resistance',
        digits: 2,
        units: ['1/m4', '1/cm4'],
      }),
    ),
    correlation: optional(
      quantityOutput(ratio, {
        symbol: 'r_{ab}',
        label: 'Correlation of the two parts',
        description: 'Covariance over both standard uncertainties; near -1 or 1 the parts are hardly told apart.',
        digits: 3,
      }),
    ),
    equivalentArea: optional(
      quantityOutput(area, {
        symbol: 'A_e',
        label: 'Free area of a restriction with the same inertial part',
        description: 'Loss coefficient 1. A small area points to pipe, catalyst or silencer rather than to the filter.',
        digits: 3,
        units: ['cm2', 'mm2', 'in2'],
      }),
    ),
    areaUncertainty: optional(
      quantityOutput(area, { symbol: 'u_A', label: 'Standard uncertainty of that area', digits: 2, units: ['cm2', 'mm2', 'in2'] }),
    ),
    inertialShare: quantityOutput(fraction, {
      symbol: 'x_i',
      label: 'Inertial part at the largest flow',
      digits: 3,
      units: ['%'],
    }),
    flowResistance: quantityOutput(flowResistance, {
      symbol: 'a',
      label: 'Flow resistance, viscous part only',
      description: 'Tracks wall, soot and ash; compare it before and after.',
      units: ['1/mm3', '1/m3'],
    }),
  },
  constants: filterConstants,
  steps: [
    {
      gives: 'fitted',
      tex: '\\Delta p = a\\,\\mu\\,Q+b\\,\\rho\\,Q^{2}',
      source: 'dropScaling',
      locator: 'viscosity and density as given, or those of air at the temperature and pressure of the point',
    },
    { gives: 'zeroReading', text: 'Constant part of the fit, the zero reading of the sensor: [[zeroReading]].' },
    { gives: 'inertialResistance', text: 'The coefficient of ρQ²: [[inertialResistance]].', source: 'dropScaling' },
    {
      gives: 'resistanceUncertainty',
      text: 'Root of the variance of a, from the drop uncertainty given or from the scatter of more points than coefficients: [[resistanceUncertainty]].',
    },
    { gives: 'inertialUncertainty', text: 'The same for b: [[inertialUncertainty]].' },
    {
      gives: 'correlation',
      tex: '[[correlation]] = \\frac{\\mathrm{cov}(a,b)}{[[resistanceUncertainty]]\\,[[inertialUncertainty]]}',
    },
    { gives: 'equivalentArea', tex: '[[equivalentArea]] = \\frac{1}{\\sqrt{2\\,[[inertialResistance]]}}', source: 'dropScaling' },
    {
      gives: 'areaUncertainty',
      tex: '[[areaUncertainty]] = \\frac{[[equivalentArea]]\\,[[inertialUncertainty]]}{2\\,[[inertialResistance]]}',
    },
    { gives: 'inertialShare', text: 'Inertial part over the whole at the largest flow: [[inertialShare]].' },
    { gives: 'flowResistance', text: 'The coefficient of μQ: [[flowResistance]].', source: 'konstandopoulos2008', locator: 'Eq. 8' },
  ],
  assumptions: [
    {
      code: 'flow_in_the_middle',
      text: 'The volume flows belong to the pressure in the middle of the filter. The volume flow calculation gives them from a mass flow, the back-pressure and the drop.',
    },
    { code: 'same_load', text: 'Soot and ash are the same at all points, and no regeneration runs.' },
    { code: 'equal_weight', text: 'All drops are equally uncertain.' },
  ],
  limits: [
    { code: 'spread', text: 'With flows that differ by less than a factor of two the parts cannot be told apart reliably.' },
    { code: 'two_points', text: 'Two points always fit; a third shows whether they are right.' },
  ],
  cautions: [cautions.sensorFirst, cautions.hotExhaust, cautions.fumes],
  sources: { konstandopoulos2008, dropScaling, cfr1065, siBrochure },
  precision: 1e-6,
  mostEvaluations: 100,
  compute(input, { constants, warn }) {
    const points = input.points.map(
      (entry): DropPoint => ({
        pressureDrop: entry.pressureDrop,
        volumeFlow: entry.exhaustVolumeFlow,
        viscosity: resolveViscosity(entry, constants),
        density: resolveDensity(entry, constants),
      }),
    );
    const fit = fitViscousInertial(points, input.dropUncertainty, input.fitZero);
    if (fit.status === 'too_few_points') return noSolution('The zero reading can only be fitted with three points or more.', ['points']);
    if (fit.status !== 'fitted')
      return noSolution('The points do not tell the two parts apart: measure at clearly different flows.', ['points']);
    const { viscousCoefficient: a, inertialCoefficient: b, offset, covariance } = fit;
    if (a <= 0)
      warn('negative_viscous', 'The viscous part comes out as nothing or negative: flows, temperatures or drops do not belong together.');
    if (b <= 0) {
      warn(
        'negative_inertial',
        'The inertial part comes out as nothing or negative, which no flow does: it is small next to scatter and slip. No free area can be given; fit the viscous part alone, or measure at a wider span of flows.',
      );
    }
    const flows = points.map((entry) => entry.volumeFlow);
    if (Math.max(...flows) < 2 * Math.min(...flows))
      warn('spread', 'The flows differ by less than a factor of two: the parts are hardly told apart.');
    const fitted = points.map(({ volumeFlow: flow, viscosity, density, pressureDrop }) => {
      const [viscousDrop, inertialDrop] = [a * viscosity * flow, b * density * flow ** 2];
      return { volumeFlow: flow, measured: pressureDrop, fittedDrop: offset + viscousDrop + inertialDrop, viscousDrop, inertialDrop };
    });
    const top = fitted.reduce((best, row) => (row.volumeFlow > best.volumeFlow ? row : best));
    const at = input.fitZero ? 1 : 0;
    const [varianceA, covarianceAB, varianceB] = [covariance?.[at]?.[at], covariance?.[at]?.[at + 1], covariance?.[at + 1]?.[at + 1]];
    const equivalentArea = equivalentLossArea(b);
    const uncertaintyB = varianceB === undefined ? undefined : Math.sqrt(varianceB);
    if (covariance === undefined) {
      warn(
        'no_uncertainty',
        'As many different points as numbers to be found always fit, and a point written down twice adds nothing: no uncertainty can be told. Add a point at another flow, or give the uncertainty of the drops.',
        ['points'],
      );
    } else if (b > 0 && uncertaintyB !== undefined && b < 2 * uncertaintyB) {
      warn('inertial_uncertain', 'The inertial part is less than twice its standard uncertainty: it may be nothing.');
    }
    const known = varianceA !== undefined && varianceB !== undefined && covarianceAB !== undefined && varianceA * varianceB > 0;
    return {
      zeroReading: input.fitZero ? offset : undefined,
      fitted,
      resistanceUncertainty: varianceA === undefined ? undefined : Math.sqrt(varianceA),
      inertialResistance: b,
      inertialUncertainty: uncertaintyB,
      correlation: known ? covarianceAB / Math.sqrt(varianceA * varianceB) : undefined,
      equivalentArea,
      areaUncertainty: equivalentArea === undefined || uncertaintyB === undefined ? undefined : (equivalentArea * uncertaintyB) / (2 * b),
      inertialShare: top.inertialDrop / (top.viscousDrop + top.inertialDrop),
      flowResistance: a,
    };
  },
});
