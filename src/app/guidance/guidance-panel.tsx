import { useState } from 'react';
import { say, sayWord } from '../../i18n/index.ts';
import { useExercise } from '../job/exercise-context.tsx';
import { shortClock } from '../working/clock-text.ts';
import { FeedbackText } from './feedback-text.tsx';
import { soFarWords } from './feedback-words.ts';
import { useGuidance } from './guidance-context.tsx';
import { HintButton, HintRungs } from './hint-ladder.tsx';
import { useLadder } from './use-ladder.ts';

/** Between what the panel shows and the bench: as much help as this way of working has. */
export function GuidancePanel() {
  const { mode } = useGuidance();
  const { desk } = useExercise();
  if (desk.phase === 'card' || desk.phase === 'handover') return null;
  if (mode === 'assessment') {
    return <p className="guidance guidance-none quiet">{say('guide.assessment')}</p>;
  }
  return mode === 'guided' ? <Guided /> : <Practice />;
}

function Guided() {
  const [open, setOpen] = useState(true);
  const ladder = useLadder();
  return (
    <div className="guidance">
      <div className="guidance-head">
        <h2 id="guidance-title">{say('guide.title')}</h2>
        <HintButton ladder={ladder} onHint={() => setOpen(true)} />
        <button
          type="button"
          className="button plain guidance-fold"
          aria-expanded={open}
          aria-controls="guidance-body"
          onClick={() => setOpen(!open)}
        >
          {say(open ? 'guide.hide' : 'guide.show')}
        </button>
      </div>
      <section
        className="guidance-body"
        id="guidance-body"
        aria-labelledby="guidance-title"
        hidden={!open}
        // A part that scrolls must be reachable by keyboard.
        // biome-ignore lint/a11y/noNoninteractiveTabindex: see above
        tabIndex={0}
      >
        <Said />
        <HintRungs ladder={ladder} />
      </section>
    </div>
  );
}

function Practice() {
  const { atS, thinking, reasoning, ask, putAway } = useGuidance();
  const soFar = reasoning === null ? '' : soFarWords(reasoning);
  return (
    <div className="guidance">
      <div className="guidance-head">
        <button
          type="button"
          className="button guidance-ask"
          aria-disabled={thinking}
          onClick={() => {
            if (!thinking) ask();
          }}
        >
          {say('guide.ask-how')}
        </button>
        {atS === null || thinking ? null : (
          <button type="button" className="button plain" onClick={putAway}>
            {say('guide.put-away')}
          </button>
        )}
      </div>
      <section
        className="guidance-body"
        aria-label={say('guide.title')}
        hidden={atS === null}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: as above
        tabIndex={0}
      >
        {atS === null ? null : (
          <p className="guidance-as-of quiet">{say('guide.as-of', { time: shortClock(atS) })}</p>
        )}
        <Said />
        {soFar === '' ? null : <p className="guidance-so-far">{soFar}</p>}
      </section>
    </div>
  );
}

/** The sentence on the last decision; or why there is none. */
function Said() {
  const { reasoning, thinking, trouble } = useGuidance();
  const last = reasoning?.decisions.at(-1);
  return (
    <>
      <div aria-live="polite">
        {last === undefined ? null : <FeedbackText decision={last} />}
        {trouble === null ? null : (
          <p className="guidance-trouble">{sayWord('guide.trouble', trouble)}</p>
        )}
      </div>
      {thinking ? <p className="guidance-thinking quiet">{say('guide.thinking')}</p> : null}
    </>
  );
}
