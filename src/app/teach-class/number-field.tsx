import { useId, useState } from 'react';
import { say } from '../../i18n/index.ts';
import { parseNumber } from '../quiz-item/parse-number.ts';

interface Props {
  readonly label: string;
  /** Null where what is written is no number within the bounds. */
  readonly value: number | null;
  readonly min: number;
  readonly max: number;
  readonly onChange: (value: number | null) => void;
}

/** A number to be written, with its bounds said where it is out of them. */
export function NumberField({ label, value, min, max, onChange }: Props) {
  const [text, setText] = useState(value === null ? '' : String(value));
  const id = useId();
  const write = (written: string) => {
    setText(written);
    const read = parseNumber(written, 'number', 'SI');
    onChange(read !== null && read >= min && read <= max ? read : null);
  };
  return (
    <label className="field">
      <span>{label}</span>
      <input
        inputMode="decimal"
        value={text}
        aria-invalid={value === null}
        aria-describedby={id}
        onChange={({ target }) => write(target.value)}
      />
      <span className="invalid" id={id}>
        {value === null ? say('teach-class.number.wrong', { min, max }) : ''}
      </span>
    </label>
  );
}
