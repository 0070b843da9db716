import { calculationOf } from '../define.js';
import { type AnyCalculation, isRefusal } from '../definition.js';
import type { Issue } from '../issue.js';
import type { OutputField, Outputs } from '../outputs.js';
import type { NestedCalculation } from '../step.js';
import type { AnySpec } from '../working/spec.js';
import { mapTexts } from './map-texts.js';
import { type Dictionary, speaking, spoken } from './say.js';

/** All texts of calculations in one language: plain data, one file. */
export interface Texts {
  /** Its tag, such as `en`. */
  readonly language: string;
  /** Of each calculation, by id: what its definition says, by where it stands: `input.gasPressure.label`. */
  readonly calculations: Readonly<Record<string, Readonly<Record<string, string>>>>;
  /** What calculations say of a result, by the English words; `{1}` stands for the first value in a sentence. */
  readonly sentences: Readonly<Record<string, string>>;
}

/** What the definitions of these calculations say, in the language they are written in. */
export function textsOf(calculations: readonly AnyCalculation[]): Texts['calculations'] {
  return Object.fromEntries(
    calculations.map((calculation) => {
      const texts: Record<string, string> = {};
      const collect = (key: string, text: string) => {
        if (Object.hasOwn(texts, key) && texts[key] !== text) throw new Error(`${calculation.id}: two texts at ${key}`);
        texts[key] = text;
        return text;
      };
      mapTexts(calculation.spec as unknown as AnySpec, collect, (other) => other);
      return [calculation.id, texts];
    }),
  );
}

const made = new WeakMap<Texts, Map<unknown, AnyCalculation>>();

/**
 * The same calculation in another language: form, schema, messages, result and working say what these texts say; a text that is
 * missing stays as it is. Numbers, keys and codes are the same.
 */
export function withTexts<T extends AnyCalculation>(calculation: T, texts: Texts): T {
  const known = made.get(texts) ?? new Map<unknown, AnyCalculation>();
  made.set(texts, known);
  const before = known.get(calculation);
  if (before !== undefined) return before as T;
  const own = texts.calculations[calculation.id] ?? {};
  const dictionary = new Map(Object.entries(texts.sentences));
  const look = (key: string, text: string) => {
    const other = own[key] ?? text;
    // A sentence may quote what the definition says.
    if (!dictionary.has(text)) dictionary.set(text, other);
    return other;
  };
  const nested = (other: NestedCalculation) => withTexts(other as unknown as AnyCalculation, texts) as unknown as NestedCalculation;
  const spec = speakingSpec(mapTexts(calculation.spec as unknown as AnySpec, look, nested), dictionary);
  const translated = calculationOf(spec, dictionary as Dictionary) as unknown as T;
  known.set(calculation, translated);
  return translated;
}

/** The definition, with what its code says of a result in that language too. */
function speakingSpec(spec: AnySpec, dictionary: Dictionary): AnySpec {
  const fields = { ...spec.intermediates, ...spec.outputs };
  const { advise } = spec;
  return {
    ...spec,
    compute: (input, context) =>
      speaking(dictionary, () => {
        const values = spec.compute(input, context);
        return isRefusal(values) ? { refused: values.refused.map(spokenIssue) } : spokenValues(fields, values);
      }),
    ...(advise === undefined
      ? {}
      : {
          advise: (values, input) => speaking(dictionary, () => advise(values, input).map((one) => ({ ...one, text: spoken(one.text) }))),
        }),
  };
}

function spokenIssue(issue: Issue): Issue {
  return issue.code === 'inconsistent_inputs' || issue.code === 'no_solution' ? { ...issue, reason: spoken(issue.reason) } : issue;
}

/** Names and sentences among values in the language that is spoken. */
function spokenValues<V extends object>(fields: Outputs, values: V): V {
  const other = (field: OutputField | undefined, value: unknown): unknown => {
    if (field?.type === 'text' && typeof value === 'string') return spoken(value);
    return field?.type === 'table' && Array.isArray(value) ? value.map((row: object) => spokenValues(field.columns, row)) : value;
  };
  return Object.fromEntries(Object.entries(values).map(([key, value]) => [key, other(fields[key], value)])) as V;
}

/** How texts differ from those of the calculations as they are: keys that they lack, and keys that nothing asks for. */
export function comparedTexts(texts: Texts, present: Texts): { readonly missing: readonly string[]; readonly stale: readonly string[] } {
  const keysOf = ({ calculations, sentences }: Texts) =>
    new Set([
      ...Object.entries(calculations).flatMap(([id, own]) => Object.keys(own).map((key) => `${id}: ${key}`)),
      ...Object.keys(sentences).map((sentence) => `sentence: ${sentence}`),
    ]);
  const [own, wanted] = [keysOf(texts), keysOf(present)];
  return { missing: [...wanted].filter((key) => !own.has(key)), stale: [...own].filter((key) => !wanted.has(key)) };
}
