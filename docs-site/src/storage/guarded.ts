/** What became of a text that was to be kept on the device. */
export type Kept = 'kept' | 'full' | 'denied';

function isFull(error: unknown): boolean {
  return error instanceof DOMException && (error.name === 'QuotaExceededError' || error.name === 'NS_ERROR_DOM_QUOTA_REACHED');
}

/** The text that this device keeps under a name; undefined where there is none, or where pages may not store. */
export function stored(name: string): string | undefined {
  try {
    return window.localStorage.getItem(name) ?? undefined;
  } catch {
    return undefined;
  }
}

/** Keep a text on this device, at once. */
export function store(name: string, text: string): Kept {
  try {
    window.localStorage.setItem(name, text);
    return 'kept';
  } catch (error) {
    return isFull(error) ? 'full' : 'denied';
  }
}

export function forget(name: string): void {
  try {
    window.localStorage.removeItem(name);
  } catch {
    // Where pages may not store, nothing was kept.
  }
}

/** All names under which something is kept that begin so. */
export function storedNames(beginning: string): string[] {
  try {
    return Object.keys(window.localStorage).filter((name) => name.startsWith(beginning));
  } catch {
    return [];
  }
}
