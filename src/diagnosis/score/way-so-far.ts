/** The decisions up to one of them, with what may be known before each. */
import { NO_FAULT } from '../../../machines/job/index.ts';
import type { Decision } from './decision.ts';
import { causesWithAlike, shareWithAlike } from './shares-of-parts.ts';
import type { View } from './view-of-knowing.ts';

export interface Step {
  readonly decision: Decision;
  /** What might be known before and after it. */
  readonly before: View;
  readonly after: View;
}

/**
 * What was known of a part while it was still as it was found: before it was first worked on. Whether a
 * repair helped is no reading.
 *
 * @param earlier steps before the one that asks, in the order of time
 * @param now what is known when it asks
 */
export function viewOfPart(earlier: readonly Step[], now: View, part: string): View {
  const causes = new Set(causesWithAlike(now.tables, part));
  const first = earlier.find(({ decision }) => {
    if (decision.kind !== 'work') return false;
    return (
      part === NO_FAULT ||
      decision.part === part ||
      now.tables.parts.causesOf(decision.part).some((cause) => causes.has(cause))
    );
  });
  return first?.before ?? now;
}

/** What anybody knew who came: before the first decision. */
export function arrivalOf(steps: readonly Step[]): View | undefined {
  const first = steps.find(({ decision }) => decision.kind !== 'arrive');
  return first === undefined ? steps.at(-1)?.after : first.before;
}

export function shareInView({ tables, ofCause, knowing }: View, part: string): number {
  return shareWithAlike(tables, ofCause, part, knowing.mended);
}

/** Share of a part with what nobody could tell from it, as readings had it. */
export function shareByReadings(earlier: readonly Step[], now: View, part: string): number {
  return shareInView(viewOfPart(earlier, now, part), part);
}

/** Work on a part that is less likely than all others together is a guess. */
export const GUESS_SHARE = 0.5;

/**
 * The same as far as it was read, not tried: what starts have shown since a part was worked on by guess
 * tells whether that helped. Who looks again with tools or eyes is back to reading.
 */
export function viewByReadings(earlier: readonly Step[], now: View, part: string): View {
  const view = viewOfPart(earlier, now, part);
  const until = earlier.findIndex(({ before }) => before === view);
  const all = until < 0 ? earlier : earlier.slice(0, until);
  let tried: View | null = null;
  all.forEach(({ decision, before, after }, i) => {
    if (decision.kind === 'work') {
      const isGuess = shareByReadings(all.slice(0, i), before, decision.part) < GUESS_SHARE;
      if (isGuess) tried ??= before;
    }
    if (decision.kind === 'check' && after.knowing.added.length > 0) tried = null;
  });
  return tried ?? view;
}
