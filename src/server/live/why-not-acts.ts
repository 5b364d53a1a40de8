import type { Spoken } from '../../classroom/index.ts';
import { actionSchema } from '../../judging/logs/index.ts';

/** The place of the first act that the engine does not know, in words of the message; null: all are known. */
export function whyNotActs(spoken: Spoken): string | null {
  if (spoken.type !== 'do' && spoken.type !== 'when') return null;
  for (const [index, act] of spoken.acts.entries()) {
    if (!actionSchema.safeParse(act).success) return `entry.acts.${index} (${act.type})`;
  }
  return null;
}
