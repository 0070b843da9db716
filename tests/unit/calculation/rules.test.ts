import {
  choice,
  count,
  countingKeys,
  defineCalculation,
  formOf,
  formula,
  group,
  issueText,
  list,
  oneOf,
  quantity,
  quantityOutput,
  relevantWhen,
  section,
  together,
  whenGiven,
} from '@wallflow/calculation';
import { inputJsonSchema } from '@wallflow/calculation/json-schema';
import { length, mass, time, volume } from '@wallflow/units';
import { describe, expect, it } from 'vitest';

const grams = (label: string) => quantity(mass, { symbol: 'm', label, range: '0 <= m <= 5 kg', example: '64 g', units: ['g'] });
const litres = (label: string) => quantity(volume, { symbol: 'V', label, range: '0 <= V <= 5 L', example: '59 mL', units: ['mL'] });
const seconds = (label: string) => quantity(time, { symbol: 't', label, range: '0 < t <= 3600 s', example: '60 s', units: ['s'] });

const seen: Record<string, unknown>[] = [];

/** Every rule once, with a result that does not matter. */
const sample = defineCalculation({
  id: 'rules',
  version: '1.0.0',
  subject: 'training',
  title: 'Rules',
  purpose: 'Which inputs count?',
  method: 'none',
  inputs: {
    ...section({ label: 'What was collected' }, oneOf({ mass: grams('Mass'), volume: litres('Volume') })),
    ...oneOf({ nominalMass: grams('Nominal mass'), nominalVolume: litres('Nominal volume') }, { prefer: 'nominalMass', required: false }),
    ...together({ start: seconds('Start'), end: seconds('End') }),
    ...together({ before: seconds('Before'), after: seconds('After') }, { otherwise: { code: 'half', text: 'One alone says nothing.' } }),
    way: choice({ label: 'Way', options: { straight: 'straight', bent: 'bent' }, default: ['straight', 'most are'] }),
    ...relevantWhen('way', 'bent', {
      bends: count({ symbol: 'n', label: 'Bends', min: 1, max: 5, example: 2 }),
      radius: quantity(length, { symbol: 'r', label: 'Radius', range: '1 <= r <= 100 mm', default: ['20 mm', 'usual'] }),
    }),
    ...whenGiven(['start', 'mass'], { pace: seconds('Pace') }),
    runs: list(oneOf({ byMass: grams('By mass'), byVolume: litres('By volume') }, { both: 'allowed' }), {
      label: 'Runs',
      min: 0,
      max: 3,
      example: [{ byMass: '1 g' }],
    }),
    place: group(
      { height: quantity(length, { symbol: 'h', label: 'Height', range: '0 <= h <= 1 km', example: '230 m' }) },
      { label: 'Place' },
    ),
  },
  outputs: { total: quantityOutput(mass, { symbol: 'M', label: 'Total' }) },
  steps: [formula('total', 'mass * 0 + 1')],
  sources: [{ type: 'derivation', title: 'none', mark: 'read' }],
  compute(input) {
    seen.push(input);
    return { total: 1 };
  },
});

const base = { mass: '3 g', pace: '1 s', runs: [], place: { height: '1 m' } };

function problems(input: unknown): string[] {
  const result = sample.run(input as never);
  return result.ok ? [] : result.issues.map((issue) => `${issue.code} ${issue.path.join('.')}: ${issueText(issue)}`);
}

function accepted(input: unknown) {
  const result = sample.run(input as never);
  if (!result.ok) throw new Error(problems(input).join());
  return { result, input: seen.at(-1) ?? {} };
}

describe('one of several inputs', () => {
  it('is asked for once where none is given', () => {
    expect(problems({ ...base, mass: undefined, pace: undefined })).toEqual(['missing_input mass: Enter either Mass or Volume.']);
  });

  it('is refused beside another', () => {
    expect(problems({ ...base, volume: '3 mL' })).toEqual([expect.stringContaining('inconsistent_inputs mass')]);
  });

  it('that is preferred counts where both are given, and a warning says so', () => {
    const { result, input } = accepted({ ...base, nominalMass: '1 g', nominalVolume: '2 mL' });
    expect(input).not.toHaveProperty('nominalVolume');
    expect(result.warnings).toMatchObject([{ code: 'given_twice', path: ['nominalVolume'] }]);
  });

  it('is asked for in each row of a list', () => {
    expect(problems({ ...base, runs: [{ byMass: '1 g' }, {}, { byMass: '1 g', byVolume: '1 mL' }] })).toEqual([
      expect.stringContaining('missing_input runs.1.byMass'),
    ]);
  });
});

describe('inputs that belong together', () => {
  it('are all asked for where one is given', () => {
    expect(problems({ ...base, start: '1 s' })).toEqual([expect.stringContaining('missing_input end')]);
  });

  it('do not count in part where the definition says what that means', () => {
    const { result, input } = accepted({ ...base, before: '1 s' });
    expect(input).not.toHaveProperty('before');
    expect(result.warnings).toMatchObject([{ code: 'half', text: 'One alone says nothing.' }]);
  });
});

