import { useId, useState } from 'react';
import { say } from '../../i18n/index.ts';
import { momentOf } from './moment-text.ts';
import { useTeach } from './teach-context.ts';

const BACK_BY_S = [10, 30, 60] as const;

/** Ways back: by so many seconds, to the start, or to a moment. */
export function BackMenu() {
  const { drive } = useTeach();
  const [open, setOpen] = useState(false);
  const [toText, setTo] = useState('');
  const id = useId();
  const toS = momentOf(toText);
  const go = (act: () => void) => {
    act();
    setOpen(false);
  };
  return (
    <div className="back-menu">
      <button
        type="button"
        className="button"
        aria-expanded={open}
        aria-controls={id}
        onClick={() => setOpen(!open)}
      >
        {say('teach-class.rewind')}
      </button>
      <div className="back-ways" id={id} hidden={!open}>
        {BACK_BY_S.map((seconds) => (
          <button
            key={seconds}
            type="button"
            className="button"
            onClick={() => go(() => drive.backBy(seconds))}
          >
            {say('teach-class.rewind.by', { seconds })}
          </button>
        ))}
        <button type="button" className="button" onClick={() => go(() => drive.backTo(0))}>
          {say('teach-class.rewind.start')}
        </button>
        <form
          onSubmit={(event) => {
            event.preventDefault();
            if (toS !== null) go(() => drive.backTo(toS));
          }}
        >
          <label className="field">
            <span>{say('teach-class.rewind.moment')}</span>
            <input
              value={toText}
              inputMode="numeric"
              aria-invalid={toText !== '' && toS === null}
              onChange={({ target }) => setTo(target.value)}
            />
          </label>
          <button type="submit" className="button" disabled={toS === null}>
            {say('teach-class.rewind.go')}
          </button>
        </form>
      </div>
    </div>
  );
}
