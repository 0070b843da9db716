/** Paths of the files of this site that the page, or the worker in which this runs, has loaded so far, itself included. */
export function loadedFiles(): string[] {
  const names = performance.getEntriesByType('resource').map((entry) => entry.name);
  const urls = [self.location.href, ...names].map((name) => new URL(name));
  return [...new Set(urls.filter((url) => url.origin === self.location.origin).map((url) => url.pathname))];
}
