/** Whether two pieces of plain data say the same; the order of keys says nothing. */
export function sameData(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const keys = Object.keys(a).filter((key) => Reflect.get(a, key) !== undefined);
  const others = Object.keys(b).filter((key) => Reflect.get(b, key) !== undefined);
  return (
    keys.length === others.length &&
    keys.every((key) => sameData(Reflect.get(a, key), Reflect.get(b, key)))
  );
}

/** How many entries at the beginning of two lists are the same. */
export function sharedLength(a: readonly unknown[], b: readonly unknown[]): number {
  const most = Math.min(a.length, b.length);
  for (let place = 0; place < most; place += 1) {
    if (!sameData(a[place], b[place])) return place;
  }
  return most;
}
