import { createContext, useContext } from 'react';
import type { Work } from '../work/work-types.ts';

const WorkContext = createContext<Work | null>(null);
export const WorkProvider = WorkContext.Provider;

export function useWorkAround(): Work {
  const work = useContext(WorkContext);
  if (work === null) throw new Error('no work around this part of the page');
  return work;
}
