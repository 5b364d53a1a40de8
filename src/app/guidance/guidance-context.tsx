import {
  createContext,
  type ReactNode,
  useCallback,
  useContext,
  useEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import type { Guidance } from '../../../machines/job/index.ts';
import type { Reasoning } from '../../diagnosis/index.ts';
import { useExercise } from '../job/exercise-context.tsx';
import { useReasoning } from '../job/use-reasoning.ts';
import type { ReasonTrouble } from '../session/reasoning-protocol.ts';
import { useSession } from '../working/session-context.tsx';

/** What may be told of the work so far, and how much of it is told now. */
export interface GuidanceNow {
  readonly mode: Guidance;
  /** Null where nothing is told: not asked for, not known, not allowed. */
  readonly reasoning: Reasoning | null;
  readonly thinking: boolean;
  readonly trouble: ReasonTrouble | 'no atlas' | null;
  /** In practice: the moment that what is told is of, s; null where nothing was asked for. */
  readonly atS: number | null;
  ask(): void;
  putAway(): void;
}

interface Asked {
  readonly atS: number;
  readonly reasoning: Reasoning | null;
  readonly thinking: boolean;
  readonly trouble: GuidanceNow['trouble'];
}

const nothing = () => undefined;
const GuidanceContext = createContext<GuidanceNow>({
  mode: 'assessment',
  reasoning: null,
  thinking: false,
  trouble: null,
  atS: null,
  ask: nothing,
  putAway: nothing,
});

export function useGuidance(): GuidanceNow {
  return useContext(GuidanceContext);
}

/** Reasoning at every step in guided work, for the asking in practice, never in an assessment. */
export function GuidanceProvider({ children }: { readonly children: ReactNode }) {
  const { desk } = useExercise();
  const live = useReasoning(desk.guidance === 'guided');
  const once = useAskedOnce();
  const now = useMemo((): GuidanceNow => {
    const { ask, putAway } = once;
    if (desk.guidance !== 'guided') {
      return { mode: desk.guidance, ...(once.asked ?? NOTHING_ASKED), ask, putAway };
    }
    const { reasoning, thinking, trouble, upTo } = live;
    const none = reasoning === null && upTo !== null && trouble === null;
    return {
      mode: 'guided',
      reasoning,
      thinking,
      trouble: none ? 'no atlas' : trouble,
      atS: null,
      ask,
      putAway,
    };
  }, [desk.guidance, live, once]);
  return <GuidanceContext.Provider value={now}>{children}</GuidanceContext.Provider>;
}

const NOTHING_ASKED = { reasoning: null, thinking: false, trouble: null, atS: null };

/** In practice: what came of it when it was last asked. */
function useAskedOnce() {
  const session = useSession();
  const { desk, take } = useExercise();
  const [asked, setAsked] = useState<Asked | null>(null);
  const there = useRef(true);
  useEffect(() => {
    there.current = true;
    return () => {
      there.current = false;
    };
  }, []);
  const ask = useCallback(() => {
    if (take({ type: 'feedback' }) !== null) return;
    const atS = session.headS();
    setAsked({ atS, reasoning: null, thinking: true, trouble: null });
    session.reason(desk.entries).then(({ reasoning, trouble }) => {
      if (!there.current) return;
      const none = reasoning === null && trouble === null;
      setAsked({ atS, reasoning, thinking: false, trouble: none ? 'no atlas' : trouble });
    });
  }, [session, desk.entries, take]);
  const putAway = useCallback(() => setAsked(null), []);
  return useMemo(() => ({ asked, ask, putAway }), [asked, ask, putAway]);
}
