import { useEffect, useMemo, useState } from 'react';
import { say } from '../../i18n/index.ts';
import { type Ladder, type LadderStep, loadLadder } from '../../view/index.ts';
import { stepAt } from '../reading/step-at.ts';
import { RungList } from './rung-list.tsx';
import { useFacts, useSession, useSessionPart } from './session-context.tsx';
import { useViewObject } from './use-view-object.ts';
import { viewMessage } from './view-words.ts';

interface Props {
  /** Brings the rungs of a step into view when the step begins. */
  readonly follow: boolean;
  readonly onDrawing: (ladder: Ladder | null) => void;
}

/** The live wiring diagram, and the same rungs in words for a screen reader. */
export function LadderHost({ follow, onDrawing }: Props) {
  const session = useSession();
  const facts = useFacts();
  const [attempt, setAttempt] = useState(0);
  const revision = useSessionPart((state) => state.revision);
  const step = useLadderStep();
  const { host, object, phase, reason } = useViewObject(
    `${facts.scenario.id} ${attempt}`,
    async (element) => {
      const { createLadder } = await loadLadder();
      return createLadder(element, {
        wiring: facts.wiring,
        channels: facts.channels,
        message: viewMessage,
      });
    },
    (ladder) => session.onMoment(({ next }) => ladder.showFrame(next)),
  );
  useEffect(() => {
    onDrawing(object);
    return () => onDrawing(null);
  }, [object, onDrawing]);
  useEffect(() => object?.setStep(step, follow), [object, step, follow]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was replaced is drawn again
  useEffect(() => session.refresh(), [session, object, revision]);
  return (
    <>
      {/* What scrolls must be reachable by keyboard; the arrow keys move it, + − 0 zoom. */}
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields of a form */}
      <div
        className="ladder"
        ref={host}
        data-phase={phase}
        role="group"
        aria-label={say('app.ladder.label', { plant: facts.plantTitle })}
        aria-description={say('app.ladder.keys')}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: see above
        tabIndex={0}
      />
      <RungList step={step} />
      {phase === 'loading' ? <p className="schematic-note">{say('app.ladder.loading')}</p> : null}
      {phase === 'failed' ? (
        <div className="schematic-note" role="alert">
          <p>{say('app.ladder.not-drawn')}</p>
          <details>
            <summary>{say('app.failure.detail')}</summary>
            {reason}
          </details>
          <p>
            <button type="button" className="button" onClick={() => setAttempt(attempt + 1)}>
              {say('app.plant.try-again')}
            </button>
          </p>
        </div>
      ) : null}
    </>
  );
}

/** What the step shown drives and waits for. */
function useLadderStep(): LadderStep {
  const facts = useFacts();
  const events = useSessionPart((state) => state.events);
  const shownS = useSessionPart((state) => state.shownS);
  const { step } = useMemo(() => stepAt(events, shownS), [events, shownS]);
  return useMemo(() => {
    const found = facts.steps.find((each) => each.step === step);
    return {
      commands: found?.drives ?? [],
      inputs: (found?.waits ?? []).map(({ input }) => input),
    };
  }, [facts, step]);
}
