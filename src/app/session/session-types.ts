import type { DeskEntry } from '../../../machines/job/index.ts';
import type { MinutesUsed, Proof, ToolUse } from '../../bench/index.ts';
import type {
  Action,
  Heard,
  LookReading,
  LookWhat,
  Setting,
  TimedAction,
} from '../../engine/index.ts';
import type { FrameHistory } from './frame-history.ts';
import type { Facts, Failure, HistoryEvent, Refusal, Status } from './protocol.ts';
import type { Reasoned } from './reasoning-protocol.ts';
import type { Store } from './store.ts';
import type { Opening, ToWorker } from './to-worker.ts';
import type { Told } from './told.ts';
import type { BenchState, Meter, Verdict } from './work-protocol.ts';

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
  /** Why nothing came of what was done last; `count` grows with each, so that it can be shown again. */
  readonly refusal: { readonly why: Refusal; readonly count: number } | null;
  /** Grows when frames were replaced, so that what was drawn from them is drawn again. */
  readonly revision: number;
}

/** How a run is opened: new, or as the saved work left it. */
export interface SessionOpening extends Omit<Opening, 'follow'> {
  /** The run follows another: where that one has come to. */
  readonly follow?: Told;
  /** Runs at once when it is open; so it does unless told otherwise. */
  readonly play?: boolean;
}

/** What the hands, the tools and the clock of the visit have come to. */
export interface AtThePlantState {
  readonly bench: BenchState | null;
  readonly settings: readonly Setting[];
  readonly meters: readonly Meter[];
  /** Counted in jobs and drills only. */
  readonly minutes: MinutesUsed | null;
}

/** Enough to bring the run back: what was done, and how far it had come. */
export interface SavedRun {
  readonly log: readonly TimedAction[];
  /** Done, but not yet in the log. */
  readonly pending: readonly Action[];
  readonly headS: number;
  /** Of the run at `headS`; null while something is pending. */
  readonly hash: string | null;
}

export interface Session {
  readonly store: Store<SessionState>;
  /** Filled once the run is open. */
  history(): FrameHistory | null;
  /** The healthy twin's frames, from the start of the run. */
  expectedFrames(): readonly Float64Array[] | null;
  /** The frame at the shown moment. */
  shownFrame(): Float64Array | null;
  play(speed?: number): void;
  pause(): void;
  nextStep(): void;
  /** By the class: whatever the exercise lets a learner do, and whether it is frozen or not. */
  order(what: Action | 'next step'): void;
  /** By the class: while it is on nothing can be done or run here; `order` can. */
  freeze(on: boolean): void;
  /** What was done from that moment on is gone, and there is the head of the run; paused. */
  cutTo(tS: number): void;
  /** Goes where another run has come to. Only where it was opened with `follow`. */
  follow(told: Told): void;
  /** Where this run stands, for those that follow it: at once when something is done or its pace changes, else twice a second. */
  onLead(listener: (told: Told) => void): () => void;
  act(action: Action): void;
  /** The same; in a job it is always done at the head, and ends a look back. */
  perform(action: Action): void;
  readonly atThePlant: Store<AtThePlantState>;
  /** Where the run has come to, s: the time of what is put on paper now. */
  headS(): number;
  /** Which tools are connected; one that stays keeps its state. */
  setMeters(uses: readonly ToolUse[]): void;
  meterUses(): readonly ToolUse[];
  /** Connects one more tool and lets it count as a check; again at the same place changes nothing. */
  connect(use: ToolUse): void;
  disconnect(use: ToolUse): void;
  look(what: LookWhat): Promise<LookReading | null>;
  listen(): Promise<readonly Heard[]>;
  /** Gas in the room air, share of its lower explosive limit. */
  smell(): Promise<number>;
  /** Tells the worker what is on paper, for the minutes. */
  setDesk(desk: readonly DeskEntry[]): void;
  proof(desk: readonly DeskEntry[]): Promise<Proof>;
  /** Only at the debrief: says what was wrong. */
  judge(desk: readonly DeskEntry[]): Promise<Verdict>;
  /**
   * How the cause was gone about so far. Asked again before it is answered, all are answered by the
   * latest; `upTo` says what an answer was made of.
   */
  reason(desk: readonly DeskEntry[]): Promise<Reasoned>;
  /** While it is on, a run that plays stops on entering each step. */
  stopAt(what: 'each step' | null): void;
  /** Back to just before the last fault put in by hand; paused. */
  putBack(): void;
  /** Called at once with what is there, whenever something was done, and as time goes by. */
  onLog(listener: (saved: SavedRun) => void): () => void;
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

export interface WorkerLike<Message = ToWorker> {
  postMessage(message: Message): void;
  terminate(): void;
  onmessage: ((event: MessageEvent) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}
