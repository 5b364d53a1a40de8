import { useRef, useState } from 'react';

interface Props {
  readonly label: string;
  /** What a reader hears, where the label alone would not say what it is about. */
  readonly name?: string;
  readonly ask: string;
  /** What it does, on the button that does it. */
  readonly sure: string;
  /** What leaves all as it is. */
  readonly keep: string;
  readonly disabled?: boolean;
  readonly onSure: () => void;
}

/** Asks once more before something is gone for good. */
export function SureButton(props: Props) {
  const { label, name, ask, sure, keep, disabled = false, onSure } = props;
  const [asking, setAsking] = useState(false);
  const wasAsked = useRef(false);
  // What was pressed is gone: whoever works by keyboard goes on at what took its place.
  const takeFocus = (button: HTMLButtonElement | null) => {
    if (wasAsked.current) button?.focus();
  };
  const askNow = (now: boolean) => {
    wasAsked.current = true;
    setAsking(now);
  };
  if (!asking) {
    return (
      <button
        type="button"
        className="button"
        aria-label={name}
        disabled={disabled}
        ref={takeFocus}
        onClick={() => askNow(true)}
      >
        {label}
      </button>
    );
  }
  return (
    <span className="buttons sure" role="alert">
      <span>{ask}</span>
      <button
        type="button"
        className="button warn"
        onClick={() => {
          askNow(false);
          onSure();
        }}
      >
        {sure}
      </button>
      <button type="button" className="button" ref={takeFocus} onClick={() => askNow(false)}>
        {keep}
      </button>
    </span>
  );
}
