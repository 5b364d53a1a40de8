import { type KeyboardEvent, useId, useMemo, useRef, useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { LadderPlace } from '../../view/index.ts';

interface Props {
  readonly places: readonly LadderPlace[];
  readonly find: (places: readonly LadderPlace[], question: string) => LadderPlace[];
  readonly onChoose: (place: LadderPlace | null) => void;
}

const MOST_LISTED = 60;

/** Finds a wire, a terminal or a device by name: a combobox as the ARIA practice has it. */
export function LadderSearch({ places, find, onChoose }: Props) {
  const id = useId();
  const list = useRef<HTMLDivElement>(null);
  const [text, setText] = useState('');
  const [open, setOpen] = useState(false);
  const [at, setAt] = useState(-1);
  const found = useMemo(() => find(places, text).slice(0, MOST_LISTED), [find, places, text]);

  function choose(place: LadderPlace): void {
    setText(place.label);
    setOpen(false);
    setAt(-1);
    onChoose(place);
  }
  function move(to: number): void {
    setOpen(true);
    setAt(to);
    list.current?.children[to]?.scrollIntoView({ block: 'nearest' });
  }
  function answer(event: KeyboardEvent): void {
    if (event.key === 'ArrowDown') move(Math.min(found.length - 1, at + 1));
    else if (event.key === 'ArrowUp') move(Math.max(0, at - 1));
    else if (event.key === 'Enter') {
      const place = found[Math.max(0, at)];
      if (place === undefined) return;
      choose(place);
    } else if (event.key === 'Escape') {
      if (open) setOpen(false);
      else {
        setText('');
        onChoose(null);
      }
    } else return;
    event.preventDefault();
  }
  return (
    <div className="ladder-search">
      <input
        type="text"
        role="combobox"
        autoComplete="off"
        spellCheck={false}
        aria-label={say('ladder.search')}
        placeholder={say('ladder.search.placeholder')}
        aria-expanded={open}
        aria-controls={`${id}-list`}
        aria-autocomplete="list"
        aria-activedescendant={open && at >= 0 ? `${id}-${at}` : undefined}
        value={text}
        onChange={(event) => {
          setText(event.target.value);
          setOpen(true);
          setAt(-1);
          if (event.target.value === '') onChoose(null);
        }}
        onKeyDown={answer}
        onClick={() => setOpen(true)}
        onFocus={(event) => event.target.select()}
        onBlur={() => setOpen(false)}
      />
      <div
        className="ladder-found-list"
        role="listbox"
        id={`${id}-list`}
        aria-label={say('ladder.search')}
        ref={list}
        hidden={!open || found.length === 0}
      >
        {found.map((place, i) => (
          // biome-ignore lint/a11y/useFocusableInteractive: the input keeps the focus and points here
          // biome-ignore lint/a11y/useKeyWithClickEvents: the input answers the keys
          <div
            key={`${place.kind} ${place.id}`}
            role="option"
            id={`${id}-${i}`}
            aria-selected={i === at}
            // Before the input loses the focus, and the list with it.
            onPointerDown={(event) => event.preventDefault()}
            onClick={() => choose(place)}
          >
            {place.label}
          </div>
        ))}
      </div>
      <span className="for-readers" role="status">
        {!open || text === ''
          ? ''
          : found.length === 0
            ? say('ladder.search.none')
            : say('ladder.search.count', { count: found.length })}
      </span>
      {open && found.length === 0 ? (
        <p className="ladder-found-list" aria-hidden="true">
          {say('ladder.search.none')}
        </p>
      ) : null}
    </div>
  );
}
