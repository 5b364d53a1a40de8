import { useEffect, useRef } from 'react';
import type { HintRung } from '../../../machines/job/index.ts';
import type { Advice } from '../../diagnosis/index.ts';
import { say } from '../../i18n/index.ts';
import { useExercise } from '../job/exercise-context.tsx';
import { useFacts } from '../working/session-context.tsx';
import { cautionOf } from './caution-of.ts';
import { kindWords, nudgeWords, whichWords, whyLines } from './hint-words.ts';
import type { LadderNow } from './use-ladder.ts';

const ASKS = ['guide.hint.0', 'guide.hint.1', 'guide.hint.2', 'guide.hint.3'] as const;

/** Each press tells one thing more; it stays where it is, and keeps the focus. */
export function HintButton({
  ladder,
  onHint,
}: {
  readonly ladder: LadderNow;
  readonly onHint: () => void;
}) {
  const { advice, rungs, spent, climb } = ladder;
  const ask = ASKS[rungs.length];
  const none = advice === null || ask === undefined;
  return (
    <button
      type="button"
      className="button guidance-hint"
      aria-disabled={none}
      onClick={() => {
        if (none) return;
        climb();
        onHint();
      }}
    >
      {say(spent ? 'guide.hint.none' : (ask ?? 'guide.hint.all'))}
    </button>
  );
}

/** What has been told of the hint so far. */
export function HintRungs({ ladder }: { readonly ladder: LadderNow }) {
  const { advice, rungs, spent, leftBehind } = ladder;
  const { desk } = useExercise();
  const last = useRef<HTMLLIElement>(null);
  const known = useRef(rungs.length);
  useEffect(() => {
    if (rungs.length > known.current) last.current?.scrollIntoView({ block: 'nearest' });
    known.current = rungs.length;
  }, [rungs.length]);
  const caution = advice === null || rungs.length < 2 ? null : cautionOf(advice.check);
  return (
    <div aria-live="polite" className="guidance-hints">
      {spent ? (
        <p>{say(desk.claims.length === 0 ? 'guide.spent' : 'guide.spent-claimed')}</p>
      ) : null}
      {advice === null || rungs.length === 0 ? null : (
        <ol className="guidance-rungs">
          {rungs.map((rung) => (
            <li key={rung} ref={rung === rungs.length - 1 ? last : null}>
              <Rung advice={advice} rung={rung} />
              {rung === 1 && leftBehind ? ` ${say('guide.left-behind')}` : null}
              {rung === 1 && caution !== null ? <p className="caution">{caution}</p> : null}
            </li>
          ))}
        </ol>
      )}
    </div>
  );
}

function Rung({ advice, rung }: { readonly advice: Advice; readonly rung: HintRung }) {
  const facts = useFacts();
  if (rung === 0) return nudgeWords(advice);
  if (rung === 1) return kindWords(advice);
  if (rung === 2) return whichWords(facts, advice);
  const lines = whyLines(facts, advice);
  if (lines.length === 0) return say('guide.why.none');
  return (
    <>
      {say('guide.why')}
      <dl className="guidance-why">
        {lines.map(({ parts, said }) => (
          <div key={said}>
            <dt>{parts}</dt>
            <dd>{said}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}
