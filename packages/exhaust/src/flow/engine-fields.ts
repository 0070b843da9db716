import { cases, choice, quantity } from '@wallflow/calculation';
import { absolutePressure, fraction, moleFraction, rotationalSpeed, temperature, volume } from '@wallflow/units';

/** Inputs that describe an engine as an air pump. */
export const engineFields = {
  displacement: quantity(volume, {
    symbol: 'V_d',
    label: 'Engine displacement',
    description: 'Swept volume of all cylinders together.',
    range: '0.05 <= x <= 200 L',
    usual: ['0.3 L', '30 L', 'road and machine diesels lie in this range'],
    example: '3.9 L',
    units: ['L', 'cm3'],
  }),
  engineSpeed: quantity(rotationalSpeed, {
    symbol: 'n',
    label: 'Engine speed',
    range: '50 <= x <= 10000 rpm',
    usual: ['400 rpm', '5500 rpm', 'diesel engines idle and run in this range'],
    example: '2200 rpm',
    units: ['rpm', 'r/s'],
  }),
  manifoldPressure: quantity(absolutePressure, {
    symbol: 'p_m',
    label: 'Intake manifold pressure, absolute',
    description: 'Ambient pressure plus boost. A boost reading alone is a gauge pressure.',
    range: '5 < x <= 800 kPa',
    usual: ['60 kPa', '450 kPa', 'outside this range a gauge pressure or another unit is likely'],
    example: '117 kPa',
    units: ['kPa', 'mbar', 'bar', 'psi'],
  }),
  manifoldTemperature: quantity(temperature, {
    symbol: 'T_m',
    label: 'Intake manifold temperature',
    description: 'After the charge cooler and where recirculated exhaust has mixed in.',
    range: '-60 <= x <= 300 °C',
    usual: ['-30 °C', '150 °C', 'charge is seldom colder or hotter'],
    example: '40 °C',
  }),
};

/** Inputs of the same pump that have a usual value. */
export const chargeFields = {
  strokes: choice({
    label: 'Working cycle',
    options: { 'four-stroke': 'four-stroke', 'two-stroke': 'two-stroke' },
    default: ['four-stroke', 'nearly every road and machine diesel is a four-stroke'],
  }),
  volumetricEfficiency: quantity(fraction, {
    symbol: '\\eta_v',
    label: 'Volumetric efficiency',
    description: 'Charge drawn in over the swept volume at manifold pressure and temperature.',
    range: '5 < x <= 150 %',
    usual: ['65 %', '110 %', 'diesel engines without a throttle fill to this extent at manifold density'],
    default: ['90 %', 'the value in the flow example of 40 CFR 1065.602(l)(1); engines differ by about a tenth'],
    units: ['%', '1'],
  }),
  exhaustGasRecirculation: quantity(moleFraction, {
    symbol: 'x_{EGR}',
    label: 'Recirculated exhaust in the charge',
    description: 'Share of the charge that is exhaust gas. Zero with the valve closed.',
    range: '0 <= x < 100 %',
    usual: ['0 %', '60 %', 'engines seldom recirculate more'],
    default: ['0 %', 'valve taken as closed; with an open valve the fresh air and so the exhaust flow are lower by this share'],
    units: ['%', '1'],
  }),
};

/** Crankshaft revolutions per working cycle. */
export function revolutionsPerCycle(strokes: 'four-stroke' | 'two-stroke'): number {
  return strokes === 'four-stroke' ? 2 : 1;
}

/** The same as a step, for `strokes`. */
export const revolutionsStep = cases('revolutionsPerCycle', { "strokes == 'four-stroke'": '2', otherwise: '1' });
