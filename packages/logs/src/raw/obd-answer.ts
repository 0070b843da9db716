import { type ObdField, obdParameters } from './parameters.js';
import { type RawReading, readRaw } from './raw-value.js';

/** One value of a diagnostic answer. */
export interface ObdValue {
  readonly field: ObdField;
  readonly reading: RawReading;
}

/**
 * The values of an answer to a request for current data: the bytes behind the identifier. A field that the control unit does not
 * support is not available. Undefined for an identifier that is not known here.
 */
export function readObdAnswer(identifier: number, bytes: Uint8Array): readonly ObdValue[] | undefined {
  return obdParameters.get(identifier)?.map((field) => {
    const length = field.bits / 8;
    const supported = field.supported === undefined || (((bytes[0] ?? 0) >> field.supported) & 1) === 1;
    if (!supported) return { field, reading: { none: 'not available' } };
    if (field.byte + length > bytes.length) return { field, reading: { none: 'outside' } };
    // The first byte is the greatest, as the standard has it.
    let raw = 0;
    for (let i = 0; i < length; i += 1) raw = raw * 256 + (bytes[field.byte + i] ?? 0);
    return { field, reading: readRaw(raw, field) };
  });
}
