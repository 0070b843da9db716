import * as wf from '@wallflow/calculation';
import {
  area,
  density,
  differentialPressure,
  dynamicViscosity,
  flowResistance,
  fraction,
  inertialFlowResistance,
  ratio,
  volumeFlow,
} from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { konstandopoulos2008 } from '../../sources.js';
import { filterConstants } from '../constants.js';
import { dropOutput } from '../drop-outputs.js';
import { airDensityFormula, sutherlandFormula } from '../gas-steps.js';
import { densityInputs, gasInputs, pressureDropInput } from '../inputs.js';
import { resolveDensity, resolveViscosity } from '../resolve.js';
import { dropScaling } from '../sources.js';
import { type DropPoint, equivalentLossArea, fitViscousInertial } from './kernel.js';

const point = { pressureDrop: pressureDropInput, ...gasInputs, ...densityInputs };

const viscous = 'fitted.viscosity * fitted.volumeFlow';
const inertial = 'fitted.density * fitted.volumeFlow ^ 2';
const leastSquares = 'The squares of what is left are least where this holds, for all coefficients at once.';
const normal = (factor: string) => `sum(${factor} * fitted.measuredDrop) = sum(${factor} * fitted.fittedDrop)`;
/** Sum of products of two parts over all points, about their means where the zero reading is fitted too. */
const products = (one: string, other: string) => `sum(${one} * ${other})`;
const aboutMeans = (one: string, other: string) => `(sum(${one} * ${other}) - sum(${one}) * sum(${other}) / count(points))`;
/** Standard uncertainty of the coefficient of a part, from the scatter and how far the two parts can be told from each other. */
const spreadStep = <const Key extends string>(gives: Key, part: string) =>
  wf.cases(gives, {
    fitZero: `scatter / sqrt(${aboutMeans(part, part)} * (1 - correlation ^ 2))`,
    otherwise: `scatter / sqrt(${products(part, part)} * (1 - correlation ^ 2))`,
  });
const correlationOf = (sum: typeof products) => `-${sum(viscous, inertial)} / sqrt(${sum(viscous, viscous)} * ${sum(inertial, inertial)})`;

