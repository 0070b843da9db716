import { fieldOf, type InputField, isOptional, itemSchema, shapeOf, shortText } from '@wallflow/calculation';
import { unitSymbol } from '@wallflow/units';
import type * as z from 'zod/mini';
import { unitChoices } from '../../src/calculator/result-view.js';
import type { FieldData, QuantityFieldData } from '../../src/data/types.js';

type QuantityField = Extract<InputField, { type: 'quantity' }>;

function exampleUnit(field: QuantityField): string {
  const parsed = field.kind.parse(field.example);
  return parsed.ok ? parsed.unit : field.kind.baseUnit;
}

function rangeText(field: QuantityField): string {
  const unit = exampleUnit(field);
  const [first, second] = [field.limits.min, field.limits.max].map((limit) => shortText(field.kind, limit, unit));
  // A unit that counts the other way round, as miles per gallon, turns the bounds about.
  const inverted = field.kind.in(field.kind.si(2), unit as never) < field.kind.in(field.kind.si(1), unit as never);
  const [low, high] = inverted ? [second, first] : [first, second];
  const [lowInclusive, highInclusive] = inverted
    ? [field.limits.maxInclusive, field.limits.minInclusive]
    : [field.limits.minInclusive, field.limits.maxInclusive];
  return `${lowInclusive ? 'from' : 'more than'} ${low} ${highInclusive ? 'to' : 'to less than'} ${high}`;
}

/** Whether the keyboard needs a minus: the limit lies below zero in a unit that is offered, as -40 °C does above absolute zero. */
function mayBeNegative(field: QuantityField, units: QuantityFieldData['units']): boolean {
  const { min } = field.limits;
  return units.some(({ id }) => field.kind.in(min as never, id as never) < 0);
}

function quantityData(field: QuantityField, base: { key: string; optional: boolean }): QuantityFieldData {
  const units = unitChoices(field.kind, field.units);
  const unit = exampleUnit(field);
  const offered = units.some((choice) => choice.id === unit)
    ? units
    : [...units, { id: unit, symbol: unitSymbol(field.kind.kind, unit) || unit }];
  return {
    ...base,
    type: 'quantity',
    label: field.label,
    kind: field.kind.kind,
    symbolTex: field.symbol,
    units: offered,
    unit,
    range: rangeText(field),
    ...(mayBeNegative(field, offered) ? { mayBeNegative: true as const } : {}),
    ...(field.usual === undefined ? {} : { usual: field.usual.map((bound) => shortText(field.kind, bound, unit)).join(' to ') }),
    example: field.example,
  };
}

/** A default as people write it: `3e-13 m²` rather than `3e-13 m2`. */
function defaultText(field: QuantityField): string | undefined {
  if (field.default === undefined) return undefined;
  const parsed = field.kind.parse(field.default);
  return parsed.ok ? shortText(field.kind, parsed.quantity, parsed.unit) : field.default;
}

function texts(field: InputField): { description?: string; default?: string; defaultReason?: string } {
  const chosen = field.type === 'quantity' ? defaultText(field) : 'default' in field ? field.default : undefined;
  const words =
    field.type === 'choice' && typeof chosen === 'string'
      ? (field.options[chosen] ?? chosen)
      : typeof chosen === 'boolean'
        ? chosen
          ? 'yes'
          : 'no'
        : chosen;
  const reason = 'defaultReason' in field ? field.defaultReason : undefined;
  return {
    ...(field.description === undefined ? {} : { description: field.description }),
    ...(words === undefined ? {} : { default: String(words) }),
    ...(reason === undefined ? {} : { defaultReason: reason }),
  };
}

/** How the input goes with others, as the definition says. */
function amongOthers(key: string, { rules, ...field }: InputField): Pick<FieldData, 'insteadOf' | 'when' | 'standard'> {
  const others = rules?.oneOf?.required === true ? rules.oneOf.keys.filter((other) => other !== key) : [];
  return {
    ...(others.length === 0 ? {} : { insteadOf: others }),
    ...(rules?.when === undefined ? {} : { when: rules.when }),
    ...('default' in field && typeof field.default === 'string' && field.type === 'choice' ? { standard: field.default } : {}),
  };
}

function fieldData(key: string, schema: z.core.$ZodType): FieldData {
  const field = fieldOf(schema);
  if (field === undefined) throw new Error(`${key}: made without one of the field functions`);
  const base = { key, label: field.label, ...texts(field), ...amongOthers(key, field), optional: isOptional(schema) };
  switch (field.type) {
    case 'quantity':
      return { ...base, ...quantityData(field, base) };
    case 'choice':
      return {
        ...base,
        type: 'choice',
        options: Object.entries(field.options).map(([option, label]) => ({ key: option, label })),
        example: field.options[field.example] ?? field.example,
      };
    case 'flag':
      return { ...base, type: 'flag', example: field.example ? 'yes' : 'no' };
    case 'count':
      return {
        ...base,
        type: 'count',
        symbolTex: field.symbol,
        range: `from ${field.min} to ${field.max}`,
        example: String(field.example),
      };
    case 'text':
      return { ...base, type: 'text', maxLength: field.maxLength, example: field.example };
    case 'list': {
      const item = itemSchema(schema);
      if (item === undefined) throw new Error(`${key}: a list without records`);
      return { ...base, type: 'list', min: field.min, max: field.max, item: fieldsData(item) };
    }
    case 'group': {
      const item = itemSchema(schema);
      if (item === undefined) throw new Error(`${key}: a group without inputs`);
      return { ...base, type: 'group', item: fieldsData(item) };
    }
  }
}

/** The inputs of a calculation as the form needs them. */
export function fieldsData(schema: z.core.$ZodObject): FieldData[] {
  return shapeOf(schema).map(([key, child]) => fieldData(key, child));
}
