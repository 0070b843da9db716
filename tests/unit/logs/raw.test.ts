import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { channelOf } from '@wallflow/logs';
import { obdParameters, parameterGroup, readCanDatabase, readFrame, readObdAnswer, readRaw, truckParameters } from '@wallflow/logs/raw';
import { unitInfo } from '@wallflow/units';
import { describe, expect, it } from 'vitest';

const truck = (number: number, raw: number) => readRaw(raw, truckParameters.get(number)!);

describe('a raw value of the network of trucks', () => {
  // The tops of the valid ranges as public signal lists print them: step times 250, FAFF or FAFFFFFF, and the offset.
  it.each([
    [190, 0xfaff, 8031.875],
    [3242, 0xfaff, 1734.96875],
    [110, 0xfa, 210],
    [3216, 0xfaff, 3012.75],
    [3236, 0xfaff, 12_851],
    [3251, 0xfaff, 6425.5],
    [81, 0xfa, 125],
    [107, 0xfa, 12.5],
    [102, 0xfa, 500],
    [132, 0xfaff, 3212.75],
    [3719, 0xfa, 250],
    [1761, 0xfa, 100],
    [3721, 0xfaffffff, 4_211_081_215],
  ])('%i ends where the standard says', (number, raw, top) => {
    expect(truck(number, raw)).toMatchObject({ value: top });
    expect(truck(number, raw + 1)).toEqual({ none: 'reserved' });
  });

  it('is worked with step and offset', () => {
    expect(truck(3242, 0x3e80)).toEqual({ value: 227, unit: 'degC' });
    expect(truck(3216, 0x0fa0)).toEqual({ value: 0, unit: 'ppm' });
    expect(truck(3251, 0x01f4)).toEqual({ value: 50, unit: 'kPa' });
    expect(truck(3236, 0x0bb8)).toEqual({ value: 600, unit: 'kg/h' });
  });

  it('is none where the code says so', () => {
    expect(truck(3251, 0xffff)).toEqual({ none: 'not available' });
    expect(truck(3251, 0xfe00)).toEqual({ none: 'error' });
    expect(truck(110, 0xff)).toEqual({ none: 'not available' });
    expect(truck(110, 0x1ff)).toEqual({ none: 'outside' });
    expect(truck(110, 1.5)).toEqual({ none: 'outside' });
  });
});

describe('an answer of on-board diagnostics', () => {
  const values = (identifier: number, ...bytes: number[]) =>
    readObdAnswer(identifier, Uint8Array.from(bytes))?.map(({ reading }) => reading);

  // Field tables of an open packet library: 0.01 kPa; 1 °C from -40 °C; 0.1 °C from -40 °C; 1 ppm; a bit for each sensor. By hand:
  // 0x2775 is 10 101; 0x41 is 65; 0x0A8C is 2700 (230 °C in a published field table); 0x0208 is 520.
  it('has each sensor of the exhaust side by its bit', () => {
    expect(values(0x73, 0b01, 0x27, 0x75, 0, 0)).toEqual([{ value: 101.01, unit: 'kPa' }, { none: 'not available' }]);
    expect(values(0x77, 0b0100, 0, 0, 0x41, 0)).toEqual([
      { none: 'not available' },
      { none: 'not available' },
      { value: 25, unit: 'degC' },
      { none: 'not available' },
    ]);
    for (const identifier of [0x78, 0x79])
      expect(values(identifier, 0b1001, 0x0a, 0x8c, 0, 0, 0, 0, 0x0a, 0x8c)).toEqual([
        { value: 230, unit: 'degC' },
        { none: 'not available' },
        { none: 'not available' },
        { value: 230, unit: 'degC' },
      ]);
    expect(values(0x83, 0b11, 0x02, 0x08, 0x02, 0x08)).toEqual([
      { value: 520, unit: 'ppm' },
      { value: 520, unit: 'ppm' },
    ]);
    // From memory of the standard, as their marks say: 255 is the whole; 0.005 L/h; minutes and kilometres as they are.
    expect(values(0x85, 0b101, 0x01, 0x2c, 0, 0, 0xff)).toEqual([
      { value: 1.5, unit: 'L/h' },
      { none: 'not available' },
      { value: 100, unit: '%' },
    ]);
    expect(values(0x8b, 0b1110000, 0, 0xff, 0x01, 0x2c, 0x02, 0x58)).toEqual([
      { value: 100, unit: '%' },
      { value: 300, unit: 'min' },
      { value: 600, unit: 'km' },
    ]);
    for (const fields of obdParameters.values())
      for (const { mark, source } of fields)
        expect([mark, source.length > 20]).toEqual([expect.stringMatching(/^(read|from memory)$/), true]);
  });

  // Published field tables: (256 A + B) / 4; (256 A + B) / 100; A - 40; 0.1 °C from -40 °C with 0A8C for 230 °C.
  it('is worked as the field tables say', () => {
    expect(values(0x0c, 0x1a, 0xf8)).toEqual([{ value: 1726, unit: 'rpm' }]);
    expect(values(0x10, 0x12, 0x34)).toEqual([{ value: 46.6, unit: 'g/s' }]);
    expect(values(0x05, 0x7b)).toEqual([{ value: 83, unit: 'degC' }]);
    expect(values(0x04, 0xff)).toEqual([{ value: 100, unit: '%' }]);
    expect(values(0x7c, 0b11, 0x0a, 0x8c, 0x0a, 0x8c)).toEqual([
      { value: 230, unit: 'degC' },
      { value: 230, unit: 'degC' },
    ]);
  });

  it('has no value of a field that is not supported, or not there', () => {
    expect(values(0x7c, 0b01, 0x0a, 0x8c, 0, 0)).toEqual([{ value: 230, unit: 'degC' }, { none: 'not available' }]);
    expect(values(0x0c, 0x1a)).toEqual([{ none: 'outside' }]);
    expect(values(0xf9)).toBeUndefined();
  });

  it('takes the pressure difference for signed', () => {
    expect(values(0x7a, 1, 0x00, 0x64)).toEqual([{ value: 1, unit: 'kPa' }]);
    expect(values(0x7a, 1, 0xff, 0x9c)).toEqual([{ value: -1, unit: 'kPa' }]);
  });
});

