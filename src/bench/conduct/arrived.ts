import type { DeskEntry } from '../../../machines/index.ts';

/** When the learner came: what was done before is not theirs. A desk without arrival: from the start. */
export function arrivedS(desk: readonly DeskEntry[]): number {
  return desk.find(({ type }) => type === 'arrive' || type === 'begin')?.t ?? 0;
}
