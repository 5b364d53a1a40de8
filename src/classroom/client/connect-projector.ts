import { CLASS_PROTOCOL, type RosterSeat, type WorkRecord } from '../protocol/index.ts';
import { BOARD_AT_FIRST, type BoardNow, withSeats } from './board-now.ts';
import { CLASS_AT_FIRST, type ClassNow, followClass } from './class-now.ts';
import { createLink, type Link } from './link.ts';
import { createHeld, type Readable } from './readable.ts';
import { createWatching } from './watching.ts';
import { takeWays, type Ways } from './ways.ts';

export interface ProjectorNow extends ClassNow, BoardNow {
  /** Empty but while names are to be shown. */
  readonly roster: readonly RosterSeat[];
}

export interface ProjectorClient {
  readonly store: Readable<ProjectorNow>;
  /** Of the seat in the spotlight, and of no other. */
  watch(seat: number | null): Promise<WorkRecord | null>;
  onWorked(listener: (seat: number, work: WorkRecord) => void): () => void;
  close(): void;
}

/** What everyone in the room may see. */
export function connectProjector(
  place: { readonly class: string; readonly key: string },
  ways: Ways = {},
): ProjectorClient {
  const taken = takeWays(ways);
  const store = createHeld<ProjectorNow>({ ...CLASS_AT_FIRST, ...BOARD_AT_FIRST, roster: [] });
  const following = followClass(store, () => link);
  const link: Link = createLink(taken, {
    hello: () => ({ role: 'projector', v: CLASS_PROTOCOL, ...place, since: following.since() }),
    welcome: (welcome) => following.welcome(welcome, taken.now()),
    hears: {
      entry: following.entry,
      head: following.head,
      worked({ seat, delta }) {
        if (seat === null) following.worked(delta);
        else watching.worked(seat, delta);
      },
      board: ({ seats }) => store.write({ board: withSeats(store.read().board, seats) }),
      roster: ({ seats }) => store.write({ roster: seats }),
      'poll counts': (counts) => store.write({ counts }),
    },
    phase(phase, gone) {
      store.write({ link: phase, ...(gone === null ? {} : { gone }) });
      if (phase === 'live') watching.live();
    },
    woken: following.woken,
  });
  const watching = createWatching(link);
  return {
    store,
    watch: watching.watch,
    onWorked: watching.onWorked,
    close() {
      following.close();
      link.close();
    },
  };
}
