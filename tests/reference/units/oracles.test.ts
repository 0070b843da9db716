import { type KindName, kinds, temperature } from '@wallflow/units';
import Qty from 'js-quantities';
import { unit as mathUnit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { type KindUnit, mathjsDimension, type Oracle, oracles } from './support/oracles.js';

const all: readonly KindUnit[] = Object.values(kinds).flatMap((kind) => kind.units.map((unit) => ({ kind: kind.kind, unit })));

function ownFactor({ kind, unit }: KindUnit): number {
  const own = kinds[kind] as (typeof kinds)['length'];
  return own(1, unit as never);
}

function roundingOf({ rounded }: Oracle, unit: string): number {
  const parts = Object.entries(rounded).filter(([part]) => unit.includes(part));
  return parts.reduce((sum, [, relative]) => sum + relative, 0);
}

describe.each(oracles)('$name as an oracle', (oracle) => {
  const known = all.map((pair) => ({ ...pair, theirs: oracle.factor(pair) })).filter(({ theirs }) => theirs !== undefined);

  it.each(known)('agrees on $unit of $kind', (pair) => {
    const relative = Math.abs(ownFactor(pair) / (pair.theirs as number) - 1);
    // A few roundings of a double, unless the library itself has a rounded factor.
    expect(relative).toBeLessThan(5e-15 + roundingOf(oracle, pair.unit));
  });

  it('knows most units that have no condition in their name', () => {
    expect(known.length).toBeGreaterThan(280);
  });

  it('is allowed a rounding only where it has one', () => {
    const needed = Object.keys(oracle.rounded).filter((part) =>
      known.some((pair) => pair.unit.includes(part) && Math.abs(ownFactor(pair) / (pair.theirs as number) - 1) > 5e-15),
    );
    expect(needed).toEqual(Object.keys(oracle.rounded));
  });
});

describe('the oracles together', () => {
  it('leave few units that neither knows, and each of those stands in a printed table or follows from its parts', () => {
    const unknown = all.filter((pair) => pair.kind !== 'temperature' && oracles.every((oracle) => oracle.factor(pair) === undefined));
    const allowed =
      /_(?:\d+[CF]|IT|th|imp|long|conventional|metric|US)|^(?:at|psi[adg]|bar[adg]|cpsi|darcy|mD|permille|%vol|%m|km\/L|kgf|kgf\.m|ppb)$/;
    expect(unknown.map(({ unit }) => unit).filter((unit) => !allowed.test(unit))).toEqual([]);
  });

  const scales = ['K', 'degC', 'degF', 'degR'] as const;
  const theirNames = { K: 'tempK', degC: 'tempC', degF: 'tempF', degR: 'tempR' } as const;
  const readings = scales.flatMap((from) => scales.flatMap((to) => [-40, 0, 20, 100, 650, 1200].map((value) => ({ from, to, value }))));

  it.each(readings.filter(({ from, value }) => value >= 0 || from === 'degC' || from === 'degF'))(
    'read $value $from in $to alike',
    ({ from, to, value }) => {
      const ours = temperature.in(temperature(value, from), to);
      expect(mathUnit(value, from).toNumber(to)).toBeCloseTo(ours, 9);
      expect(Qty(value, theirNames[from]).to(theirNames[to]).scalar).toBeCloseTo(ours, 9);
    },
  );
});

describe('the dimension of each kind', () => {
  it.each(Object.keys(kinds) as KindName[])('%s is what mathjs makes of its base unit', (name) => {
    const { length, mass, time, temperature: kelvin, amount, current } = kinds[name].dimension;
    const base = kinds[name].baseUnit.replace(/_0C$/, '');
    expect([length, mass, time, kelvin, amount, current]).toEqual(mathjsDimension(base));
  });
});
