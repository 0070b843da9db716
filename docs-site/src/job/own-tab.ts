// Which job this tab had, so that a reload comes back to it while other tabs have theirs.

const place = 'wallflow-job';

export function ownTab(): string | undefined {
  try {
    return window.sessionStorage.getItem(place) ?? undefined;
  } catch {
    return undefined;
  }
}

export function rememberOwnTab(id: string): void {
  try {
    window.sessionStorage.setItem(place, id);
  } catch {
    // Without it the tab comes back to the job that was changed last.
  }
}
