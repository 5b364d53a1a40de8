import type { Action } from '../../engine/index.ts';
import type { FrameHistory } from './frame-history.ts';
import type { Facts, Failure, HistoryEvent, Speed, Status } from './protocol.ts';
import type { Store } from './store.ts';
import type { ToWorker } from './to-worker.ts';

export interface Moment {
  readonly previous: Float64Array;
  readonly next: Float64Array;
  /** 0 at `previous`, 1 at `next`. */
  readonly blend: number;
  readonly nowMs: number;
  readonly tS: number;
  readonly running: boolean;
  /** Where the run has come to; `tS` is before it while someone looks back. */
  readonly headS: number;
  readonly lookingBack: boolean;
}
export type MomentListener = (moment: Moment) => void;

export interface SessionState {
  readonly phase: 'opening' | 'open' | 'failed';
  readonly facts: Facts | null;
  readonly status: Status | null;
  readonly events: readonly HistoryEvent[];
  /** The shown moment, to a tenth of a second; renewed a few times a second. */
  readonly shownS: number;
  /** Looking back: the shown moment is not where the run was. */
  readonly lookingBack: boolean;
  readonly failure: { readonly failure: Failure; readonly detail: string } | null;
  /** Grows when frames were replaced, so that what was drawn from them is drawn again. */
  readonly revision: number;
}

export interface Session {
  readonly store: Store<SessionState>;
  /** Filled once the run is open. */
  history(): FrameHistory | null;
  /** The healthy twin's frames, from the start of the run. */
  expectedFrames(): readonly Float64Array[] | null;
  /** The frame at the shown moment. */
  shownFrame(): Float64Array | null;
  play(speed?: Speed): void;
  pause(): void;
  nextStep(): void;
  act(action: Action): void;
  /** While a finger drags: shows the moment, leaves the run alone until `settle`. */
  scrub(tS: number): void;
  settle(): void;
  backToLive(): void;
  dismissFailure(): void;
  onMoment(listener: MomentListener): () => void;
  /** Draws once more although nothing moved: after a resize or a change of theme. */
  refresh(): void;
  /** Called once per animation frame by the page. */
  animate(nowMs: number): void;
  close(): void;
}

export interface WorkerLike {
  postMessage(message: ToWorker): void;
  terminate(): void;
  onmessage: ((event: MessageEvent) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}
