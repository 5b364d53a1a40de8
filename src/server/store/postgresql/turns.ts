/** Lets so many at most run at a time, in the order in which they came. */
export function createTurns(most: number): <T>(run: () => Promise<T>) => Promise<T> {
  const waiting: (() => void)[] = [];
  let running = 0;
  return async (run) => {
    if (running >= most) await new Promise<void>((resolve) => waiting.push(resolve));
    else running++;
    try {
      return await run();
    } finally {
      // The turn goes on to the next one, or back.
      const next = waiting.shift();
      if (next === undefined) running--;
      else next();
    }
  };
}
