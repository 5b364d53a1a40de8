import { createContext, useContext } from 'react';

const NONE: readonly string[] = [];
const LockedTools = createContext<readonly string[]>(NONE);
/** Tools that a class has locked: they stay in the bag. */
export const LockedToolsProvider = LockedTools.Provider;

export function useLockedTools(): readonly string[] {
  return useContext(LockedTools);
}
