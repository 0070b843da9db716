import { forget, type Kept, store, stored, storedNames } from '../storage/guarded.js';
import { keepLog } from './log-store.js';
import { type Slot, usableOldJob, usableSlot } from './usable-job.js';

const beginning = 'wallflow-job:';
/** Where older pages kept their one job, logs and all. */
const oldPlace = 'wallflow-job-sheet';

export function readSlot(id: string): Slot | undefined {
  return usableSlot(stored(beginning + id));
}

/** Keep a job on this device at once, so that a reload or an empty battery loses nothing. */
export function writeSlot(id: string, slot: Slot): Kept {
  return store(beginning + id, JSON.stringify(slot));
}

export function removeSlot(id: string): void {
  forget(beginning + id);
  void keepLog(id, 'before', undefined);
  void keepLog(id, 'after', undefined);
}

export interface ListedJob {
  readonly id: string;
  readonly name: string;
  readonly changed: number;
}

/** What a job is called in a list: the vehicle, as it was typed. */
export function jobName({ values }: Pick<Slot, 'values'>): string {
  const about = values.about !== undefined && 'rows' in values.about ? values.about.rows[0] : undefined;
  const vehicle = about?.vehicle !== undefined && 'text' in about.vehicle ? about.vehicle.text.trim() : '';
  return vehicle || 'A job without a vehicle yet';
}

/** All jobs on this device, the last changed first. */
export function listJobs(): ListedJob[] {
  return storedNames(beginning)
    .flatMap((name): ListedJob[] => {
      const id = name.slice(beginning.length);
      const slot = readSlot(id);
      return slot === undefined ? [] : [{ id, name: jobName(slot), changed: slot.changed }];
    })
    .sort((first, second) => second.changed - first.changed);
}

export function newId(): string {
  return `${Date.now().toString(36)}-${Math.random().toString(36).slice(2, 10)}`;
}

/** Give the job that an older page kept a slot of its own. */
export async function takeOverOldJob(): Promise<void> {
  const old = usableOldJob(stored(oldPlace));
  if (old === undefined) return;
  const id = newId();
  const { before, after } = old.logs;
  const logs = { ...(before === undefined ? {} : { before: before.name }), ...(after === undefined ? {} : { after: after.name }) };
  const kept = [
    writeSlot(id, { values: old.values, logs, changed: Date.now() }),
    before === undefined ? 'kept' : await keepLog(id, 'before', before),
    after === undefined ? 'kept' : await keepLog(id, 'after', after),
  ];
  if (kept.every((one) => one === 'kept')) forget(oldPlace);
}
