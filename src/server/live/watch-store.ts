import { isStoreFailure } from '../store/index.ts';
import type { ClassStore } from '../store/types.ts';

export type StoreState = 'not opened' | 'ready' | 'not reached';

/** The store, and what became of the last thing asked of it. */
export function watchStore(store: ClassStore): {
  readonly store: ClassStore;
  readonly state: () => StoreState;
} {
  let state: StoreState = 'not opened';
  const noting = async (answer: Promise<unknown>): Promise<unknown> => {
    try {
      const given = await answer;
      state = 'ready';
      return given;
    } catch (error) {
      if (isStoreFailure(error)) state = 'not reached';
      throw error;
    }
  };
  const watched = new Proxy(store, {
    get(target, name) {
      const member: unknown = Reflect.get(target, name);
      if (typeof member !== 'function') return member;
      return (...given: unknown[]) => noting(member.apply(target, given) as Promise<unknown>);
    },
  });
  return { store: watched, state: () => state };
}
