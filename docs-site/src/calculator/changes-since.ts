import type { ChangeView } from '../data/types.js';

function isNewer(version: string, than: string): boolean {
  const [parts, others] = [version, than].map((text) => text.split('.').map(Number)) as [number[], number[]];
  const at = parts.findIndex((part, index) => part !== (others[index] ?? 0));
  return at >= 0 && (parts[at] ?? 0) > (others[at] ?? 0);
}

/** What changed in a calculation after a version, newest first. */
export function changesSince(history: readonly ChangeView[], version: string): readonly ChangeView[] {
  return history.filter((change) => isNewer(change.version, version));
}

/** A change as a line of text. */
export function changeText({ version, what, why }: ChangeView): string {
  return `Version ${version}: ${what} ${why}`;
}
