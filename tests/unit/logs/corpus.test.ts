import { readLog } from '@wallflow/logs';
import { describe, expect, it } from 'vitest';
import { asked } from './corpus/asked.js';
import { leftOut } from './corpus/left-out.js';
import { readRight } from './corpus/read-right.js';
import { refused } from './corpus/refused.js';
import type { CorpusFile } from './corpus/shape.js';
import { truth, windowsOf } from './drive.js';

// The files are made by the functions beside their names; what must come of each was written down by hand.
const groups: readonly (readonly [string, readonly CorpusFile[]])[] = [
  ['an ordinary log is read right', readRight],
  ['what a log leaves open is asked', asked],
  ['what cannot be used is left out and counted', leftOut],
  ['a file that is no log is refused', refused],
];

describe.each(groups)('%s', (_, files) => {
  it.each(files)('$name', ({ content, options, expect: expected }) => {
    const result = readLog(content(), options);
    if (expected.problem !== undefined) {
      expect(result).toMatchObject({ ok: false, problem: { code: expected.problem } });
      return;
    }
    if (!result.ok) throw new Error(JSON.stringify(result.problem));
    expect(result.questions.map((question) => ('column' in question ? [question.ask, question.column] : [question.ask]))).toEqual(
      expected.asks ?? [],
    );
    const counted = result.leftOut.map(({ reason, count, firstLine, channel }) => [
      reason,
      count,
      firstLine,
      ...(channel === undefined ? [] : [channel]),
    ]);
    expect(counted).toEqual(expected.leftOut ?? []);
    expect(windowsOf(result)).toEqual(expected.windows ?? truth);
    if (expected.rows !== undefined) expect(result.rows).toBe(expected.rows);
  });
});

describe('the corpus', () => {
  const names = groups.flatMap(([, files]) => files.map(({ name }) => name));

  it('has at least 112 files, each of its own', () => {
    expect(new Set(names).size).toBe(names.length);
    expect(names.length).toBeGreaterThanOrEqual(112);
  });
});
