/** The three to five decisions that are worth going back to. */
import type { JudgedDecision } from './reasoning.ts';

export interface Weighed {
  readonly judged: JudgedDecision;
  /** Bits by which it brought the cause nearer. */
  readonly learnt: number;
}

const LEAST_MOMENTS = 3;
const MOST_MOMENTS = 5;
/** Less than this is not worth going back for, minutes. */
const LEAST_REGRET = 1;
/** To suspect what was ruled out costs nothing by itself, and leads astray. */
const REFUTED_MINUTES = 3;

/** @returns places, in the order of time; never two about the same thing */
export function decisiveMoments(decisions: readonly Weighed[]): readonly number[] {
  const places = decisions.flatMap(({ judged }, i) => (judged.kind === 'arrive' ? [] : [i]));
  const regretOf = (i: number) => {
    const judged = decisions[i]?.judged;
    if (judged === undefined) return 0;
    const astray = judged.kind === 'suspect' && judged.refutedBy.length > 0 ? REFUTED_MINUTES : 0;
    return judged.regretMinutes + astray;
  };
  const learntOf = (i: number) => decisions[i]?.learnt ?? 0;
  const things = new Set<string>();
  const isNew = (i: number) => {
    const name = thingOf(decisions[i]?.judged);
    if (things.has(name)) return false;
    things.add(name);
    return true;
  };
  const costly = places
    .filter((i) => regretOf(i) >= LEAST_REGRET)
    .sort((a, b) => regretOf(b) - regretOf(a))
    .filter(isNew)
    .slice(0, MOST_MOMENTS);
  const telling = places
    .filter((i) => !costly.includes(i))
    .sort((a, b) => learntOf(b) - learntOf(a) || a - b)
    .filter(isNew)
    .slice(0, Math.max(0, LEAST_MOMENTS - costly.length));
  return [...costly, ...telling].sort((a, b) => a - b);
}

function thingOf(judged: JudgedDecision | undefined): string {
  if (judged === undefined) return '';
  const { kind, what, t } = judged;
  return kind === 'watch' ? `watch ${t}` : what === '' ? `${kind} ${t}` : what;
}
