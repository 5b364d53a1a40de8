import { BOARD_EVERY_MS } from '../../classroom/index.ts';
import { cutSlowConnections } from './backpressure.ts';
import { hasOnlookers, tellBoard } from './board.ts';
import { WANTED_EVERY_MS } from './bus.ts';
import { catchUp, forgetEmpty } from './class-registry.ts';
import { dismissClass } from './dismiss-class.ts';
import { settleHead } from './head.ts';
import type { Live } from './live.ts';
import { noteAnswer } from './live-class.ts';
import { renewPlantWork } from './plant-work.ts';
import { noteFailure } from './serve-messages.ts';
import { watchedHere } from './watching.ts';

/** Nothing waits for the other processes longer than this, whatever became of what they told, ms. */
const ASK_STORE_EVERY_MS = 1000;

/** All that is done from time to time. Gives what ends it. */
export function startPulse(live: Live, sweepSilent: () => void): () => void {
  const timers = [
    setInterval(() => {
      for (const one of live.classes.values()) {
        settleHead(live, one);
        tellBoard(live, one);
      }
    }, BOARD_EVERY_MS),
    setInterval(() => {
      cutSlowConnections(live);
      forgetEmpty(live);
      sweepSilent();
      live.bus.tell({ type: 'alive' });
      tellWhatIsWanted(live);
    }, WANTED_EVERY_MS),
  ];
  let asking = false;
  if (live.shared) {
    timers.push(
      setInterval(() => {
        if (asking) return;
        asking = true;
        askStore(live)
          .catch((error: unknown) => noteFailure(live, error, 'ask for news'))
          .finally(() => {
            asking = false;
          });
      }, ASK_STORE_EVERY_MS),
    );
  }
  return () => {
    for (const timer of timers) clearInterval(timer);
  };
}

function tellWhatIsWanted(live: Live): void {
  if (live.bus.state() === 'none') return;
  for (const [id, one] of live.classes) {
    if (hasOnlookers(live, one)) live.bus.tell({ type: 'board wanted', class: id, whole: false });
    const seats = watchedHere(live, one);
    if (seats.length > 0) live.bus.tell({ type: 'watching', class: id, seats });
  }
}

/** A message between processes may be lost: what counts is in the store. @throws StoreFailure */
async function askStore(live: Live): Promise<void> {
  const ids = [...live.classes].filter(([, { sockets }]) => sockets > 0).map(([id]) => id);
  if (ids.length === 0) return;
  const { store } = live;
  const numbers = await store.lastNumbers(ids);
  const isCutOff = live.bus.state() !== 'ready';
  for (const id of ids) {
    const one = live.classes.get(id);
    if (one === undefined) continue;
    const n = numbers.get(id);
    if (n === undefined) {
      dismissClass(live, id);
      continue;
    }
    if (n > one.state.n) await catchUp(live, one);
    if (!isCutOff) continue;
    if (one.state.way === 'together') await renewPlantWork(live, one);
    const { poll } = one.state;
    if (poll === null || !hasOnlookers(live, one)) continue;
    for (const answer of await store.pollAnswers(id, poll.id)) noteAnswer(one, answer);
  }
}
