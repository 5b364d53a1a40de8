import { useState } from 'react';

interface Props {
  readonly label: string;
  /** 0 to 1, as the run has it. */
  readonly value: number;
  readonly disabled: boolean;
  readonly onSet: (value: number) => void;
}

/** Follows the run, but for as long as a hand is on it; acts once, when it is let go. */
export function LaggingSlider({ label, value, disabled, onSet }: Props) {
  const [held, setHeld] = useState<number | null>(null);
  const shown = Math.round((held ?? value) * 100);
  function commit(): void {
    if (held !== null && Math.abs(held - value) > 0.004) onSet(held);
    setHeld(null);
  }
  return (
    <label className="severity">
      <span className="severity-line">
        <span>{label}</span> <strong>{shown} %</strong>
      </span>
      <input
        type="range"
        min={0}
        max={100}
        step={5}
        value={shown}
        disabled={disabled}
        aria-valuetext={`${shown} %`}
        onChange={(event) => setHeld(Number(event.target.value) / 100)}
        onPointerUp={commit}
        onKeyUp={commit}
        onBlur={commit}
      />
    </label>
  );
}
