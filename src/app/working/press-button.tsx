import { type KeyboardEvent, type ReactNode, useRef } from 'react';

interface Props {
  readonly pressed: boolean;
  readonly disabled?: boolean;
  readonly describedBy?: string;
  readonly onPress: () => void;
  readonly onRelease: () => void;
  readonly children: ReactNode;
}

/**
 * A push button that is in for as long as it is held, by finger, mouse, Space or Enter.
 * A click that comes from none of these (an assistive tool) is a press and a release.
 */
export function PressButton(props: Props) {
  const held = useRef(false);
  const byHand = useRef(false);
  function press(): void {
    if (held.current || props.disabled) return;
    held.current = true;
    byHand.current = true;
    props.onPress();
  }
  function release(): void {
    if (!held.current) return;
    held.current = false;
    props.onRelease();
  }
  function isPressKey(event: KeyboardEvent): boolean {
    return event.key === ' ' || event.key === 'Enter';
  }
  return (
    <button
      type="button"
      className="button push"
      data-in={props.pressed}
      disabled={props.disabled}
      aria-describedby={props.describedBy}
      onPointerDown={(event) => {
        if (event.button !== 0) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        press();
      }}
      onPointerUp={release}
      onPointerCancel={release}
      onLostPointerCapture={release}
      onContextMenu={(event) => event.preventDefault()}
      onKeyDown={(event) => {
        if (!isPressKey(event)) return;
        event.preventDefault();
        if (!event.repeat) press();
      }}
      onKeyUp={(event) => {
        if (isPressKey(event)) release();
      }}
      onBlur={release}
      onClick={() => {
        if (byHand.current) {
          byHand.current = false;
          return;
        }
        props.onPress();
        props.onRelease();
      }}
    >
      {props.children}
    </button>
  );
}