/** What a parameter can be whose place or kind the tables leave open, so that it is no channel. */
const placeless = [
  'absolutePressure',
  'temperature',
  'moleFraction',
  'volumeFlow',
  'fraction',
  'massConcentration',
  'time',
  'length',
] as const;

describe('the tables', () => {
  it('name a source, a mark, a channel and a unit of its kind for each parameter', () => {
    for (const scale of [...[...obdParameters.values()].flat(), ...truckParameters.values()]) {
      expect(scale.source).not.toBe('');
      expect(['read', 'from memory']).toContain(scale.mark);
      if (scale.channel === undefined) expect(placeless.some((kind) => unitInfo(kind, scale.unit)?.id === scale.unit)).toBe(true);
      else expect(unitInfo(channelOf(scale.channel).kind, scale.unit)?.id).toBe(scale.unit);
    }
  });
});

const database = readCanDatabase(`VERSION ""
BO_ 2566763070 Drop: 8 Unit
 SG_ FilterDrop : 32|16@1+ (0.1,0) [0|6425.5] "kPa"  Tool
BO_ 2364539904 Engine: 8 Unit
 SG_ Speed : 24|16@1+ (0.125,0) [0|8031.875] "rpm"  Tool
BO_ 291 Short: 8 Unit
 SG_ Motorola : 7|16@0- (0.5,-10) [0|0] "degC" Tool
 SG_ Odd m2 : 20|5@1- (1,0) [0|0] "" Tool
 SG_ Broken : x|16@1+ (1,0) [0|0] "" Tool
CM_ SG_ 291 Odd "a comment";
BA_ "SPN" SG_ 2566763070 FilterDrop 3251;
`);

describe('a CAN database file', () => {
  it('finds a parameter group whatever the priority and the sender', () => {
    // 0CF00400 is the engine's own group 61444; group 64946 has the filter's drop in bytes 5 and 6 (a public log with its decoder).
    expect(parameterGroup(0x0cf00400)).toBe(61_444);
    expect(parameterGroup(0x18fdb23d)).toBe(64_946);
    expect(parameterGroup(0x18ea003d)).toBe(parameterGroup(0x18eaff00));
    const values = readFrame(database, 0x0cfdb200, true, Uint8Array.from([0xff, 0xff, 0xff, 0xff, 0x01, 0x00, 0xff, 0xff]));
    expect(values).toMatchObject([{ signal: { name: 'FilterDrop', spn: 3251, unit: 'kPa' }, value: expect.closeTo(0.1, 12) }]);
  });

  it('takes reserved codes for no value', () => {
    const values = readFrame(database, 0x0cfdb200, true, new Uint8Array(8).fill(0xff));
    expect(values?.map(({ value }) => value)).toEqual([Number.NaN]);
  });

  it('reads both byte orders, signs and odd lengths', () => {
    // FF9C is -100: half of it less ten is -60. Bits 20 to 24 of 00 F0 01 are 11111: minus one.
    const values = readFrame(database, 291, false, Uint8Array.from([0xff, 0x9c, 0xf0, 0x01, 0, 0, 0, 0]));
    expect(values?.map(({ signal, value }) => [signal.name, value])).toEqual([
      ['Motorola', -60],
      ['Odd', -1],
    ]);
  });

  it('says which lines it did not understand, and knows no other frames', () => {
    expect(database.notUnderstood).toEqual([9]);
    expect(readFrame(database, 292, false, new Uint8Array(8))).toBeUndefined();
    expect(readFrame(database, 291, true, new Uint8Array(8))).toBeUndefined();
    expect(readCanDatabase('nothing\nBO_ x')).toEqual({ messages: [], notUnderstood: [2] });
  });
});

// A file of an open library's own tests, with the values that those tests expect; it lies beside the repository.
const folder = process.env.WALLFLOW_SHARED_DATA ?? fileURLToPath(new URL('../../../../shared/data/', import.meta.url));
const there = [`${folder}/can/j1939.dbc`].find((path) => existsSync(path));

describe(
  there === undefined ? 'a CAN database file of others: not checked, as shared/data is absent' : 'a CAN database file of others',
  () => {
    it('has the identifiers and numbers that its own tests expect', () => {
      if (there === undefined) {
        expect(there).toBeUndefined();
        return;
      }
      const { messages, notUnderstood } = readCanDatabase(readFileSync(there, 'latin1'));
      expect(notUnderstood).toEqual([]);
      expect(messages[0]).toMatchObject({
        name: 'Message1',
        id: 0x15340201,
        extended: true,
        signals: [{ name: 'Signal1', length: 8, signed: true, spn: 500 }],
      });
      expect(messages[1]).toMatchObject({ name: 'Message2', id: 0x15f01002 });
    });
  },
);
