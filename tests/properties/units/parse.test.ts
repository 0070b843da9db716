import { getKind, type UnitIssue, unitInfo } from '@wallflow/units';
import { convertExact, parseExact } from '@wallflow/units/exact';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { processorTime } from '../../support/processor-time.js';
import { allUnits, anyKinds, info } from './support.js';

const anyKind = fc.constantFrom(...anyKinds);
const codes: readonly UnitIssue['code'][] = [
  'not_a_number',
  'missing_unit',
  'unknown_unit',
  'ambiguous_unit',
  'wrong_kind',
  'below_absolute_zero',
];

/** Text of signs that occur in quantities, so that a good part of it gets past the first look. */
const likely = fc.string({
  unit: fc.constantFrom(...' 0123456789.,+-±/%:e°CFmbarPsigkhLHO2₂³μµ·x^()\'"_\u00a0\u2009\u202f'),
  maxLength: 40,
});
const anyText = fc.oneof(fc.string({ unit: 'binary', maxLength: 300 }), fc.string({ unit: 'grapheme', maxLength: 60 }), likely);

function check(result: { readonly ok: boolean; readonly issue?: UnitIssue; readonly quantity?: number; readonly uncertainty?: number }) {
  if (result.ok) {
    expect(Number.isFinite(result.quantity)).toBe(true);
    expect(Number.isFinite(result.uncertainty ?? 0)).toBe(true);
    expect(result.uncertainty ?? 0).toBeGreaterThanOrEqual(0);
    return;
  }
  const { issue } = result;
  if (issue === undefined) throw new Error('refused without a reason');
  expect(codes).toContain(issue.code);
  expect(issue.text.length).toBeLessThanOrEqual(200);
  expect(JSON.parse(JSON.stringify(issue))).toEqual(issue);
}

describe('reading text', () => {
  it('never throws, and gives a finite quantity or a coded issue', () => {
    fc.assert(
      fc.property(anyKind, anyText, (kind, text) => {
        const [double, exact] = [kind.parse(text), parseExact(kind.kind, text)];
        check(double);
        const tooLarge = !double.ok && double.issue.code === 'not_a_number' && double.issue.reason === 'not_finite';
        if (!tooLarge) expect(exact.ok).toBe(double.ok);
      }),
      { numRuns: 5000 },
    );
  });

  it('never throws on a record of anything', () => {
    fc.assert(
      fc.property(anyKind, fc.anything(), fc.anything(), (kind, value, unit) => {
        if (typeof value === 'string') return;
        check((kind.parse as (value: unknown, unit: unknown) => ReturnType<typeof kind.parse>)(value, unit));
      }),
      { numRuns: 2000 },
    );
  });

  it('reads a number alike with a decimal point, a decimal comma, or in powers of ten', () => {
    const number = fc.tuple(fc.integer({ min: 0, max: 99_999 }), fc.integer({ min: 0, max: 9999 }), fc.integer({ min: 4, max: 6 }));
    fc.assert(
      fc.property(fc.constantFrom(...allUnits), number, ({ kind, unit }, [whole, fraction, places]) => {
        const decimals = String(fraction).padStart(places, '0');
        const written = [
          `${whole}.${decimals}`,
          `${whole},${decimals}`,
          `${whole}${decimals}e-${places}`,
          `${whole}${decimals} × 10^-${places}`,
        ];
        const symbol = info({ kind, unit }).symbol;
        const read = written
          .map((number) => kind.parse(`${number} ${symbol}`))
          .map((result) => (result.ok ? result.quantity : result.issue));
        for (const result of read) expect(result).toEqual(read[0]);
      }),
      { numRuns: 2000 },
    );
  });

  it('finds a unit by its id, symbol, name and other words, whatever the spaces and harmless signs', () => {
    const dress = fc.constantFrom(
      (spelling: string) => spelling,
      (spelling: string) => ` ${spelling} `,
      (spelling: string) => spelling.replaceAll(' ', '\u00a0'),
      (spelling: string) => spelling.replaceAll('2', '²').replaceAll('3', '³'),
      (spelling: string) => spelling.replaceAll('.', '·'),
      (spelling: string) => spelling.replaceAll('µ', 'μ'),
    );
    fc.assert(
      fc.property(fc.constantFrom(...allUnits), fc.nat(), dress, ({ kind, unit }, index, dressed) => {
        const { symbol, name, aliases } = info({ kind, unit });
        const spellings = [unit, symbol, name, ...aliases].filter((spelling) => spelling !== '');
        const spelling = dressed(spellings[index % spellings.length] as string);
        const result = kind.parse(5, spelling);
        expect(result.ok ? result.unit : `${spelling}: ${result.issue.code}`).toBe(unit);
      }),
      { numRuns: 4000 },
    );
  });

  it('never takes the case of milli, mega, nano or newton for the other', () => {
    const pairs = [
      ['differentialPressure', 'mPa'],
      ['differentialPressure', 'mpa'],
      ['dynamicViscosity', 'MPa.s'],
      ['mass', 'Mg'],
      ['mass', 'MG'],
      ['length', 'Mm'],
      ['length', 'Nm'],
      ['volume', 'ML'],
      ['power', 'mW'],
      ['energy', 'mJ'],
      ['voltage', 'MV'],
      ['electricCurrent', 'MA'],
      ['electricResistance', 'mΩ'],
      ['electricResistance', 'MΩ'],
      ['torque', 'nm'],
      ['standardVolumeFlow', 'nm3/h'],
      ['massConcentration', 'Mg/m3'],
      ['specificEnergy', 'mJ/kg'],
    ] as const;
    const read = pairs.map(([kind, unit]) => [unit, getKind(kind)?.parse(1, unit)] as const);
    const found = read.flatMap(([unit, result]) => (result?.ok ? [[unit, result.unit]] : []));
    expect(found).toEqual([
      ['mΩ', 'mohm'],
      ['MΩ', 'Mohm'],
    ]);
  });
});

