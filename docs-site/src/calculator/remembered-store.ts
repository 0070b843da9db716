import { type Remembered, usable } from './remembered.js';

const place = 'wallflow-filter-and-engine';

/** What this device remembers; nothing where it cannot store. */
export function readRemembered(): Remembered {
  try {
    return usable(JSON.parse(window.localStorage.getItem(place) ?? '{}'));
  } catch {
    return {};
  }
}

/** Without storage nothing is remembered, and nothing else changes. */
export function writeRemembered(remembered: Remembered): void {
  try {
    if (Object.keys(remembered).length === 0) window.localStorage.removeItem(place);
    else window.localStorage.setItem(place, JSON.stringify(remembered));
  } catch {
    // Storage is closed to pages or full.
  }
}
