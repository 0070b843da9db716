import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Mdf4File, readMdf4, readMdf4Log } from '@wallflow/logs/mdf4';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rows, truth, windowsOf } from './drive.js';
import { type WrittenChannel, type WrittenGroup, writeMdf4 } from './mdf4-writer.js';

const time: WrittenChannel = { name: 'time', unit: 's', type: 2, sync: 1, dataType: 4, bits: 64, byte: 0 };

/** The drive: a time as a double, speed in eighths of rpm, air as a float, temperature in tenths from -40 °C big-endian, drop in 0.1 mbar. */
function drive(store: NonNullable<WrittenGroup['store']>): Uint8Array {
  const records = new Uint8Array(rows.length * 20);
  const view = new DataView(records.buffer);
  rows.forEach((row, index) => {
    const at = index * 20;
    view.setFloat64(at, row.time, true);
    view.setUint16(at + 8, row.speed * 8, true);
    view.setFloat32(at + 10, row.air, true);
    view.setUint16(at + 14, Math.round((row.temperature + 40) * 10), false);
    // 12 bits, signed, four bits into byte 16.
    view.setUint16(at + 16, (Math.round(row.drop * 10) & 0xfff) << 4, true);
  });
  const channels: WrittenChannel[] = [
    time,
    { name: 'Engine speed', unit: 'rpm', dataType: 0, bits: 16, byte: 8, conversion: [1, 0, 0.125] },
    { name: 'MAF', unit: 'kg/h', dataType: 4, bits: 32, byte: 10 },
    { name: 'EGT before DPF', unit: '°C', dataType: 1, bits: 16, byte: 14, conversion: [1, -40, 0.1] },
    { name: 'DPF differential pressure', unit: 'mbar', dataType: 2, bits: 12, bit: 4, byte: 16, conversion: [2, 0, 1, 0, 0, 0, 10] },
    { name: 'Gear in words', dataType: 0, bits: 8, byte: 18, conversion: [7, 1, 2] },
    { name: 'Note', dataType: 7, bits: 8, byte: 19 },
  ];
  return writeMdf4([{ channels, records, dataBytes: 20, cycles: rows.length, store }]);
}

const refusal = async (bytes: Uint8Array) =>
  readMdf4(bytes).then(
    () => 'read',
    (error: Error & { code: string }) => error.code,
  );

