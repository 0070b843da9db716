/** What the pages know of a calculation: plain data made from its definition when the site is built. */

import type { When } from '@wallflow/calculation';
import type { Drawing } from '@wallflow/calculation/display';

/** What a person has typed or chosen for one input; `unit` is the unit that stands in the select beside it. */
export interface Entry {
  readonly text: string;
  readonly unit: string;
  /** What stood there before its unit was changed in the select. */
  readonly typed?: { readonly text: string; readonly unit: string };
  /** Typed here, not brought by an example, a link or a conversion. */
  readonly own?: true;
  /** A value of the worked example, also after a change of its unit: nobody has read it. */
  readonly example?: true;
  /** The unit that stood in the select before one was typed behind the number. */
  readonly chosen?: string;
}

/** The rows of a list input; of a group, the one record in it. */
export interface Rows {
  readonly rows: readonly FormValues[];
}

export type FormValues = Readonly<Record<string, Entry | Rows>>;

export interface UnitChoice {
  readonly id: string;
  readonly symbol: string;
}

interface FieldBase {
  readonly key: string;
  readonly label: string;
  readonly description?: string;
  /** May stay empty; the calculation then treats it as unknown. */
  readonly optional: boolean;
  /** Keys of the inputs of which one must be given when this one is not. */
  readonly insteadOf?: readonly string[];
  /** All must hold for the input to count, and to be shown. */
  readonly when?: readonly When[];
  /** The default as a form or a link writes it, for conditions. */
  readonly standard?: string;
  /** What is taken when the input stays empty, and why. */
  readonly default?: string;
  readonly defaultReason?: string;
}

export interface QuantityFieldData extends FieldBase {
  readonly type: 'quantity';
  readonly kind: string;
  readonly symbolTex: string;
  readonly units: readonly UnitChoice[];
  /** The unit that stands in the select at first: that of the example. */
  readonly unit: string;
  /** Where the input stops making sense. */
  readonly range: string;
  /** Whether a number below zero makes sense in one of the units offered. */
  readonly mayBeNegative?: true;
  /** Where the source says that the formula holds. */
  readonly usual?: string;
  readonly example: string;
}

export interface ChoiceFieldData extends FieldBase {
  readonly type: 'choice';
  readonly options: readonly { readonly key: string; readonly label: string }[];
  readonly example: string;
}

export interface FlagFieldData extends FieldBase {
  readonly type: 'flag';
  readonly example: string;
}

export interface CountFieldData extends FieldBase {
  readonly type: 'count';
  readonly symbolTex: string;
  readonly range: string;
  readonly example: string;
}

export interface TextFieldData extends FieldBase {
  readonly type: 'text';
  readonly maxLength: number;
  readonly example: string;
}

export interface ListFieldData extends FieldBase {
  readonly type: 'list';
  readonly min: number;
  readonly max: number;
  readonly item: readonly FieldData[];
}

/** Inputs under a heading that are one record of the input. */
export interface GroupFieldData extends FieldBase {
  readonly type: 'group';
  readonly item: readonly FieldData[];
}

export type ScalarFieldData = QuantityFieldData | ChoiceFieldData | FlagFieldData | CountFieldData | TextFieldData;
export type FieldData = ScalarFieldData | ListFieldData | GroupFieldData;

/** One shown value of a result. */
export interface ValueView {
  readonly key: string;
  readonly label: string;
  readonly description?: string;
  readonly symbolTex?: string;
  /** A sentence rather than a number or a verdict. */
  readonly words?: true;
  /** Key of a choice, for a verdict. */
  readonly choice?: string;
  readonly text: string;
  /** Units that the value may be shown in; empty when there is only one way. */
  readonly units: readonly UnitChoice[];
  readonly unit?: string;
}

export interface PlotView {
  readonly key: string;
  readonly label: string;
  readonly description?: string;
  readonly columns: readonly {
    readonly key: string;
    readonly label: string;
    readonly unit?: string;
  }[];
  readonly rows: readonly Readonly<Record<string, number | string | null>>[];
  /** `marks` names the columns that are drawn as points without a line; `up` what the axis upwards shows. */
  readonly plot?: { readonly x: string; readonly y: readonly string[]; readonly marks?: readonly string[]; readonly up?: string };
}

/** A table of a result. */
export interface TableView extends PlotView {
  /** The cells as they are read. */
  readonly texts: readonly Readonly<Record<string, string>>[];
}

export interface StepView {
  readonly label: string;
  readonly symbolTex?: string;
  readonly tex?: string;
  readonly numbersTex?: string;
  readonly valueText: string;
  readonly text?: string;
  readonly source?: string;
  /** Of a step with several ways: when this one is taken. */
  readonly when?: string;
  /** Units that change on the way into the step. */
  readonly changesTex?: readonly string[];
  readonly comparisons?: readonly { readonly verdict: string; readonly tex: string; readonly holds: boolean }[];
  readonly columns?: readonly { readonly label: string; readonly tex: string; readonly numbersTex?: string }[];
  /** The working of the calculation that made this value. */
  readonly nested?: { readonly title: string; readonly steps: readonly StepView[] };
}

