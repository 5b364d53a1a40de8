import type { Done, ToServer } from '../../classroom/index.ts';
import { catchUp } from './class-registry.ts';
import { entriesSince } from './entries-since.ts';
import { handIn } from './hand-in.ts';
import type { Live } from './live.ts';
import { type LiveClass, type LiveSeat, noteAnswer } from './live-class.ts';
import type { Handlers } from './serve-messages.ts';
import { tellWorked } from './watching.ts';

export function seatHandlers(live: Live, one: LiveClass, seat: LiveSeat): Handlers {
  const { id } = one.kept;
  const number = seat.kept.seat;
  return {
    since: ({ n }) => entriesSince(one, n),
    state(state) {
      seat.state = state;
      one.changed.add(number);
      return undefined;
    },
    async work(delta) {
      const { fresh, answer } = await live.works.tell(id, number, delta);
      if (fresh) tellWorked(live, one, number, delta);
      return answer;
    },
    'poll answer': (message) => answerPoll(live, one, number, message),
    'hand in': (message) => handIn(live, one, seat, message),
  };
}

/** The first answer stands, and none is taken once the answers are shown. @throws StoreFailure */
async function answerPoll(
  live: Live,
  one: LiveClass,
  seat: number,
  { poll, option }: ToServer['poll answer'],
): Promise<Done> {
  if (one.state.poll?.id !== poll && live.shared) await catchUp(live, one);
  const open = one.state.poll;
  if (open?.id !== poll || option >= open.question.options.length) {
    const wasOpen = one.entries.some((entry) => entry.type === 'poll' && entry.id === poll);
    return { ok: false, error: wasOpen && open?.id !== poll ? 'poll is over' : 'no such poll' };
  }
  if (open.shown !== null) return { ok: false, error: 'poll is over' };
  if (one.polls.get(poll)?.has(seat) === true) return { ok: true };
  const answer = { poll, seat, option };
  await live.store.answerPoll(one.kept.id, answer);
  noteAnswer(one, answer);
  live.bus.tell({ type: 'polled', class: one.kept.id, ...answer });
  return { ok: true };
}
