import { closeSync, openSync, writeSync } from 'node:fs';

/** A drive of so many rows at 10 Hz with 8 columns; the same for the same number of rows. */
export function* logLines(rows: number): Generator<string> {
  let state = 12_345;
  const random = () => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
    return state / 2_147_483_648;
  };
  yield 'Time [s],Engine speed [rpm],MAF [kg/h],EGT before DPF [°C],DPF differential pressure [mbar],Coolant temperature [°C],Vehicle speed [km/h],Soot mass [g]\n';
  for (let row = 0; row < rows; row += 1) {
    const part = Math.floor(row / 600) % 3;
    const speed = [700, 1500, 2200][part]! + Math.floor(random() * 20);
    const cells = [
      (row / 10).toFixed(1),
      speed,
      (82 + part * 110 + random() * 4).toFixed(1),
      (118 + 45 * part + random()).toFixed(1),
      (18 + 38 * part + random()).toFixed(2),
      84 + Math.floor(random() * 3),
      0,
      (38 + row / 1e6).toFixed(2),
    ];
    yield `${cells.join(',')}\n`;
  }
}

/** The same in a file; its size in bytes. */
export function writeLog(path: string, rows: number): number {
  const file = openSync(path, 'w');
  let held = '';
  let size = 0;
  for (const line of logLines(rows)) {
    held += line;
    if (held.length < 1_000_000) continue;
    size += writeSync(file, held);
    held = '';
  }
  size += writeSync(file, held);
  closeSync(file);
  return size;
}
