import * as z from 'zod/mini';
import type { AnyCalculation } from './definition.js';
import { fieldOf, type InputField, type QuantityField } from './field.js';
import { limitInUnit } from './limit.js';
import { ruleKeywords } from './rules-schema.js';

export { resultJsonSchema } from './result-schema.js';

type Keywords = Record<string, unknown>;

/** Limits of a bare number, which only a kind without units accepts. */
function bareNumber({ limits }: QuantityField): Keywords {
  return {
    type: 'number',
    [limits.minInclusive ? 'minimum' : 'exclusiveMinimum']: limits.min,
    [limits.maxInclusive ? 'maximum' : 'exclusiveMaximum']: limits.max,
  };
}

/** Numbers as they are, or as they were typed. */
const typed = { type: 'string', maxLength: 200 };

const record: Keywords = {
  type: 'object',
  properties: {
    value: { anyOf: [{ type: 'number' }, typed] },
    unit: { type: 'string', maxLength: 200 },
    uncertainty: { anyOf: [{ type: 'number', minimum: 0 }, typed] },
  },
  required: ['value', 'unit'],
  additionalProperties: false,
};

/** No standard keyword compares texts with units, so that limits of quantities stand under names of our own. */
function quantityKeywords(field: QuantityField): Keywords {
  const { kind, limits, usual, symbol } = field;
  const unit = field.units[0] ?? kind.baseUnit;
  const at = (si: number, end: 'min' | 'max', inclusive: boolean) => limitInUnit(kind, { si, end, inclusive }, unit);
  return {
    anyOf: [{ type: 'string', maxLength: 200 }, record, ...(kind.baseUnit === '1' ? [bareNumber(field)] : [])],
    'x-symbol': symbol,
    'x-minimum': at(limits.min, 'min', limits.minInclusive),
    'x-maximum': at(limits.max, 'max', limits.maxInclusive),
    ...(usual === undefined
      ? {}
      : {
          'x-usual': {
            minimum: at(usual[0], 'min', true),
            maximum: at(usual[1], 'max', true),
            ...(field.usualReason === undefined ? {} : { reason: field.usualReason }),
          },
        }),
  };
}

function keywordsOf(field: InputField): Keywords {
  switch (field.type) {
    case 'quantity':
      return quantityKeywords(field);
    case 'choice':
      return { 'x-labels': field.options };
    case 'count': {
      const { min, max, symbol } = field;
      const digits = { type: 'string', maxLength: 20, pattern: '^\\s*[+-]?\\d+\\s*$' };
      return { anyOf: [{ type: 'integer', minimum: min, maximum: max }, digits], 'x-symbol': symbol };
    }
    default:
      return {};
  }
}

/**
 * JSON Schema (draft 2020-12) of what a calculation accepts. Standard keywords wherever there are some; `x-kind`, `x-units`,
 * `x-symbol`, `x-minimum`, `x-maximum`, `x-usual`, `x-labels` and `x-default-reason` for what they cannot say. What fits the
 * schema may still be refused, as a text is only read by the calculation; what does not fit it is always refused.
 */
export function inputJsonSchema(calculation: AnyCalculation): Record<string, unknown> {
  return {
    ...inputsJsonSchema(calculation.spec.inputs),
    title: calculation.title,
    description: calculation.spec.purpose,
    'x-calculation': calculation.id,
    'x-version': calculation.version,
  };
}

/** The same for any object of inputs, such as a form that several calculations read. */
export function inputsJsonSchema(inputs: z.core.$ZodType): Record<string, unknown> {
  return z.toJSONSchema(inputs, {
    io: 'input',
    override: ({ zodSchema, jsonSchema }) => {
      if (zodSchema._zod.def.type === 'object') Object.assign(jsonSchema, ruleKeywords(zodSchema as unknown as z.core.$ZodObject));
      const field = fieldOf(zodSchema);
      if (field === undefined) return;
      const reason = 'defaultReason' in field && field.defaultReason !== undefined ? { 'x-default-reason': field.defaultReason } : {};
      // zod leaves the examples of a transforming schema out, because they could be of its output. Ours are of its input.
      Object.assign(jsonSchema, keywordsOf(field), reason, { examples: [field.example] });
    },
  }) as Record<string, unknown>;
}
