import { useEffect, useState } from 'react';
import { paceOfSeat } from '../../../machines/class/index.ts';
import type { WorkRecord } from '../../classroom/index.ts';
import type { TimedAction } from '../../engine/index.ts';
import { say } from '../../i18n/index.ts';
import type { Session } from '../session/session-types.ts';
import type { Surroundings } from '../settings/theme.ts';
import { RunControls } from '../working/run-controls.tsx';
import { SessionProvider } from '../working/session-context.tsx';
import { openingOf } from './exercise-of-class.ts';
import { RunView } from './run-view.tsx';
import { lastText, markText, seatName } from './seat-words.ts';
import { useBook, useRows, useTeach } from './teach-context.ts';
import { useOpenRun } from './use-open-run.ts';
import { toldOfWork, useWatched } from './use-watched.ts';

interface Props {
  readonly seat: number;
  readonly look: Surroundings;
  readonly onBack: () => void;
  /** The run that is shown, for a question made from it. */
  readonly onRun: (session: Session | null) => void;
}

/** A learner's run: live as it goes on there, or replayed here. */
export function SeatRun({ seat, look, onBack, onRun }: Props) {
  const { client } = useTeach();
  const work = useWatched(client, seat);
  const [replayed, setReplayed] = useState<WorkRecord | null>(null);
  const row = useRows().find((one) => one.seat === seat);
  const head = (
    <div className="run-head">
      <h2>{seatName(row ?? { seat, nickname: '' })}</h2>
      <p className="quiet">
        {row === undefined ? '' : [markText(row), lastText(row)].filter(Boolean).join(' · ')}
      </p>
      <div className="buttons">
        <button
          type="button"
          className="button"
          aria-pressed={replayed === null}
          onClick={() => setReplayed(null)}
        >
          {say('teach-class.run.live')}
        </button>
        <button
          type="button"
          className="button"
          aria-pressed={replayed !== null}
          disabled={work === null || work === 'none'}
          onClick={() => setReplayed(work === 'none' ? null : work)}
        >
          {say('teach-class.run.replay')}
        </button>
        <button type="button" className="button" onClick={onBack}>
          {say('teach-class.to-board')}
        </button>
      </div>
    </div>
  );
  if (work === null || work === 'none') {
    return (
      <div className="class-run-none">
        {head}
        <p role="status">
          {say(work === null ? 'teach-class.run.fetching' : 'teach-class.run.none')}
        </p>
      </div>
    );
  }
  if (replayed !== null) return <Replayed work={replayed} look={look} head={head} onRun={onRun} />;
  return <Live key={work.attempt} seat={seat} work={work} look={look} head={head} onRun={onRun} />;
}

interface ShownProps extends Pick<Props, 'look' | 'onRun'> {
  readonly work: WorkRecord;
  readonly head: React.ReactNode;
}

function Live({ seat, work, look, head, onRun }: ShownProps & { readonly seat: number }) {
  const book = useBook();
  const state = useRows().find((one) => one.seat === seat)?.state ?? null;
  const { speed } = paceOfSeat(book, seat);
  const told = toldOfWork(work, state, speed);
  const opening = openingOf(book);
  const session = useOpenRun(
    `live ${seat} ${work.attempt}`,
    opening && { ...opening, follow: told },
    {
      marked: true,
    },
  );
  const running = told.mode === 'playing';
  // biome-ignore lint/correctness/useExhaustiveDependencies: told again when something of it changed
  useEffect(() => session?.follow(told), [session, work, running, speed]);
  useEffect(() => {
    onRun(session);
    return () => onRun(null);
  }, [session, onRun]);
  if (session === null) return null;
  return <RunView session={session} look={look} hands={false} head={head} />;
}

function Replayed({ work, look, head, onRun }: ShownProps) {
  const opening = openingOf(useBook());
  const session = useOpenRun(
    `replay ${work.attempt} ${work.rev}`,
    opening && {
      ...opening,
      log: work.acts as TimedAction[],
      untilS: work.headS,
      play: false,
    },
    { marked: true },
  );
  useEffect(() => {
    onRun(session);
    return () => onRun(null);
  }, [session, onRun]);
  if (session === null) return null;
  return (
    <RunView
      session={session}
      look={look}
      hands={false}
      head={
        <>
          {head}
          <SessionProvider value={session}>
            <RunControls />
          </SessionProvider>
        </>
      }
    />
  );
}
