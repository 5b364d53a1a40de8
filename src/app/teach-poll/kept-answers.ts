/** What is right of a poll that is open, on the instructor's device alone: the tab may crash before it is shown. */
import { z } from 'zod';

const PLACE = 'flamewright.poll-answers';
const MOST_KEPT = 20;

const keptSchema = z.array(
  z.object({ poll: z.string(), right: z.number().int().nullable(), why: z.string() }),
);
type Kept = z.infer<typeof keptSchema>[number];

export function keepAnswer(kept: Kept): void {
  const others = everything().filter(({ poll }) => poll !== kept.poll);
  try {
    localStorage.setItem(PLACE, JSON.stringify([kept, ...others].slice(0, MOST_KEPT)));
  } catch {
    // A device that keeps nothing still asks; after a reload nothing is marked as right.
  }
}

/** Without a right option where this device did not ask it. */
export function keptAnswer(poll: string): Kept {
  return everything().find((one) => one.poll === poll) ?? { poll, right: null, why: '' };
}

function everything(): readonly Kept[] {
  try {
    const read = keptSchema.safeParse(JSON.parse(localStorage.getItem(PLACE) ?? '[]'));
    return read.success ? read.data : [];
  } catch {
    return [];
  }
}
