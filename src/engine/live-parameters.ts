/**
 * Copies every number, flag and word of `from` onto `onto`, in place; lists become as long as there.
 *
 * The plant's components hold on to their parameter objects, so a fault comes and goes
 * by rewriting these, never by swapping them. Both sides must have the same keys.
 */
export function restoreInPlace<T extends object>(onto: T, from: T): void {
  if (Array.isArray(onto) && Array.isArray(from)) onto.length = from.length;
  const target = onto as Record<string, unknown>;
  const source = from as Record<string, unknown>;
  for (const key of Object.keys(source)) {
    const value = source[key];
    const held = target[key];
    if (isObject(value) && isObject(held)) restoreInPlace(held, value);
    else target[key] = copyData(value);
  }
}

/** A deep copy of plain data: objects, lists, numbers, flags and words. */
export function copyData<T>(value: T): T {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(copyData) as T;
  const source = value as Record<string, unknown>;
  const copy: Record<string, unknown> = {};
  for (const key of Object.keys(source)) copy[key] = copyData(source[key]);
  return copy as T;
}

function isObject(value: unknown): value is object {
  return typeof value === 'object' && value !== null;
}
