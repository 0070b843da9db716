import { fieldOf } from '@wallflow/calculation';
import * as z from 'zod/mini';
import { type DescribedJob, jobSections } from './description.js';
import { type JobSection, longText, mostLines, type Place } from './section.js';

const short = z.string().check(z.maxLength(200));
/** Inputs that are handed to a calculation, which checks them itself and names what is wrong. */
const inputs = z.record(short, z.unknown());
/** Entries that a job cannot do without; all else may be left out by somebody who does not know it. */
const needed: ReadonlySet<string> = new Set(['format', 'title', 'date', 'complaint', 'vehicle', 'vehicle.description']);
/** Groups that take the inputs of further calculations, by calculation. */
const open: ReadonlySet<string> = new Set(['reductant']);

/** A nested record while it is being put together: schemas at its ends. */
interface Tree {
  [key: string]: Tree | z.ZodMiniType;
}

function put(tree: Tree, [key = '', ...rest]: Place, schema: z.ZodMiniType): void {
  const inner = tree[key];
  // A list within a group of inputs is one of those inputs; a group of whatever inputs takes it already.
  if (inner instanceof z.ZodMiniObject && rest.length === 1) tree[key] = z.extend(inner, { [rest[0] ?? '']: z.optional(schema) });
  if (inner instanceof z.ZodMiniType) return;
  if (rest.length === 0) {
    tree[key] = schema;
    return;
  }
  const next: Tree = inner ?? {};
  tree[key] = next;
  put(next, rest, schema);
}

const text = (longest: number) => z.string().check(z.maxLength(longest));
const listOf = (item: z.ZodMiniType, most: number) => z.array(item).check(z.maxLength(most));

function textSchema(place: Place, schema: z.core.$ZodType): z.ZodMiniType {
  const field = fieldOf(schema);
  return place.join('.') === 'date' ? z.iso.date() : text(field?.type === 'text' ? field.maxLength : 200);
}

/** The most rows that the form takes. */
function mostRows(form: z.core.$ZodType): number {
  const field = fieldOf(form);
  return field?.type === 'list' ? field.max : mostLines;
}

type OfInputs = (fields: z.core.$ZodObject) => z.ZodMiniType;

function entries({ as, place, places, fields, form, noneIsFinding }: JobSection, ofInputs: OfInputs): [Place, z.ZodMiniType][] {
  switch (as) {
    case 'head':
      return Object.entries(places).map(([name, at]) => [at, textSchema(at, fields._zod.def.shape[name] as z.core.$ZodType)]);
    case 'lines':
      // A list of codes is the work of a tool, and may be longer than what a person writes.
      return [[place, listOf(text(longText), noneIsFinding ? 2 * mostLines : mostLines)]];
    case 'rows':
      return [[place, listOf(ofInputs(fields), mostRows(form))]];
    case 'record':
      return [[place, ofInputs(fields)]];
  }
}

function closed(tree: Tree, at: Place = []): z.ZodMiniType {
  const shape = Object.entries(tree).map(([key, inner]) => {
    const place = [...at, key];
    const schema = inner instanceof z.ZodMiniType ? inner : closed(inner, place);
    return [key, needed.has(place.join('.')) ? schema : z.optional(schema)];
  });
  const object = z.strictObject(Object.fromEntries(shape));
  return open.has(at.join('.')) ? z.catchall(object, inputs) : object;
}

/** The file as the sections describe it; `ofInputs` says what a group of inputs may hold. */
export function fileSchema(ofInputs: OfInputs): z.ZodMiniType {
  const tree: Tree = {
    format: z.literal('wallflow-job/2'),
    /** Files beside the job, one for each side, and the answers to what the titles of their columns leave open. */
    logs: z.strictObject({
      before: z.optional(short),
      after: z.optional(short),
      mappings: z.optional(z.array(z.unknown()).check(z.maxLength(20))),
    }),
  };
  // Groups first, so that a list inside one of them is not taken for the whole of it.
  const sorted = [...jobSections].sort((a, b) => a.place.length - b.place.length);
  for (const section of sorted) for (const [place, schema] of entries(section, ofInputs)) put(tree, place, schema);
  return closed(tree);
}

/**
 * One job: what came in, what was measured, what is planned. Quantities are text with units. Sections that are inputs
 * of a calculation carry that calculation's input names.
 */
export const jobFile = fileSchema(() => inputs);

/** A job file whose structure was checked; the inputs of its sections are checked by the calculations. */
export type JobFile = DescribedJob & {
  readonly format: 'wallflow-job/2';
  readonly title: string;
  readonly date: string;
  readonly complaint: string;
  readonly vehicle: { readonly description: string };
  /** Sections that every job has, even with nothing in them. */
  readonly ambient: object;
  readonly engine: object;
  readonly filter: object;
  readonly permission: { readonly before: object };
  /** Inputs of further calculations of the reductant side, by calculation. */
  readonly reductant?: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
  readonly logs?: { readonly before?: string; readonly after?: string; readonly mappings?: readonly unknown[] };
};
