import {
  type AnyCalculation,
  fieldOf,
  type Issue,
  issueText,
  type Presented,
  type PresentOptions,
  pathText,
  present,
  type Success,
} from '@wallflow/calculation';
import { type ExitCode, type Io, json, parseJson, UsageError } from '../io.js';
import { reasonOf } from '../reason.js';

type Shown = Pick<PresentOptions, 'system' | 'locale'>;

/** More than a person reads, and more than a program needs to see that the input is of another kind. */
const mostIssues = 50;

/** The sentence of an issue, and behind it what to type here for the input that it is about. */
export function withKey(issue: Issue): string {
  const paths = 'paths' in issue && issue.paths !== undefined ? issue.paths : [issue.path];
  const keys = paths.map(pathText).filter((key) => key !== '');
  return issue.code === 'unknown_input' || keys.length === 0 ? issueText(issue) : `${issueText(issue)} [${keys.join(', ')}]`;
}

/** `key="value unit"` words to an input record; lists are given as JSON. */
export function inputFromWords(calculation: AnyCalculation, words: readonly string[]): Record<string, unknown> {
  const input: Record<string, unknown> = Object.create(null);
  for (const word of words) {
    const at = word.indexOf('=');
    if (at < 1) throw new UsageError(`"${word}" is not key="value unit"; see \`wallflow describe ${calculation.id}\``);
    const key = word.slice(0, at);
    const value = word.slice(at + 1);
    if (Object.hasOwn(input, key)) throw new UsageError(`${key} is given twice`);
    const shape = calculation.spec.inputs.shape as Record<string, Parameters<typeof fieldOf>[0]>;
    const schema = Object.hasOwn(shape, key) ? shape[key] : undefined;
    input[key] = schema !== undefined && fieldOf(schema)?.type === 'list' ? jsonOf(value, `the list ${key}`) : value;
  }
  return { ...input };
}

function jsonOf(text: string, what: string): unknown {
  try {
    return parseJson(text);
  } catch (error) {
    throw new UsageError(`${what} is not JSON: ${(error as Error).message}`);
  }
}

async function readText(io: Io): Promise<string | undefined> {
  try {
    return await io.readInput();
  } catch (error) {
    throw new UsageError(`standard input cannot be used: ${reasonOf(error)}`);
  }
}

async function readInput(io: Io, calculation: AnyCalculation, words: readonly string[]): Promise<unknown> {
  if (words.length > 0) return inputFromWords(calculation, words);
  const text = await readText(io);
  if (text === undefined || text.trim() === '') {
    throw new UsageError(`give key="value unit" words or JSON on standard input; see \`wallflow describe ${calculation.id}\``);
  }
  return jsonOf(text, 'standard input');
}

function shownLines(group: Readonly<Record<string, Presented>>): string[] {
  return Object.values(group).flatMap((value) => {
    if (value.type !== 'table') return [`  ${value.label}: ${value.text}`];
    const heads = Object.entries(value.columns).map(
      ([key, { label, unit }]) => [key, unit === undefined || unit === '1' ? label : `${label} (${unit})`] as const,
    );
    const rows = value.texts.map((row) =>
      heads.map(([key, label]) => (row[key] === '' ? '' : `${label}: ${row[key]}`)).filter((cell) => cell !== ''),
    );
    return [`  ${value.label}:`, ...rows.map((cells) => `    - ${cells.join(' · ')}`)];
  });
}

function resultText(calculation: AnyCalculation, result: Success<never, never>, shown: Shown): string {
  const { outputs, intermediates } = present(calculation, result, shown);
  const spec = calculation.spec;
  const lines = [
    calculation.title,
    ...spec.cautions.map((caution: { text: string }) => `  ! ${caution.text}`),
    ...shownLines(outputs),
    ...(Object.keys(intermediates).length === 0 ? [] : ['On the way:', ...shownLines(intermediates)]),
    ...result.advice.map(({ tone, text }) => `  ${tone === 'do' ? 'DO' : tone === 'do-not' ? 'DO NOT' : 'NOTE'}: ${text}`),
    ...result.warnings.map(({ text }) => `  Warning: ${text}`),
    ...result.assumptions.map(({ text }) => `  Assumed: ${text}`),
    `Method: ${result.method} (${calculation.id} ${calculation.version})`,
  ];
  return `${lines.join('\n')}\n`;
}

/** `wallflow run <id>`: one calculation. */
export async function run(
  io: Io,
  calculation: AnyCalculation,
  words: readonly string[],
  asJson: boolean,
  shown: Shown = {},
): Promise<ExitCode> {
  const input = await readInput(io, calculation, words);
  const result = calculation.runUnknown(input);
  if (!result.ok) {
    const listed = result.issues.slice(0, mostIssues);
    const more = result.issues.length - listed.length;
    if (asJson) {
      const issues = listed.map((issue) => ({ ...issue, text: issueText(issue) }));
      io.out(json({ ok: false, definition: result.definition, issues, ...(more > 0 ? { more } : {}) }));
    } else {
      const lines = [...listed.map(withKey), ...(more > 0 ? [`${more} more are not listed.`] : [])];
      io.error(`${calculation.title}: refused\n${lines.map((line) => `  ${line}\n`).join('')}`);
    }
    return 1;
  }
  if (asJson) {
    const { warnings, assumptions, advice, method, uncertainty, definition } = result;
    const { cautions } = calculation.spec;
    io.out(
      json({
        ok: true,
        definition,
        input,
        ...present(calculation, result, shown),
        warnings,
        assumptions,
        advice,
        cautions,
        method,
        budget: uncertainty?.budget,
      }),
    );
  } else {
    io.out(resultText(calculation, result as Success<never, never>, shown));
  }
  return 0;
}
