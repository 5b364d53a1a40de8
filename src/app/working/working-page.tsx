import '../styles/working/index.css';
import { type ReactNode, useCallback, useMemo, useState } from 'react';
import { say } from '../../i18n/index.ts';
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
  const [bench, setBench] = useState<BenchTab | null>(() => firstBench(projector));
  const [help, setHelp] = useState(false);
  const [trends, setTrends] = useState(false);
  const look = useStore(surroundings);
  const ways = useMemo(
    () => ({
      onHelp: () => setHelp(true),
      onFaults: () => setBench('faults'),
    }),
    [],
  );
  useShortcuts(session, ways);
  const again = useCallback(() => setAttempt((count) => count + 1), []);
  if (session === null) return <p className="loading">{say('app.loading')}</p>;
  return (
    <SessionProvider value={session}>
      <div
        className="working"
        data-projector={projector}
        data-bench={bench === null ? 'shut' : 'open'}
      >
        <WorkingHeader projector={projector} blind={blind} onHelp={ways.onHelp} />
        <Announcer />
        <Failures onAgain={again} />
        <WhenOpen>
          <main className="plant">
            <PlantPane look={look} trends={trends} onTrends={() => setTrends(!trends)} />
            <LookBackBar />
            {trends ? <TrendsDrawer look={look} onClose={() => setTrends(false)} /> : null}
          </main>
          <aside className="side" aria-label={say('app.side')}>
            <NowPanel onPanel={() => setBench('panel')} />
            <Bench tab={bench} onTab={setBench} />
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

function firstBench(projector: boolean): BenchTab | null {
  return projector || innerHeight < ROOMY_PX ? null : 'panel';
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
