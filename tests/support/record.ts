import { existsSync, readFileSync, writeFileSync } from 'node:fs';

/** What `npm run record` was asked to write down anew: `new` for what has no record yet, or ids of calculations. */
export const recording: readonly string[] = (process.env.WALLFLOW_RECORD ?? '').split(',').filter((part) => part !== '');

/** What stands in a file that `npm run record` writes; written first where it is asked for. */
export function recorded(file: string, present: string): string {
  if (recording.length > 0) writeFileSync(file, present);
  return existsSync(file) ? readFileSync(file, 'utf8') : '';
}
