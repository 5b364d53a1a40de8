import '../styles/working/index.css';
import { useEffect, useState } from 'react';
import { say } from '../../i18n/index.ts';
import { createSession } from '../session/session.ts';
import type { Session } from '../session/session-types.ts';
import { type Store, useStorePart } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { markRun } from '../working/marks.ts';
import { WorkingFrame } from '../working/working-page.tsx';
import { type ClassSeat, useClass, useClassPart } from './class-context.ts';
import { STATE_AT_FIRST } from './state-of-quiz.ts';
import { toldOf } from './told-of.ts';
import { useTellState } from './use-tell-state.ts';

const TABS = ['events'] as const;
/** A device that is no further behind than this is as good as there, s. */
const BEHIND_S = 2;

/** Runs here what runs at the instructor's; one may look back, and nothing can be done. */
export function FollowPlant({ surroundings }: { readonly surroundings: Store<Surroundings> }) {
  const seat = useClass();
  const [attempt, setAttempt] = useState(0);
  const session = useFollowing(seat, attempt);
  useTellState(() => ({ ...STATE_AT_FIRST, phase: 'working', running: true }));
  if (session === null) return <p className="loading">{say('app.opening')}</p>;
  return (
    <WorkingFrame
      session={session}
      projector={false}
      title={say('class.what.start')}
      surroundings={surroundings}
      tabs={TABS}
      still={true}
      note={<FollowNote session={session} />}
      onAgain={() => setAttempt((count) => count + 1)}
    />
  );
}

function FollowNote({ session }: { readonly session: Session }) {
  const mode = useClassPart((now) => now.head?.mode ?? 'paused');
  const speed = useClassPart((now) => now.head?.speed ?? 1);
  const link = useClassPart((now) => now.link);
  const isBehind = useStorePart(
    session.store,
    ({ status }) => (status?.follows?.behindS ?? 0) > BEHIND_S * Math.max(1, status?.speed ?? 1),
  );
  const lookingBack = useStorePart(session.store, (state) => state.lookingBack);
  const [code, parameters] = noteOf();
  return (
    <p className="class-note class-follow" role="status">
      {say(code, parameters)}
    </p>
  );

  function noteOf() {
    if (link !== 'live') return ['class.together.away', {}] as const;
    if (lookingBack) return ['class.together.looking-back', {}] as const;
    if (isBehind) return ['class.together.behind', {}] as const;
    if (mode === 'paused') return ['class.together.paused', {}] as const;
    if (mode === 'to next step') return ['class.together.to-next', {}] as const;
    return speed === 1
      ? (['class.together.live', {}] as const)
      : (['class.together.fast', { speed }] as const);
  }
}

function useFollowing({ client }: ClassSeat, attempt: number): Session | null {
  const [session, setSession] = useState<Session | null>(null);
  const id = useClassPart((now) => now.book.what?.id ?? '');
  // biome-ignore lint/correctness/useExhaustiveDependencies: another attempt is another run
  useEffect(() => {
    const { book } = client.store.read();
    const first = toldOf(client.store.read());
    if (first === null) return;
    const worker = new Worker(new URL('../session/worker.ts', import.meta.url), {
      type: 'module',
    });
    const given = book.what?.given;
    const opened = createSession(worker, {
      kind: 'watch',
      id,
      seed: book.seed,
      ...(given === undefined ? {} : { given }),
      follow: first,
    });
    let last = first;
    const stop = client.store.subscribe(() => {
      const told = toldOf(client.store.read(), last);
      if (told === null || told === last) return;
      last = told;
      opened.follow(told);
    });
    const unmark = markRun(opened);
    let request = requestAnimationFrame(function frame(nowMs) {
      opened.animate(nowMs);
      request = requestAnimationFrame(frame);
    });
    setSession(opened);
    return () => {
      cancelAnimationFrame(request);
      stop();
      unmark();
      opened.close();
      setSession(null);
    };
  }, [client, id, attempt]);
  return session;
}
