import type { ClassEntry, ClassWhat } from '../../../machines/class/index.ts';
import type { ToServer, WorkRecord } from '../../classroom/index.ts';
import type { KeptSeat } from '../store/types.ts';

/** A seat's work with all that it is judged by. */
export interface SeatTask {
  readonly what: ClassWhat;
  readonly seed: number;
  readonly entries: readonly ClassEntry[];
  readonly seat: KeptSeat;
  readonly work: WorkRecord;
  /** What the page made of it; null where it told nothing. */
  readonly claimed: ToServer['hand in']['claimed'];
}

export interface SeatVerdict {
  /** A `ClassResult`. */
  readonly result: unknown;
  /** Why the page's own figure was not taken; null where it was the same or none was told. */
  readonly refused: unknown;
}

/** Runs works again and judges them. */
export interface ClassJudge {
  /** Null where nothing of that kind is judged. */
  judge(task: SeatTask): Promise<SeatVerdict | null>;
  close(): Promise<void>;
}
