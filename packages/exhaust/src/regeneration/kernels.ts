export {
  type ConditionResult,
  checkAnswer,
  checkSpan,
  type PermissionVerdict,
  permissionVerdict,
  type Span,
  type SpanCheck,
} from './permission/kernel.js';
export {
  cordieriteBands,
  type SootBand,
  type SootBands,
  type Substrate,
  siliconCarbideBands,
  sootBand,
  sootBandsAround,
  sootBandsOf,
} from './permission/kernel-load-band.js';
