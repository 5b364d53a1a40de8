import { type FormEvent, useId, useState } from 'react';
import { type AtTheDoor, takeSeat } from '../../classroom/client/index.ts';
import { PIN_LENGTH } from '../../classroom/index.ts';
import { say } from '../../i18n/index.ts';
import { CodeField, wholeCode } from './code-field.tsx';
import { useDoor } from './use-door.ts';

interface Props {
  readonly code: string;
  readonly onCode: (code: string) => void;
  readonly onIn: (answer: Extract<AtTheDoor, { ok: true }>, code: string) => void;
}

const SEAT = /^[1-9]\d{0,3}$/;

/** A seat that was taken on another device, taken on with all its work. */
export function TakeSeatForm({ code, onCode, onIn }: Props) {
  const [seat, setSeat] = useState('');
  const [pin, setPin] = useState('');
  const [tried, setTried] = useState(false);
  const door = useDoor((answer) => onIn(answer, wholeCode(code) ?? ''));
  const isSeat = SEAT.test(seat.trim());
  const isPin = new RegExp(`^\\d{${PIN_LENGTH}}$`).test(pin.trim());
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    const whole = wholeCode(code);
    if (whole === null || !isSeat || !isPin) return;
    door.ask(() => takeSeat({ code: whole, seat: Number(seat.trim()), pin: pin.trim() }));
  };
  return (
    <details className="class-take">
      <summary>{say('class.take.title')}</summary>
      <p className="quiet">{say('class.take.lead')}</p>
      <form className="class-form" onSubmit={submit} noValidate>
        <CodeField code={code} onCode={onCode} tried={tried} />
        <div className="class-take-row">
          <NumberField
            label={say('class.take.seat')}
            value={seat}
            length={4}
            wrong={tried && !isSeat ? say('class.take.seat-wrong') : ''}
            onValue={setSeat}
          />
          <NumberField
            label={say('class.take.pin')}
            value={pin}
            length={PIN_LENGTH}
            wrong={tried && !isPin ? say('class.take.pin-wrong', { count: PIN_LENGTH }) : ''}
            onValue={setPin}
          />
        </div>
        <p className="invalid" role="alert">
          {door.trouble}
        </p>
        <p className="buttons">
          <button type="submit" className="button" aria-disabled={door.isAsking}>
            {say(door.isAsking ? 'class.join.asking' : 'class.take.go')}
          </button>
        </p>
      </form>
    </details>
  );
}

function NumberField(props: {
  readonly label: string;
  readonly value: string;
  readonly length: number;
  readonly wrong: string;
  readonly onValue: (value: string) => void;
}) {
  const { label, value, length, wrong, onValue } = props;
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="text"
        inputMode="numeric"
        autoComplete="off"
        value={value}
        maxLength={length}
        aria-invalid={wrong !== ''}
        aria-describedby={`${id}-note`}
        onChange={(event) => onValue(event.target.value)}
      />
      <p id={`${id}-note`} className="invalid" role="status">
        {wrong}
      </p>
    </div>
  );
}
