import { type AnyCalculation, citation, fieldOf, type InputField, type Source, shapeOf } from '@wallflow/calculation';
import { unitSymbol } from '@wallflow/units';

/** A source in one line; its mark is shown beside it. */
export function sourceText(source: object): string {
  return citation({ ...source, mark: 'read' } as Source);
}

/** `-0.0312` as `−3.1 %`, with a space that does not break. */
export function percent(ratio: number): string {
  return `${signed(100 * ratio, 1)}\u00a0%`;
}

function signed(value: number, decimals: number): string {
  const text = Math.abs(value).toFixed(decimals);
  if (Number(text) === 0) return text;
  return `${value < 0 ? '−' : '+'}${text}`;
}

/** Three digits, four from ten on. */
export function rounded(value: number): string {
  return value.toPrecision(Math.abs(value) < 10 ? 3 : 4);
}

/** The inputs of a calculation by key. */
export function inputFields(calculation: AnyCalculation): ReadonlyMap<string, InputField> {
  const fields = new Map<string, InputField>();
  for (const [key, schema] of shapeOf(calculation.spec.inputs)) {
    const field = fieldOf(schema);
    if (field !== undefined) fields.set(key, field);
  }
  return fields;
}

/** A quantity with its digits as they were typed and its unit as it is written. */
export function asWritten(field: InputField | undefined, text: string): string {
  if (field?.type === 'choice') return field.options[text] ?? text;
  if (field?.type !== 'quantity') return text;
  const parsed = field.kind.parse(text);
  const number = /^\s*([-+\d.e]+)/i.exec(text)?.[1];
  if (!parsed.ok || number === undefined) return text;
  const symbol = unitSymbol(field.kind.kind, parsed.unit);
  return symbol === '1' || symbol === '' ? number : `${number} ${symbol}`;
}
