import { citation } from '@wallflow/calculation';
import { type Attempt, type Evaluation, succeeded } from '../job/evaluation.js';
import type { JobResult } from '../job/run-job.js';
import type { Block } from './blocks.js';

function evaluations(result: JobResult): readonly Evaluation[] {
  const sides = [result.before, ...(result.after === undefined ? [] : [result.after])];
  const attempts: (Attempt | undefined)[] = [
    ...sides.flatMap((side) => [side.deciding.massFlow, side.deciding.volumeFlow, side.condition, side.soot]),
    result.permissionBefore,
    result.permissionAfter,
    result.cleaning,
    result.comparison,
    result.reset,
    ...result.reductant,
  ];
  return attempts.filter(succeeded);
}

function unique(texts: readonly string[]): string[] {
  return [...new Set(texts)];
}

/** Cautions of every calculation used. They stand near the top: the sheet is read beside the vehicle. */
export function cautionBlocks(result: JobResult): Block[] {
  const items = unique(evaluations(result).flatMap(({ calculation }) => calculation.spec.cautions.map((caution) => caution.text)));
  return [
    { type: 'heading', text: 'Cautions' },
    { type: 'list', items, tone: 'caution' },
  ];
}

/** Warnings, assumptions, methods and sources: what the figures rest on. */
export function evidenceBlocks(result: JobResult): Block[] {
  const used = evaluations(result);
  const warnings = unique(used.flatMap((evaluation) => evaluation.result.warnings.map((warning) => warning.text)));
  const assumptions = unique([
    ...result.assumed.map(({ text }) => text),
    ...used.flatMap((evaluation) => {
      const notes = evaluation.result.assumptions.filter((note) => note.code === 'default_assumed');
      // What was not worked on is one line, not one for each part of the vehicle.
      if (evaluation.calculation.id === 'reset-advice')
        return notes.length === 0 ? [] : ['Parts that are not mentioned were not worked on.'];
      return notes.map((note) => note.text);
    }),
  ]);
  const methods = unique(
    used.map(({ calculation, result: { method } }) => `${calculation.title}: ${method} (version ${calculation.version})`),
  );
  const sources = unique(used.flatMap(({ calculation }) => Object.values(calculation.spec.sources).map(citation)));
  const section = (text: string, items: readonly string[]): Block[] =>
    items.length === 0
      ? []
      : [
          { type: 'heading', text },
          { type: 'list', items },
        ];
  return [
    ...section('Warnings', warnings),
    ...section('Assumed, because not entered', assumptions),
    ...section('Methods', methods),
    ...section('Sources', sources),
  ];
}
