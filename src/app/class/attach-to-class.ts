import { STATE_EVERY_MS } from '../../classroom/index.ts';
import { createStateOfRun, takeCommands } from '../class-run/index.ts';
import type { Session } from '../session/session-types.ts';
import type { Work } from '../work/work-types.ts';
import type { ClassSeat } from './class-context.ts';
import { tellWork } from './tell-work.ts';

/**
 * A run of a seat in its class: what the class says is done to it, and what comes of it is told.
 * Once the class is over it is the learner's own, and nothing is told any more.
 */
export function attachToClass(seat: ClassSeat, session: Session, work: Work): () => void {
  const { client, place, book } = seat;
  if (client.store.read().book.phase === 'closed') return () => undefined;
  const commands = takeCommands({ work, session, seat: place.seat });
  const stopTelling = tellWork(seat, work);
  const stateNow = createStateOfRun(session, work, Date.now);
  const tellState = (): void => {
    if (session.store.read().phase !== 'open') return;
    const { asksHelp } = book.read();
    const { applied } = work.ofClass;
    client.tellState({ ...stateNow(), answered: 0, right: 0, asksHelp, applied });
  };
  let { entries } = client.store.read();
  commands.take(entries);
  const stopHearing = client.store.subscribe(() => {
    const now = client.store.read().entries;
    if (now === entries) return;
    entries = now;
    commands.take(entries);
  });
  const stopBook = book.subscribe(tellState);
  const timer = setInterval(tellState, STATE_EVERY_MS);
  return () => {
    clearInterval(timer);
    stopBook();
    stopHearing();
    commands.stop();
    stopTelling();
  };
}
