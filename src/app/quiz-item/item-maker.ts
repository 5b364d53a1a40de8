/** The items of this visit: one worker makes them all, and what is made is kept. */
import { createItemSide } from '../session/item-side.ts';
import type { ItemAnswer, ItemTrouble, MadeItem } from '../session/making-protocol.ts';
import { startWorker } from './start-worker.ts';

export type AskedItem =
  | ({ readonly ok: true } & MadeItem)
  | { readonly ok: false; readonly trouble: ItemTrouble; readonly detail: string };

/** So long a worker waits for another question, ms. */
export const LINGER_MS = 30_000;

const side = createItemSide({
  startWorker,
  get atlases() {
    return new URL('atlas/', document.baseURI).href;
  },
});
let asked = 0;
let ending: ReturnType<typeof setTimeout> | undefined;

/** An item by its id, proved anew; the same id twice is made once. */
export async function askForItem(id: string): Promise<AskedItem> {
  clearTimeout(ending);
  asked += 1;
  const answer = await side.ask(id);
  asked -= 1;
  restLater();
  return flat(answer);
}

/** Makes it while nothing else is asked for. */
export function preloadItem(id: string): void {
  side.prepare(id);
  restLater();
}

function restLater(): void {
  if (asked > 0) return;
  clearTimeout(ending);
  ending = setTimeout(side.rest, LINGER_MS);
}

/** What is there already; null where it has yet to be asked for. */
export function knownItem(id: string): AskedItem | null {
  const answer = side.known(id);
  return answer === null ? null : flat(answer);
}

function flat(answer: ItemAnswer): AskedItem {
  return answer.ok ? { ok: true, ...answer.made } : answer;
}
