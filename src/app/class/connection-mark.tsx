import { useEffect, useState } from 'react';
import type { SeatNow } from '../../classroom/client/index.ts';
import { say } from '../../i18n/index.ts';
import { useClassPart } from './class-context.ts';

/** Being told is the rule while one works; only where it lasts is it worth a word, ms. */
const PATIENCE_MS = 4000;

const STANDINGS = ['saved', 'telling', 'here', 'coming', 'over'] as const;
type Standing = (typeof STANDINGS)[number];

/** Whether the class is reached and what is saved, by shape and word. */
export function ConnectionMark() {
  const now = useClassPart(standingOf);
  const shown = useCalm(now);
  return (
    <p className="class-strip-saved" data-standing={shown} role="status">
      <svg width="16" height="16" viewBox="0 0 16 16" fill="none" aria-hidden="true">
        <path d={SHAPES[shown]} stroke="currentColor" strokeWidth="2" strokeLinecap="round" />
      </svg>
      <span className="class-strip-long">{say(`class.saved.${shown}`)}</span>
      <span className="class-strip-short">{say(`class.saved.${shown}.short`)}</span>
    </p>
  );
}

function standingOf({ link, saved, workRefused, book }: SeatNow): Standing {
  if (link === 'gone' || book.phase === 'closed') return 'over';
  if (link === 'connecting') return 'coming';
  if (link === 'away' || workRefused !== null) return 'here';
  return saved === 'saved' ? 'saved' : 'telling';
}

function useCalm(now: Standing): Standing {
  const [shown, setShown] = useState(now);
  useEffect(() => {
    if (now === shown) return;
    const waitMs = now === 'telling' && shown === 'saved' ? PATIENCE_MS : 0;
    const timer = setTimeout(() => setShown(now), waitMs);
    return () => clearTimeout(timer);
  }, [now, shown]);
  return shown;
}

const SHAPES = {
  saved: 'M3 8.5 l3.5 3.5 l6.5 -8',
  telling: 'M8 13 V3 M4 7 l4 -4 l4 4',
  here: 'M2 2 l12 12 M4 11 h6 M6 5 a4 4 0 0 1 6 4',
  coming: 'M3 8 h0.1 M8 8 h0.1 M13 8 h0.1',
  over: 'M4 4 h8 v8 h-8 z',
} as const satisfies Record<Standing, string>;
