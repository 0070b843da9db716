import { type KindName, kinds } from '@wallflow/units';
import Qty from 'js-quantities';
import { evaluate, Unit } from 'mathjs';
import { expressionFor, type Notation } from './expression.js';

/** One unit of a kind, as a pair that a test can loop over. */
export interface KindUnit {
  readonly kind: KindName;
  readonly unit: string;
}

/** A general-purpose library that can say how large a unit is. */
export interface Oracle {
  readonly name: string;
  /** The unit in coherent SI units; undefined where the library does not know it. */
  factor(pair: KindUnit): number | undefined;
  /** How far its own factor is rounded, relative, by the part of the id that carries it. */
  readonly rounded: Readonly<Record<string, number>>;
}

const mathjsNotation: Notation = {
  names: {
    gal_US: 'gallon',
    qt_US: 'quart',
    pt_US: 'pint',
    floz_US: 'fluidounce',
    lb: 'lbm',
    gr: 'grain',
    t: 'tonne',
    ton_short: 'ton',
    min: 'minute',
    h: 'hour',
    d: 'day',
    hp_mechanical: 'hp',
    Btu_IT: 'BTU',
    Torr: 'torr',
    mmHg_conventional: 'mmHg',
    mmH2O_conventional: 'mmH2O',
    cmH2O_conventional: 'cmH2O',
    mph: '(mi/hour)',
    rpm: '(1/minute)',
    r: '1',
    g_n: '(9.80665 m/s^2)',
    '%': '0.01',
  },
  power: '^',
  product: ' ',
};

const jsQuantitiesNotation: Notation = {
  names: {
    gal_US: 'gal',
    qt_US: 'qt',
    pt_US: 'pt',
    floz_US: 'floz',
    lb: 'lbs',
    gr: 'grain',
    t: 'tonne',
    ton_short: 'short-ton',
    hp_mechanical: 'hp',
    Btu_IT: 'btu',
    cal_th: 'cal',
    Torr: 'torr',
    mmHg_conventional: 'mmHg',
    inHg_conventional: 'inHg',
    cmH2O_conventional: 'cmh2o',
    inH2O_conventional: 'inH2O',
    mpg_US: 'mi/gal',
    K: 'degK',
  },
  power: '',
  product: '*',
};

/** Undefined where the library throws, which is how both say that they do not know a unit. */
function known(work: () => unknown): number | undefined {
  try {
    const result = work();
    return typeof result === 'number' ? result : undefined;
  } catch {
    return undefined;
  }
}

function isScale({ kind }: KindUnit): boolean {
  return kind === 'temperature';
}

const mathjs: Oracle = {
  name: 'mathjs',
  factor: (pair) => {
    if (isScale(pair)) return undefined;
    const of = (unit: string) => `(1 * ${expressionFor(unit, mathjsNotation)})`;
    return known(() => evaluate(`${of(pair.unit)} / ${of(kinds[pair.kind].baseUnit)}`));
  },
  rounded: { psi: 1e-10, mmHg: 3e-6, Torr: 3e-6, hp: 1e-10 },
};

const jsQuantities: Oracle = {
  name: 'js-quantities',
  factor: (pair) => {
    if (isScale(pair)) return undefined;
    // It has no brackets: whatever follows a slash is below it.
    const of = (unit: string) => Qty(1, expressionFor(unit, jsQuantitiesNotation).replace(/[()]/g, ''));
    return known(() => of(pair.unit).to(of(kinds[pair.kind].baseUnit)).scalar);
  },
  rounded: {
    gal_US: 5e-9,
    mpg_US: 5e-9,
    qt_US: 5e-9,
    pt_US: 5e-9,
    floz_US: 5e-9,
    oz: 1e-9,
    year: 3e-5,
    lbf: 1e-7,
    psi: 4e-7,
    inH2O: 3e-5,
    cmH2O: 3e-5,
    mmHg: 2e-7,
    inHg: 2e-7,
    Torr: 4e-9,
    hp: 1e-9,
    Btu_IT: 2e-7,
  },
};

export const oracles: readonly Oracle[] = [mathjs, jsQuantities];

/** Exponents of length, mass, time, temperature, amount and current of an expression, as mathjs sees them. */
export function mathjsDimension(unit: string): readonly number[] {
  const value: unknown = evaluate(`1 * ${expressionFor(unit, mathjsNotation)}`);
  if (typeof value === 'number') return [0, 0, 0, 0, 0, 0];
  if (!(value instanceof Unit)) throw new Error(`${unit} is no unit to mathjs`);
  // Its order: mass, length, time, current, temperature, luminous intensity, amount, …
  const [mass, length, time, current, temperature, , amount] = (value as Unit & { dimensions: number[] }).dimensions;
  return [length, mass, time, temperature, amount, current].map((power) => power ?? 0);
}
