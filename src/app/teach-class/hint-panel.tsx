import { type FormEvent, useState } from 'react';
import { TEXT_CHARACTERS } from '../../classroom/index.ts';
import { say } from '../../i18n/index.ts';
import { useBook, useTargets, useTeach } from './teach-context.ts';
import { toText } from './to-text.ts';

/** A few words on the learners' screens, to everyone or to those chosen on the board. */
export function HintPanel() {
  const { say: tell } = useTeach();
  const { hints } = useBook();
  const targets = useTargets();
  const [text, setText] = useState('');
  const send = (event: FormEvent) => {
    event.preventDefault();
    const words = text.trim();
    if (words === '') return;
    void tell(...targets.map((to) => ({ type: 'hint' as const, to, text: words }))).then(
      // What was not taken stays where it can be sent again.
      (taken) => taken && setText(''),
    );
  };
  return (
    <>
      <form className="hint-form" onSubmit={send}>
        <label className="field">
          <span>{say('teach-class.hint.to', { who: targets.map(toText).join(', ') })}</span>
          <textarea
            rows={3}
            maxLength={TEXT_CHARACTERS}
            value={text}
            onChange={({ target }) => setText(target.value)}
          />
        </label>
        <button type="submit" className="button primary" disabled={text.trim() === ''}>
          {say('teach-class.hint.send')}
        </button>
      </form>
      {hints.length === 0 ? null : (
        <section aria-labelledby="hints-title">
          <h3 id="hints-title">{say('teach-class.hint.sent')}</h3>
          <ul className="hints">
            {[...hints].reverse().map(({ n, to, text: sent }) => (
              <li key={n}>
                {sent} <span className="quiet">{toText(to)}</span>
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}
