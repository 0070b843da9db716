import type * as z from 'zod';
import type { Constants, DefinitionSpec, ExplainedStep, Step, Success } from './definition.js';
import { fieldOf } from './fields.js';
import { shortText } from './limit.js';
import type { OutputField, Outputs } from './outputs.js';
import { presentValue } from './present.js';
import { citation } from './source.js';
import { quantityTex, textTex } from './tex.js';

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
    if (typeof value !== 'number') return { symbol: field.symbol, number: field.symbol, words: `${field.label} not given` };
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

function namesOf<I extends z.ZodObject, O extends Outputs, M extends Outputs, C extends Constants>(
  spec: DefinitionSpec<I, O, M, C>,
  input: Values,
  result: Success<O, M>,
): Map<string, Name> {
  const names = new Map<string, Name>();
  for (const [key, { kind, symbol, value }] of Object.entries(spec.constants)) {
    names.set(key, {
      symbol,
      number: quantityTex(kind, value, kind.baseUnit, 7),
      words: shortText(kind, value, kind.units[0] ?? kind.baseUnit),
    });
  }
  for (const [key, schema] of Object.entries(spec.inputs.shape)) names.set(key, inputName(schema as z.core.$ZodType, input[key]));
  const values: Values = { ...result.intermediates, ...result.outputs };
  for (const [key, field] of Object.entries({ ...spec.intermediates, ...spec.outputs } as Outputs)) {
    names.set(key, outputName(field, values[key], result.inputDigits));
  }
  return names;
}

function fill(template: string, names: Map<string, Name>, part: keyof Name): string {
  return template.replaceAll(placeholder, (_, key: string) => {
    const name = names.get(key)?.[part] ?? key;
    return part === 'words' ? name : `{${name}}`;
  });
}

/** The right-hand side of a formula with numbers; what stands left of the first equals sign stays in symbols. */
function withNumbers(tex: string, names: Map<string, Name>): string {
  const at = tex.indexOf('=');
  if (at < 0) return fill(tex, names, 'number');
  const right = tex.slice(at + 1).replaceAll(placeholder, (_, key: string) => {
    const number = names.get(key)?.number ?? key;
    return `{\\left(${number}\\right)}`;
  });
  return `${fill(tex.slice(0, at), names, 'symbol')}=${right}`;
}

/** The working of a result, with numbers from the same evaluation that gave it. */
export function explainResult<I extends z.ZodObject, O extends Outputs, M extends Outputs, C extends Constants>(
  spec: DefinitionSpec<I, O, M, C>,
  input: Values,
  result: Success<O, M>,
): ExplainedStep[] {
  const names = namesOf(spec, input, result);
  const fields: Outputs = { ...spec.intermediates, ...spec.outputs };
  const values: Values = { ...result.intermediates, ...result.outputs };
  return spec.steps.flatMap((step: Step): ExplainedStep[] => {
    const field = fields[step.gives];
    const value = values[step.gives];
    if (field === undefined || value === undefined) return [];
    const shown = presentValue(field, value, result.inputDigits, result.uncertainty?.values[step.gives]);
    const source = step.source === undefined ? undefined : spec.sources[step.source];
    const located = source === undefined ? undefined : citation(step.locator === undefined ? source : { ...source, locator: step.locator });
    return [
      {
        gives: step.gives,
        label: field.label,
        ...('symbol' in field ? { symbol: field.symbol } : {}),
        ...(step.tex === undefined ? {} : { tex: fill(step.tex, names, 'symbol'), numbersTex: withNumbers(step.tex, names) }),
        ...(step.text === undefined ? {} : { text: fill(step.text, names, 'words') }),
        value,
        valueText: shown.type === 'table' ? `${shown.rows.length} rows` : shown.text,
        ...(field.type === 'quantity' ? { valueTex: quantityTex(field.kind, value as number, field.units[0], 6) } : {}),
        ...(located === undefined ? {} : { source: located }),
      },
    ];
  });
}
