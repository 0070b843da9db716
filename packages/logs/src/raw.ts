/**
 * Raw values by the open standards, and by a CAN database file that the user brings.
 *
 * @packageDocumentation
 */
export {
  type CanDatabase,
  type CanMessage,
  type CanSignal,
  type CanValue,
  parameterGroup,
  readCanDatabase,
  readFrame,
} from './raw/can-database.js';
export { type FrameSignals, frameSignals, isFrameLog } from './raw/frame-log.js';
export { type ObdValue, readObdAnswer } from './raw/obd-answer.js';
export { type ObdField, obdParameters, truckParameters } from './raw/parameters.js';
export { type RawReading, type RawScale, readRaw } from './raw/raw-value.js';
