import { type AnyCalculation, fieldOf } from '@wallflow/calculation';
import { inputJsonSchema } from '@wallflow/calculation/json-schema';
import { describe, expect, it } from 'vitest';
import { allCalculations } from '../../support/calculations.js';
import { good, heater } from './sample.js';

interface Schema {
  readonly type?: string;
  readonly anyOf?: readonly Schema[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly items?: Schema;
  readonly [keyword: string]: unknown;
}

const schema = inputJsonSchema(heater) as Schema;

function property(key: string): Schema {
  const found = schema.properties?.[key];
  if (found === undefined) throw new Error(`no ${key}`);
  return found;
}

/** The fields of a record and of the records in its lists, each with its schema. */
function fieldsOf(
  shape: Readonly<Record<string, Parameters<typeof fieldOf>[0]>>,
  described: Schema,
): [ReturnType<typeof fieldOf>, Schema][] {
  return Object.entries(shape).flatMap(([key, child]) => {
    const own = described.properties?.[key];
    if (own === undefined) throw new Error(`no ${key}`);
    return [[fieldOf(child), own]];
  });
}

describe('the JSON Schema of an input', () => {
  it('has the limits of a quantity in the unit that is offered first, and what is usual', () => {
    expect(property('voltage')).toMatchObject({
      'x-kind': 'voltage',
      'x-symbol': 'U',
      'x-minimum': { value: 0, unit: 'V', text: '0 V', inclusive: false },
      'x-maximum': { value: 60, unit: 'V', text: '60 V', inclusive: true },
      'x-usual': { minimum: { text: '10 V' }, maximum: { text: '30 V' }, reason: 'two vehicle systems' },
      examples: ['12.0 V'],
    });
    expect(property('current')).toMatchObject({ 'x-usual': { reason: { below: 'a broken wire', above: 'a short circuit' } } });
    expect(property('fluidTemperature')).not.toHaveProperty('x-usual');
  });

  it('has the limits of a count as standard keywords', () => {
    expect(property('repeats').anyOf?.[0]).toEqual({ type: 'integer', minimum: 1, maximum: 5 });
  });

  it('has the words of every choice, and why a default is taken', () => {
    expect(property('mode')).toMatchObject({
      enum: ['on', 'off'],
      default: 'on',
      'x-labels': { on: 'switched on', off: 'switched off' },
      'x-default-reason': 'usual',
    });
    expect(property('losses')).toMatchObject({ default: '0 W', 'x-default-reason': 'well insulated' });
  });

  it('reaches into lists', () => {
    expect(property('pulses')).toMatchObject({ minItems: 1, maxItems: 3 });
    expect(property('pulses').items?.properties?.duration).toMatchObject({ 'x-maximum': { text: '3600 s' } });
  });

  it.each(allCalculations.map((calculation) => [calculation.id, calculation] as const))(
    'of %s takes a bare number only where the calculation does',
    (_, calculation: AnyCalculation) => {
      const described = inputJsonSchema(calculation) as Schema;
      for (const [field, own] of fieldsOf(calculation.spec.inputs.shape, described)) {
        if (field?.type !== 'quantity') continue;
        const types = own.anyOf?.map(({ type }) => type);
        expect(types).toEqual(field.kind.baseUnit === '1' ? ['string', 'object', 'number'] : ['string', 'object']);
        expect(field.kind.parse(String(field.limits.max)).ok, field.label).toBe(field.kind.baseUnit === '1');
      }
    },
  );
});

describe('input that is nearly right', () => {
  it.each(['Yes', 'YES', ' yes ', 'TRUE'])('takes %s for yes', (checked) => {
    expect(heater.run({ ...good, checked }).ok).toBe(true);
  });

  it('still refuses what is neither yes nor no', () => {
    for (const checked of ['yesno', 'y', '', 'yes!']) expect(heater.run({ ...good, checked }).ok).toBe(false);
  });

  it('is told that a long unit is not known, and that an uncertainty is never negative', () => {
    const issuesWith = (voltage: unknown) => {
      const result = heater.runUnknown({ ...good, voltage });
      return result.ok ? [] : result.issues;
    };
    expect(issuesWith({ value: 1, unit: 'v'.repeat(41) })).toMatchObject([{ code: 'unknown_unit', path: ['voltage'] }]);
    expect(issuesWith({ value: 1, unit: 'V', uncertainty: -1 })).toMatchObject([
      { code: 'not_a_number', path: ['voltage'], reason: 'negative_uncertainty' },
    ]);
  });
});