describe('hostile text', () => {
  const long = [
    '1'.repeat(2_000_000),
    ' '.repeat(2_000_000),
    '1 '.repeat(1_000_000),
    '1,'.repeat(1_000_000),
    '±'.repeat(2_000_000),
    `1 ${'m'.repeat(2_000_000)}`,
    '\ufdfa'.repeat(1_000_000),
  ];

  it('costs no more than a glance, however long it is', () => {
    const spent = processorTime(() => {
      for (const text of long) {
        for (const kind of anyKinds) {
          const result = kind.parse(text);
          expect(result.ok ? 'read' : result.issue.code === 'not_a_number' && result.issue.reason).toBe('too_long');
          const record = kind.parse(1, text);
          expect(record.ok ? 'read' : record.issue.code === 'not_a_number' && record.issue.reason).toBe('too_long');
        }
      }
    });
    expect(spent).toBeLessThan(1000);
  });

  it.each(['1', '1 ', '1,', '1.', "1'", '±', '+-', 'e', '(', ':', '1:', '10^', 'm', '/', '\ufdfa', '⁰'])(
    'is quick on 200 signs of "%s"',
    (sign) => {
      const text = sign.repeat(200).slice(0, 200);
      const spent = processorTime(() => {
        for (const kind of anyKinds) check(kind.parse(text));
        for (const kind of anyKinds) check(kind.parse(`1 ${text}`.slice(0, 200)));
      });
      expect(spent).toBeLessThan(1000);
    },
  );

  it.each(Object.getOwnPropertyNames(Object.prototype))('finds no unit, kind or information called %s', (name) => {
    expect(getKind(name)).toBeUndefined();
    for (const kind of anyKinds) {
      expect(kind.parse(`1 ${name}`).ok).toBe(false);
      expect(unitInfo(kind.kind, name)).toBeUndefined();
      expect(() => kind(1, name as never)).toThrow('unknown_unit');
      const converted = convertExact(kind.kind, '1', name as never, kind.baseUnit as never);
      expect(converted.ok).toBe(false);
    }
  });
});
