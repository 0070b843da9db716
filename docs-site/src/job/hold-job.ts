/** How long a reloaded page waits for its own last moment to let go of the job. */
const ownHold = 3000;

/**
 * Take a job for this tab, so that no other writes over it; gives the way to let go, or undefined where another tab has
 * it. The hold ends with the tab, however that ends. Browsers without locks take every job.
 */
export function holdJob(id: string, own = false): Promise<(() => void) | undefined> {
  if (navigator.locks === undefined) return Promise.resolve(() => undefined);
  const options = own ? { signal: AbortSignal.timeout(ownHold) } : { ifAvailable: true };
  return new Promise((resolve) => {
    navigator.locks
      .request(`wallflow-job-${id}`, options, (lock) => {
        if (lock === null) return resolve(undefined);
        return new Promise<void>((release) => resolve(release));
      })
      .catch(() => resolve(undefined));
  });
}
