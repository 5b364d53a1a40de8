import { useEffect, useRef, useState } from 'react';
import { DebriefPage } from '../job/debrief-page.tsx';
import { Replay } from '../job/replay.tsx';
import { useReasoning } from '../job/use-reasoning.ts';
import { useVerdict } from '../job/use-verdict.ts';
import { WorkFrame } from '../job/work-frame.tsx';
import type { Job } from '../library/exercises.ts';
import type { Surroundings } from '../settings/theme.ts';
import { useSession } from '../working/session-context.tsx';
import { ReplayAt } from './replay-at.tsx';

interface Replaying {
  /** Place of the decision that is looked at; null where it is a moment of its own. */
  readonly decision: number | null;
}

/** The debrief of a job and the run looked at again, back and forth, judged once. */
export function Debriefing({ job, look }: { readonly job: Job; readonly look: Surroundings }) {
  const session = useSession();
  const verdict = useVerdict();
  const reasoned = useReasoning(true);
  const [replaying, setReplaying] = useState<Replaying | null>(null);
  const leftAt = useRef<string | null>(null);
  const reasoning = reasoned.reasoning;

  useEffect(() => {
    if (replaying !== null || leftAt.current === null) return;
    // Back where one was: what was pressed has the focus again, and is in sight.
    const pressed = document.getElementById(leftAt.current);
    pressed?.focus({ preventScroll: true });
    pressed?.scrollIntoView({ block: 'center' });
    leftAt.current = null;
  }, [replaying]);

  if (replaying !== null) {
    return (
      <WorkFrame session={session} kind="replay" still={true}>
        <Replay
          look={look}
          onBack={() => setReplaying(null)}
          head={
            reasoning === null || replaying.decision === null ? null : (
              <ReplayAt
                reasoning={reasoning}
                place={replaying.decision}
                onPlace={(decision) => {
                  setReplaying({ decision });
                  session.scrub(reasoning.decisions[decision]?.t ?? 0);
                }}
              />
            )
          }
        />
      </WorkFrame>
    );
  }
  const open = (tS: number | null, decision: number | null) => {
    leftAt.current = document.activeElement?.id ?? null;
    if (tS !== null) session.scrub(tS);
    setReplaying({ decision });
  };
  return (
    <DebriefPage
      job={job}
      look={look}
      verdict={verdict}
      reasoned={reasoned}
      onReplay={(tS) => open(tS, null)}
      onDecision={(decision) => open(reasoning?.decisions[decision]?.t ?? null, decision)}
    />
  );
}