export const viscousInertialFitCalculation = wf.defineCalculation({
  id: 'viscous-inertial-fit',
  subject: 'filter',
  title: 'Viscous and inertial part of a drop from several points',
  purpose: 'How much of the drop is filter-like, and how much is like a narrow pipe?',
  keywords: 'two-point, three-point, regression, Forchheimer, plumbing or filter',
  method: 'least squares on a·μQ + b·ρQ²',
  inputs: {
    points: wf.list(point, {
      label: 'Measured points',
      description: 'Two or more, at flows as different as possible, warm and steady; with two there is no check.',
      min: 2,
      max: 500,
      example: [
        { pressureDrop: '18 mbar', exhaustVolumeFlow: '91 m3/h', gasTemperature: '118 °C' },
        { pressureDrop: '50 mbar', exhaustVolumeFlow: '235 m3/h', gasTemperature: '164 °C' },
        { pressureDrop: '95 mbar', exhaustVolumeFlow: '414 m3/h', gasTemperature: '206 °C' },
      ],
    }),
    dropUncertainty: wf.optional(
      wf.quantity(differentialPressure, {
        symbol: 'u_p',
        label: 'Standard uncertainty of each pressure drop',
        description: 'Leave blank to judge it by the scatter of three or more points.',
        range: '0 < x <= 100 mbar',
        usual: ['0.2 mbar', '10 mbar', 'what sensors and hand gauges reach'],
        example: '1 mbar',
      }),
    ),
    fitZero: wf.flag({
      label: 'Fit the zero reading of the sensor as well',
      description: 'Needs three points or more.',
      default: [false, 'the zero reading is taken off before'],
    }),
  },
  intermediates: {
    zeroReading: wf.optional(dropOutput('\\Delta p_z', 'Zero reading from the fit')),
    largestFlow: wf.quantityOutput(volumeFlow, { symbol: 'Q_{max}', label: 'Largest flow', units: ['m3/h', 'L/s'] }),
    scatter: wf.optional(dropOutput('s', 'Standard uncertainty of one drop')),
    fitted: wf.tableOutput({
      label: 'Readings and curve',
      columns: {
        volumeFlow: wf.quantityOutput(volumeFlow, { symbol: 'Q', label: 'Flow', units: ['m3/h', 'L/s'] }),
        viscosity: wf.quantityOutput(dynamicViscosity, { symbol: '\\mu', label: 'Viscosity', units: ['uPa.s'] }),
        density: wf.quantityOutput(density, { symbol: '\\rho', label: 'Density', units: ['kg/m3'] }),
        measuredDrop: dropOutput('\\Delta p', 'Measured'),
        fittedDrop: dropOutput('\\Delta p_f', 'Fitted'),
        viscousDrop: dropOutput('\\Delta p_v', 'Viscous part'),
        inertialDrop: dropOutput('\\Delta p_i', 'Inertial part'),
        inertialPart: wf.optional(
          wf.quantityOutput(fraction, { symbol: 'x_i', label: 'Inertial part of both, at the largest flow', digits: 3, units: ['%'] }),
        ),
      },
      plot: { x: 'volumeFlow', y: ['measuredDrop', 'fittedDrop', 'viscousDrop', 'inertialDrop'] },
    }),
  },
  outputs: {
    resistanceUncertainty: wf.optional(
      wf.quantityOutput(flowResistance, {
        symbol: 'u_a',
        label: 'Standard uncertainty of the flow resistance',
        digits: 2,
        units: ['1/mm3', '1/m3'],
      }),
    ),
    inertialResistance: wf.quantityOutput(inertialFlowResistance, {
      symbol: 'b',
      label: 'Inertial flow resistance',
      description: 'The coefficient of density times the square of the flow. Pipes, catalyst, silencer, and the ends of the channels.',
      digits: 3,
      units: ['1/m4', '1/cm4'],
    }),
    inertialUncertainty: wf.optional(
      wf.quantityOutput(inertialFlowResistance, {
        symbol: 'u_b',
        label: 'Standard uncertainty of the inertial flow resistance',
        digits: 2,
        units: ['1/m4', '1/cm4'],
      }),
    ),
    correlation: wf.optional(
      wf.quantityOutput(ratio, {
        symbol: 'r_{ab}',
        label: 'Correlation of the two parts',
        description: 'Covariance over both standard uncertainties; near −1 or 1 the two parts are hard to separate.',
        digits: 3,
      }),
    ),
    equivalentArea: wf.optional(
      wf.quantityOutput(area, {
        symbol: 'A_e',
        label: 'Free area of a restriction with the same inertial part',
        description: 'Loss coefficient 1. A small area points to pipe, catalyst or silencer rather than to the filter.',
        digits: 3,
        units: ['cm2', 'mm2', 'in2'],
      }),
    ),
    areaUncertainty: wf.optional(
      wf.quantityOutput(area, { symbol: 'u_A', label: 'Standard uncertainty of that area', digits: 2, units: ['cm2', 'mm2', 'in2'] }),
    ),
    inertialShare: wf.quantityOutput(fraction, {
      symbol: 'x_i',
      label: 'Inertial part of the drop',
      digits: 3,
      units: ['%'],
    }),
    flowResistance: wf.quantityOutput(flowResistance, {
      symbol: 'a',
      label: 'Flow resistance, viscous part only',
      description: 'Tracks wall, soot and ash; compare it before and after.',
      units: ['1/mm3', '1/m3'],
    }),
  },
  constants: filterConstants,
  answer: 'flowResistance',
  steps: [
    wf.formula('largestFlow', 'max(points.exhaustVolumeFlow)'),
    wf.solved('flowResistance', normal(viscous), {}, konstandopoulos2008, 'Eq. 8', leastSquares),
    wf.solved('inertialResistance', normal(inertial), {}, dropScaling, undefined, leastSquares),
    wf.solved('zeroReading', 'sum(fitted.measuredDrop) = sum(fitted.fittedDrop)', {}, undefined, undefined, leastSquares),
    wf.rows(
      'fitted',
      {
        volumeFlow: 'points.exhaustVolumeFlow',
        viscosity: { 'known(points.gasViscosity)': 'points.gasViscosity', otherwise: sutherlandFormula('points.gasTemperature') },
        density: {
          'known(points.gasDensity)': 'points.gasDensity',
          otherwise: airDensityFormula('points.gasTemperature', 'points.gasPressure'),
        },
        measuredDrop: 'points.pressureDrop',
        viscousDrop: 'flowResistance * viscosity * volumeFlow',
        inertialDrop: 'inertialResistance * density * volumeFlow ^ 2',
        fittedDrop: { fitZero: 'zeroReading + viscousDrop + inertialDrop', otherwise: 'viscousDrop + inertialDrop' },
        inertialPart: { 'volumeFlow == largestFlow': 'inertialDrop / (viscousDrop + inertialDrop)' },
      },
      dropScaling,
    ),
    wf.cases('scatter', {
      'known(dropUncertainty)': 'dropUncertainty',
      fitZero: 'sqrt(sum((fitted.measuredDrop - fitted.fittedDrop) ^ 2) / (count(points) - 3))',
      otherwise: 'sqrt(sum((fitted.measuredDrop - fitted.fittedDrop) ^ 2) / (count(points) - 2))',
    }),
    wf.cases('correlation', { fitZero: correlationOf(aboutMeans), otherwise: correlationOf(products) }),
    spreadStep('resistanceUncertainty', viscous),
    spreadStep('inertialUncertainty', inertial),
    wf.formula('equivalentArea', '1 / sqrt(2 * inertialResistance)', dropScaling),
    wf.formula('areaUncertainty', 'equivalentArea * inertialUncertainty / (2 * inertialResistance)'),
    wf.formula('inertialShare', 'first(fitted.inertialPart)'),
  ],
  assumptions: {
    flow_in_the_middle:
      'The volume flows belong to the pressure in the middle of the filter. The volume flow calculation gives them from a mass flow, the back-pressure and the drop.',
    same_load: 'Soot and ash are the same at all points, and no regeneration runs.',
    equal_weight: 'All drops are equally uncertain.',
  },
  limits: {
    spread: 'With flows that differ by less than a factor of two the parts cannot be separated reliably.',
    two_points: 'Two points always fit; a third shows whether they are right.',
  },
  cautions: [cautions.sensorFirst, cautions.hotExhaust, cautions.fumes],
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
    if (fit.status === 'too_few_points') return wf.noSolution('The zero reading can only be fitted with three points or more.', ['points']);
    if (fit.status !== 'fitted')
      return wf.noSolution('The two parts cannot be separated with these points: measure at clearly different flows.', ['points']);
    const { viscousCoefficient: a, inertialCoefficient: b, offset, covariance } = fit;
    if (a <= 0)
      warn('negative_viscous', 'The viscous part comes out as nothing or negative: flows, temperatures or drops contradict each other.');
    if (b <= 0) {
      warn(
        'negative_inertial',
        'The inertial part comes out as nothing or negative, which no flow does: it is small next to scatter and slip. No free area can be given; fit the viscous part alone, or measure at a wider span of flows.',
      );
    }
    const flows = points.map((entry) => entry.volumeFlow);
    if (Math.max(...flows) < 2 * Math.min(...flows))
      warn('spread', 'The flows differ by less than a factor of two: the two parts are hard to separate.');
    const largestFlow = Math.max(...flows);
    const fitted = points.map(({ volumeFlow: flow, viscosity, density, pressureDrop }) => {
      const [viscousDrop, inertialDrop] = [a * viscosity * flow, b * density * flow ** 2];
      return {
        volumeFlow: flow,
        viscosity,
        density,
        measuredDrop: pressureDrop,
        fittedDrop: offset + viscousDrop + inertialDrop,
        viscousDrop,
        inertialDrop,
        inertialPart: flow === largestFlow ? inertialDrop / (viscousDrop + inertialDrop) : undefined,
      };
    });
    const at = input.fitZero ? 1 : 0;
    const [varianceA, covarianceAB, varianceB] = [covariance?.[at]?.[at], covariance?.[at]?.[at + 1], covariance?.[at + 1]?.[at + 1]];
    const equivalentArea = equivalentLossArea(b);
    const uncertaintyB = varianceB === undefined ? undefined : Math.sqrt(varianceB);
    if (covariance === undefined) {
      warn(
        'no_uncertainty',
        'As many different points as numbers to be found always fit, and a point entered twice adds nothing: the uncertainty is unknown. Add a point at another flow, or give the uncertainty of the drops.',
        ['points'],
      );
    } else if (b > 0 && uncertaintyB !== undefined && b < 2 * uncertaintyB) {
      warn('inertial_uncertain', 'The inertial part is less than twice its standard uncertainty: it may be nothing.');
    }
    const known = varianceA !== undefined && varianceB !== undefined && covarianceAB !== undefined && varianceA * varianceB > 0;
    return {
      largestFlow,
      zeroReading: input.fitZero ? offset : undefined,
      fitted,
      scatter: covariance === undefined ? undefined : (input.dropUncertainty ?? fit.residualStandardDeviation),
      resistanceUncertainty: varianceA === undefined ? undefined : Math.sqrt(varianceA),
      inertialResistance: b,
      inertialUncertainty: uncertaintyB,
      correlation: known ? covarianceAB / Math.sqrt(varianceA * varianceB) : undefined,
      equivalentArea,
      areaUncertainty: equivalentArea === undefined || uncertaintyB === undefined ? undefined : (equivalentArea * uncertaintyB) / (2 * b),
      inertialShare: fitted.find((row) => row.inertialPart !== undefined)?.inertialPart ?? 0,
      flowResistance: a,
    };
  },
});
