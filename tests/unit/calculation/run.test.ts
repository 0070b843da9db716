import { CalculationError, type Issue, issueText, pathText } from '@wallflow/calculation';
import { energy } from '@wallflow/units';
import { describe, expect, it } from 'vitest';
import { good, heater } from './sample.js';

function issuesOf(input: unknown): readonly Issue[] {
  const result = heater.runUnknown(input);
  return result.ok ? [] : result.issues;
}

function firstIssue(change: Record<string, unknown>): Issue {
  const [issue, ...more] = issuesOf({ ...good, ...change });
  expect(more).toEqual([]);
  if (issue === undefined) throw new Error('accepted');
  return issue;
}

describe('a good input', () => {
  it('gives the result that a hand calculation gives', () => {
    const result = heater.calculate(good);
    expect(result.intermediates.power).toBeCloseTo(30, 12);
    expect(energy.in(result.outputs.energy, 'kJ')).toBeCloseTo(2.7, 12);
    expect(result.definition).toEqual({ id: 'heater-energy', version: '2.1.0' });
    expect(result.advice).toEqual([{ tone: 'do', text: 'Wait.' }]);
  });

  it('accepts records, other units and decimal commas for the same thing', () => {
    const other = {
      ...good,
      voltage: { value: 12000, unit: 'mV' as const },
      current: '2,5 A',
      pulses: [{ duration: '0.5 min' }, { duration: '60 s' }],
      repeats: '1',
    };
    expect(heater.calculate(other).outputs.energy).toBeCloseTo(2700, 9);
  });

  it('lists a default that it used as an assumption, and none that was given', () => {
    const used = heater.calculate(good).assumptions.filter((note) => note.code === 'default_assumed');
    expect(used.map((note) => pathText(note.path ?? []))).toEqual(['losses', 'mode']);
    expect(used[0]?.text).toBe('Losses: 0 W assumed (well insulated)');
    const given = heater.calculate({ ...good, losses: '0 W', mode: 'on' });
    expect(given.assumptions.map((note) => note.code)).toEqual(['steady']);
  });

  it('warns outside the usual range with the limit in the unit that was typed', () => {
    const [warning] = heater.calculate({ ...good, voltage: '8000 mV' }).warnings;
    expect(warning).toMatchObject({ code: 'outside_usual_range', path: ['voltage'], bound: 'min', limit: { value: 10000, unit: 'mV' } });
    expect(warning?.text).toContain('10000 mV');
  });

  it('gives the reason of the side that was passed, and the whole range where one reason stands for both', () => {
    const text = (input: object) => heater.calculate({ ...good, ...input }).warnings.map((warning) => warning.text);
    expect(text({ current: '0.05 A' })).toEqual(['Current is below 0.1 A: a broken wire']);
    expect(text({ current: '60 A' })).toEqual(['Current is above 50 A: a short circuit']);
    expect(text({ voltage: '40 V' })).toEqual(['Voltage is above the usual 10 V to 30 V: two vehicle systems']);
  });

  it('says which unit it took where the difference is below the digits', () => {
    const { assumptions } = heater.calculate({ ...good, backPressure: '3 inH2O' });
    expect(assumptions).toContainEqual(expect.objectContaining({ code: 'unit_assumed', path: ['backPressure'] }));
  });

  it('leaves an optional output undefined rather than making one up', () => {
    expect(heater.calculate(good).intermediates.perPascal).toBeUndefined();
  });
});

