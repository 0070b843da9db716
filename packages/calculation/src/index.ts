export { type CheckedInputs, checkInputs } from './check-inputs.js';
export { defineCalculation } from './define.js';
export {
  type Advice,
  type AnyCalculation,
  type BudgetEntry,
  type Calculation,
  type CodedText,
  type ComputeContext,
  type Constant,
  type Constants,
  type ConstantValues,
  constant,
  type DefinitionSpec,
  type ExplainedStep,
  type Explanation,
  type Failure,
  inconsistentInputs,
  isRefusal,
  missingInputs,
  noSolution,
  type Refusal,
  type RunResult,
  type Step,
  type Subject,
  type Success,
  subjects,
  type Uncertainty,
} from './definition.js';
export {
  type ChoiceField,
  type CountField,
  choice,
  choiceWithDefault,
  count,
  type FlagField,
  fieldOf,
  flag,
  type InputField,
  isOptional,
  type ListField,
  list,
  listOrNone,
  type QuantityField,
  type QuantityOptions,
  quantity,
  quantityWithDefault,
  type TextField,
  text,
} from './fields.js';
export { givenData } from './given-data.js';
export {
  type Assumption,
  CalculationError,
  type Issue,
  type IssueCode,
  type LimitInUnit,
  type Path,
  pathText,
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
export { digitsToShow, type Presented, type PresentOptions, present, presentValue } from './present.js';
export type { GivenQuantity, QuantityInput, QuantityLimits } from './quantity-input.js';
export { createRegistry, type Registry } from './registry.js';
export { citation, commonPractice, type Source, type SourceMark } from './source.js';
export { numberTex, quantityTex, textTex, unitTex } from './tex.js';
export type { UsualReason } from './usual-reason.js';
export { itemSchema, mapQuantities, shapeOf, visitInputs } from './walk.js';
