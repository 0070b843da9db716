import type { Kind, KindName } from '@wallflow/units';
import { checkInputs } from './check-inputs.js';
import type { AnyCalculation, Success } from './definition.js';
import { fieldOf } from './field.js';
import { shortText } from './limit.js';
import { numberSigns, withSigns } from './locale.js';
import type { OutputField, Outputs, QuantityOutput } from './outputs.js';
import { type Gauge, namesOfPicture } from './picture.js';
import { type PresentOptions, shown } from './present.js';
import { shapeOf } from './walk.js';

/** A number of a drawing, in its unit, and as it is written. */
export interface Drawn {
  readonly value: number;
  /** Half the length of what the number may be off by. */
  readonly spread?: number;
  readonly text: string;
}

/** A picture with its numbers, in one unit; plain data. */
export type Drawing =
  | {
      readonly type: 'gauge';
      readonly label: string;
      readonly reading: Drawn;
      readonly bands: readonly {
        readonly label: string;
        readonly tone: Gauge['bands'][number]['tone'];
        readonly upTo?: Drawn;
        /** Whether the reading lies in it. */
        readonly here: boolean;
      }[];
    }
  | { readonly type: 'bars'; readonly bars: readonly (Drawn & { readonly label: string })[] };

interface Named {
  readonly kind: Kind<KindName>;
  readonly value: number;
}

function quantityOf(field: unknown): Kind<KindName> | undefined {
  const { type, kind } = (field ?? {}) as { type?: string; kind?: Kind<KindName> };
  return type === 'quantity' ? kind : undefined;
}

/** Every number that a picture may name, in SI. */
function numbersOf(calculation: AnyCalculation, input: unknown, result: Success<Outputs, Outputs>): Map<string, Named> {
  const { spec } = calculation;
  const found = new Map<string, Named>();
  const add = (key: string, kind: Kind<KindName> | undefined, value: unknown) => {
    if (kind !== undefined && typeof value === 'number') found.set(key, { kind, value });
  };
  const checked = checkInputs(spec.inputs, input);
  if (checked.ok) for (const [key, schema] of shapeOf(spec.inputs)) add(key, quantityOf(fieldOf(schema)), (checked.input as Outputs)[key]);
  for (const [key, { kind, value }] of Object.entries(spec.constants as Record<string, Named>)) add(key, kind, value);
  const fields: Outputs = { ...spec.intermediates, ...spec.outputs };
  const values: Readonly<Record<string, unknown>> = { ...result.intermediates, ...result.outputs };
  for (const [key, field] of Object.entries<OutputField>(fields)) add(key, quantityOf(field), values[key]);
  return found;
}

const fewDigits = 3;

/** The picture of a result, where its definition has one and every number that it needs is there. */
export function draw(
  calculation: AnyCalculation,
  input: unknown,
  result: Success<Outputs, Outputs>,
  options: PresentOptions = {},
): Drawing | undefined {
  const { picture } = calculation.spec;
  if (picture === undefined) return undefined;
  const numbers = numbersOf(calculation, input, result);
  const fields: Outputs = { ...calculation.spec.intermediates, ...calculation.spec.outputs };
  const first = namesOfPicture(picture).find((name) => fields[name]?.type === 'quantity');
  const field = first === undefined ? undefined : (fields[first] as QuantityOutput<KindName>);
  if (first === undefined || field === undefined) return undefined;
  const signs = options.locale === undefined ? undefined : numberSigns(options.locale);
  const named = options.units?.[first];
  const showing = { unit: named, system: options.system, signs };
  const written = (value: number, spread?: number) => {
    const presented = shown(
      { ...field, digits: Math.min(field.digits, fewDigits) },
      value,
      Math.min(result.inputDigits, fewDigits),
      spread,
      showing,
    );
    return presented.type === 'quantity'
      ? { value: presented.value, text: presented.text, ...(presented.uncertainty === undefined ? {} : { spread: presented.uncertainty }) }
      : undefined;
  };
  // A limit is written as it was set, however coarse the readings are.
  const limit = (value: number) => {
    const at = written(value);
    if (at === undefined) return undefined;
    const unit = named ?? options.system?.unitFor(field.units, field.kind.units) ?? field.units[0];
    const text = shortText(field.kind, value as never, unit as never);
    return { ...at, text: signs === undefined ? text : withSigns(text, signs) };
  };
  if (picture.type === 'bars') {
    const bars = picture.bars.flatMap(({ value, label }) => {
      const number = numbers.get(value);
      const drawn = number === undefined ? undefined : written(number.value, result.uncertainty?.values[value]);
      return drawn === undefined ? [] : [{ ...drawn, label }];
    });
    return bars.length < 2 ? undefined : { type: 'bars', bars };
  }
  const value = numbers.get(picture.value)?.value;
  if (value === undefined) return undefined;
  const spread = picture.spread === undefined ? result.uncertainty?.values[picture.value] : numbers.get(picture.spread)?.value;
  const reading = written(value, spread);
  const ends = picture.bands.map(({ upTo }) => {
    if (upTo === undefined) return Number.POSITIVE_INFINITY;
    const found = numbers.get(upTo.replace(/^-/, ''))?.value;
    return found === undefined ? undefined : upTo.startsWith('-') ? -found : found;
  });
  if (reading === undefined || ends.includes(undefined)) return undefined;
  const here = ends.findIndex((end) => value <= (end ?? 0));
  return {
    type: 'gauge',
    label: field.label,
    reading,
    bands: picture.bands.map(({ label, tone }, index) => {
      const end = ends[index] ?? Number.POSITIVE_INFINITY;
      const upTo = Number.isFinite(end) ? limit(end) : undefined;
      return { label, tone, ...(upTo === undefined ? {} : { upTo }), here: index === here };
    }),
  };
}