describe('a bad input', () => {
  it.each([
    ['a missing input', { voltage: undefined }, { code: 'missing_input', path: ['voltage'], example: '12.0 V' }],
    ['text that is no number', { voltage: 'about twelve' }, { code: 'not_a_number', path: ['voltage'], given: 'about twelve' }],
    ['a number that is too large', { voltage: '1e999 V' }, { code: 'not_a_number', reason: 'not_finite' }],
    ['a bare number', { voltage: 12 }, { code: 'missing_unit', path: ['voltage'], given: 12 }],
    ['an unknown unit', { voltage: '12 vlt' }, { code: 'unknown_unit', unit: 'vlt', given: '12 vlt' }],
    [
      'an ambiguous unit',
      { backPressure: '3.00000 inH2O' },
      { code: 'ambiguous_unit', candidates: expect.arrayContaining(['inH2O_4C', 'inH2O_60F']) },
    ],
    ['a unit of another kind', { voltage: '12 A' }, { code: 'wrong_kind', expected: 'voltage', found: ['electricCurrent'] }],
    ['a choice that does not exist', { mode: 'maybe' }, { code: 'not_a_choice', given: 'maybe', candidates: ['on', 'off'] }],
    ['a count that is not whole', { repeats: 1.5 }, { code: 'wrong_type', path: ['repeats'], given: 1.5 }],
    ['a count out of range', { repeats: '9' }, { code: 'out_of_range', path: ['repeats'], bound: 'max', limit: { value: 5 } }],
    ['a flag that is neither', { checked: 'perhaps' }, { code: 'wrong_type', path: ['checked'], given: 'perhaps' }],
    ['an empty list', { pulses: [] }, { code: 'list_length', path: ['pulses'], bound: 'min', limit: 1 }],
    [
      'a list that is too long',
      { pulses: Array.from({ length: 4 }, () => ({ duration: '1 s' })) },
      { code: 'list_length', bound: 'max', limit: 3 },
    ],
    ['a list that is none', { pulses: 'two' }, { code: 'wrong_type', expected: 'a list', given: 'two' }],
    [
      'an issue inside a list',
      { pulses: [{ duration: '1 s' }, { duration: '2 kg' }] },
      { code: 'wrong_kind', path: ['pulses', 1, 'duration'] },
    ],
    ['a name that does not exist', { votage: '12 V' }, { code: 'unknown_input', path: ['votage'], candidates: ['voltage'], given: '12 V' }],
    ['inputs that have no result', { losses: '40 W' }, { code: 'no_solution', path: ['losses'] }],
    ['a record with a foreign key', { voltage: { value: 1, unit: 'V', note: 'x' } }, { code: 'unknown_input', path: ['voltage', 'note'] }],
  ])('%s', (_, change, expected) => {
    expect(firstIssue(change)).toMatchObject(expected);
  });

  it.each([
    ['11 psi', 'max', 10, 'psi'],
    ['0.8 bar', 'max', 0.689476, 'bar'],
    ['-70 mbar', 'min', -68.9476, 'mbar'],
  ])('%s: the limit is in the unit that was typed', (given, bound, value, unit) => {
    const issue = firstIssue({ backPressure: given });
    expect(issue).toMatchObject({ code: 'out_of_range', given, bound, limit: { unit, inclusive: true } });
    if (issue.code === 'out_of_range') expect(issue.limit.value).toBeCloseTo(value, 3);
  });

  it('tells an exclusive limit from an inclusive one', () => {
    expect(firstIssue({ voltage: '0 V' })).toMatchObject({ code: 'out_of_range', bound: 'min', limit: { inclusive: false } });
    expect(issuesOf({ ...good, current: '0 A' })).toEqual([]);
    expect(issuesOf({ ...good, voltage: '60 V' })).toEqual([]);
  });

  it('reports every issue at once', () => {
    expect(
      issuesOf({ voltage: 'x', current: '1 m' })
        .map((issue) => pathText(issue.path))
        .sort(),
    ).toEqual(['checked', 'current', 'name', 'pulses', 'repeats', 'voltage'].sort());
  });

  it.each([[null], [undefined], [42], ['text'], [[]], [new Date(0)]])('%s in place of an object is refused, not thrown at', (input) => {
    expect(heater.runUnknown(input).ok).toBe(false);
  });

  it('keeps names of Object.prototype apart from inputs', () => {
    const hostile = JSON.parse('{"__proto__": {"voltage": "12 V"}, "constructor": 1}');
    const codes = issuesOf(hostile).map((issue) => `${issue.code} ${pathText(issue.path)}`);
    expect(codes).toContain('missing_input voltage');
    expect(codes).toContain('unknown_input constructor');
  });

  it('throws the same issues from calculate', () => {
    const bad = { ...good, voltage: '12 A' };
    try {
      heater.calculate(bad);
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(CalculationError);
      expect((error as CalculationError).issues).toEqual(issuesOf(bad));
      expect((error as Error).message).toContain('"A" is not a unit of voltage');
    }
  });

  it('has a sentence for every issue that names the field and what would be right', () => {
    const sentences = [
      firstIssue({ voltage: undefined }),
      firstIssue({ voltage: '12' }),
      firstIssue({ voltage: '99 V' }),
      firstIssue({ mode: 'maybe' }),
      firstIssue({ votage: '12 V' }),
    ].map(issueText);
    expect(sentences).toEqual([
      'Voltage is missing; for example 12.0 V.',
      'Voltage: "12" has no unit; use one of V, mV.',
      'Voltage: "99 V" is out of range; it must be at most 60 V.',
      'Mode: "maybe" is not a choice; use one of on, off.',
      '"votage" is not an input here; did you mean "voltage"?',
    ]);
  });
});

describe('the limit in a message', () => {
  // 10 psi is 0.689475729… bar, and −1 psi is −68.9475729… mbar: both are rounded into the range.
  it.each([
    ['backPressure', '0.8 bar', 'at most 0.689475 bar'],
    ['backPressure', '-90 mbar', 'at least -68.9475 mbar'],
    ['fluidTemperature', '-300 °C', 'at least 0 °C'],
    ['fluidTemperature', '-500 °F', 'at least 32 °F'],
    ['fluidTemperature', '-1 K', 'at least 273.15 K'],
    ['fluidTemperature', '400 °F', 'at most 212 °F'],
  ])('of %s = %s reads "%s"', (key, given, expected) => {
    const result = heater.run({ ...good, [key]: given });
    expect(result.ok ? '' : result.issues.map((issue) => issueText(issue)).join()).toContain(`it must be ${expected}.`);
  });

  it('is a number without noise', () => {
    const issue = firstIssue({ fluidTemperature: '-1 °F' });
    expect(issue.code === 'out_of_range' && issue.limit.value).toBe(32);
  });
});
