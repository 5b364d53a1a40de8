export type Json = Record<string, unknown>;

/** Every place in a value, from the whole of it to its last leaf. */
export function pathsOf(value: unknown, path: string[] = []): string[][] {
  if (typeof value !== 'object' || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, inner]) => pathsOf(inner, [...path, key]))];
}

/** Puts a value at a path; where an earlier change took the way there, nothing happens. */
export function replaced(root: unknown, path: readonly string[], value: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  if (typeof root !== 'object' || root === null) return root;
  (root as Json)[key] = replaced((root as Json)[key], rest, value);
  return root;
}
