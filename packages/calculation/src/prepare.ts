/**
 * Many rows or columns through one calculation, with the checks of `run` at little more than the cost of `evaluate`.
 *
 * @module
 */
export { type Prepared, type PrepareOptions, prepare } from './prepare/prepare.js';
export type {
  ColumnResult,
  InputColumns,
  InputUnits,
  ResultUnits,
  Row,
  RowIssues,
  RowResult,
  RowSuccess,
  RowWarnings,
} from './prepare/types.js';
