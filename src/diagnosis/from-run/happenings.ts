import type { DeskEntry } from '../../../machines/index.ts';
import type { TimedAction } from '../../engine/index.ts';

/** One thing that a learner did, at the plant or on paper. */
export type Happening =
  | { readonly t: number; readonly at: 'plant'; readonly action: TimedAction }
  | { readonly t: number; readonly at: 'desk'; readonly entry: DeskEntry };

/**
 * Both logs in the order of time. Neither says what came first in one instant of a plant that was
 * stopped: one reads, then writes, then works.
 */
export function happeningsOf(
  mine: readonly TimedAction[],
  desk: readonly DeskEntry[],
): readonly Happening[] {
  const times = [...new Set([...mine, ...desk].map(({ t }) => t))].sort((a, b) => a - b);
  return times.flatMap((t): Happening[] => {
    const actions = mine.filter((action) => action.t === t);
    const works = actions.findIndex(({ type }) => type === 'repair' || type === 'adjust');
    const before = works < 0 ? actions : actions.slice(0, works);
    const read = before.map(({ type }) => type === 'check').lastIndexOf(true) + 1;
    const atPlant = (all: readonly TimedAction[]) =>
      all.map((action): Happening => ({ t, at: 'plant', action }));
    return [
      ...atPlant(actions.slice(0, read)),
      ...desk
        .filter((entry) => entry.t === t)
        .map((entry): Happening => ({ t, at: 'desk', entry })),
      ...atPlant(actions.slice(read)),
    ];
  });
}
