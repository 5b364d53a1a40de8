import { type FormEvent, useState } from 'react';
import { say } from '../../i18n/index.ts';
import { keepInstructorKey, readInstructorKey } from './instructor-key.ts';

interface Props {
  /** The one that is there was not taken. */
  readonly wrong: boolean;
  readonly onKey: () => void;
}

/** Where the server wants to know that an instructor asks. */
export function KeyField({ wrong, onKey }: Props) {
  const [key, setKey] = useState(readInstructorKey());
  const keep = (event: FormEvent) => {
    event.preventDefault();
    keepInstructorKey(key.trim());
    onKey();
  };
  return (
    <form className="key-field" onSubmit={keep}>
      <p>{say('teach-class.key.why')}</p>
      <label className="field">
        <span>{say('teach-class.key')}</span>
        <input
          type="password"
          autoComplete="off"
          value={key}
          aria-invalid={wrong}
          aria-describedby="key-wrong"
          onChange={({ target }) => setKey(target.value)}
        />
      </label>
      <p className="invalid" id="key-wrong" role="status">
        {wrong ? say('teach-class.key.wrong') : ''}
      </p>
      <button type="submit" className="button" disabled={key.trim() === ''}>
        {say('teach-class.key.use')}
      </button>
    </form>
  );
}
