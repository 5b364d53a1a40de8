/** Does one thing after another, each when the one before has ended, well or not. */
export type Line = <T>(work: () => Promise<T>) => Promise<T>;

export function createLine(): Line {
  let last: Promise<unknown> = Promise.resolve();
  return (work) => {
    const next = last.then(work, work);
    last = next.catch(() => undefined);
    return next;
  };
}
