import { forget, store, stored } from '../storage/guarded.js';
import { type Remembered, usable } from './remembered.js';

const place = 'wallflow-filter-and-engine';

/** What this device remembers; nothing where it cannot store. */
export function readRemembered(): Remembered {
  try {
    return usable(JSON.parse(stored(place) ?? '{}'));
  } catch {
    return {};
  }
}

/** Without storage nothing is remembered, and nothing else changes. */
export function writeRemembered(remembered: Remembered): void {
  if (Object.keys(remembered).length === 0) forget(place);
  else store(place, JSON.stringify(remembered));
}
