import type { Kind, KindName } from '@wallflow/units';
import type * as z from 'zod/mini';
import type { ObjectOf, Shape } from './fields.js';
import type { Assumption, Issue, Path, Warning } from './issue.js';
import type { Outputs, PlainValuesOf, ValuesOf } from './outputs.js';
import type { Picture } from './picture.js';
import type { Source } from './source.js';
import type { Step } from './step.js';
import type { Explanation } from './working/explained.js';

/** Parts of the field; the command line and the site group calculations by it. */
export const subjects = ['gas', 'flow', 'filter', 'soot', 'regeneration', 'reductant', 'smoke', 'cleaning', 'workshop'] as const;
/** A part of the field; somebody else's calculations may have subjects of their own. */
export type Subject = (typeof subjects)[number] | (string & Record<never, never>);

/** A short text with a stable code: an assumption, a limit of use, a caution. */
export interface CodedText {
  readonly code: string;
  readonly text: string;
}

/** A constant with a dimension that a formula contains, so that it can be shown, traced and rescaled in tests. */
export interface Constant<K extends KindName = KindName> {
  readonly kind: Kind<K>;
  readonly value: number;
  readonly symbol: string;
  readonly label: string;
  /** The source, or its key in the definition's sources. */
  readonly source: string | Source;
}

/** Constants of a definition by key. */
export type Constants = Readonly<Record<string, Constant>>;
/** Their values in SI, as `compute` gets them. */
export type ConstantValues<C> = { readonly [Key in keyof C]: number };

/**
 * A constant: `value` in SI or as text with a unit, and where it comes from. One that several definitions use is made once and
 * carries all this with it.
 */
export function constant<K extends KindName>(
  kind: Kind<K>,
  value: number | string,
  text: { readonly symbol: string; readonly label: string; readonly source: string | Source },
): Constant {
  return { kind, value: typeof value === 'number' ? value : constantValue(kind, value), ...text } as unknown as Constant;
}

function constantValue<K extends KindName>(kind: Kind<K>, text: string): number {
  const parsed = kind.parse(text);
  if (!parsed.ok) throw new Error(`"${text}" is not a ${kind.label}: ${parsed.issue.code}`);
  return parsed.quantity;
}

/** What a version of a definition changed, and why; one short sentence each. */
export interface Change {
  readonly version: string;
  readonly what: string;
  readonly why: string;
}

/** What to do with a result. */
export interface Advice {
  readonly tone: 'do' | 'do-not' | 'note';
  readonly text: string;
}

/** Returned by `compute` when there is no honest result. */
export interface Refusal {
  readonly refused: readonly Issue[];
}

/** What `compute` is given beside its inputs: constants, and ways to say what the result rests on. */
export interface ComputeContext<C extends Constants> {
  readonly constants: ConstantValues<C>;
  /** Add a warning to the result. */
  warn(code: string, text: string, path?: Path): void;
  /** Say what was assumed. */
  assume(code: string, text: string): void;
  /** Name the method when the calculation chooses one; the last call counts. */
  method(name: string): void;
}

/** Inputs that may be left out in general, but not with these others. Their examples are added from the fields. */
export function missingInputs(...keys: readonly string[]): Refusal {
  return { refused: keys.map((key) => ({ code: 'missing_input', path: [key] })) };
}

/** An input that a rule of the definition guarantees, as a type does not know rules. */
export function known<T>(value: T | undefined): T {
  if (value === undefined) throw new TypeError('an input is missing that the rules of the definition ask for');
  return value;
}

/** No value of the result satisfies the inputs. */
export function noSolution(reason: string, path: Path = []): Refusal {
  return { refused: [{ code: 'no_solution', path, reason }] };
}

/** Inputs that are each possible but not together. */
export function inconsistentInputs(reason: string, ...paths: Path[]): Refusal {
  return { refused: [{ code: 'inconsistent_inputs', path: paths[0] ?? [], paths, reason }] };
}

