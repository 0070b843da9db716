/** What the form needs of the units: loaded after the page is shown. */
export { fromInput, toInput } from './form-input.js';
export { fromHash, toHash } from './permalink.js';
export { changeUnit, quantityEntry, symbolOf, typedEntry, unitNote } from './unit-text.js';
