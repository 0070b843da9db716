import type * as z from 'zod/mini';
import { fieldOf } from '../field.js';
import { shortText } from '../limit.js';
import type { OutputField, Outputs } from '../outputs.js';
import { presentValue } from '../present.js';
import { quantityTex, textTex } from '../tex.js';
import { say } from '../words/say.js';
import type { AnySpec } from './spec.js';

type Values = Readonly<Record<string, unknown>>;

interface Name {
  /** In symbols. */
  readonly symbol: string;
  /** With the number in SI, or the symbol where there is no single number. */
  readonly number: string;
  /** In running text: the value alone, so that a sentence can say what it is. */
  readonly words: string;
}

const placeholder = /\[\[(\w+)\]\]/g;

function outputName(field: OutputField, value: unknown, inputDigits: number): Name {
  const shown = value === undefined || field.type === 'table' ? field.label : presentValue(field, value, inputDigits);
  const words = typeof shown === 'string' ? shown : shown.type === 'table' ? field.label : shown.text;
  if (field.type === 'quantity' && typeof value === 'number') {
    return { symbol: field.symbol, number: quantityTex(field.kind, value), words };
  }
  const symbol = 'symbol' in field ? field.symbol : textTex(field.label);
  if (field.type === 'count' && typeof value === 'number') return { symbol, number: String(value), words };
  return { symbol, number: value === undefined || field.type === 'table' ? symbol : textTex(words), words };
}

function inputName(schema: z.core.$ZodType, value: unknown): Name {
  const field = fieldOf(schema);
  if (field === undefined) return { symbol: '?', number: '?', words: '?' };
  const label = textTex(field.label);
  if (field.type === 'quantity') {
    if (typeof value !== 'number') return { symbol: field.symbol, number: field.symbol, words: say`${field.label} not given` };
    const unit = field.units[0] ?? field.kind.baseUnit;
    const words = shortText(field.kind, value, unit);
    return { symbol: field.symbol, number: quantityTex(field.kind, value), words };
  }
  if (field.type === 'count') return { symbol: field.symbol, number: String(value), words: String(value) };
  if (field.type === 'choice') {
    const words = field.options[String(value)] ?? String(value);
    return { symbol: label, number: textTex(words), words };
  }
  return { symbol: label, number: label, words: field.label };
}

/** What `[[key]]` stands for in the sentences and formulas of one run. */
export type TemplateNames = ReadonlyMap<string, Name>;

export function templateNames(spec: AnySpec, input: Values, values: Values, inputDigits: number): TemplateNames {
  const names = new Map<string, Name>();
  for (const [key, { kind, symbol, value }] of Object.entries(spec.constants)) {
    names.set(key, {
      symbol,
      number: quantityTex(kind, value, kind.baseUnit, 7),
      words: shortText(kind, value, kind.units[0] ?? kind.baseUnit),
    });
  }
  for (const [key, schema] of Object.entries(spec.inputs._zod.def.shape)) names.set(key, inputName(schema as z.core.$ZodType, input[key]));
  for (const [key, field] of Object.entries({ ...spec.intermediates, ...spec.outputs } as Outputs)) {
    names.set(key, outputName(field, values[key], inputDigits));
  }
  return names;
}

export function fill(template: string, names: TemplateNames, part: keyof Name): string {
  return template.replaceAll(placeholder, (_, key: string) => {
    const name = names.get(key)?.[part] ?? key;
    return part === 'words' ? name : `{${name}}`;
  });
}

/** The right-hand side of a formula with numbers; what stands left of the first equals sign stays in symbols. */
export function texWithNumbers(tex: string, names: TemplateNames): string {
  const at = tex.indexOf('=');
  if (at < 0) return fill(tex, names, 'number');
  const right = tex.slice(at + 1).replaceAll(placeholder, (_, key: string) => {
    const number = names.get(key)?.number ?? key;
    return `{\\left(${number}\\right)}`;
  });
  return `${fill(tex.slice(0, at), names, 'symbol')}=${right}`;
}
