import { useEffect, useMemo, useState } from 'react';
import type { WorkRecord } from '../../classroom/index.ts';
import type { TimedAction } from '../../engine/index.ts';
import { say, sayWord } from '../../i18n/index.ts';
import { type FrameHistory, frameAt } from '../session/frame-history.ts';
import type { Session, SessionOpening } from '../session/session-types.ts';
import { useStorePart } from '../session/store.ts';
import { CompareChart } from './compare-chart.tsx';
import { ALIGNMENTS, type Alignment, alignedAtS, type RecordedRun } from './compare-lanes.ts';
import { openingOf } from './exercise-of-class.ts';
import { seatName } from './seat-words.ts';
import { useBook, useRows, useTeach } from './teach-context.ts';
import { useOpenRun } from './use-open-run.ts';

interface Props {
  readonly seats: readonly [number, number];
  readonly onBack: () => void;
}

/** Two seats' runs as they stood when they were fetched, one over the other. */
export function CompareRuns({ seats, onBack }: Props) {
  const { works, again } = useWorks(seats);
  const rows = useRows();
  const nameOf = (seat: number) =>
    seatName(rows.find((row) => row.seat === seat) ?? { seat, nickname: '' });
  const names = [nameOf(seats[0]), nameOf(seats[1])] as const;
  return (
    <section className="compare" aria-label={say('teach-class.compare.title')}>
      <div className="run-head">
        <h2>{say('teach-class.compare.of', { first: names[0], second: names[1] })}</h2>
        <button type="button" className="button" onClick={again}>
          {say('teach-class.compare.again')}
        </button>
        <button type="button" className="button" onClick={onBack}>
          {say('teach-class.to-board')}
        </button>
      </div>
      {works === null ? (
        <p className="quiet" role="status">
          {say('teach-class.compare.fetching')}
        </p>
      ) : works.some((work) => work === null) ? (
        <p role="status">{say('teach-class.compare.no-work')}</p>
      ) : (
        <Opened key={works.map((work) => work?.rev).join(' ')} works={works} names={names} />
      )}
    </section>
  );
}

type Works = readonly [WorkRecord | null, WorkRecord | null];

/** One seat can be watched at a time: both are fetched, one after the other. */
function useWorks(seats: readonly [number, number]) {
  const { client } = useTeach();
  const [works, setWorks] = useState<Works | null>(null);
  const [attempt, setAttempt] = useState(0);
  const [a, b] = seats;
  // biome-ignore lint/correctness/useExhaustiveDependencies: each attempt fetches again
  useEffect(() => {
    let wanted = true;
    const fetchBoth = async () => {
      const first = await client.watch(a);
      const second = await client.watch(b);
      await client.watch(null);
      if (wanted) setWorks([first, second]);
    };
    void fetchBoth();
    return () => {
      wanted = false;
    };
  }, [client, a, b, attempt]);
  return {
    works,
    again() {
      setWorks(null);
      setAttempt((count) => count + 1);
    },
  };
}

function Opened({ works, names }: { works: Works; names: readonly [string, string] }) {
  const opening = openingOf(useBook());
  const first = useOpenRun('first', stillOf(opening, works[0]));
  const second = useOpenRun('second', stillOf(opening, works[1]));
  if (first === null || second === null) return null;
  return <Drawn sessions={[first, second]} works={works} names={names} />;
}

function Drawn(props: {
  readonly sessions: readonly [Session, Session];
  readonly works: Works;
  readonly names: readonly [string, string];
}) {
  const { sessions, works, names } = props;
  const [alignment, setAlignment] = useState<Alignment>('call for heat');
  const [first, second] = sessions;
  const firstCount = useCountWhenWhole(first, works[0]);
  const secondCount = useCountWhenWhole(second, works[1]);
  const facts = useStorePart(first.store, (state) => state.facts);
  const runs = useMemo(() => {
    const curve = (session: Session, count: number) => {
      const { events } = session.store.read();
      return {
        run: recordedOf(session.history(), count),
        zeroS: alignedAtS(events, alignment),
      };
    };
    return [curve(first, firstCount), curve(second, secondCount)] as const;
  }, [first, second, firstCount, secondCount, alignment]);
  if (facts === null || firstCount === 0 || secondCount === 0) {
    return (
      <p className="quiet" role="status">
        {say('teach-class.compare.running')}
      </p>
    );
  }
  return (
    <>
      <fieldset className="compare-align">
        <legend>{say('teach-class.compare.align')}</legend>
        <div className="segments">
          {ALIGNMENTS.map((each) => (
            <button
              key={each}
              type="button"
              className="button"
              aria-pressed={each === alignment}
              onClick={() => setAlignment(each)}
            >
              {sayWord('teach-class.compare.align', each)}
            </button>
          ))}
        </div>
      </fieldset>
      <CompareChart facts={facts} runs={runs} names={names} />
    </>
  );
}

/** Frames recorded once the run has come to where the work stood; 0 until then. */
function useCountWhenWhole(session: Session, work: WorkRecord | null): number {
  const headS = useStorePart(session.store, ({ status }) => status?.headS ?? -1);
  return useStorePart(session.store, () =>
    headS >= (work?.headS ?? 0) - 0.05 ? (session.history()?.count ?? 0) : 0,
  );
}

function recordedOf(history: FrameHistory | null, count: number): RecordedRun {
  return {
    count,
    frameS: history?.frameS ?? 0.1,
    frame: (k) => (history === null ? null : frameAt(history, k)),
  };
}

/** The run as it stood, and no further. */
function stillOf(
  opening: ReturnType<typeof openingOf>,
  work: WorkRecord | null,
): SessionOpening | null {
  if (opening === null || work === null) return null;
  return { ...opening, log: work.acts as TimedAction[], untilS: work.headS, play: false };
}
