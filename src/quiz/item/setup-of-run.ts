import { type Plan, withTolerances } from '../../diagnosis/index.ts';
import type { RunSetup } from '../../engine/index.ts';
import type { ItemRun } from './item.ts';

/** The whole setup of the run of an item; starting it needs no atlas. */
export function setupOfRun(
  { setup }: Pick<Plan, 'setup'>,
  { tolerances, faults, actions }: Omit<ItemRun, 'untilS'>,
): RunSetup {
  const own = withTolerances(setup, tolerances);
  return { ...own, faults, actions: [...own.actions, ...actions].sort((a, b) => a.t - b.t) };
}