describe('a measurement file', () => {
  it.each(['plain', 'compressed', 'transposed', 'list'] as const)('is understood as any log, with its records %s', async (store) => {
    const reading = await readMdf4Log(drive(store));
    expect(reading.questions).toEqual([]);
    expect(windowsOf(reading)).toEqual(truth);
  });

  it('gives physical values, and says what it passes over', async () => {
    const [group] = (await readMdf4(drive('plain'))).groups;
    const of = (name: string) => group?.channels.find((channel) => channel.name === name)?.values;
    expect(of('Engine speed')?.[50]).toBe(rows[50]!.speed);
    expect(of('EGT before DPF')?.[50]).toBeCloseTo(rows[50]!.temperature, 12);
    expect(of('DPF differential pressure')?.[100]).toBeCloseTo(rows[100]!.drop, 12);
    expect(group?.passedOver).toEqual([
      { name: 'Gear in words', why: 'a table or text' },
      { name: 'Note', why: 'no number' },
    ]);
  });

  it('keeps negative, big-endian and odd numbers of bits', async () => {
    const records = new Uint8Array(16);
    const view = new DataView(records.buffer);
    view.setInt16(8, -327, true);
    view.setInt32(10, -123456, false);
    records[14] = 0b0111_0100;
    view.setUint16(14, 0b0000_0001_0111_0100, true);
    const channel = (name: string, dataType: number, bits: number, byte: number, bit = 0): WrittenChannel => ({
      name,
      dataType,
      bits,
      byte,
      bit,
    });
    const file = writeMdf4([
      {
        channels: [time, channel('a', 2, 16, 8), channel('b', 3, 32, 10), channel('c', 0, 3, 14, 2), channel('d', 2, 5, 14, 4)],
        records,
        dataBytes: 16,
        cycles: 1,
      },
    ]);
    const [group] = (await readMdf4(file)).groups;
    // Bits 2 to 4 of 0x174 are 101; bits 4 to 8 are 10111, a negative number of five bits: 23 - 32.
    expect(group?.channels.map(({ values }) => values[0])).toEqual([-327, -123456, 5, -9]);
  });

  it('takes values that are marked invalid for none', async () => {
    const records = new Uint8Array([...new Uint8Array(8), 7, 0b10, ...new Uint8Array(8), 9, 0b00]);
    const marked: WrittenChannel = { name: 'a', dataType: 0, bits: 8, byte: 8, flags: 2, invalidBit: 1 };
    const file = writeMdf4([{ channels: [time, marked], records, dataBytes: 9, invalidBytes: 1, cycles: 2 }]);
    expect([...((await readMdf4(file)).groups[0]?.channels[0]?.values ?? [])]).toEqual([Number.NaN, 9]);
  });

  it('is refused where it is something else, not finished, unsorted, or not whole', async () => {
    const good = drive('compressed');
    expect(await refusal(new TextEncoder().encode('Time [s],Engine speed [rpm]'.repeat(9)))).toBe('not_mdf4');
    expect(await refusal(good.map((byte, index) => (index < 8 ? 'UnFinMF '.charCodeAt(index) : byte)))).toBe('not_finished');
    expect(await refusal(writeMdf4([], '3.30    '))).toBe('not_supported');
    expect(await refusal(writeMdf4([{ channels: [time], records: new Uint8Array(9), dataBytes: 8, cycles: 1, recordIds: 1 }]))).toBe(
      'not_supported',
    );
    expect(await refusal(writeMdf4([{ channels: [time], records: new Uint8Array(8), dataBytes: 8, cycles: 2 }]))).toBe('damaged');
    expect(await refusal(good.subarray(0, good.length - 64))).toBe('damaged');
  });

  it('is refused or read, but breaks nothing, whatever bytes are spoiled', async () => {
    const good = drive('list');
    await fc.assert(
      fc.asyncProperty(fc.array(fc.tuple(fc.nat(good.length - 1), fc.nat(255)), { minLength: 1, maxLength: 6 }), async (spoils) => {
        const bytes = good.slice();
        for (const [at, value] of spoils) bytes[at] = value;
        expect(['read', 'not_mdf4', 'not_finished', 'damaged', 'not_supported']).toContain(await refusal(bytes));
      }),
      { numRuns: 300, seed: 11 },
    );
  });
});

// Files of an open library's own tests; they lie beside the repository and are no part of it.
const data = process.env.WALLFLOW_SHARED_DATA ?? fileURLToPath(new URL('../../../../shared/data/', import.meta.url));
const elsewhere = [`${data}/mdf4`].find((folder) => existsSync(`${folder}/ASAP2_Demo_V171.mf4`));
const open = (name: string): Promise<Mdf4File> => readMdf4(readFileSync(`${elsewhere}/${name}`));

describe(
  elsewhere === undefined ? 'measurement files of others: not checked, as shared/data is absent' : 'measurement files of others',
  () => {
    it('have the raster, the kind of number and the conversion that the names of their signals state', async () => {
      if (elsewhere === undefined) {
        expect(elsewhere).toBeUndefined();
        return;
      }
      const { groups } = await open('ASAP2_Demo_V171.mf4');
      const group = (name: string) => groups.find((known) => known.name === name)!;
      for (const [name, raster] of [
        ['100ms_sync', 0.1],
        ['10ms_sync', 0.01],
      ] as const) {
        const { time: times } = group(name);
        expect((times!.at(-1)! - times![0]!) / (times!.length - 1)).toBeCloseTo(raster, 4);
      }
      const signals = groups.flatMap(({ channels }) => channels);
      const plusFour = signals.find(({ name }) => name.endsWith('UBYTE.FORM_X_PLUS_4'))!;
      expect([...plusFour.values].every((value) => Number.isInteger(value) && value >= 4 && value <= 259)).toBe(true);
      const signed = signals.find(({ name }) => name.includes('SBYTE'))!;
      expect([...signed.values].every((value) => Number.isInteger(value) && value >= -128 && value <= 127)).toBe(true);
      expect(Math.min(...signed.values)).toBeLessThan(0);
      expect((await open('test_batch.mf4')).groups[0]?.time?.length).toBe(1051);
    });
  },
);
