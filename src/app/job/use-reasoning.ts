import { useEffect, useMemo, useRef, useState } from 'react';
import type { Reasoning } from '../../diagnosis/index.ts';
import type { Reasoned, ReasonTrouble } from '../session/reasoning-protocol.ts';
import type { Session } from '../session/session-types.ts';
import { useSession, useSessionPart } from '../working/session-context.tsx';
import { useExercise } from './exercise-context.tsx';

/** Entries that change nothing of what was found out. */
const BEARS_NOT: ReadonlySet<string> = new Set(['hint', 'feedback', 'note']);
/** After the last thing done, so that a row of acts is one question. */
const SETTLES_MS = 300;

export interface ReasoningNow {
  /** The latest that is known; null before the first, and for a plant without an atlas. */
  readonly reasoning: Reasoning | null;
  /** Something was done of which it does not tell yet. */
  readonly thinking: boolean;
  readonly trouble: ReasonTrouble | null;
  /** How many acts and entries it was made of; null before the first answer. */
  readonly upTo: Reasoned['upTo'] | null;
}

interface Answered {
  readonly session: Session;
  /** The question that it answers. */
  readonly to: string;
  readonly with: Reasoned;
}

/** How the cause was gone about so far, made out anew whenever something was done, while `when` holds. */
export function useReasoning(when: boolean): ReasoningNow {
  const session = useSession();
  const { desk } = useExercise();
  const open = useSessionPart(({ phase }) => phase === 'open');
  const acts = useActs(session);
  const steps = useSessionPart(({ events }) => countSteps(events));
  const [answered, setAnswered] = useState<Answered | null>(null);
  const bearing = desk.entries.filter(({ type }) => !BEARS_NOT.has(type)).length;
  const question = `${acts}/${bearing}/${steps}`;
  const entries = useRef(desk.entries);
  entries.current = desk.entries;
  const wanted = when && open;
  useEffect(() => {
    if (!wanted) return;
    const timer = setTimeout(() => {
      session.reason(entries.current).then((reasoned) => {
        // Taken even where more was done since: the latest that there is, and `thinking` stays on.
        setAnswered({ session, to: question, with: reasoned });
      });
    }, SETTLES_MS);
    return () => clearTimeout(timer);
  }, [session, wanted, question]);
  // Started anew it is another plant, of which nothing is known yet.
  const latest = answered?.session === session ? answered : null;
  return useMemo(
    () => ({
      reasoning: latest?.with.reasoning ?? null,
      thinking: wanted && latest?.to !== question,
      trouble: latest?.with.trouble ?? null,
      upTo: latest?.with.upTo ?? null,
    }),
    [latest, wanted, question],
  );
}

/** How many acts there are in the log. */
function useActs(session: Session): number {
  const [acts, setActs] = useState(0);
  useEffect(() => session.onLog(({ log }) => setActs(log.length)), [session]);
  return acts;
}

/** A step that was entered is news of the plant, as a reading is. */
function countSteps(events: ReturnType<Session['store']['read']>['events']): number {
  return events.reduce(
    (count, { type }) => (type === 'step' || type === 'lockout' ? count + 1 : count),
    0,
  );
}
