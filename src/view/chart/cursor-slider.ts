/** What a key does to the cursor of the chart. */
export type CursorMove = { readonly byS: number } | { readonly to: CursorGoal };
export type CursorGoal = 'start' | 'now' | 'previous step' | 'next step';

const MOVES: Readonly<Record<string, CursorMove>> = {
  ArrowLeft: { byS: -1 },
  ArrowDown: { byS: -1 },
  ArrowRight: { byS: 1 },
  ArrowUp: { byS: 1 },
  Home: { to: 'start' },
  End: { to: 'now' },
  PageDown: { to: 'previous step' },
  PageUp: { to: 'next step' },
};
const FINE = 0.1;

/** null for a key that is not the cursor's; shift makes the steps ten times finer. */
export function moveOfKey(key: string, shift: boolean): CursorMove | null {
  const move = MOVES[key];
  if (move === undefined) return null;
  return 'byS' in move && shift ? { byS: move.byS * FINE } : move;
}

export function movedCursor(
  move: CursorMove,
  tS: number,
  nowS: number,
  stepTimesS: readonly number[],
): number {
  if ('byS' in move) return Math.min(nowS, Math.max(0, tS + move.byS));
  switch (move.to) {
    case 'start':
      return 0;
    case 'now':
      return nowS;
    case 'previous step':
      return stepTimesS.filter((at) => at < tS - SAME_S).pop() ?? 0;
    case 'next step':
      return stepTimesS.find((at) => at > tS + SAME_S) ?? nowS;
  }
}
const SAME_S = 0.05;

export interface CursorSlider {
  readonly element: HTMLElement;
  place(x: number): void;
  /** How far down the lanes go: the line does not cross out the times under them. */
  reach(heightPx: number): void;
  say(values: {
    readonly minS: number;
    readonly maxS: number;
    readonly tS: number;
    readonly text: string;
    readonly label: string;
  }): void;
}

const HIT_PX = 44;

/** The cursor as a slider: a line through the lanes with a handle that a finger can take. */
export function createCursorSlider(onKey: (move: CursorMove) => void): CursorSlider {
  const element = document.createElement('div');
  element.tabIndex = 0;
  element.setAttribute('role', 'slider');
  element.setAttribute('aria-orientation', 'horizontal');
  Object.assign(element.style, {
    position: 'absolute',
    top: '0',
    bottom: '0',
    left: `${-HIT_PX / 2}px`,
    width: `${HIT_PX}px`,
    cursor: 'ew-resize',
    touchAction: 'none',
    willChange: 'transform',
  });
  const line = document.createElement('div');
  Object.assign(line.style, {
    position: 'absolute',
    top: '0',
    left: `${HIT_PX / 2 - 1}px`,
    width: '2px',
    background: 'currentColor',
  });
  const handle = document.createElement('div');
  Object.assign(handle.style, {
    position: 'absolute',
    top: '0',
    left: `${HIT_PX / 2 - 8}px`,
    borderLeft: '8px solid transparent',
    borderRight: '8px solid transparent',
    borderTop: '11px solid currentColor',
  });
  element.append(line, handle);
  element.addEventListener('keydown', (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const move = moveOfKey(event.key, event.shiftKey);
    if (move === null) return;
    event.preventDefault();
    onKey(move);
  });
  return {
    element,
    place(x) {
      element.style.transform = `translateX(${x.toFixed(1)}px)`;
    },
    reach(heightPx) {
      line.style.height = `${heightPx}px`;
    },
    say({ minS, maxS, tS, text, label }) {
      element.setAttribute('aria-label', label);
      element.setAttribute('aria-valuemin', minS.toFixed(1));
      element.setAttribute('aria-valuemax', maxS.toFixed(1));
      element.setAttribute('aria-valuenow', tS.toFixed(1));
      element.setAttribute('aria-valuetext', text);
    },
  };
}
