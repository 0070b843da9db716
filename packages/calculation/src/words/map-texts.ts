import * as z from 'zod/mini';
import type { CodedText } from '../definition.js';
import { describeField, fieldOf, type InputField } from '../field.js';
import { objectOf } from '../fields.js';
import type { OutputField, Outputs } from '../outputs.js';
import { pictureTexts } from '../picture.js';
import type { FieldRules } from '../rule.js';
import type { How, NestedCalculation, Step } from '../step.js';
import { itemSchema, shapeOf } from '../walk.js';
import type { AnySpec } from '../working/spec.js';

/** What becomes of one text of a definition; `key` says where it stands: `input.gasPressure.label`. */
export type MapText = (key: string, text: string) => string;

/** Other texts in a definition: every label, meaning, reason, option, heading and sentence of it by its key. */
export function mapTexts(spec: AnySpec, map: MapText, nested: (calculation: NestedCalculation) => NestedCalculation): AnySpec {
  const coded = (group: string, texts: readonly CodedText[]) =>
    texts.map(({ code, text }) => ({ code, text: map(`${group}.${code}`, text) }));
  return {
    ...spec,
    title: map('title', spec.title),
    purpose: map('purpose', spec.purpose),
    method: map('method', spec.method),
    ...(spec.history === undefined
      ? {}
      : {
          history: spec.history.map((change) => ({
            ...change,
            what: map(`history.${change.version}.what`, change.what),
            why: map(`history.${change.version}.why`, change.why),
          })),
        }),
    ...(spec.keywords === undefined ? {} : { keywords: map('keywords', spec.keywords.join(', ')).split(', ') }),
    ...(spec.uncertaintyNote === undefined ? {} : { uncertaintyNote: map('uncertaintyNote', spec.uncertaintyNote) }),
    inputs: new InputTexts(map).record(spec.inputs, 'input'),
    intermediates: outputs(spec.intermediates, 'result', map),
    outputs: outputs(spec.outputs, 'result', map),
    ...(spec.picture === undefined ? {} : { picture: pictureTexts(spec.picture, map) }),
    constants: Object.fromEntries(
      Object.entries(spec.constants).map(([key, one]) => [key, { ...one, label: map(`constant.${key}.label`, one.label) }]),
    ),
    steps: spec.steps.map((step) => stepTexts(step, `step.${step.gives}`, map, nested)),
    assumptions: coded('assumption', spec.assumptions),
    limits: coded('limit', spec.limits),
    cautions: coded('caution', spec.cautions),
  };
}

function options(texts: Readonly<Record<string, string>>, at: string, map: MapText): Record<string, string> {
  return Object.fromEntries(Object.entries(texts).map(([key, text]) => [key, map(`${at}.option.${key}`, text)]));
}

function labelled<T extends { readonly label: string; readonly description?: string }>(one: T, at: string, map: MapText): T {
  const description = one.description === undefined ? {} : { description: map(`${at}.description`, one.description) };
  return { ...one, label: map(`${at}.label`, one.label), ...description };
}

function outputs<O extends Outputs>(fields: O, at: string, map: MapText): O {
  return Object.fromEntries(Object.entries(fields).map(([key, field]) => [key, output(field, `${at}.${key}`, map)])) as unknown as O;
}

function output(field: OutputField, at: string, map: MapText): OutputField {
  const own = labelled(field, at, map);
  if (own.type === 'choice') return { ...own, options: options(own.options, at, map) };
  return own.type === 'table' ? { ...own, columns: outputs(own.columns, `${at}.column`, map) } : own;
}

function stepTexts(step: Step, at: string, map: MapText, nested: (calculation: NestedCalculation) => NestedCalculation): Step {
  return {
    ...step,
    ...(step.text === undefined ? {} : { text: map(`${at}.text`, step.text) }),
    ...(step.how === undefined ? {} : { how: howTexts(step.how, at, map, nested) }),
  };
}

