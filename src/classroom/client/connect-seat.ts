import type { ClassEntry } from '../../../machines/class/index.ts';
import {
  CLASS_PROTOCOL,
  type Done,
  type Failed,
  type SeatState,
  type ToServer,
} from '../protocol/index.ts';
import { createAskingUntil } from './ask-until.ts';
import { CLASS_AT_FIRST, type ClassNow, followClass } from './class-now.ts';
import { createLink, type Link } from './link.ts';
import { createHeld, type Held, type Readable } from './readable.ts';
import { takeWays, type Ways } from './ways.ts';
import { createWorkTelling, type Saved, type WorkToTell } from './work-telling.ts';

export interface SeatNow extends ClassNow {
  readonly seat: number;
  /** As the class knows it; empty before the first welcome. */
  readonly nickname: string;
  /** What was answered last, and to which poll; null: nothing yet. */
  readonly polled: { readonly poll: string; readonly option: number } | null;
  readonly saved: Saved;
  readonly workRefused: Failed['error'] | null;
}

export interface SeatClient {
  readonly store: Readable<SeatNow>;
  /** The newest state of one's own work; told again until it is saved. */
  tellWork(work: WorkToTell): void;
  /** How it stands, for the board; may be lost. */
  tellState(state: SeatState): void;
  answerPoll(poll: string, option: number): Promise<Done>;
  /** Waits until the work of that attempt is saved, however long that takes. */
  handIn(attempt: number, claimed: ToServer['hand in']['claimed']): Promise<Done>;
  close(): void;
}

interface Place {
  readonly class: string;
  readonly seat: number;
  readonly token: string;
  /** The class as an earlier page knew it, for when there is no server. */
  readonly known?: readonly ClassEntry[];
}

/** A learner's place in a class. */
export function connectSeat({ known = [], ...place }: Place, ways: Ways = {}): SeatClient {
  const taken = takeWays(ways);
  const store: Held<SeatNow> = createHeld<SeatNow>({
    ...CLASS_AT_FIRST,
    seat: place.seat,
    nickname: '',
    polled: null,
    saved: 'saved',
    workRefused: null,
  });
  const following = followClass(store, () => link, known);
  const link: Link = createLink(taken, {
    hello: () => ({ role: 'seat', v: CLASS_PROTOCOL, ...place, since: following.since() }),
    welcome(welcome) {
      following.welcome(welcome, taken.now());
      const { poll } = store.read().book;
      const polled =
        poll === null || welcome.polled === null ? null : { poll: poll.id, option: welcome.polled };
      store.write({ nickname: welcome.nickname ?? '', polled });
      telling.welcome(store.read().book.way === 'together' ? null : welcome.work);
    },
    hears: {
      entry: following.entry,
      head: following.head,
      worked({ seat, delta }) {
        if (seat === null) following.worked(delta);
      },
    },
    phase(phase, gone) {
      store.write({ link: phase, ...(gone === null ? {} : { gone }) });
      if (phase === 'live') asking.live();
      telling.turn();
    },
    woken: following.woken,
  });
  const telling = createWorkTelling(link, (now) => store.write(now));
  const asking = createAskingUntil(link);
  return {
    store,
    tellWork: telling.tell,
    tellState: (state) => link.tell('state', state),
    async answerPoll(poll, option) {
      const answer = await asking.ask('poll answer', { poll, option });
      if (answer.ok) store.write({ polled: { poll, option } });
      return answer;
    },
    async handIn(attempt, claimed) {
      const rev = await telling.whenSaved(attempt);
      return asking.ask('hand in', { attempt, rev, claimed });
    },
    close() {
      following.close();
      telling.close();
      asking.close();
      link.close();
    },
  };
}
