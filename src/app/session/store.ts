import { useSyncExternalStore } from 'react';

/** A small observable value: the only thing React reads of a running session. */
export interface Store<T> {
  read(): T;
  write(change: Partial<T>): void;
  subscribe(listener: () => void): () => void;
}

export function createStore<T extends object>(initial: T): Store<T> {
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

/** What a store is read by; others have values that are read in the same way. */
type Readable<T> = Pick<Store<T>, 'read' | 'subscribe'>;

export function useStore<T>(store: Readable<T>): T {
  return useSyncExternalStore(store.subscribe, store.read, store.read);
}

/** Renders only when the picked part changes; `pick` must hand back a stable value. */
export function useStorePart<T, P>(store: Readable<T>, pick: (value: T) => P): P {
  return useSyncExternalStore(store.subscribe, () => pick(store.read()));
}