function howTexts(how: How, at: string, map: MapText, nested: (calculation: NestedCalculation) => NestedCalculation): How {
  if (how.type === 'nested') return { ...how, calculation: nested(how.calculation) };
  if (how.type !== 'cases') return how;
  return { ...how, cases: how.cases.map((way, index) => ({ ...way, step: stepTexts(way.step, `${at}.way.${index + 1}`, map, nested) })) };
}

/** Inputs with other texts. Headings and sets that several inputs share are shared by the copies too. */
class InputTexts {
  private readonly map: MapText;
  private readonly shared = new Map<object, unknown>();

  constructor(map: MapText) {
    this.map = map;
  }

  record(schema: z.core.$ZodObject, at: string): z.core.$ZodObject {
    return objectOf(
      Object.fromEntries(shapeOf(schema).map(([key, child]) => [key, this.input(child, `${at}.${key}`)])),
    ) as z.core.$ZodObject;
  }

  private input(schema: z.core.$ZodType, at: string): z.core.$ZodType {
    const field = fieldOf(schema);
    if (field === undefined) return schema;
    const own = this.field(field, at);
    return describeField(this.copy(schema, own, at), own);
  }

  /** The schema with its wrappers and, of a list or a group, with the inputs in it. */
  private copy(schema: z.core.$ZodType, field: InputField, at: string): z.core.$ZodType {
    const def = schema._zod.def as z.core.$ZodTypeDef & { innerType?: z.core.$ZodType; element?: z.core.$ZodType };
    const item = def.type === 'array' || def.type === 'object' ? itemSchema(schema) : undefined;
    const inner = item === undefined ? undefined : this.record(item, `${at}.item`);
    const made =
      def.innerType !== undefined
        ? z.clone(schema, { ...def, innerType: this.copy(def.innerType, field, at) } as z.core.$ZodTypeDef)
        : inner === undefined
          ? z.clone(schema)
          : def.type === 'array'
            ? z.clone(schema, { ...def, element: inner } as z.core.$ZodTypeDef)
            : inner;
    const meta = z.globalRegistry.get(schema);
    if (meta?.title !== undefined) {
      const description = meta.description === undefined || field.description === undefined ? {} : { description: field.description };
      z.globalRegistry.add(made, { ...meta, title: field.label, ...description });
    }
    return made;
  }

  private field(field: InputField, at: string): InputField {
    const { map } = this;
    const own = labelled(field, at, map);
    const reason =
      'defaultReason' in own && own.defaultReason !== undefined ? { defaultReason: map(`${at}.defaultReason`, own.defaultReason) } : {};
    const rules = own.rules === undefined ? {} : { rules: this.rules(own.rules, at) };
    if (own.type === 'choice') return { ...own, ...reason, ...rules, options: options(own.options, at, map) };
    if (own.type !== 'quantity' || own.usualReason === undefined) return { ...own, ...reason, ...rules } as InputField;
    const usual = own.usualReason;
    const sides =
      typeof usual === 'string' ? map(`${at}.usualReason`, usual) : options(usual as Record<string, string>, `${at}.usualReason`, map);
    return { ...own, ...reason, ...rules, usualReason: sides };
  }

  private rules(rules: FieldRules, at: string): FieldRules {
    const { map } = this;
    const { section, together } = rules;
    const heading = section === undefined ? {} : { section: this.once(section, () => labelled(section, `${at}.section`, map)) };
    const otherwise = together?.otherwise;
    if (together === undefined || otherwise === undefined) return { ...rules, ...heading };
    const set = this.once(together, () => ({ ...together, otherwise: { ...otherwise, text: map(`${at}.otherwise`, otherwise.text) } }));
    return { ...rules, ...heading, together: set };
  }

  private once<T extends object>(of: T, make: () => T): T {
    if (!this.shared.has(of)) this.shared.set(of, make());
    return this.shared.get(of) as T;
  }
}