export interface NoteView {
  readonly text: string;
  readonly field?: string;
}

export interface BudgetView {
  readonly output: string;
  readonly text: string;
  readonly entries: readonly { readonly label: string; readonly contribution: string; readonly share: number }[];
}

export interface SuccessView {
  readonly ok: true;
  /** The answer as a picture. */
  readonly drawing?: Drawing;
  readonly method: string;
  readonly values: readonly ValueView[];
  readonly intermediates: readonly ValueView[];
  readonly tables: readonly TableView[];
  readonly warnings: readonly NoteView[];
  readonly assumptions: readonly string[];
  readonly advice: readonly { readonly tone: 'do' | 'do-not' | 'note'; readonly text: string }[];
  readonly budget: readonly BudgetView[];
  readonly steps: readonly StepView[];
}

/** A reading that may have been meant, and how the field then looks. */
export interface UnitOffer {
  readonly label: string;
  readonly text: string;
  readonly unit: string;
}

export interface IssueView {
  readonly code: string;
  /** Path of the field, as `points[2].flow`; empty when the issue belongs to no single field. */
  readonly fields: readonly string[];
  /** What stands above the field, where the issue belongs to one. */
  readonly name?: string;
  readonly text: string;
  /** Readings that may have been meant where the unit cannot be told. */
  readonly offers: readonly UnitOffer[];
}

export interface FailureView {
  readonly ok: false;
  readonly issues: readonly IssueView[];
}

export type ResultView = SuccessView | FailureView;

export interface SourceView {
  readonly text: string;
  readonly mark: string;
  readonly type: string;
  readonly doi?: string;
  readonly note?: string;
}

export interface ConstantView {
  readonly label: string;
  /** Symbol and value. */
  readonly tex: string;
  readonly source: string;
}

/** What a version of a calculation changed, and why. */
export interface ChangeView {
  readonly version: string;
  readonly what: string;
  readonly why: string;
}

/** Everything that the pages of one calculation need. */
export interface CalculationData {
  readonly id: string;
  readonly version: string;
  readonly subject: string;
  readonly title: string;
  readonly purpose: string;
  readonly keywords: readonly string[];
  readonly method: string;
  readonly inputs: readonly FieldData[];
  readonly constants: readonly ConstantView[];
  readonly assumptions: readonly string[];
  readonly limits: readonly string[];
  readonly cautions: readonly string[];
  readonly sources: readonly SourceView[];
  /** What changed since the first version, newest first. */
  readonly history: readonly ChangeView[];
  /** What the empty form still needs. */
  readonly needed: readonly IssueView[];
  /** The form filled with the worked example, and its result. */
  readonly exampleValues: FormValues;
  readonly example: SuccessView;
  /** Symbols within the text of the page as HTML, by their TeX. */
  readonly formulas: Readonly<Record<string, string>>;
  readonly cases: readonly CaseView[];
}

/** The job as a form: every input is a section. */
export interface JobFormData {
  readonly inputs: readonly FieldData[];
  readonly exampleValues: FormValues;
}

/** One line of the catalogue. */
export interface CatalogueEntry {
  readonly id: string;
  readonly subject: string;
  readonly title: string;
  readonly purpose: string;
  readonly keywords: readonly string[];
  readonly cases: number;
}

/** One value of a reference case beside ours. */
export interface ComparisonView {
  readonly label: string;
  readonly expected: string;
  readonly ours: string;
  readonly difference: string;
  readonly tolerance: string;
  readonly agrees: boolean;
}

export interface CaseView {
  readonly id: string;
  readonly calculation: string;
  readonly title: string;
  readonly origin: string;
  readonly source: string;
  readonly mark: string;
  readonly inputs: readonly { readonly label: string; readonly text: string }[];
  readonly comparisons: readonly ComparisonView[];
  readonly agrees: boolean;
  readonly toleranceReason?: string;
  readonly disagreement?: string;
  readonly notes?: string;
  /** Link hash that fills the form with the inputs of the case. */
  readonly hash: string;
}

interface CaseCounts {
  readonly cases: number;
  readonly agreeing: number;
  /** Known disagreements, kept with the reason. */
  readonly disagreeing: number;
}

/** The overview of all reference cases. */
export interface ValidationData {
  readonly origins: readonly (CaseCounts & { readonly origin: string })[];
  readonly calculations: readonly (CaseCounts & { readonly id: string; readonly subject: string; readonly title: string })[];
}

/** Every reference case of one subject. */
export interface SubjectValidationData {
  readonly subject: string;
  readonly calculations: readonly { readonly id: string; readonly title: string; readonly cases: readonly CaseView[] }[];
}
