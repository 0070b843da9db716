import { geometryInputs } from '../filter/inputs.js';

/** The size of the filter as it was given, for a nested working of the filter's geometry. */
export const sameGeometry: Readonly<Record<string, string>> = Object.fromEntries(Object.keys(geometryInputs).map((key) => [key, key]));
