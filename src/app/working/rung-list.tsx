import { useEffect, useState } from 'react';
import { say } from '../../i18n/index.ts';
import { type LadderStep, loadLadder, type RungText } from '../../view/index.ts';
import { useFacts, useSession, useSessionPart } from './session-context.tsx';
import { viewMessage } from './view-words.ts';

type Say = (frame: Float64Array, step: LadderStep) => readonly RungText[];

/** Every rung with its state in words, for a screen reader; those of the step are said to be so. */
export function RungList(props: { readonly step: LadderStep; readonly live?: boolean }) {
  const { step, live = true } = props;
  const facts = useFacts();
  const session = useSession();
  useSessionPart((state) => state.shownS);
  const [words, setWords] = useState<{ readonly say: Say } | null>(null);
  useEffect(() => {
    let alive = true;
    loadLadder().then(
      ({ createRungWords }) => {
        if (!alive) return;
        setWords({ say: createRungWords(facts.wiring, facts.channels, viewMessage, live) });
      },
      // The drawing beside it says that it could not be fetched.
      () => undefined,
    );
    return () => {
      alive = false;
    };
  }, [facts, live]);
  const frame = session.shownFrame();
  if (words === null || frame === null) return null;
  return (
    <section className="for-readers" aria-label={say('app.ladder.rungs')}>
      <ol>
        {words.say(frame, step).map(({ rung, text, isOfStep }) => (
          <li key={rung}>{isOfStep ? say('app.ladder.of-step', { text }) : text}</li>
        ))}
      </ol>
    </section>
  );
}
