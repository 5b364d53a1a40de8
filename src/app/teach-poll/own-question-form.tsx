import { type FormEvent, useState } from 'react';
import { TEXT_CHARACTERS } from '../../classroom/protocol/index.ts';
import { say } from '../../i18n/index.ts';
import { draftOfOwn, MOST_POLL_OPTIONS, type OwnQuestion, type PollDraft } from './poll-draft.ts';

const FIRST: OwnQuestion = { text: '', options: ['', '', ''], right: null, why: '' };

/** A question of the instructor's own. */
export function OwnQuestionForm({ onAsk }: { readonly onAsk: (draft: PollDraft) => void }) {
  const [own, setOwn] = useState<OwnQuestion>(FIRST);
  const draft = draftOfOwn(own);
  const setOption = (place: number, text: string) =>
    setOwn({ ...own, options: own.options.map((one, k) => (k === place ? text : one)) });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (draft !== null) onAsk(draft);
  };
  return (
    <form className="poll-making" onSubmit={submit}>
      <label className="field">
        <span>{say('teach-poll.own.text')}</span>
        <textarea
          rows={2}
          maxLength={TEXT_CHARACTERS}
          value={own.text}
          onChange={({ target }) => setOwn({ ...own, text: target.value })}
        />
      </label>
      <fieldset className="poll-own-options">
        <legend>{say('teach-poll.own.options')}</legend>
        {own.options.map((option, place) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: an option is its place
          <div key={place}>
            <input
              type="radio"
              name="poll-own-right"
              aria-label={say('teach-poll.own.right', { place: place + 1 })}
              checked={own.right === place}
              onChange={() => setOwn({ ...own, right: place })}
            />
            <input
              type="text"
              aria-label={say('teach-poll.own.option', { place: place + 1 })}
              maxLength={TEXT_CHARACTERS}
              value={option}
              onChange={({ target }) => setOption(place, target.value)}
            />
          </div>
        ))}
        <div className="buttons">
          <button
            type="button"
            className="button"
            disabled={own.options.length >= MOST_POLL_OPTIONS}
            onClick={() => setOwn({ ...own, options: [...own.options, ''] })}
          >
            {say('teach-poll.own.more')}
          </button>
          <button
            type="button"
            className="button"
            disabled={own.right === null}
            onClick={() => setOwn({ ...own, right: null })}
          >
            {say('teach-poll.own.none-right')}
          </button>
        </div>
      </fieldset>
      <label className="field">
        <span>{say('teach-poll.own.why')}</span>
        <input
          type="text"
          maxLength={TEXT_CHARACTERS}
          value={own.why}
          onChange={({ target }) => setOwn({ ...own, why: target.value })}
        />
      </label>
      <button type="submit" className="button primary" disabled={draft === null}>
        {say('teach-poll.ask')}
      </button>
    </form>
  );
}
