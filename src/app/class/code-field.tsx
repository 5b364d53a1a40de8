import { useId } from 'react';
import { readTypedCode } from '../../classroom/client/index.ts';
import { CODE_LENGTH, CODE_LETTERS } from '../../classroom/index.ts';
import { say } from '../../i18n/index.ts';

interface Props {
  readonly code: string;
  readonly onCode: (code: string) => void;
  /** Said under the field once one has tried with what is there. */
  readonly tried: boolean;
}

/** Takes a code in any case and with any spaces, and says at once which letters stand in none. */
export function CodeField({ code, onCode, tried }: Props) {
  const id = useId();
  const note = noteOf(code, tried);
  return (
    <div className="field class-code-field">
      <label htmlFor={id}>{say('class.join.code')}</label>
      <input
        id={id}
        type="text"
        className="class-code-input"
        value={code}
        autoComplete="off"
        autoCapitalize="characters"
        autoCorrect="off"
        spellCheck={false}
        enterKeyHint="next"
        maxLength={24}
        aria-invalid={note !== ''}
        aria-describedby={`${id}-note`}
        onChange={(event) => onCode(event.target.value.toUpperCase())}
      />
      <p id={`${id}-note`} className={note === '' ? 'quiet' : 'invalid'} role="status">
        {note === '' ? say('class.join.code-hint', { count: CODE_LENGTH }) : note}
      </p>
    </div>
  );
}

/** The code where it is whole; null where it is not. */
export function wholeCode(typed: string): string | null {
  const { code, wrong } = readTypedCode(typed);
  return wrong.length === 0 && code.length === CODE_LENGTH ? code : null;
}

function noteOf(typed: string, tried: boolean): string {
  const { code, wrong } = readTypedCode(typed);
  if (wrong.length > 0) {
    return say('class.join.code-wrong', {
      signs: wrong.join(' '),
      letters: [...CODE_LETTERS].join(' '),
    });
  }
  if (code.length > CODE_LENGTH) return say('class.join.code-long', { count: CODE_LENGTH });
  if (tried && code.length < CODE_LENGTH)
    return say('class.join.code-short', { count: CODE_LENGTH });
  return '';
}
