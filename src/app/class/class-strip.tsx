import { useEffect, useState } from 'react';
import { say } from '../../i18n/index.ts';
import { useBookPart, useClass, useClassPart } from './class-context.ts';
import { codeText } from './code-words.ts';
import { ConnectionMark } from './connection-mark.tsx';
import { HintsButton } from './hints-button.tsx';
import { SeatMenu } from './seat-menu.tsx';
import type { SeatPlace } from './seat-place.ts';

/** At the top of every page of a class: which class, which seat, what is saved, and asking for help. */
export function ClassStrip({ onPlace }: { readonly onPlace: (place: SeatPlace) => void }) {
  const { place, book } = useClass();
  const asksHelp = useBookPart((now) => now.asksHelp);
  const phase = useClassPart((now) => now.book.phase);
  const link = useClassPart((now) => now.link);
  const nickname = useClassPart((now) => now.nickname);
  const isOver = phase === 'closed' || link === 'gone';
  return (
    <section className="class-strip" aria-label={say('class.strip')}>
      <p className="class-strip-code">
        <span className="class-strip-word">{say('class.strip.class')} </span>
        <strong>{codeText(place.code)}</strong>
      </p>
      <SeatMenu name={nickname === '' ? place.nickname : nickname} onPlace={onPlace} />
      {link === 'gone' ? null : <ConnectionMark />}
      <div className="class-strip-acts">
        {link === 'gone' ? null : <HintsButton />}
        {isOver ? null : (
          <button
            type="button"
            className="button"
            aria-pressed={asksHelp}
            onClick={() => book.write({ asksHelp: !asksHelp })}
          >
            <HandIcon />
            <span className="class-strip-long">
              {say(asksHelp ? 'class.help.asked' : 'class.help.ask')}
            </span>
            <span className="class-strip-short">{say('class.help.short')}</span>
          </button>
        )}
        <a className="button plain class-leave" href="#/">
          {say('class.leave')}
        </a>
      </div>
      <HelpSaid asksHelp={asksHelp} />
    </section>
  );
}

/** Said to a reader, once it has changed. */
function HelpSaid({ asksHelp }: { readonly asksHelp: boolean }) {
  const [first] = useState(asksHelp);
  const [changed, setChanged] = useState(false);
  useEffect(() => {
    if (asksHelp !== first) setChanged(true);
  }, [asksHelp, first]);
  return (
    <p className="for-readers" role="status">
      {changed ? say(asksHelp ? 'class.help.said' : 'class.help.unsaid') : ''}
    </p>
  );
}

function HandIcon() {
  return (
    <svg width="18" height="18" viewBox="0 0 18 18" fill="none" aria-hidden="true">
      <path
        d="M5 10 V4.2 a1.2 1.2 0 0 1 2.4 0 V8 V2.8 a1.2 1.2 0 0 1 2.4 0 V8 V3.6 a1.2 1.2 0 0 1 2.4 0 V9 l0.9 -1.4 a1.2 1.2 0 0 1 2 1.2 l-2.3 5.4 a3.6 3.6 0 0 1 -3.3 2.2 H8.6 A3.6 3.6 0 0 1 5 12.8 Z"
        stroke="currentColor"
        strokeWidth="1.5"
        strokeLinejoin="round"
      />
    </svg>
  );
}