describe('an input that counts only for a choice', () => {
  it('is not needed, nor its default assumed, where it does not count', () => {
    const { result, input } = accepted(base);
    expect(input).not.toHaveProperty('bends');
    expect(input).not.toHaveProperty('radius');
    expect(result.assumptions.map(({ path }) => path?.[0])).toEqual(['way']);
  });

  it('is needed where it counts, and has its default there', () => {
    expect(problems({ ...base, way: 'bent' })).toEqual([expect.stringContaining('missing_input bends')]);
    expect(accepted({ ...base, way: 'bent', bends: 2 }).input).toMatchObject({ bends: 2, radius: 0.02 });
  });

  it('is left out where it does not count, and the result says so', () => {
    const { result, input } = accepted({ ...base, bends: 2 });
    expect(input).not.toHaveProperty('bends');
    expect(result.assumptions).toContainEqual(expect.objectContaining({ code: 'not_used', path: ['bends'] }));
  });

  it('may depend on any of several being given', () => {
    expect(problems({ ...base, mass: undefined, volume: '1 mL', pace: undefined })).toEqual([]);
    expect(problems({ ...base, pace: undefined })).toEqual([expect.stringContaining('missing_input pace')]);
    expect(problems({ ...base, mass: undefined, volume: '1 mL', pace: undefined, start: '1 s', end: '2 s' })).toEqual([
      expect.stringContaining('missing_input pace'),
    ]);
  });
});

describe('a group', () => {
  it('is a record with inputs of its own', () => {
    expect(problems({ ...base, place: { height: '9 km' } })).toEqual([expect.stringContaining('out_of_range place.height')]);
    expect(accepted({ ...base, place: { height: '230 m' } }).input).toMatchObject({ place: { height: 230 } });
  });
});

describe('what a form is told', () => {
  const form = formOf(sample.spec.inputs);

  it('names the sets, the headings and the conditions', () => {
    expect(form.oneOf.map(({ keys }) => keys)).toEqual([
      ['mass', 'volume'],
      ['nominalMass', 'nominalVolume'],
    ]);
    expect(form.together.map(({ keys }) => keys)).toEqual([
      ['start', 'end'],
      ['before', 'after'],
    ]);
    expect(form.sections).toMatchObject([{ label: 'What was collected', keys: ['mass', 'volume'] }]);
    expect(form.fields.find(({ key }) => key === 'bends')).toMatchObject({ optional: false, when: [{ key: 'way', is: ['bent'] }] });
    expect(form.fields.find(({ key }) => key === 'place')?.inner?.fields.map(({ key }) => key)).toEqual(['height']);
  });

  it('tells which inputs count with what stands in it', () => {
    const counting = (input: Record<string, unknown>) => countingKeys(form, (key) => input[key]);
    expect(counting(base).has('bends')).toBe(false);
    expect(counting({ ...base, way: 'bent' }).has('bends')).toBe(true);
    expect(counting({ volume: '1 mL' }).has('pace')).toBe(false);
  });
});

/** A conditional keyword of JSON Schema, made from pairs as a linter takes `then` for a promise. */
function conditional(asked: object, rule: object): object {
  return Object.fromEntries([
    ['if', asked],
    ['then', rule],
  ]);
}

describe('the JSON Schema', () => {
  it('says the rules in standard keywords', () => {
    const schema = inputJsonSchema(sample) as { allOf: unknown[]; properties: Record<string, { items?: unknown }> };
    expect(schema.allOf).toEqual(
      expect.arrayContaining([
        { oneOf: [{ required: ['mass'] }, { required: ['volume'] }] },
        { dependentRequired: { start: ['end'], end: ['start'] } },
        conditional({ properties: { way: { enum: ['bent'] } }, required: ['way'] }, { required: ['bends'] }),
        conditional({ anyOf: [{ required: ['start'] }, { required: ['mass'] }] }, { required: ['pace'] }),
      ]),
    );
    expect(schema.properties.runs?.items).toMatchObject({ allOf: [{ anyOf: [{ required: ['byMass'] }, { required: ['byVolume'] }] }] });
  });
});

describe('a definition is refused', () => {
  const written = { ...sample.spec, answer: undefined, example: {} };
  it.each([
    ['for a condition on what is no input', { ...whenGiven('nothing', { pace: seconds('Pace') }) }, 'depends on nothing'],
    [
      'for a condition that cannot hold',
      { way: sample.spec.inputs._zod.def.shape.way, ...relevantWhen('way', 'round', { pace: seconds('Pace') }) },
      'which it cannot be',
    ],
    ['for two inputs with one label', { pace: seconds('Pace'), other: seconds('Pace') }, 'two fields are called "Pace"'],
  ])('%s', (_, inputs, reason) => {
    const { answer, ...others } = written;
    expect(() => defineCalculation({ ...others, inputs, steps: [formula('total', '1')] } as never)).toThrow(reason);
  });

  it('for an example outside its own limits', () => {
    expect(() => quantity(mass, { symbol: 'm', label: 'Mass', range: '0 < m <= 5 kg', example: '6 kg' })).toThrow('outside its own limits');
  });
});
