/** What the calculator needs to calculate: loaded after the page, because it brings the checks of the inputs. */
export { toInput } from './form-input.js';
export { fromHash, toHash } from './permalink.js';
export { viewResult } from './result-view.js';
export { changeUnit, typedUnit } from './unit-text.js';
