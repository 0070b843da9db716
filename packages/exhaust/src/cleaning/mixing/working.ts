import { cases, constant, quantityOutput, solved } from '@wallflow/calculation';
import { density, ratio } from '@wallflow/units';
import { densityScale } from '../../reductant/solution/density.js';
import { oimlR22, ureaDensity } from '../sources.js';
import { coefficients, ethanolWaterDensity } from './ethanol-density.js';

// How density and strength belong together, in every definition alike.

export const densityOutput = (symbol: string, label: string) =>
  quantityOutput(density, { symbol, label, digits: 6, units: ['kg/m3', 'g/mL'] });

export const liquidConstants = {
  pureDensity: constant(density, ethanolWaterDensity(1), { symbol: '\\rho_e', label: 'Density of ethanol at 20 °C', source: oimlR22 }),
  densityScale: constant(ratio, densityScale, {
    symbol: 'k',
    label: 'Factor that makes the density of urea solution 1090 kg/m³ at 32.5 % and 20 °C',
    source: ureaDensity,
  }),
} as const;

const polynomial = (w: string) =>
  coefficients.map((a, k) => `${k === 0 ? a : Math.abs(a)}${k === 0 ? '' : k === 1 ? ` * ${w}` : ` * ${w} ^ ${k}`}`);

/** Density of the liquid at a strength by mass. */
export function densityStep<const Key extends string>(gives: Key, w: string) {
  const ethanol = polynomial(w).reduce((sum, term, k) => `${sum} ${(coefficients[k] ?? 0) < 0 ? '-' : '+'} ${term}`);
  return cases(
    gives,
    {
      "liquid == 'ethanol-water'": `as(${ethanol}, 'kg/m3')`,
      otherwise: `as(998.207 * (1 + densityScale * (0.2658 * ${w} + 0.033 * ${w} ^ 2)), 'kg/m3')`,
    },
    oimlR22,
  );
}

/** Density of water by the same relations. */
export const waterDensityStep = cases(
  'waterDensity',
  { "liquid == 'ethanol-water'": "as(998.20123, 'kg/m3')", otherwise: "as(998.207, 'kg/m3')" },
  oimlR22,
);

/** Strength by mass from the strength as it is stated; the density at it is the next step's. */
export function massFractionStep<const Key extends string>(gives: Key, strength: string, densityKey: string) {
  return cases(
    gives,
    { "strengthBasis == 'volume'": solved(gives, `${strength} = ${gives} * ${densityKey} / pureDensity`), otherwise: strength },
    oimlR22,
  );
}

/** The way back: the strength on the basis that was chosen. */
export function strengthStep<const Key extends string>(gives: Key, massFraction: string, densityKey: string) {
  return cases(gives, { "strengthBasis == 'volume'": `${massFraction} * ${densityKey} / pureDensity`, otherwise: massFraction }, oimlR22);
}