/** A whole definition, as a calculation carries it: every part is there. */
export interface DefinitionSpec<I extends z.core.$ZodObject, O extends Outputs, M extends Outputs, C extends Constants> {
  /** Kebab-case, unique, never changed once published. */
  readonly id: string;
  /** Semantic version of the definition: a changed number is a new minor or major version. */
  readonly version: string;
  /** What changed since version 1.0.0, newest first; links to older versions show it. */
  readonly history?: readonly Change[];
  readonly subject: Subject;
  readonly title: string;
  /** One sentence: the question it answers. */
  readonly purpose: string;
  /** Words by which people search for it, abbreviations and other spellings of the trade among them. */
  readonly keywords?: readonly string[];
  /** How the result is obtained, in a few words; `context.method` overrides it. */
  readonly method: string;
  readonly inputs: I;
  readonly outputs: O;
  readonly intermediates: M;
  readonly constants: C;
  readonly steps: readonly Step<keyof (O & M) & string>[];
  /** The output that the calculation is asked for. */
  readonly answer: keyof O & string;
  /** How the answer is drawn, where a picture says more than a number: `gauge` or `bars`. */
  readonly picture?: Picture;
  readonly assumptions: readonly CodedText[];
  readonly limits: readonly CodedText[];
  readonly cautions: readonly CodedText[];
  readonly sources: Readonly<Record<string, Source>>;
  /** Replaces or adds to the examples of the single inputs, where optional inputs only mean something together. */
  readonly example?: Partial<z.input<I>>;
  /** Relative accuracy of the result when an iteration or a step-size control limits it; default 1e-9. */
  readonly precision?: number;
  /**
   * How often a ± may ask for the result again, where one result takes long or there can be thousands of readings: beyond it all
   * uncertain inputs are moved together, in drawn directions, and the result says so. Default 400, and fewer for more than 500 inputs.
   */
  readonly mostEvaluations?: number;
  /** Why no ± is carried through, as where things are counted; a sentence that the result carries wherever one was given. */
  readonly uncertaintyNote?: string;
  /** Why rescaling the base units cannot be tested: an empirical formula tied to its units, a time-stepping tolerance. */
  readonly dimensional?: string;
  compute(input: z.output<I>, context: ComputeContext<C>): (PlainValuesOf<O> & PlainValuesOf<M>) | Refusal;
  /** What to do and not to do with this result. */
  advise?(values: ValuesOf<O> & ValuesOf<M>, input: z.output<I>): readonly Advice[];
}

/** A short text by its code: `{ ideal_gas: 'The gas is ideal.' }`, or a list of coded texts that several definitions share. */
export type CodedTexts = Readonly<Record<string, string>> | readonly CodedText[];

/**
 * What one writes to define a calculation; parts that are empty are left out. Names in formulas are keys of inputs, constants,
 * intermediates and outputs, which are therefore all different.
 */
export interface Definition<I extends Shape, O extends Outputs, M extends Outputs, C extends Constants>
  extends Omit<
    DefinitionSpec<ObjectOf<I>, O, M, C>,
    | 'version'
    | 'keywords'
    | 'inputs'
    | 'intermediates'
    | 'constants'
    | 'steps'
    | 'answer'
    | 'assumptions'
    | 'limits'
    | 'cautions'
    | 'sources'
    | 'compute'
    | 'advise'
  > {
  /** Semantic version; left out it is that of the newest line of the history, and 1.0.0 where there is none. */
  readonly version?: string;
  /** Words by which people search for it, abbreviations and other spellings of the trade among them; in a text parted by commas. */
  readonly keywords?: string | readonly string[];
  /** Inputs by key. */
  readonly inputs: I;
  readonly intermediates?: M;
  readonly constants?: C;
  /** The working, in the order in which one does it. Without intermediates the compiler would else guess some from here. */
  readonly steps: readonly Step<keyof (O & NoInfer<M>) & string>[];
  /** The output that the calculation is asked for; it may be left out where there is only one. */
  readonly answer?: keyof O & string;
  readonly assumptions?: CodedTexts;
  readonly limits?: CodedTexts;
  readonly cautions?: CodedTexts;
  /** Sources that no step and no constant names. */
  readonly sources?: Readonly<Record<string, Source>> | readonly Source[];
  compute(input: z.output<ObjectOf<I>>, context: ComputeContext<C>): (PlainValuesOf<O> & PlainValuesOf<NoInfer<M>>) | Refusal;
  /** What to do and not to do with this result. */
  advise?(values: ValuesOf<O> & ValuesOf<NoInfer<M>>, input: z.output<ObjectOf<I>>): readonly Advice[];
}

