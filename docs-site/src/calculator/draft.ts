// What was typed in the last moment before a page is left, for when it comes back at once.

const place = 'wallflow-draft';

export function keepDraft(hash: string): void {
  try {
    window.sessionStorage.setItem(place, JSON.stringify([window.location.pathname, hash]));
  } catch {
    // Without it only what was typed in the last half second is lost.
  }
}

/** The draft of this page, once, where it was reloaded or come back to; a link that is opened anew counts for itself. */
export function takeDraft(): string | undefined {
  try {
    const text = window.sessionStorage.getItem(place);
    window.sessionStorage.removeItem(place);
    const [entry] = performance.getEntriesByType('navigation') as PerformanceNavigationTiming[];
    if (text === null || entry?.type === 'navigate') return undefined;
    const [path, hash] = JSON.parse(text) as [unknown, unknown];
    return path === window.location.pathname && typeof hash === 'string' ? hash : undefined;
  } catch {
    return undefined;
  }
}
