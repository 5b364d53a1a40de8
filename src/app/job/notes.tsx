import { type FormEvent, useState } from 'react';
import { say } from '../../i18n/index.ts';
import { shortClock } from '../working/clock-text.ts';
import { useExercise } from './exercise-context.tsx';
import { PinList } from './pin-list.tsx';
import { Suspects } from './suspects.tsx';

/** The technician's pad: readings, notes, suspects. */
export function Notes() {
  const { desk, take } = useExercise();
  const [text, setText] = useState('');
  function keep(event: FormEvent<HTMLFormElement>): void {
    event.preventDefault();
    if (text.trim() === '') return;
    if (take({ type: 'note', text: text.trim() }) !== null) return;
    setText('');
    event.currentTarget.querySelector('textarea')?.focus();
  }
  return (
    <div className="notes">
      <section aria-labelledby="pins-title">
        <h3 id="pins-title">{say('job.notes.pins')}</h3>
        <PinList />
      </section>
      <section aria-labelledby="suspects-title">
        <h3 id="suspects-title">{say('job.notes.suspects')}</h3>
        <Suspects />
      </section>
      <section aria-labelledby="notes-title">
        <h3 id="notes-title">{say('job.notes.notes')}</h3>
        <ul className="note-list">
          {desk.notes.map(({ t, text: note }) => (
            <li key={`${t} ${note}`}>
              <span className="quiet">{shortClock(t)}</span> {note}
            </li>
          ))}
        </ul>
        <form className="work-form" onSubmit={keep}>
          <label className="field">
            <span>{say('job.notes.add')}</span>
            <textarea
              rows={2}
              maxLength={2000}
              value={text}
              onChange={({ target }) => setText(target.value)}
            />
          </label>
          <button type="submit" className="button" disabled={text.trim() === ''}>
            {say('job.notes.keep')}
          </button>
        </form>
      </section>
    </div>
  );
}
