import {
  CLASS_PROTOCOL,
  type Failed,
  type Head,
  type RosterSeat,
  type Said,
  type Spoken,
  type WorkRecord,
} from '../protocol/index.ts';
import { BOARD_AT_FIRST, type BoardNow, withSeats } from './board-now.ts';
import { CLASS_AT_FIRST, type ClassNow, followClass } from './class-now.ts';
import { createLink, type Link } from './link.ts';
import { createHeld, type Readable } from './readable.ts';
import { createSayQueue, type Unsaid } from './say-queue.ts';
import { createWatching } from './watching.ts';
import { takeWays, type Ways } from './ways.ts';
import { createWorkTelling, type Saved, type WorkToTell } from './work-telling.ts';

export interface InstructorNow extends ClassNow, BoardNow {
  readonly roster: readonly RosterSeat[];
  /** Said and not yet answered; told again by itself, also after a reload. */
  readonly unsaid: readonly Unsaid[];
  /** Of the one plant's work. */
  readonly saved: Saved;
  readonly workRefused: Failed['error'] | null;
}

export interface InstructorClient {
  readonly store: Readable<InstructorNow>;
  /** Resolves when the server has answered, over any number of connections. */
  say(entry: Spoken): Promise<Said>;
  /** From now on that seat's work is told as it goes on; null: nobody's, or it cannot be had now. */
  watch(seat: number | null): Promise<WorkRecord | null>;
  onWorked(listener: (seat: number, work: WorkRecord) => void): () => void;
  /** The newest state of the one plant's work. */
  tellWork(work: WorkToTell): void;
  /** Where the one plant has come to, by the work told last; may be lost. */
  tellHead(head: Omit<Head, 'rev'>): void;
  close(): void;
}

const SAID_KEY = 'flamewright.class-said.';

export function connectInstructor(
  place: { readonly class: string; readonly secret: string },
  ways: Ways = {},
): InstructorClient {
  const taken = takeWays(ways);
  const store = createHeld<InstructorNow>({
    ...CLASS_AT_FIRST,
    ...BOARD_AT_FIRST,
    roster: [],
    unsaid: [],
    saved: 'saved',
    workRefused: null,
  });
  const following = followClass(store, () => link);
  /** Told again with each connection: it may have been lost, and who leads may rest there. */
  let head: Omit<Head, 'rev'> | null = null;
  const link: Link = createLink(taken, {
    hello: () => ({ role: 'instructor', v: CLASS_PROTOCOL, ...place, since: following.since() }),
    welcome(welcome) {
      following.welcome(welcome, taken.now());
      telling.welcome(welcome.work);
    },
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
      telling.turn();
      if (phase !== 'live') return;
      saying.live();
      watching.live();
      if (head !== null) link.tell('head', { ...head, rev: telling.rev() });
    },
    woken: following.woken,
  });
  const telling = createWorkTelling(link, (now) => store.write(now));
  const watching = createWatching(link);
  const saying = createSayQueue(link, taken.shelf, SAID_KEY + place.class, taken.random, (unsaid) =>
    store.write({ unsaid }),
  );
  store.write({ unsaid: saying.unsaid() });
  return {
    store,
    say: saying.say,
    watch: watching.watch,
    onWorked: watching.onWorked,
    tellWork: telling.tell,
    tellHead(now) {
      head = now;
      link.tell('head', { ...now, rev: telling.rev() });
    },
    close() {
      following.close();
      telling.close();
      saying.close();
      link.close();
    },
  };
}
