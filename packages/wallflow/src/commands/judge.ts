import { answerOf, estimateFilter, nextTests, readLine } from '@wallflow/workshop/estimate';
import { type ExitCode, type Io, json, UsageError } from '../io.js';

/** `wallflow judge <readings>`: the filter from what can be read in a minute, in five lines. */
export function judge(io: Io, words: readonly string[], asJson: boolean): ExitCode {
  if (words.length === 0) throw new UsageError('give displacement and readings, such as "2.2 L; 800 rpm 14 mbar; 2800 rpm 290 mbar"');
  const line = readLine(words.join(' '));
  if (!line.ok) {
    if (asJson) io.out(json({ ok: false, problems: line.problems }));
    else io.error(`${line.problems.map(({ given, problem }) => `"${given}": ${problem}.\n`).join('')}`);
    return 1;
  }
  const estimate = estimateFilter(line.input);
  const answer = answerOf(estimate);
  if (!asJson) {
    io.out(`${answer.lines.join('\n')}\n`);
    return 0;
  }
  const { restricted, causes, sootLoad, ashLoad } = estimate;
  io.out(
    json({
      ok: true,
      verdict: answer.verdict,
      lines: answer.lines,
      estimate: { restricted, causes: causes.map(({ id, probability }) => ({ id, probability })), sootLoad, ashLoad },
      nextTest: nextTests(estimate)[0],
    }),
  );
  return 0;
}
