import type * as z from 'zod/mini';
import { fieldOf } from './field.js';
import type { OutputField, Outputs } from './outputs.js';
import { namesOfPicture } from './picture.js';
import type { Step } from './step.js';
import { namesOfStep } from './steps.js';
import { itemSchema, shapeOf } from './walk.js';
import type { AnySpec } from './working/spec.js';

type Fail = (what: string) => never;

/** Check that a definition is whole; a mistake here is a programmer's and throws when the module is loaded. */
export function assertWhole(spec: AnySpec): void {
  const fail: Fail = (what) => {
    throw new Error(`${spec.id}: ${what}`);
  };
  if (!/^[a-z0-9]+(-[a-z0-9]+)*$/.test(spec.id)) fail('the id is not kebab-case');
  if (!/^\d+\.\d+\.\d+$/.test(spec.version)) fail('the version is not semantic');
  const versions = (spec.history ?? []).map(({ version }) => version);
  if (versions.length > 0 && versions[0] !== spec.version)
    fail(`the newest line of the history is of ${versions[0]}, not of ${spec.version}`);
  if (new Set(versions).size !== versions.length) fail('the history has two lines of one version');
  for (const key of Object.keys(spec.outputs)) if (key in spec.intermediates) fail(`${key} is both output and intermediate`);
  if (!(spec.answer in spec.outputs)) fail('the answer is not an output');
  for (const step of spec.steps) assertStep(spec, step, fail);
  for (const name of spec.picture === undefined ? [] : namesOfPicture(spec.picture))
    if (!isName(spec, name)) fail(`the picture mentions an unknown name ${name}`);
  if (Object.keys(spec.sources).length === 0) fail('no source');
  assertRules(spec.inputs, [], fail);
  if (isSecondEdition(spec)) assertWorking(spec, fail);
}

/** Whether the working is made of formulas; in others only names are checked. */
export function isSecondEdition(spec: { readonly steps: readonly Step[] }): boolean {
  return spec.steps.some((step) => step.how !== undefined);
}

function isName(spec: AnySpec, key: string): boolean {
  return key in spec.inputs._zod.def.shape || key in spec.outputs || key in spec.intermediates || key in spec.constants;
}

function assertStep(spec: AnySpec, step: Step, fail: Fail): void {
  if (step.tex === undefined && step.text === undefined && step.how === undefined)
    fail(`step ${step.gives} has neither a formula nor words`);
  if (typeof step.source === 'string' && !(step.source in spec.sources)) fail(`step ${step.gives} names an unknown source ${step.source}`);
  for (const [, key = ''] of `${step.tex ?? ''}${step.text ?? ''}`.matchAll(/\[\[(\w+)\]\]/g)) {
    if (!isName(spec, key)) fail(`step ${step.gives} mentions an unknown name ${key}`);
  }
}

function needsStep(field: OutputField): boolean {
  return field.type !== 'text';
}

/** Every result has one step, which rests on inputs, constants and earlier results only. */
function assertWorking(spec: AnySpec, fail: Fail): void {
  const results: Outputs = { ...spec.intermediates, ...spec.outputs };
  const given = new Set([...Object.keys(spec.inputs._zod.def.shape), ...Object.keys(spec.constants)]);
  for (const key of Object.keys(results))
    if (given.has(key)) fail(`${key} is a result and an input or a constant; formulas could not tell them apart`);
  for (const key of Object.keys(spec.constants)) if (key in spec.inputs._zod.def.shape) fail(`${key} is an input and a constant`);
  const done = new Set<string>();
  for (const step of spec.steps) {
    const { gives } = step;
    if (done.has(gives)) fail(`two steps give ${gives}`);
    assertNested(step, fail);
    for (const { key, column, later } of namesOfStep(step)) {
      const own = results[gives];
      if (step.how?.type === 'rows' && own?.type === 'table') {
        if (key === 'previous' || key === 'row' || key === gives) continue;
        if (column === undefined && key in own.columns) continue;
      }
      if (given.has(key)) {
        if (column !== undefined) assertColumn(spec.inputs, key, column, gives, fail);
        continue;
      }
      if (!(key in results)) fail(`step ${gives} uses an unknown name ${key}`);
      if (!done.has(key) && !later) fail(`step ${gives} uses ${key} before it is worked out`);
    }
    done.add(gives);
    const field = results[gives];
    if (step.how === undefined && step.tex === undefined && (field?.type === 'quantity' || field?.type === 'count')) {
      fail(`step ${gives} gives a number without a formula`);
    }
  }
  for (const [key, field] of Object.entries(results)) if (needsStep(field) && !done.has(key)) fail(`no step gives ${key}`);
  assertLabels(
    Object.values(results).map((field) => field.label),
    fail,
  );
  assertInputLabels(spec.inputs, fail);
}

/** A nested calculation has the inputs and the output that a step names. */
function assertNested({ gives, how }: Step, fail: Fail): void {
  if (how?.type === 'cases') for (const way of how.cases) assertNested(way.step, fail);
  if (how?.type !== 'nested') return;
  const other = how.calculation.spec as AnySpec;
  for (const key of Object.keys(how.inputs))
    if (!(key in other.inputs._zod.def.shape)) fail(`step ${gives}: ${other.id} has no input ${key}`);
  if (!(how.output in other.outputs) && !(how.output in other.intermediates)) fail(`step ${gives}: ${other.id} gives no ${how.output}`);
}

function assertColumn(inputs: z.core.$ZodObject, key: string, column: string, gives: string, fail: Fail): void {
  const child = inputs._zod.def.shape[key];
  const item = child === undefined ? undefined : itemSchema(child);
  if (item === undefined || !(column in item._zod.def.shape)) fail(`step ${gives} uses an unknown name ${key}.${column}`);
}

function assertLabels(labels: readonly string[], fail: Fail): void {
  for (const [index, label] of labels.entries()) if (labels.indexOf(label) !== index) fail(`two fields are called "${label}"`);
}

function assertInputLabels(schema: z.core.$ZodObject, fail: Fail): void {
  const children = shapeOf(schema).map(([, child]) => child);
  assertLabels(
    children.map((child) => fieldOf(child)?.label ?? ''),
    fail,
  );
  for (const child of children) {
    const item = itemSchema(child);
    if (item !== undefined) assertInputLabels(item, fail);
  }
}

/** Rules name inputs of the same record, or of one around it. */
function assertRules(schema: z.core.$ZodObject, outer: readonly z.core.$ZodObject[], fail: Fail): void {
  const records = [schema, ...outer];
  for (const [key, child] of shapeOf(schema)) {
    const rules = fieldOf(child)?.rules;
    for (const set of [rules?.oneOf, rules?.together]) {
      for (const other of set?.keys ?? [])
        if (!(other in schema._zod.def.shape)) fail(`${key} goes with ${other}, which is no input beside it`);
    }
    for (const when of (rules?.when ?? []).flatMap((one) => [one.key, ...(one.or ?? [])].map((other) => ({ ...one, key: other })))) {
      const home = records.find((record) => when.key in record._zod.def.shape);
      const target = home?._zod.def.shape[when.key];
      const field = target === undefined ? undefined : fieldOf(target);
      if (field === undefined) fail(`${key} depends on ${when.key}, which is no input`);
      for (const value of when.is ?? []) {
        if (field?.type === 'choice' && !Object.hasOwn(field.options, String(value)))
          fail(`${key} depends on ${when.key} being ${value}, which it cannot be`);
      }
    }
    const item = itemSchema(child);
    if (item !== undefined) assertRules(item, records, fail);
  }
}
