import { useEffect, useState } from 'react';
import type { Proof } from '../../bench/index.ts';
import { say, sayMessage, sayWord } from '../../i18n/index.ts';
import { shortClock } from '../working/clock-text.ts';
import { useSession, useSessionPart } from '../working/session-context.tsx';
import { useExercise } from './exercise-context.tsx';

/** Simulated seconds after which the proof is looked at again. */
const AGAIN_S = 5;

/** What a repair has to show, met by what happens at the plant. */
export function ProofItems({ proof }: { readonly proof: Proof }) {
  return (
    <ul className="proof">
      {proof.items.map(({ id, met, t, why }) => (
        <li key={id} data-met={met}>
          <span className="proof-mark" aria-hidden="true">
            {met ? '✓' : '○'}
          </span>
          <div>
            <p>
              <strong>{sayWord('job.proof', id)}</strong>{' '}
              <span className="proof-state">
                {say(met ? 'job.finish.proof-met' : 'job.finish.proof-open')}
                {met && t !== null ? ` ${say('job.finish.proof-at', { time: shortClock(t) })}` : ''}
              </span>
            </p>
            <p className="quiet">{sayMessage(why)}</p>
          </div>
        </li>
      ))}
    </ul>
  );
}

/** The proof as it stands, looked at again as the run goes on; null before the first answer. */
export function useProof(): Proof | null {
  const session = useSession();
  const { desk } = useExercise();
  const beat = useSessionPart((state) => Math.floor(state.shownS / AGAIN_S));
  const actions = useSessionPart((state) => state.events.length);
  const [proof, setProof] = useState<Proof | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: looked at again as time goes by and things happen
  useEffect(() => {
    let wanted = true;
    session.proof(desk.entries).then(
      (found) => {
        if (wanted) setProof(found);
      },
      () => undefined,
    );
    return () => {
      wanted = false;
    };
  }, [session, desk.entries, beat, actions]);
  return proof;
}
