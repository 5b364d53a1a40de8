import { useEffect, useRef, useState } from 'react';
import { say } from '../../i18n/index.ts';

interface Props {
  readonly steps: readonly string[];
  /** Places in `steps`; null while nothing was moved. */
  readonly order: readonly number[] | null;
  readonly onOrder: (order: readonly number[]) => void;
}

type Way = -1 | 1;

/** Lines to be put in order, each by its own buttons; where a line comes to is said. */
export function OrderResponse({ steps, order, onOrder }: Props) {
  const shown = order ?? steps.map((_, place) => place);
  const list = useRef<HTMLOListElement>(null);
  const [moved, setMoved] = useState<{ readonly step: number; readonly way: Way } | null>(null);
  const place = moved === null ? -1 : shown.indexOf(moved.step);
  // A line that is put elsewhere loses the focus on the way.
  useEffect(() => {
    if (moved === null) return;
    const buttons = list.current?.querySelectorAll<HTMLElement>(
      `[data-step="${moved.step}"] button`,
    );
    buttons?.[moved.way === -1 ? 0 : 1]?.focus();
  }, [moved]);
  function move(step: number, way: Way): void {
    const from = shown.indexOf(step);
    const other = shown[from + way];
    if (other === undefined) return;
    onOrder(shown.map((each) => (each === step ? other : each === other ? step : each)));
    setMoved({ step, way });
  }
  return (
    <>
      <ol className="item-order" ref={list}>
        {shown.map((step, at) => (
          <li key={step} data-step={step}>
            <span className="item-order-number" aria-hidden="true">
              {at + 1}
            </span>
            <span className="item-order-text">{steps[step]}</span>
            <MoveButton
              way={-1}
              what={steps[step] ?? ''}
              ends={at === 0}
              onMove={() => move(step, -1)}
            />
            <MoveButton
              way={1}
              what={steps[step] ?? ''}
              ends={at === shown.length - 1}
              onMove={() => move(step, 1)}
            />
          </li>
        ))}
      </ol>
      <p className="for-readers" role="status">
        {moved === null || place < 0
          ? ''
          : say('quiz.respond.moved', {
              what: steps[moved.step] ?? '',
              n: place + 1,
              count: shown.length,
            })}
      </p>
      {shown.every((step, at) => step === at) ? (
        <p className="item-leave">
          <button
            type="button"
            className="button"
            aria-pressed={order !== null}
            onClick={() => onOrder(shown)}
          >
            {say('quiz.respond.leave')}
          </button>
        </p>
      ) : null}
    </>
  );
}

function MoveButton(props: {
  readonly way: Way;
  readonly what: string;
  readonly ends: boolean;
  readonly onMove: () => void;
}) {
  const { way, what, ends, onMove } = props;
  const label = say(way === -1 ? 'quiz.respond.up' : 'quiz.respond.down', { what });
  return (
    <button
      type="button"
      className="button item-move"
      aria-label={label}
      title={label}
      aria-disabled={ends}
      onClick={onMove}
    >
      <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true" fill="none">
        <path
          d={way === -1 ? 'M3 10l5-5l5 5' : 'M3 6l5 5l5-5'}
          stroke="currentColor"
          strokeWidth="2.2"
          strokeLinecap="round"
          strokeLinejoin="round"
        />
      </svg>
    </button>
  );
}
