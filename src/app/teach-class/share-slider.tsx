import { useState } from 'react';
import { say } from '../../i18n/index.ts';

interface Props {
  readonly label: string;
  readonly first: number;
  readonly max: number;
  readonly onSet: (share: number) => void;
}

const STEP = 0.01;

/** A share of the usual, chosen first and then done: on a class nothing happens by a slip. */
export function ShareSlider({ label, first, max, onSet }: Props) {
  const [share, setShare] = useState(first);
  const text = `${Math.round(100 * share)} %`;
  return (
    <div className="share-slider">
      <label className="severity">
        <span className="severity-line">
          <span>{label}</span> <strong>{text}</strong>
        </span>
        <input
          type="range"
          min={0}
          max={max}
          step={STEP}
          value={share}
          aria-valuetext={text}
          onChange={({ target }) => setShare(Number(target.value))}
        />
      </label>
      <button
        type="button"
        className="button"
        aria-label={say('teach-class.set-it', { what: label, value: text })}
        onClick={() => onSet(share)}
      >
        {say('teach-class.set')}
      </button>
    </div>
  );
}
