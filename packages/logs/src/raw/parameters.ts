import type { ChannelName } from '../channels/channels.js';
import type { RawScale } from './raw-value.js';

const obd = 'SAE J1979 / ISO 15031-5, as published field tables of open projects give it';
const truck = 'SAE J1939-71, as published signal lists of open projects give it';

type Row = readonly [bits: number, step: number, offset: number, unit: string, channel?: ChannelName];

const fromObd = ([bits, step, offset, unit, channel]: Row, mark: RawScale['mark'], signed?: true): RawScale => ({
  bits,
  step,
  offset,
  unit,
  ...(channel === undefined ? {} : { channel }),
  ...(signed === undefined ? {} : { signed }),
  source: obd,
  mark,
});

/** One field of an answer to a diagnostic request, with the place of its first byte after the identifier. */
export interface ObdField extends RawScale {
  readonly byte: number;
  /** Bit of the first byte that says whether the field is supported; absent where it always is. */
  readonly supported?: number;
}

type Mark = RawScale['mark'];

/** Fields of the same width one behind the other, each with its bit in the first byte. */
function inTurn(count: number, row: Row, mark: Mark): ObdField[] {
  return Array.from({ length: count }, (_, index) => ({ ...fromObd(row, mark), byte: 1 + (index * row[0]) / 8, supported: index }));
}

/** Four sensors along the exhaust of one bank. Where they sit differs from engine to engine, so that none is a channel. */
const exhaustTemperatures = (mark: Mark) => inTurn(4, [16, 0.1, -40, 'degC'], mark);

/**
 * Parameters of on-board diagnostics in the current data (service 01), by their identifier. The published field tables that were seen
 * read the pressure difference of 7A as offset binary, the standard is believed to say two's complement: it is that, from memory.
 */
export const obdParameters: ReadonlyMap<number, readonly ObdField[]> = new Map([
  [0x04, [{ ...fromObd([8, 100 / 255, 0, '%', 'engineLoad'], 'read'), byte: 0 }]],
  [0x05, [{ ...fromObd([8, 1, -40, 'degC', 'coolantTemperature'], 'read'), byte: 0 }]],
  [0x0b, [{ ...fromObd([8, 1, 0, 'kPa', 'manifoldPressure'], 'read'), byte: 0 }]],
  [0x0c, [{ ...fromObd([16, 0.25, 0, 'rpm', 'engineSpeed'], 'read'), byte: 0 }]],
  [0x0d, [{ ...fromObd([8, 1, 0, 'km/h', 'vehicleSpeed'], 'from memory'), byte: 0 }]],
  [0x0f, [{ ...fromObd([8, 1, -40, 'degC', 'intakeTemperature'], 'read'), byte: 0 }]],
  [0x10, [{ ...fromObd([16, 0.01, 0, 'g/s', 'airMassFlow'], 'read'), byte: 0 }]],
  [0x33, [{ ...fromObd([8, 1, 0, 'kPa', 'ambientPressure'], 'from memory'), byte: 0 }]],
  [0x46, [{ ...fromObd([8, 1, -40, 'degC', 'ambientTemperature'], 'from memory'), byte: 0 }]],
  [0x66, [{ ...fromObd([16, 0.03125, 0, 'g/s', 'airMassFlow'], 'read'), byte: 1, supported: 0 }]],
  // Absolute or above ambient: the tables that were seen do not say it, so that it is no channel.
  [0x73, inTurn(2, [16, 0.01, 0, 'kPa'], 'read')],
  [0x77, inTurn(4, [8, 1, -40, 'degC'], 'read')],
  [0x78, exhaustTemperatures('read')],
  [0x79, exhaustTemperatures('read')],
  [0x7a, [{ ...fromObd([16, 0.01, 0, 'kPa', 'pressureDrop'], 'from memory', true), byte: 1, supported: 0 }]],
  [
    0x7c,
    [
      { ...fromObd([16, 0.1, -40, 'degC', 'gasTemperature'], 'read'), byte: 1, supported: 0 },
      { ...fromObd([16, 0.1, -40, 'degC', 'gasTemperatureAfterFilter'], 'read'), byte: 3, supported: 1 },
    ],
  ],
  // Before or behind the catalyst: the number of the sensor does not tell.
  [0x83, inTurn(2, [16, 1, 0, 'ppm'], 'read')],
  [0x84, [{ ...fromObd([8, 1, -40, 'degC'], 'from memory'), byte: 0 }]],
  [
    0x85,
    [
      { ...fromObd([16, 0.005, 0, 'L/h'], 'from memory'), byte: 1, supported: 0 },
      { ...fromObd([16, 0.005, 0, 'L/h'], 'from memory'), byte: 3, supported: 1 },
      { ...fromObd([8, 100 / 255, 0, '%', 'reductantLevel'], 'from memory'), byte: 5, supported: 2 },
    ],
  ],
  [0x86, inTurn(2, [16, 0.0125, 0, 'mg/m3'], 'from memory')],
  [0x87, [{ ...fromObd([16, 0.03125, 0, 'kPa', 'manifoldPressure'], 'from memory'), byte: 1, supported: 0 }]],
  [
    0x8b,
    [
      // How near the next regeneration is, and the mean time and distance between two.
      { ...fromObd([8, 100 / 255, 0, '%'], 'from memory'), byte: 2, supported: 4 },
      { ...fromObd([16, 1, 0, 'min'], 'from memory'), byte: 3, supported: 5 },
      { ...fromObd([16, 1, 0, 'km'], 'from memory'), byte: 5, supported: 6 },
    ],
  ],
  [0x98, exhaustTemperatures('from memory')],
  [0x99, exhaustTemperatures('from memory')],
  [0x9d, [{ ...fromObd([16, 0.02, 0, 'g/s', 'fuelMassFlow'], 'from memory'), byte: 0 }]],
  [0xa1, inTurn(4, [16, 1, 0, 'ppm'], 'from memory')],
  [0x9e, [{ ...fromObd([16, 0.2, 0, 'kg/h', 'exhaustMassFlow'], 'read'), byte: 0 }]],
]);

