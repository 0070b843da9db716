import type { AnyCalculation } from './definition.js';
import type { OutputField, Outputs } from './outputs.js';

type Keywords = Record<string, unknown>;

function described({ label, description }: OutputField): Keywords {
  return { title: label, ...(description === undefined ? {} : { description }) };
}

function fieldSchema(field: OutputField): Keywords {
  switch (field.type) {
    case 'quantity': {
      const { kind, symbol, units } = field;
      return { ...described(field), type: 'number', 'x-kind': kind.kind, 'x-unit': kind.baseUnit, 'x-units': units, 'x-symbol': symbol };
    }
    case 'choice':
      return { ...described(field), enum: Object.keys(field.options), 'x-labels': field.options };
    case 'count':
      return { ...described(field), type: 'number', 'x-symbol': field.symbol };
    case 'text':
      return { ...described(field), type: 'string' };
    case 'table':
      return {
        ...described(field),
        type: 'array',
        // A row may carry more than the columns that are shown.
        items: { ...recordSchema(field.columns), additionalProperties: true },
        ...(field.plot === undefined ? {} : { 'x-plot': field.plot }),
      };
  }
}

function recordSchema(fields: Outputs): Keywords {
  const entries = Object.entries(fields);
  return {
    type: 'object',
    properties: Object.fromEntries(entries.map(([key, field]) => [key, fieldSchema(field)])),
    required: entries.filter(([, field]) => !field.optional).map(([key]) => key),
    additionalProperties: false,
  };
}

const path: Keywords = { type: 'array', items: { type: ['string', 'number'] } };
const text: Keywords = { type: 'string' };

function listOf(properties: Keywords, required: readonly string[]): Keywords {
  return { type: 'array', items: { type: 'object', properties, required } };
}

/** Names of the results that can have a ±. */
function uncertaintySchema(fields: Outputs): Keywords {
  const keys = Object.entries(fields).flatMap(([key, field]) => (field.type === 'quantity' ? [key] : []));
  const entry = listOf({ path, contribution: { type: 'number' }, share: { type: 'number', minimum: 0, maximum: 1 } }, [
    'path',
    'contribution',
    'share',
  ]);
  const each = (schema: Keywords): Keywords => ({
    type: 'object',
    properties: Object.fromEntries(keys.map((key) => [key, schema])),
    additionalProperties: false,
  });
  return {
    type: 'object',
    properties: { values: each({ type: 'number', minimum: 0 }), budget: each(entry) },
    required: ['values', 'budget'],
    additionalProperties: false,
  };
}

/**
 * JSON Schema (draft 2020-12) of what `run` gives, once it is JSON: a result with its values in SI, or issues. `x-kind`, `x-unit` (of
 * the number), `x-units` (to show it in), `x-symbol`, `x-labels` and `x-plot` say what no standard keyword does. Optional results are
 * left out where they do not exist.
 */
export function resultJsonSchema(calculation: AnyCalculation): Record<string, unknown> {
  const { outputs, intermediates } = calculation.spec as { outputs: Outputs; intermediates: Outputs };
  const definition: Keywords = {
    type: 'object',
    properties: { id: { const: calculation.id }, version: { const: calculation.version } },
    required: ['id', 'version'],
    additionalProperties: false,
  };
  const success: Keywords = {
    type: 'object',
    properties: {
      ok: { const: true },
      outputs: recordSchema(outputs),
      intermediates: recordSchema(intermediates),
      warnings: listOf({ code: text, text, path, output: text }, ['code', 'text']),
      assumptions: listOf({ code: text, text, path }, ['code', 'text']),
      advice: listOf({ tone: { enum: ['do', 'do-not', 'note'] }, text }, ['tone', 'text']),
      method: text,
      uncertainty: uncertaintySchema({ ...intermediates, ...outputs }),
      inputDigits: { type: 'number', minimum: 1 },
      definition,
    },
    required: ['ok', 'outputs', 'intermediates', 'warnings', 'assumptions', 'advice', 'method', 'inputDigits', 'definition'],
    additionalProperties: false,
  };
  const failure: Keywords = {
    type: 'object',
    properties: { ok: { const: false }, issues: { ...listOf({ code: text, path }, ['code', 'path']), minItems: 1 }, definition },
    required: ['ok', 'issues', 'definition'],
    additionalProperties: false,
  };
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: calculation.title,
    description: calculation.spec.purpose,
    oneOf: [success, failure],
    'x-calculation': calculation.id,
    'x-version': calculation.version,
  };
}
