import '../styles/working/index.css';
import { type ReactNode, useCallback, useMemo, useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { Session } from '../session/session-types.ts';
import type { Store } from '../session/store.ts';
import { useStore } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { Announcer } from './announcer.tsx';
import { Bench, type BenchTab } from './bench.tsx';
import { ChartPane } from './chart-pane.tsx';
import { FailureNote } from './failure-note.tsx';
import { HelpDialog } from './help-dialog.tsx';
import { LookBackBar } from './look-back-bar.tsx';
import { NowPanel } from './now-panel.tsx';
import { PlantPane } from './plant-pane.tsx';
import { RefusalNote } from './refusal-note.tsx';
import { SessionProvider, useSession, useSessionPart } from './session-context.tsx';
import { useShortcuts } from './shortcuts.ts';
import { TrendsDrawer } from './trends-drawer.tsx';
import { useSessionOf } from './use-session-of.ts';
import { WorkingHeader } from './working-header.tsx';

interface Props {
  readonly scenario: string;
  /** Larger, and with the instructor's side folded away, for a class to look at. */
  readonly projector: boolean;
  /** The title would give the fault away, so it is kept back. */
  readonly blind: boolean;
  readonly surroundings: Store<Surroundings>;
}

export function WorkingPage({ scenario, projector, blind, surroundings }: Props) {
  const [attempt, setAttempt] = useState(0);
  const session = useSessionOf(scenario, attempt);
  const again = useCallback(() => setAttempt((count) => count + 1), []);
  if (session === null) return <p className="loading">{say('app.loading')}</p>;
  return (
    <WorkingFrame
      session={session}
      projector={projector}
      title={blind ? say('app.blind.title') : null}
      surroundings={surroundings}
      onAgain={again}
    />
  );
}

interface FrameProps {
  readonly session: Session;
  readonly projector: boolean;
  /** In place of the scenario's own, which may say too much. */
  readonly title: string | null;
  readonly surroundings: Store<Surroundings>;
  /** Opens the run anew, where it could not go on. */
  readonly onAgain: () => void;
  /** What lies on the bench; the first can be pressed from elsewhere. */
  readonly tabs?: readonly BenchTab[];
  /** Only looked at: nothing is run and nothing is done here. */
  readonly still?: boolean;
  /** Above the plant, for what has to be said all the time. */
  readonly note?: ReactNode;
}

const ALL_TABS: readonly BenchTab[] = ['panel', 'events', 'faults'];

/** A run at work: plant, step, bench and chart. */
export function WorkingFrame(props: FrameProps) {
  const {
    session,
    projector,
    title,
    surroundings,
    onAgain,
    tabs = ALL_TABS,
    still = false,
  } = props;
  const [bench, setBench] = useState<BenchTab | null>(() => firstBench(projector, tabs));
  const [help, setHelp] = useState(false);
  const [trends, setTrends] = useState(false);
  const look = useStore(surroundings);
  const ways = useMemo(
    () => ({
      onHelp: () => setHelp(true),
      onFaults: () => (tabs.includes('faults') ? setBench('faults') : undefined),
    }),
    [tabs],
  );
  useShortcuts(session, ways);
  return (
    <SessionProvider value={session}>
      <div
        className="working"
        data-projector={projector}
        data-bench={bench === null ? 'shut' : 'open'}
      >
        <WorkingHeader projector={projector} title={title} still={still} onHelp={ways.onHelp} />
        <Announcer />
        <div className="frame-notes">
          {props.note}
          <RefusalNote />
          <Failures onAgain={onAgain} />
        </div>
        <WhenOpen>
          <main className="plant">
            <PlantPane look={look} trends={trends} onTrends={() => setTrends(!trends)} />
            <LookBackBar />
            {trends ? <TrendsDrawer look={look} onClose={() => setTrends(false)} /> : null}
          </main>
          <aside className="side" aria-label={say('app.side')}>
            <NowPanel onPanel={tabs.includes('panel') ? () => setBench('panel') : null} />
            <Bench tabs={tabs} tab={bench} onTab={setBench} />
          </aside>
          <ChartPane look={look} />
        </WhenOpen>
        {help ? <HelpDialog onClose={() => setHelp(false)} /> : null}
      </div>
    </SessionProvider>
  );
}

/** On a low screen the step's explanation needs the room first. */
const ROOMY_PX = 860;

function firstBench(projector: boolean, tabs: readonly BenchTab[]): BenchTab | null {
  return projector || innerHeight < ROOMY_PX ? null : (tabs[0] ?? null);
}

function WhenOpen({ children }: { readonly children: ReactNode }) {
  const phase = useSessionPart((state) => state.phase);
  if (phase === 'open') return children;
  return phase === 'opening' ? <p className="loading">{say('app.opening')}</p> : null;
}

function Failures({ onAgain }: { readonly onAgain: () => void }) {
  const failure = useSessionPart((state) => state.failure);
  const phase = useSessionPart((state) => state.phase);
  const session = useSession();
  if (failure === null) return null;
  return (
    <FailureNote
      failure={failure.failure}
      detail={failure.detail}
      onAgain={onAgain}
      onDismiss={phase === 'open' ? session.dismissFailure : null}
    />
  );
}
