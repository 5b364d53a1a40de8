import { type FormEvent, useEffect, useId, useRef, useState } from 'react';
import { type AtTheDoor, joinAtDoor } from '../../classroom/client/index.ts';
import { NICKNAME_CHARACTERS } from '../../classroom/index.ts';
import { say } from '../../i18n/index.ts';
import { CodeField, wholeCode } from './code-field.tsx';
import { useDoor } from './use-door.ts';

interface Props {
  readonly code: string;
  readonly onCode: (code: string) => void;
  readonly onIn: (answer: Extract<AtTheDoor, { ok: true }>, code: string) => void;
}

/** Into a class for the first time. */
export function JoinForm({ code, onCode, onIn }: Props) {
  const [nickname, setNickname] = useState('');
  const [tried, setTried] = useState(false);
  const door = useDoor((answer) => onIn(answer, wholeCode(code) ?? ''));
  const id = useId();
  const name = useRef<HTMLInputElement>(null);
  const isCodeGiven = useRef(wholeCode(code) !== null);
  useEffect(() => {
    // With the code from a camera only the name is left to be typed.
    if (isCodeGiven.current) name.current?.focus();
  }, []);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    const whole = wholeCode(code);
    const called = nickname.trim();
    if (whole === null || called === '') {
      const field = whole === null ? '.class-code-input' : 'input[name="nickname"]';
      (event.currentTarget as HTMLFormElement).querySelector<HTMLInputElement>(field)?.focus();
      return;
    }
    door.ask(() => joinAtDoor({ code: whole, nickname: called }));
  };
  const noName = tried && nickname.trim() === '';
  return (
    <form className="class-form" onSubmit={submit} noValidate>
      <CodeField code={code} onCode={onCode} tried={tried} />
      <div className="field">
        <label htmlFor={id}>{say('class.join.nickname')}</label>
        <input
          ref={name}
          id={id}
          name="nickname"
          type="text"
          value={nickname}
          maxLength={NICKNAME_CHARACTERS}
          autoComplete="nickname"
          enterKeyHint="go"
          aria-invalid={noName}
          aria-describedby={`${id}-note`}
          onChange={(event) => setNickname(event.target.value)}
        />
        <p id={`${id}-note`} className={noName ? 'invalid' : 'quiet'} role="status">
          {say(noName ? 'class.error.nickname-empty' : 'class.join.nickname-hint')}
        </p>
      </div>
      <p className="invalid" role="alert">
        {door.trouble}
      </p>
      <p className="buttons">
        <button type="submit" className="button primary" aria-disabled={door.isAsking}>
          {say(door.isAsking ? 'class.join.asking' : 'class.join.go')}
        </button>
      </p>
    </form>
  );
}
