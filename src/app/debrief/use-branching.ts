import { useCallback } from 'react';
import type { JudgedDecision } from '../../diagnosis/index.ts';
import { useExercise } from '../job/exercise-context.tsx';
import { useWorkAround } from '../job/work-context.tsx';
import { hrefOf } from '../shell/route.ts';
import { branchWork } from '../work/device-branches.ts';
import type { WorkIssue } from '../work/work-record.ts';
import { forkBefore } from './fork-before.ts';

/** Makes a branch of the work around and goes there; says why where it could not be made. */
export function useBranching(): (decision: JudgedDecision) => WorkIssue | 'full' | null {
  const work = useWorkAround();
  const { id } = useExercise();
  return useCallback(
    (decision) => {
      const { record } = work.state.read();
      if (record === null) return null;
      const { name, issue } = branchWork(record, forkBefore(decision, record.desk));
      if (name?.branch === undefined) return issue;
      location.hash = hrefOf({ page: 'branch', id, branch: name.branch });
      return null;
    },
    [work, id],
  );
}
