import '../styles/working/index.css';
import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { Plain } from '../../scenario/editing/index.ts';
import type { LearnerScenario } from '../../scenario/index.ts';
import type { Surroundings } from '../settings/theme.ts';
import { ChartHost } from '../working/chart-host.tsx';
import { shortClock } from '../working/clock-text.ts';
import { EventsTab } from '../working/events-tab.tsx';
import { LookBackBar } from '../working/look-back-bar.tsx';
import { PlantPane } from '../working/plant-pane.tsx';
import { RunControls } from '../working/run-controls.tsx';
import { SessionProvider, useSession, useSessionPart } from '../working/session-context.tsx';
import { TrendsDrawer } from '../working/trends-drawer.tsx';
import { expectedOf } from './expected-of.ts';
import { usePreview } from './use-preview.ts';

interface Props {
  readonly start: LearnerScenario;
  readonly look: Surroundings;
  /** Takes over what the run did as what is expected; left out where the kind has no such thing. */
  readonly onExpect?: ((expected: Plain) => void) | undefined;
}

/** The file as it runs: its start chart and events, to be looked back on and run on. */
export function Preview({ start, look, onExpect }: Props) {
  const session = usePreview(start);
  if (session === null) return null;
  return (
    <SessionProvider value={session}>
      <WhenOpen>
        <Shown start={start} look={look} onExpect={onExpect} />
      </WhenOpen>
    </SessionProvider>
  );
}

function WhenOpen({ children }: { readonly children: React.ReactNode }) {
  const phase = useSessionPart((state) => state.phase);
  const failure = useSessionPart((state) => state.failure);
  if (phase === 'open') return children;
  if (phase === 'opening') return <p role="status">{say('author.preview.running')}</p>;
  return (
    <div className="author-trouble" role="alert">
      <p>{say('author.preview.failed')}</p>
      {failure === null ? null : <p className="quiet">{failure.detail}</p>}
    </div>
  );
}

function Shown({ start, look, onExpect }: Props) {
  const session = useSession();
  const [plant, setPlant] = useState(false);
  const [trends, setTrends] = useState(false);
  const shownS = useSessionPart((state) => state.shownS);
  const status = useSessionPart((state) => state.status);
  return (
    <div className="author-run">
      <div className="author-run-bar">
        <p className="author-clock" role="timer" aria-label={say('app.run.clock')}>
          {shortClock(shownS)}
        </p>
        <RunControls />
        <button
          type="button"
          className="button"
          aria-pressed={plant}
          onClick={() => setPlant(!plant)}
        >
          {say('author.preview.plant')}
        </button>
        {onExpect === undefined || status === null ? null : (
          <button
            type="button"
            className="button"
            onClick={() => onExpect(expectedOf(session.store.read().events, start.until))}
          >
            {say('author.preview.expect')}
          </button>
        )}
      </div>
      <LookBackBar />
      {plant ? (
        <div className="author-plant plant">
          <PlantPane look={look} trends={trends} onTrends={() => setTrends(!trends)} />
          {trends ? <TrendsDrawer look={look} onClose={() => setTrends(false)} /> : null}
        </div>
      ) : null}
      <div className="author-run-parts">
        <div className="author-chart">
          <ChartHost look={look} />
        </div>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: keys can only scroll what has the focus */}
        <section className="author-events" aria-label={say('app.events.title')} tabIndex={0}>
          <EventsTab revealed={true} />
        </section>
      </div>
    </div>
  );
}
