import { type KeptJob, usableJob } from './usable-job.js';

const key = 'wallflow-job-sheet';

/** The job that this device kept, if it kept one. Nothing of it leaves the device. */
export function keptJob(): KeptJob | undefined {
  try {
    return usableJob(localStorage.getItem(key));
  } catch {
    return undefined;
  }
}

/** Keep the job on this device, so that a reload or an empty battery loses nothing. */
export function keepJob(job: KeptJob): void {
  try {
    localStorage.setItem(key, JSON.stringify(job));
  } catch {
    // A device that keeps nothing still makes the sheet.
  }
}

/** Forget it, as when a new job begins. */
export function forgetJob(): void {
  try {
    localStorage.removeItem(key);
  } catch {
    // Nothing was kept then.
  }
}
