import { type AnyCalculation, fieldOf, issueText } from '@wallflow/calculation';
import { type Sweep, type SweepOptions, sweep } from '@wallflow/calculation/sweep';
import { type ExitCode, type Io, json, UsageError } from '../io.js';
import { inputFromWords, withKey } from './run.js';

/** What the options of a command line say of a sweep. */
export interface SweepWords {
  readonly over?: string | undefined;
  readonly from?: string | undefined;
  readonly to?: string | undefined;
  readonly points?: string | undefined;
  readonly logarithmic: boolean;
  readonly show?: string | undefined;
  readonly csv: boolean;
  readonly json: boolean;
}

function optionsOf({ from, to, points, logarithmic, show }: SweepWords): SweepOptions {
  if (from === undefined || to === undefined) throw new UsageError('give both ends: --from "0 degC" --to "600 degC"');
  return {
    from,
    to,
    logarithmic,
    ...(points === undefined ? {} : { points: Number(points) }),
    ...(show === undefined ? {} : { results: show.split(',').map((key) => key.trim()) }),
  };
}

function swept(calculation: AnyCalculation, words: readonly string[], line: SweepWords): Sweep {
  if (line.over === undefined) throw new UsageError('name the input to move: --over gasTemperature');
  try {
    return sweep(calculation, inputFromWords(calculation, words), line.over, optionsOf(line));
  } catch (error) {
    // An input, an end, a result or a number of points that cannot be: somebody typed it.
    if (error instanceof TypeError) throw new UsageError(error.message);
    throw error;
  }
}

/** Head and cells of a series, the ends of its band beside it. */
function columnsOf({ input, results }: Sweep): { readonly head: string; readonly unit: string; readonly cells: readonly string[] }[] {
  const cell = (value: number | string | null | undefined) => (value === null || value === undefined ? '' : String(value));
  const first = { head: input.label, unit: input.unit, cells: input.values.map(cell) };
  const others = Object.values(results).flatMap((result) => {
    const unit = 'unit' in result ? result.unit : '';
    const own = { head: result.label, unit, cells: result.values.map(cell) };
    if (!('low' in result) || result.low === undefined || result.high === undefined) return [own];
    const { low, high } = result;
    return [
      own,
      { head: `${result.label}, at least`, unit, cells: low.map(cell) },
      { head: `${result.label}, at most`, unit, cells: high.map(cell) },
    ];
  });
  return [first, ...others];
}

const quoted = (text: string) => (/[",\n\r]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

function csvText(found: Sweep): string {
  const columns = columnsOf(found);
  const lines = [
    columns.map(({ head, unit }) => quoted(unit === '' || unit === '1' ? head : `${head} [${unit}]`)),
    ...found.input.values.map((_, at) => columns.map(({ cells }) => quoted(cells[at] ?? ''))),
  ];
  return lines.map((line) => `${line.join(',')}\n`).join('');
}

/** A number short enough for a table; CSV and JSON have all of it. */
function short(text: string): string {
  const number = Number(text);
  return text === '' || Number.isNaN(number) ? text : String(Number(number.toPrecision(5)));
}

function tableText(calculation: AnyCalculation, found: Sweep): string {
  const columns = columnsOf(found).map(({ head, unit, cells }) => {
    const texts = [unit === '' || unit === '1' ? head : `${head} (${unit})`, ...cells.map(short)];
    const width = Math.max(...texts.map(({ length }) => length));
    return texts.map((text) => text.padStart(width));
  });
  const lines = found.input.values.map((_, at) => columns.map((column) => column[at + 1]).join('  '));
  const notes = [
    ...found.replaced.map((key) => `Not used, as ${found.input.label} takes its place: ${labelOf(calculation, key)}.`),
    ...[...new Set(found.warnings.flatMap(({ warnings }) => warnings.map(({ text }) => `Warning: ${text}`)))],
    ...[...new Set(found.issues.flatMap(({ issues }) => issues.map((issue) => `No result: ${issueText(issue)}`)))].slice(0, 10),
  ];
  return [calculation.title, columns.map(([head]) => head).join('  '), ...lines, ...notes].map((line) => `${line}\n`).join('');
}

function labelOf(calculation: AnyCalculation, key: string): string {
  const properties = calculation.spec.inputs._zod.def.shape as Readonly<Record<string, Parameters<typeof fieldOf>[0]>>;
  const schema = properties[key];
  return (schema === undefined ? undefined : fieldOf(schema)?.label) ?? key;
}

/** `wallflow sweep <id>`: one input moved from one value to another. */
export function sweepCommand(io: Io, calculation: AnyCalculation, words: readonly string[], line: SweepWords): ExitCode {
  const found = swept(calculation, words, line);
  const [failed] = found.issues;
  // Not one value: the input itself is refused, and the first reason stands for all.
  if (failed !== undefined && found.issues.length === found.input.values.length) {
    if (line.json)
      io.out(
        json({ ok: false, definition: found.definition, issues: failed.issues.map((issue) => ({ ...issue, text: issueText(issue) })) }),
      );
    else io.error(`${calculation.title}: refused\n${failed.issues.map((issue) => `  ${withKey(issue)}\n`).join('')}`);
    return 1;
  }
  io.out(line.json ? json({ ok: true, ...found }) : line.csv ? csvText(found) : tableText(calculation, found));
  return 0;
}
