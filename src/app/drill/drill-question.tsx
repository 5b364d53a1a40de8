import { type FormEvent, useState } from 'react';
import { say, sayWord } from '../../i18n/index.ts';
import { ChoiceList } from '../job/choice-list.tsx';
import { useExercise } from '../job/exercise-context.tsx';
import type { Drill } from '../library/exercises.ts';
import { stepAt } from '../reading/step-at.ts';
import { useFacts, useSession } from '../working/session-context.tsx';
import { useTimeLeftS } from './time-left.tsx';

/** What is asked, and the answer: one of a few, or a part of the plant. */
export function DrillQuestion({ drill }: { readonly drill: Drill }) {
  const { desk, take } = useExercise();
  const session = useSession();
  const over = useTimeLeftS(drill.limitS) === 0;
  const [refused, setRefused] = useState('');
  const close = () => {
    session.pause();
    take({ type: 'close' });
  };
  const answer = (option: number) => {
    const { step } = stepAt(session.store.read().events, session.headS());
    const refusal = take({ type: 'answer', step, option });
    setRefused(refusal === null ? '' : sayWord('refusal', refusal));
    if (refusal === null) close();
  };
  const claim = (part: string) => {
    const refusal = take({
      type: 'claim',
      part,
      why: desk.pins.map((_, place) => place),
      mechanism: '',
    });
    setRefused(refusal === null ? '' : sayWord('refusal', refusal));
    if (refusal === null) close();
  };
  if (desk.phase === 'claim' || over) {
    return (
      <div className="work-form">
        <p>{drill.question}</p>
        {over && desk.phase !== 'claim' ? <p>{say('drill.over')}</p> : null}
        <button type="button" className="button primary" onClick={close}>
          {say('drill.close')}
        </button>
      </div>
    );
  }
  return (
    <div className="work-form">
      {drill.options === undefined ? (
        <PartAnswer question={drill.question} onAnswer={claim} />
      ) : (
        <ChosenAnswer question={drill.question} options={drill.options} onAnswer={answer} />
      )}
      <p className="invalid" role="status">
        {refused}
      </p>
    </div>
  );
}

function ChosenAnswer(props: {
  readonly question: string;
  readonly options: readonly string[];
  readonly onAnswer: (option: number) => void;
}) {
  const { question, options, onAnswer } = props;
  const [chosen, setChosen] = useState<number | null>(null);
  return (
    <form
      className="work-form"
      onSubmit={(event: FormEvent) => {
        event.preventDefault();
        if (chosen !== null) onAnswer(chosen);
      }}
    >
      <fieldset className="evidence">
        <legend>{question}</legend>
        {options.map((option, place) => (
          <label className="check" key={option}>
            <input
              type="radio"
              name="answer"
              checked={chosen === place}
              onChange={() => setChosen(place)}
            />
            {option}
          </label>
        ))}
      </fieldset>
      <button type="submit" className="button primary" disabled={chosen === null}>
        {say('drill.answer')}
      </button>
    </form>
  );
}

function PartAnswer(props: {
  readonly question: string;
  readonly onAnswer: (part: string) => void;
}) {
  const { parts } = useFacts();
  const [part, setPart] = useState('');
  return (
    <form
      className="work-form"
      onSubmit={(event: FormEvent) => {
        event.preventDefault();
        if (part !== '') props.onAnswer(part);
      }}
    >
      <p>{props.question}</p>
      <ChoiceList
        label={say('drill.name-part')}
        value={part}
        empty={say('job.repair.choose-part')}
        options={parts.map((each) => ({ value: each.part, text: each.part }))}
        onChoose={setPart}
      />
      <button type="submit" className="button primary" disabled={part === ''}>
        {say('drill.answer')}
      </button>
    </form>
  );
}
