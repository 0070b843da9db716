import type * as z from 'zod/mini';
import type { CodedText, CodedTexts, Constant, Constants, Definition, DefinitionSpec } from './definition.js';
import { type ObjectOf, objectOf, type Shape } from './fields.js';
import type { Outputs } from './outputs.js';
import type { Source } from './source.js';
import type { Step } from './step.js';

function codedTexts(texts: CodedTexts | undefined): readonly CodedText[] {
  if (texts === undefined) return [];
  return Array.isArray(texts)
    ? (texts as readonly CodedText[])
    : Object.entries(texts).map(([code, text]) => ({ code, text: text as string }));
}

/** Sources that a step stands on, those of its cases among them. */
function sourcesOfStep(step: Step): Source[] {
  const own = typeof step.source === 'object' ? [step.source] : [];
  return step.how?.type === 'cases' ? [...own, ...step.how.cases.flatMap((way) => sourcesOfStep(way.step))] : own;
}

/** All sources of a definition by key, each once: those it lists, then those of steps and constants in order. */
function allSources(
  listed: Readonly<Record<string, Source>> | readonly Source[],
  steps: readonly Step[],
  constants: Constants,
): Record<string, Source> {
  const named: [string, Source][] = Array.isArray(listed) ? [] : Object.entries(listed as Readonly<Record<string, Source>>);
  const carried = [
    ...steps.flatMap(sourcesOfStep),
    ...Object.values(constants).flatMap(({ source }: Constant) => (typeof source === 'object' ? [source] : [])),
    ...(Array.isArray(listed) ? (listed as readonly Source[]) : []),
  ];
  const known = new Set(named.map(([, source]) => source));
  for (const source of carried) {
    if (known.has(source)) continue;
    known.add(source);
    named.push([`source${named.length + 1}`, source]);
  }
  return Object.fromEntries(named);
}

/** The whole definition: empty parts filled in, sources collected, the answer named. */
export function wholeSpec<I extends Shape, O extends Outputs, M extends Outputs, C extends Constants>(
  definition: Definition<I, O, M, C>,
): DefinitionSpec<ObjectOf<I>, O, M, C> {
  const constants = (definition.constants ?? {}) as C;
  const outputs = Object.keys(definition.outputs);
  const sources = allSources(definition.sources ?? {}, definition.steps, constants);
  const keyOf = (source: string | Source) =>
    typeof source === 'string' ? source : (Object.keys(sources).find((key) => sources[key] === source) ?? '');
  const spec = {
    ...definition,
    version: definition.version ?? definition.history?.[0]?.version ?? '1.0.0',
    inputs: objectOf(definition.inputs),
    ...(typeof definition.keywords === 'string' ? { keywords: definition.keywords.split(/,\s*/) } : {}),
    intermediates: definition.intermediates ?? ({} as M),
    // Each names its source by key, as readers of a calculation find it.
    constants: Object.fromEntries(Object.entries(constants).map(([key, one]) => [key, { ...one, source: keyOf(one.source) }])),
    steps: definition.steps.map((step) => (step.source === undefined ? step : { ...step, source: keyOf(step.source) })),
    answer: definition.answer ?? (outputs.length === 1 ? outputs[0] : definition.steps.at(-1)?.gives),
    assumptions: codedTexts(definition.assumptions),
    limits: codedTexts(definition.limits),
    cautions: codedTexts(definition.cautions),
    sources,
  };
  return spec as unknown as DefinitionSpec<ObjectOf<I>, O, M, C> & { readonly inputs: z.core.$ZodObject };
}