const fromTruck = ([bits, step, offset, unit, channel]: Row): RawScale => ({
  bits,
  step,
  offset,
  unit,
  ...(channel === undefined ? {} : { channel }),
  // The tops of the published ranges: 250 for a byte, FAFF for two, FAFFFFFF for four.
  most: bits === 8 ? 0xfa : bits === 16 ? 0xfaff : 0xfaffffff,
  source: truck,
  mark: 'read',
});

/** Signals of the network of trucks and machines, by their number (SPN). */
export const truckParameters: ReadonlyMap<number, RawScale> = new Map([
  [81, fromTruck([8, 0.5, 0, 'kPa', 'backPressure'])],
  [102, fromTruck([8, 2, 0, 'kPa', 'boostPressure'])],
  [107, fromTruck([8, 0.05, 0, 'kPa', 'airFilterDrop'])],
  [108, fromTruck([8, 0.5, 0, 'kPa', 'ambientPressure'])],
  [110, fromTruck([8, 1, -40, 'degC', 'coolantTemperature'])],
  [132, fromTruck([16, 0.05, 0, 'kg/h', 'airMassFlow'])],
  [183, fromTruck([16, 0.05, 0, 'L/h', 'fuelFlow'])],
  [190, fromTruck([16, 0.125, 0, 'rpm', 'engineSpeed'])],
  [1761, fromTruck([8, 0.4, 0, '%', 'reductantLevel'])],
  [3031, fromTruck([8, 1, -40, 'degC', 'reductantTemperature'])],
  [3216, fromTruck([16, 0.05, -200, 'ppm', 'noxBefore'])],
  [3226, fromTruck([16, 0.05, -200, 'ppm', 'noxAfter'])],
  [3236, fromTruck([16, 0.2, 0, 'kg/h', 'exhaustMassFlow'])],
  [3242, fromTruck([16, 0.03125, -273, 'degC', 'gasTemperature'])],
  [3246, fromTruck([16, 0.03125, -273, 'degC', 'gasTemperatureAfterFilter'])],
  [3251, fromTruck([16, 0.1, 0, 'kPa', 'pressureDrop'])],
  [3719, fromTruck([8, 1, 0, '%', 'sootShare'])],
  [3720, fromTruck([8, 1, 0, '%', 'ashShare'])],
  [3721, fromTruck([32, 1, 0, 's', 'timeSinceRegeneration'])],
]);
