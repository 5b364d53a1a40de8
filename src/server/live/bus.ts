import type { ClassEntry } from '../../../machines/class/index.ts';
import type { BoardSeat, Head, WorkDelta } from '../../classroom/index.ts';
import type { PollAnswer } from '../store/types.ts';

/** What the processes of one class tell each other. All of it may be late or lost. */
export type BusMessage =
  | { readonly type: 'alive' }
  | { readonly type: 'stops' }
  | { readonly type: 'entries'; readonly class: string; readonly entries: readonly ClassEntry[] }
  /** One has come, or is named otherwise: the store knows. */
  | { readonly type: 'seat'; readonly class: string; readonly seat: number }
  /** Its page is here now: any other connection of that seat is of the past. */
  | { readonly type: 'seated'; readonly class: string; readonly seat: number }
  | { readonly type: 'deleted'; readonly class: string }
  | ({ readonly type: 'polled'; readonly class: string } & PollAnswer)
  | { readonly type: 'head'; readonly class: string; readonly head: Head }
  | {
      readonly type: 'worked';
      readonly class: string;
      /** Null: the one plant. */
      readonly seat: number | null;
      readonly delta: WorkDelta;
    }
  /** Here someone looks: the others tell their part for the next seconds. */
  | { readonly type: 'watching'; readonly class: string; readonly seats: readonly number[] }
  | { readonly type: 'board wanted'; readonly class: string; readonly whole: boolean }
  | { readonly type: 'board'; readonly class: string; readonly seats: readonly BoardSeat[] };

export type BusState = 'none' | 'ready' | 'not reached';

/** Between the processes that serve the same classes. */
export interface Bus {
  tell(message: BusMessage): void;
  /** `from` names the process that told it. */
  listen(take: (message: BusMessage, from: string) => void): void;
  state(): BusState;
  close(): Promise<void>;
}

/** Of a process that has its classes to itself. */
export function createNoBus(): Bus {
  return { tell() {}, listen() {}, state: () => 'none', close: async () => {} };
}

/** How long what someone wants to be told of is told without being asked for again, ms. */
export const WANTED_FOR_MS = 4000;
export const WANTED_EVERY_MS = 1000;
