/**
 * Measurement files of ASAM MDF 4, read only.
 *
 * @packageDocumentation
 */
export { Mdf4Error } from './mdf4/blocks.js';
export { type Mdf4Channel, type Mdf4File, type Mdf4Group, mdf4Signals, readMdf4, readMdf4Log } from './mdf4/read.js';
