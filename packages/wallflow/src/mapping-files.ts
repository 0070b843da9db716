import { dirname, join } from 'node:path';
import { type Mapping, parseMapping } from '@wallflow/logs';
import { type Io, UsageError } from './io.js';

/** Mapping files lie beside the log under this ending and are found by themselves. */
export const mappingEnding = '.log-map.json';

/** The answers in a file. */
export function mappingFrom(io: Io, path: string): Mapping {
  const text = io.readFile(path);
  if (text === undefined) throw new UsageError(`there is no file ${path}`);
  const parsed = parseMapping(text);
  if (parsed.ok) return parsed.mapping;
  const { code, detail } = parsed.problem;
  const reasons: Readonly<Record<typeof code, string>> = {
    not_json: 'it is not JSON',
    not_a_mapping: 'it is not a mapping of log columns',
    other_version: `its version is ${detail}; this program knows version 1`,
    unknown_channel: `"${detail}" is not a channel`,
    unknown_unit: `"${detail}" is not a unit of its channel`,
    wrong_value: `"${detail}" does not hold what it should`,
  };
  throw new UsageError(`${path} cannot be used: ${reasons[code]}`);
}

/** The answers in all mapping files of the folder in which a file lies. */
export function mappingsBeside(io: Io, file: string): Mapping[] {
  const folder = dirname(file);
  const names = io.filesIn?.(folder) ?? [];
  return names.filter((name) => name.endsWith(mappingEnding)).map((name) => mappingFrom(io, join(folder, name)));
}
