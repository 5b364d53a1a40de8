import { useEffect, useId, useRef, useState } from 'react';
import { say } from '../../i18n/index.ts';
import { displayOf, fromDisplay, toDisplay, type UnitSystem } from '../../quantity/index.ts';
import type { NumberItem } from '../../quiz/index.ts';
import { useStore } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import { parseNumber } from './parse-number.ts';

interface Props {
  readonly item: NumberItem;
  /** SI; null while it is no number. */
  readonly value: number | null;
  readonly onValue: (value: number | null) => void;
}

/** A number in the reader's own unit; what is no number is said, not guessed at. */
export function NumberResponse({ item, value, onValue }: Props) {
  const { units } = useStore(settings);
  const [text, setText] = useState(() => textOf(value, item, units));
  const id = useId();
  const { symbol } = displayOf(item.of, units);
  const wrong = text.trim() !== '' && parseNumber(text, item.of, units) === null;
  const shownAs = useRef({ units, value });
  // What was typed stays the same amount when the unit beside it changes; what another page with
  // the same question has typed is shown.
  useEffect(() => {
    const { current } = shownAs;
    if (current.units === units && current.value === value) return;
    shownAs.current = { units, value };
    if (value !== null || current.value !== null) setText(textOf(value, item, units));
  }, [units, value, item]);
  function type(typed: string): void {
    setText(typed);
    const shown = parseNumber(typed, item.of, units);
    const typedValue = shown === null ? null : fromDisplay(shown, item.of, units);
    shownAs.current = { units, value: typedValue };
    onValue(typedValue);
  }
  return (
    <div className="item-number">
      <label htmlFor={id}>{say('quiz.respond.number')}</label>
      <span className="item-number-line">
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          spellCheck={false}
          value={text}
          aria-invalid={wrong}
          aria-describedby={`${id}-unit ${id}-note`}
          onChange={(event) => type(event.target.value)}
        />
        <span id={`${id}-unit`}>{symbol}</span>
      </span>
      <p id={`${id}-note`} className={wrong ? 'invalid' : 'quiet'}>
        {wrong ? say('quiz.respond.no-number') : tolerance(item)}
      </p>
    </div>
  );
}

function tolerance({ tolerance: share }: NumberItem): string {
  return share > 0 ? say('quiz.respond.tolerance', { percent: percentOf(share) }) : '';
}

function percentOf(share: number): string {
  return String(Math.round(share * 1000) / 10);
}

function textOf(value: number | null, { of }: NumberItem, units: UnitSystem): string {
  if (value === null) return '';
  const { digits } = displayOf(of, units);
  return String(Number(toDisplay(value, of, units).toFixed(digits + 2)));
}
