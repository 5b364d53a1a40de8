/** Work that is done when it is first asked for, and kept. */
export function once<T>(work: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: work() };
    return made.value;
  };
}
