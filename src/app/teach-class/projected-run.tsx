import { useEffect } from 'react';
import { paceOfSeat } from '../../../machines/class/index.ts';
import type { ProjectorClient } from '../../classroom/index.ts';
import { say } from '../../i18n/index.ts';
import { useStorePart } from '../session/store.ts';
import type { Told } from '../session/told.ts';
import type { Surroundings } from '../settings/theme.ts';
import { openingOf } from './exercise-of-class.ts';
import { LeadClock } from './lead-clock.tsx';
import { RunView } from './run-view.tsx';
import { toldOfHead } from './told-of-head.ts';
import { useOpenRun } from './use-open-run.ts';
import { toldOfWork, useWatched } from './use-watched.ts';

interface Props {
  readonly client: ProjectorClient;
  readonly look: Surroundings;
}

/** The one plant, as it is driven. */
export function ProjectedPlant({ client, look }: Props) {
  const work = useStorePart(client.store, (now) => now.work);
  const head = useStorePart(client.store, (now) => now.head);
  if (work === null) return <p className="projected-none">{say('teach-class.projector.no-run')}</p>;
  return (
    <Followed
      name={`plant ${work.attempt}`}
      client={client}
      look={look}
      told={toldOfHead(work, head)}
      title={null}
    />
  );
}

/** The run of the seat that the instructor has singled out. */
export function ProjectedSpotlight({ client, look }: Props) {
  const book = useStorePart(client.store, (now) => now.book);
  const seat = book.spotlight;
  const work = useWatched(client, seat);
  const state = useStorePart(client.store, ({ board }) =>
    seat === null ? null : (board.get(seat)?.state ?? null),
  );
  if (seat === null || work === null || work === 'none') {
    return <p className="projected-none">{say('teach-class.projector.no-run')}</p>;
  }
  return (
    <Followed
      key={`${seat} ${work.attempt}`}
      name={`spotlight ${seat} ${work.attempt}`}
      client={client}
      look={look}
      told={toldOfWork(work, state, paceOfSeat(book, seat).speed)}
      title={say('teach-class.seat', { seat })}
    />
  );
}

interface FollowedProps extends Props {
  readonly name: string;
  readonly told: Told;
  readonly title: string | null;
}

function Followed({ name, client, look, told, title }: FollowedProps) {
  const book = useStorePart(client.store, (now) => now.book);
  const opening = openingOf(book);
  const session = useOpenRun(name, opening && { ...opening, follow: told }, { marked: true });
  const { log, headS, mode, speed } = told;
  // biome-ignore lint/correctness/useExhaustiveDependencies: told again when something of it changed
  useEffect(() => session?.follow(told), [session, log, headS, mode, speed]);
  if (session === null) return null;
  return (
    <RunView
      session={session}
      look={look}
      hands={false}
      head={
        <div className="run-head">
          {title === null ? null : <h2>{title}</h2>}
          <LeadClock />
        </div>
      }
    />
  );
}
