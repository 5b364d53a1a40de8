import { shownBy } from './interlocks.ts';
import type { JobTrace } from './trace-types.ts';

export interface ProvedLimit {
  readonly part: string;
  /** When it had been seen to trip and to make again since the work on it; null while it has not. */
  readonly t: number | null;
}

/** Each limit that the learner worked on, and whether its contact has since been seen both ways. */
export function limitsProved({ acts, events }: JobTrace): readonly ProvedLimit[] {
  const since = new Map<string, number>();
  for (const { action } of acts) {
    if (action.type === 'repair' && action.way !== 'report' && shownBy(action.part) !== null) {
      since.set(action.part, action.t);
    }
    // Turning a dial until it trips and back again is one way of proving it.
    if (action.type === 'adjust' && shownBy(action.part) !== null && !since.has(action.part)) {
      since.set(action.part, action.t);
    }
  }
  return [...since].map(([part, sinceS]) => {
    const what = shownBy(part);
    const seen = (type: 'proved' | 'lost') =>
      events.find((event) => event.type === type && event.what === what && event.t >= sinceS)?.t;
    const [made, broken] = [seen('proved'), seen('lost')];
    return {
      part,
      t: made === undefined || broken === undefined ? null : Math.max(made, broken),
    };
  });
}
