/**
 * Freeze plain records and lists to their depth: what every user of a calculation shares, nobody may change by accident. What is
 * no plain data, as a schema or a kind of quantity, is left alone.
 */
export function freezeData<T>(value: T): T {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value;
  const prototype: unknown = Object.getPrototypeOf(value);
  if (!Array.isArray(value) && prototype !== Object.prototype && prototype !== null) return value;
  Object.freeze(value);
  for (const inner of Object.values(value)) freezeData(inner);
  return value;
}
