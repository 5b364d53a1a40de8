import type { Status } from './protocol.ts';
import type { SessionState } from './session-types.ts';
import type { Store } from './store.ts';

/** The moment that is shown, as far as React has to hear of it. */
interface Shown {
  readonly frame: Float64Array | null;
  readonly shownS: number;
  readonly lookingBack: boolean;
  /** What the worker said last. */
  readonly status: Status | null;
}

/** Tells React of the shown moment. */
export interface MomentPublisher {
  /** A change of step, inputs or commands is told soon. */
  watch(channels: readonly { readonly id: string }[]): void;
  publish(nowMs: number, shown: Shown): void;
}

/** React hears of time this often at most; of a changed step or permissive soon. */
const PUBLISH_MS = 200;
const AT_ONCE_MS = 60;
const WATCHED = ['logic.step', 'logic.inputs', 'logic.commands'];

export function createMomentPublisher(store: Store<SessionState>): MomentPublisher {
  let watched: readonly number[] = [];
  let lastPublishMs = 0;
  let lastWatched: readonly number[] = [];
  return {
    watch(channels) {
      watched = WATCHED.map((id) => channels.findIndex((channel) => channel.id === id));
    },
    publish(nowMs, { frame, shownS, lookingBack, status }) {
      const now = frame === null ? [] : watched.map((index) => frame[index] ?? 0);
      const changed = now.some((value, i) => value !== lastWatched[i]);
      const state = store.read();
      const soon = changed || state.lookingBack !== lookingBack;
      if (nowMs - lastPublishMs < (soon ? AT_ONCE_MS : PUBLISH_MS)) return;
      lastPublishMs = nowMs;
      lastWatched = now;
      const rounded = Math.floor(shownS * 10 + 1e-6) / 10;
      if (state.shownS === rounded && !soon && state.status === status) return;
      store.write({ shownS: rounded, lookingBack, ...(status === null ? {} : { status }) });
    },
  };
}
