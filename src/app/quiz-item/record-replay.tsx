import '../styles/working/index.css';
import { useEffect, useId, useMemo, useRef, useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { Surroundings } from '../settings/theme.ts';
import { ChartPane } from '../working/chart-pane.tsx';
import { shortClock } from '../working/clock-text.ts';
import { EventsTab } from '../working/events-tab.tsx';
import { PlantPane } from '../working/plant-pane.tsx';
import { RunControls } from '../working/run-controls.tsx';
import { SessionProvider, useSession, useSessionPart } from '../working/session-context.tsx';
import { TrendsDrawer } from '../working/trends-drawer.tsx';
import type { LookedAt } from './looked-at.ts';
import { useReplay } from './use-item-run.ts';
import { WhenRunning } from './when-running.tsx';

interface Props {
  readonly id: string;
  readonly at: LookedAt;
  readonly look: Surroundings;
  readonly onClose: () => void;
}

/** The start once more, at the moment that decides, with everything shown; and on from there. */
export function RecordReplay({ id, at, look, onClose }: Props) {
  // What decides may come after the end of what was asked about.
  const run = useMemo(() => ({ ...at.run, untilS: Math.max(at.run.untilS, at.atS) }), [at]);
  const session = useReplay(id, run);
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useId();
  // The dialog gives the focus back to where it was opened from.
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog className="item-replay" ref={dialog} onClose={onClose} aria-labelledby={title}>
      <header>
        <h2 id={title}>{say('quiz.record.title', { time: shortClock(at.atS) })}</h2>
        <button type="button" className="button primary" onClick={() => dialog.current?.close()}>
          {say('quiz.record.close')}
        </button>
      </header>
      {session === null ? null : (
        <SessionProvider value={session}>
          <WhenRunning>
            <Shown at={at} look={look} />
          </WhenRunning>
        </SessionProvider>
      )}
    </dialog>
  );
}

function Shown({ at, look }: Pick<Props, 'at' | 'look'>) {
  const session = useSession();
  const [trends, setTrends] = useState(false);
  const ready = useSessionPart((state) => state.status !== null);
  const goTo = (tS: number) => {
    session.scrub(tS);
    session.settle();
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, as soon as there is a record
  useEffect(() => {
    if (ready) goTo(at.atS);
  }, [ready]);
  return (
    <div className="item-replay-parts">
      <div className="plant">
        <PlantPane look={look} trends={trends} onTrends={() => setTrends(!trends)} />
        {trends ? <TrendsDrawer look={look} onClose={() => setTrends(false)} /> : null}
      </div>
      <div className="item-replay-side">
        <p className="item-replay-what">
          <strong>{at.what}</strong>
        </p>
        <p className="quiet">{say('quiz.record.lead')}</p>
        <ReplayClock />
        <RunControls />
        <p className="buttons">
          <button type="button" className="button" onClick={() => goTo(at.atS)}>
            {say('quiz.record.at')}
          </button>
          <button type="button" className="button" onClick={() => goTo(at.run.untilS)}>
            {say('quiz.record.end')}
          </button>
        </p>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: keys can only scroll what has the focus */}
        <section className="item-replay-events" aria-label={say('app.events.title')} tabIndex={0}>
          <EventsTab revealed={true} />
        </section>
      </div>
      <ChartPane look={look} />
    </div>
  );
}

function ReplayClock() {
  const shownS = useSessionPart((state) => state.shownS);
  return (
    <p className="item-replay-clock" role="timer" aria-label={say('app.run.clock')}>
      {shortClock(shownS)}
    </p>
  );
}
