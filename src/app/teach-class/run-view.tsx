import { type ReactNode, useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { Session } from '../session/session-types.ts';
import type { Surroundings } from '../settings/theme.ts';
import { Announcer } from '../working/announcer.tsx';
import { Bench, type BenchTab } from '../working/bench.tsx';
import { ChartPane } from '../working/chart-pane.tsx';
import { EventsTab } from '../working/events-tab.tsx';
import { FailureNote } from '../working/failure-note.tsx';
import { LookBackBar } from '../working/look-back-bar.tsx';
import { NowPanel } from '../working/now-panel.tsx';
import { PlantPane } from '../working/plant-pane.tsx';
import { SessionProvider, useSession, useSessionPart } from '../working/session-context.tsx';
import { TrendsDrawer } from '../working/trends-drawer.tsx';

interface Props {
  readonly session: Session;
  readonly look: Surroundings;
  /** Acts are at hand; otherwise the run is only looked at. */
  readonly hands: boolean;
  /** Above the step: whose run it is, and what can be done about it. */
  readonly head?: ReactNode;
}

/** Faults are put in by the panel of the class, which can do more. */
const TABS: readonly BenchTab[] = ['panel', 'events'];

/** A run inside the page of a class: plant, step and chart as at work. */
export function RunView({ session, look, hands, head = null }: Props) {
  const [bench, setBench] = useState<BenchTab | null>('panel');
  const [trends, setTrends] = useState(false);
  return (
    <SessionProvider value={session}>
      <div className="class-run">
        <div className="working" data-bench={bench === null && hands ? 'shut' : 'open'}>
          <Announcer />
          <Failures />
          <WhenOpen>
            <div className="plant">
              <PlantPane look={look} trends={trends} onTrends={() => setTrends(!trends)} />
              <LookBackBar />
              {trends ? <TrendsDrawer look={look} onClose={() => setTrends(false)} /> : null}
            </div>
            <aside className="side" aria-label={say('app.side')}>
              {head}
              <NowPanel onPanel={hands ? () => setBench('panel') : null} />
              {hands ? (
                <Bench tabs={TABS} tab={bench} onTab={setBench} />
              ) : (
                // biome-ignore lint/a11y/noNoninteractiveTabindex: keys can only scroll what has the focus
                <section className="run-events" aria-label={say('app.events.title')} tabIndex={0}>
                  <EventsTab revealed={true} />
                </section>
              )}
            </aside>
            <ChartPane look={look} />
          </WhenOpen>
        </div>
      </div>
    </SessionProvider>
  );
}

function WhenOpen({ children }: { readonly children: ReactNode }) {
  const phase = useSessionPart((state) => state.phase);
  if (phase === 'open') return children;
  return phase === 'opening' ? <p className="loading">{say('app.opening')}</p> : null;
}

function Failures() {
  const session = useSession();
  const failure = useSessionPart((state) => state.failure);
  if (failure === null) return null;
  return (
    <FailureNote
      failure={failure.failure}
      detail={failure.detail}
      onAgain={() => location.reload()}
      onDismiss={session.dismissFailure}
    />
  );
}
