import { type FormEvent, useRef, useState } from 'react';
import { say, sayWord } from '../../i18n/index.ts';
import { SuspectReadings } from '../guidance/suspect-readings.tsx';
import { useFacts } from '../working/session-context.tsx';
import { ChoiceList } from './choice-list.tsx';
import { useExercise } from './exercise-context.tsx';

/** What it could be, in the technician's own order. */
export function Suspects() {
  const facts = useFacts();
  const { desk, take } = useExercise();
  const [refused, setRefused] = useState('');
  const [chosen, setChosen] = useState('');
  const list = useRef<HTMLOListElement>(null);
  const ranked = desk.suspects;
  const rank = (next: readonly string[]) => {
    const refusal = take({ type: 'suspect', ranked: [...next] });
    setRefused(refusal === null ? '' : sayWord('refusal', refusal));
  };
  const swapped = (place: number, by: number) => {
    const next = [...ranked];
    const moved = next.splice(place, 1);
    next.splice(place + by, 0, ...moved);
    return next;
  };
  function add(event: FormEvent<HTMLFormElement>): void {
    event.preventDefault();
    if (chosen === '') return;
    rank([...ranked, chosen]);
    setChosen('');
    // The button is of no use until a part is chosen again; the focus is not to go with it.
    event.currentTarget.querySelector('select')?.focus();
  }
  return (
    <div className="suspects">
      {ranked.length === 0 ? <p className="quiet">{say('job.notes.no-suspects')}</p> : null}
      <ol ref={list} tabIndex={-1}>
        {ranked.map((part, place) => (
          <li key={part}>
            <span>{part}</span>
            <button
              type="button"
              className="button plain"
              aria-label={say('job.notes.up', { part })}
              aria-disabled={place === 0}
              onClick={() => {
                if (place > 0) rank(swapped(place, -1));
              }}
            >
              ↑
            </button>
            <button
              type="button"
              className="button plain"
              aria-label={say('job.notes.down', { part })}
              aria-disabled={place === ranked.length - 1}
              onClick={() => {
                if (place < ranked.length - 1) rank(swapped(place, 1));
              }}
            >
              ↓
            </button>
            <button
              type="button"
              className="button plain"
              aria-label={say('job.notes.drop', { part })}
              onClick={() => {
                rank(ranked.filter((each) => each !== part));
                list.current?.focus();
              }}
            >
              ×
            </button>
            <SuspectReadings part={part} />
          </li>
        ))}
      </ol>
      {/* Arrow keys go through the list without adding what they pass. */}
      <form className="field-row" onSubmit={add}>
        <ChoiceList
          label={say('job.notes.add-suspect')}
          value={chosen}
          empty={say('job.repair.choose-part')}
          options={facts.parts
            .filter(({ part }) => !ranked.includes(part))
            .map(({ part }) => ({ value: part, text: part }))}
          onChoose={setChosen}
        />
        <button type="submit" className="button" disabled={chosen === ''}>
          {say('job.notes.do-add-suspect')}
        </button>
      </form>
      <p className="invalid" role="status">
        {refused}
      </p>
    </div>
  );
}
