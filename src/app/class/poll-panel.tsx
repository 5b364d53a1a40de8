import { useEffect, useId, useRef, useState } from 'react';
import type { ClassPoll } from '../../../machines/class/index.ts';
import { say } from '../../i18n/index.ts';
import { useClass, useClassPart } from './class-context.ts';
import { errorText } from './code-words.ts';
import { PollCounts } from './poll-counts.tsx';

/** The question that is open, beside the work: it can be folded away and never hides the plant for good. */
export function PollPanel() {
  const poll = useClassPart((now) => now.book.poll);
  const phase = useClassPart((now) => now.book.phase);
  if (poll === null || phase === 'closed') return <p className="for-readers" role="status" />;
  return <OpenPoll key={poll.id} poll={poll} />;
}

function OpenPoll({ poll }: { readonly poll: ClassPoll }) {
  const polled = useClassPart((now) => now.polled);
  const own = polled?.poll === poll.id ? polled.option : null;
  const [folded, setFolded] = useState(false);
  const heading = useRef<HTMLHeadingElement>(null);
  const id = useId();
  const isShown = poll.shown !== null;
  useEffect(() => {
    // Whoever is not writing something starts at the question.
    if (isTyping()) return;
    heading.current?.focus({ preventScroll: true });
  }, []);
  useEffect(() => {
    if (isShown) setFolded(false);
  }, [isShown]);
  return (
    <section
      className="class-poll"
      role="dialog"
      aria-modal="false"
      aria-labelledby={`${id}-title`}
      data-folded={folded}
    >
      <div className="class-poll-head">
        <h2 id={`${id}-title`} ref={heading} tabIndex={-1}>
          {say(isShown ? 'class.poll.shown' : 'class.poll.title')}
        </h2>
        <button
          type="button"
          className="button plain"
          aria-expanded={!folded}
          onClick={() => setFolded(!folded)}
        >
          {say(folded ? 'class.poll.unfold' : 'class.poll.fold')}
        </button>
      </div>
      {folded ? null : (
        <div className="class-poll-body">
          {poll.question.stem.length === 0 ? null : (
            <ul className="class-poll-stem">
              {poll.question.stem.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          )}
          <p className="class-poll-question">{poll.question.text}</p>
          {poll.shown === null ? (
            <PollChoice poll={poll} own={own} />
          ) : (
            <PollCounts options={poll.question.options} shown={poll.shown} own={own} />
          )}
        </div>
      )}
    </section>
  );
}

function PollChoice({ poll, own }: { readonly poll: ClassPoll; readonly own: number | null }) {
  const { client } = useClass();
  const [chosen, setChosen] = useState<number | null>(own);
  const [given, setGiven] = useState<number | null>(null);
  const [trouble, setTrouble] = useState('');
  const id = useId();
  const answered = own ?? given;
  if (answered !== null) {
    return (
      <div role="status">
        <p className="class-poll-given">
          {say('class.poll.given', { option: poll.question.options[answered] ?? '' })}
        </p>
        <p className="quiet">{say(own === null ? 'class.poll.going' : 'class.poll.wait')}</p>
      </div>
    );
  }
  const give = async () => {
    if (chosen === null) return;
    setGiven(chosen);
    const answer = await client.answerPoll(poll.id, chosen);
    if (answer.ok) return;
    setGiven(null);
    setTrouble(errorText(answer.error));
  };
  return (
    <fieldset className="class-poll-options">
      <legend className="for-readers">{poll.question.text}</legend>
      {poll.question.options.map((option, place) => (
        <label key={option} className="class-poll-option">
          <input
            type="radio"
            name={id}
            checked={chosen === place}
            onChange={() => setChosen(place)}
          />
          <span>{option}</span>
        </label>
      ))}
      <p className="invalid" role="alert">
        {trouble}
      </p>
      <p className="buttons">
        <button
          type="button"
          className="button primary"
          aria-disabled={chosen === null}
          onClick={() => void give()}
        >
          {say('class.poll.give')}
        </button>
        <span className="quiet">{say('class.poll.alone')}</span>
      </p>
    </fieldset>
  );
}

function isTyping(): boolean {
  const at = document.activeElement;
  return at !== null && at.closest('input:not([type="range"]), select, textarea, dialog') !== null;
}
