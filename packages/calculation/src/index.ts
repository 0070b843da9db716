export { type CheckedInputs, checkInputs } from './check-inputs.js';
export { type Counting, countingKeys } from './counting.js';
export { defineCalculation } from './define.js';
export {
  type Advice,
  type AnyCalculation,
  type BudgetEntry,
  type Calculation,
  type Change,
  type CodedText,
  type CodedTexts,
  type ComputeContext,
  type Constant,
  type Constants,
  type ConstantValues,
  constant,
  type Definition,
  type DefinitionSpec,
  type Explained,
  type Failure,
  inconsistentInputs,
  isRefusal,
  known,
  missingInputs,
  noSolution,
  type Refusal,
  type RunResult,
  type Subject,
  type Success,
  subjects,
  type Uncertainty,
} from './definition.js';
export {
  type ChoiceField,
  type CountField,
  type FlagField,
  fieldOf,
  type GroupField,
  type InputField,
  isOptional,
  type ListField,
  type QuantityField,
  type TextField,
} from './field.js';
export {
  type CheckedOf,
  choice,
  count,
  flag,
  type GivenOf,
  group,
  list,
  listOrNone,
  type ObjectOf,
  type QuantityOptions,
  quantity,
  quantityWithDefault,
  type Shape,
  text,
} from './fields.js';
export { type Form, type FormField, type FormSection, formOf } from './form.js';
export { givenData } from './given-data.js';
export {
  type Assumption,
  CalculationError,
  type Issue,
  type IssueCode,
  type LimitInUnit,
  type Path,
  pathText,
  type RecordPart,
  type Warning,
} from './issue.js';
export { shortText } from './limit.js';
export { issueText } from './messages.js';
export {
  type ChoiceOutput,
  type Columns,
  type CountOutput,
  choiceOutput,
  countOutput,
  type OutputField,
  type Outputs,
  optional,
  type QuantityOutput,
  quantityOutput,
  type TableOutput,
  type TextOutput,
  tableOutput,
  textOutput,
  type ValuesOf,
} from './outputs.js';
export { type Band, type Bars, bars, type Gauge, gauge, type Picture, type Tone } from './picture.js';
export {
  digitsToShow,
  type Presented,
  type PresentedOf,
  type PresentOptions,
  present,
  presentValue,
  type ShownUnits,
} from './present.js';
export type { GivenQuantity, QuantityInput, QuantityLimits, UncheckedQuantity } from './quantity-input.js';
export { readable } from './readable.js';
export { createRegistry, type Registry } from './registry.js';
export type { FieldRules, OneOf, Section, Together, When } from './rule.js';
export { type InputRecord, type OptionalFields, oneOf, relevantWhen, section, together, whenGiven } from './rules.js';
export { citation, commonPractice, type Source, type SourceMark } from './source.js';
export type { How, Step } from './step.js';
export { cases, formula, found, fromTable, nested, rows, solved, statement, verdict } from './steps.js';
export { numberTex, quantityTex, textTex, unitTex } from './tex.js';
export type { UsualReason } from './usual-reason.js';
export { itemSchema, mapQuantities, shapeOf, visitInputs } from './walk.js';
export { say, spoken } from './words/say.js';
export { comparedTexts, type Texts, textsOf, withTexts } from './words/texts.js';
export type { ColumnWorking, Comparison, ExplainedStep, Explanation, UnitChange } from './working/explained.js';
