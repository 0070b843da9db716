import { readParquetLog } from '@wallflow/logs/parquet';
import { parquetWriteBuffer } from 'hyparquet-writer';
import { describe, expect, it } from 'vitest';
import { rows, truth, usualTitles, windowsOf } from './drive.js';

const columns = [
  ...usualTitles.map((name, index) => ({
    name,
    data: rows.map((row) => [row.time, row.speed, row.air, row.temperature, row.drop][index]!),
    type: 'DOUBLE' as const,
  })),
  { name: 'Remark', data: rows.map(() => 'ok'), type: 'STRING' as const },
];

describe('a Parquet file', () => {
  it('is understood as any log', async () => {
    const reading = await readParquetLog(parquetWriteBuffer({ columnData: columns }));
    expect(windowsOf(reading)).toEqual(truth);
    expect(reading.questions).toEqual([]);
    expect(reading.unused).toEqual([{ column: 'Remark', why: expect.any(String) }]);
  });

  it('may have moments for its time', async () => {
    const [, ...others] = columns;
    const moments = {
      name: 'timestamp',
      data: rows.map(({ time }) => new Date(Date.UTC(2026, 10, 30, 14) + time * 1000)),
      type: 'TIMESTAMP' as const,
    };
    expect(windowsOf(await readParquetLog(parquetWriteBuffer({ columnData: [moments, ...others] })))).toEqual(truth);
  });

  it('is refused where it is none, or has no time', async () => {
    const none = readParquetLog(new TextEncoder().encode('Time [s],Engine speed [rpm]').buffer);
    await expect(none).rejects.toMatchObject({ code: 'not_parquet' });
    await expect(readParquetLog(parquetWriteBuffer({ columnData: columns.slice(1) }))).rejects.toMatchObject({ code: 'no_time' });
  });
});
