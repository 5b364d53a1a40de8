/** A value that can be read and listened to; what holds it alone can write. */
export interface Readable<T> {
  read(): T;
  subscribe(listener: () => void): () => void;
}

export interface Held<T> extends Readable<T> {
  write(change: Partial<T>): void;
}

export function createHeld<T extends object>(initial: T): Held<T> {
  let value = initial;
  const listeners = new Set<() => void>();
  return {
    read: () => value,
    write(change) {
      value = { ...value, ...change };
      for (const listener of [...listeners]) listener();
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
