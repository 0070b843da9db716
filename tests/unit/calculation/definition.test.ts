import {
  createRegistry,
  defineCalculation,
  formula,
  inconsistentInputs,
  isRefusal,
  missingInputs,
  optional,
  quantity,
  quantityOutput,
} from '@wallflow/calculation';
import { inputJsonSchema } from '@wallflow/calculation/json-schema';
import { length, mass } from '@wallflow/units';
import { describe, expect, it } from 'vitest';
import { good, heater } from './sample.js';

const side = quantity(length, { symbol: 'a', label: 'Side', range: '0 m <= x <= 1 km', example: '2 m' });

const base = {
  id: 'twice',
  version: '1.0.0',
  subject: 'gas',
  title: 'Twice',
  purpose: 'Doubles.',
  method: 'doubling',
  inputs: { side },
  outputs: { double: quantityOutput(length, { symbol: 'd', label: 'Double' }) },
  steps: [formula('double', '2 * side')],
  sources: [{ type: 'derivation', title: 'Doubling', mark: 'read' }],
  compute: (input: { side: number }) => ({ double: 2 * input.side }),
} as const;

describe('a definition with a mistake does not load', () => {
  it.each([
    ['an id that is not kebab-case', { id: 'Twice It' }],
    ['a version that is not semantic', { version: '1' }],
    ['a last step that gives no output', { outputs: {}, intermediates: base.outputs }],
    ['a formula with an unknown name', { steps: [formula('double', '2 * sides')] }],
    ['a sentence that mentions an unknown name', { steps: [formula('double', '2 * side', undefined, undefined, 'Twice [[sides]].')] }],
    ['a step without formula or words', { steps: [{ gives: 'double' }] }],
    ['no source', { sources: [] }],
  ])('%s', (_, change) => {
    expect(() => defineCalculation({ ...base, ...change } as never)).toThrow(/^twice|^Twice It/i);
  });

  it('an input without both limits, or with a limit in a foreign unit', () => {
    expect(() => quantity(length, { symbol: 'a', label: 'Side', range: '0 <= x', example: '1 m' })).toThrow('not a range');
    expect(() => quantity(length, { symbol: 'a', label: 'Side', range: '0 kg <= x <= 1 m', example: '1 m' })).toThrow('not a length');
    expect(() => quantity(mass, { symbol: 'm', label: 'Mass', range: '0 <= x <= 1 g', example: 'one' })).toThrow('not a mass');
  });
});

describe('the version of a definition', () => {
  const { version: _, ...unnumbered } = base;
  const change = (version: string) => ({ version, what: 'Another factor.', why: 'The source was misread.' });
  const versionOf = (others: object) => defineCalculation({ ...unnumbered, ...others } as never).version;

  it('is that of the newest line of its history, and 1.0.0 where there is none', () => {
    expect(versionOf({})).toBe('1.0.0');
    expect(versionOf({ history: [change('1.2.0'), change('1.1.0')] })).toBe('1.2.0');
    expect(() => versionOf({ version: '1.1.0', history: [change('1.2.0')] })).toThrow('the newest line of the history is of 1.2.0');
  });
});

describe('evaluate', () => {
  it('works on SI values and refuses what a calculation refuses', () => {
    const doubled = defineCalculation(base as never) as unknown as typeof heater;
    expect(doubled.evaluate({ side: 3 } as never)).toEqual({ double: 6 });
    const refusing = defineCalculation({ ...base, compute: () => inconsistentInputs('no', ['side']) } as never);
    expect(isRefusal(refusing.evaluate({ side: 3 } as never))).toBe(true);
  });

  it('turns a number that is not finite into an issue', () => {
    const broken = defineCalculation({ ...base, compute: () => ({ double: Number.NaN }) } as never);
    const result = broken.run({ side: '1 m' });
    expect(result.ok ? [] : result.issues).toMatchObject([{ code: 'no_solution', reason: expect.stringContaining('Double') }]);
  });
});

describe('JSON Schema', () => {
  it('names kinds, units and examples and what is needed', () => {
    const schema = inputJsonSchema(heater) as {
      required: string[];
      properties: Record<string, Record<string, unknown>>;
      additionalProperties: boolean;
    };
    expect(schema.required).toEqual(['voltage', 'current', 'pulses', 'repeats', 'checked', 'name']);
    expect(schema.properties.voltage).toMatchObject({
      title: 'Voltage',
      examples: ['12.0 V'],
      'x-kind': 'voltage',
      'x-units': ['V', 'mV'],
    });
    expect(schema.additionalProperties).toBe(false);
  });
});

describe('registry', () => {
  it('finds by id and subject, suggests, and refuses twins', () => {
    const registry = createRegistry([heater]);
    expect(registry.get('heater-energy')).toBe(heater);
    expect(registry.get('toString')).toBeUndefined();
    expect(registry.bySubject('gas')).toEqual([heater]);
    expect(registry.suggest('heater-enrgy')).toEqual(['heater-energy']);
    expect(() => createRegistry([heater], [heater])).toThrow('heater-energy');
  });

  it('keeps an example that runs', () => {
    expect(heater.run(heater.example).ok).toBe(true);
    expect(heater.run(good).ok).toBe(true);
  });
});

describe('an input that only this method needs', () => {
  it('is asked for with the example of its field', () => {
    const asking = defineCalculation({
      ...base,
      inputs: { side: optional(side) },
      compute: () => missingInputs('side'),
    } as never);
    const result = asking.run({});
    expect(result.ok ? [] : result.issues).toEqual([{ code: 'missing_input', path: ['side'], label: 'Side', example: '2 m' }]);
  });
});