/** How much each uncertain input adds to one output. */
export interface BudgetEntry {
  readonly path: Path;
  /** Change of the output (SI) by the input's uncertainty. */
  readonly contribution: number;
  /** Share of the combined variance, 0 to 1. */
  readonly share: number;
}

/** What the uncertainties of the inputs make of the results, to first order and with inputs taken as independent. */
export interface Uncertainty {
  /** Uncertainty of each output and intermediate in SI, with the coverage that the inputs had. */
  readonly values: Readonly<Record<string, number>>;
  readonly budget: Readonly<Record<string, readonly BudgetEntry[]>>;
}

/** A result: values in SI, and all that the user must know with them. Plain data. */
export interface Success<O extends Outputs, M extends Outputs> {
  readonly ok: true;
  readonly outputs: ValuesOf<O>;
  readonly intermediates: ValuesOf<M>;
  readonly warnings: readonly Warning[];
  readonly assumptions: readonly Assumption[];
  readonly advice: readonly Advice[];
  readonly method: string;
  readonly uncertainty?: Uncertainty;
  /** Significant digits that the least exact input carries. */
  readonly inputDigits: number;
  readonly definition: { readonly id: string; readonly version: string };
}

/** Inputs that were refused, and why. Plain data. */
export interface Failure {
  readonly ok: false;
  readonly issues: readonly Issue[];
  readonly definition: { readonly id: string; readonly version: string };
}

/** A result or the issues with the input, told apart by `ok`. */
export type RunResult<O extends Outputs, M extends Outputs> = Success<O, M> | Failure;

/** A result with its working, or the issues with the input. */
export type Explained<O extends Outputs, M extends Outputs> =
  | ({ readonly ok: true; readonly result: Success<O, M> } & Explanation)
  | Failure;

/** A calculation that is ready to run: what `defineCalculation` returns. It and its metadata are frozen, as all users share them. */
export interface Calculation<
  I extends z.core.$ZodObject = z.core.$ZodObject,
  O extends Outputs = Outputs,
  M extends Outputs = Outputs,
  C extends Constants = Constants,
> {
  readonly spec: DefinitionSpec<I, O, M, C>;
  readonly id: string;
  readonly version: string;
  readonly subject: Subject;
  readonly title: string;
  /** The example of every input, together a run that works. */
  readonly example: z.input<I>;
  /** Check, compute and return a result or issues; never throws on data. */
  run(input: z.input<I>): RunResult<O, M>;
  /** The same for data of unknown origin: a file, a request, a form. */
  runUnknown(input: unknown): RunResult<O, M>;
  /** As `run`, but throws `CalculationError` with the same issues. */
  calculate(input: z.input<I>): Success<O, M>;
  /** The working, step by step, with the numbers filled in. */
  explain(input: z.input<I>): Explained<O, M>;
  /** The same for data of unknown origin. */
  explainUnknown(input: unknown): Explained<O, M>;
  /** Compute from checked SI values; constants may be replaced, as the property tests do. */
  evaluate(input: z.output<I>, constants?: ConstantValues<C>): (ValuesOf<O> & ValuesOf<M>) | Refusal;
}

/** A calculation whose own types are not known here, as registries, forms and the command line hold it. */
// biome-ignore lint/suspicious/noExplicitAny: the input and output types of different calculations have no common supertype
export type AnyCalculation = Calculation<any, any, any, any>;

/** Whether `evaluate` gave issues in place of values. */
export function isRefusal(value: object): value is Refusal {
  return 'refused' in value;
}
