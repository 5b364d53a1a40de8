import type { Server } from 'socket.io';
import type { ClassStore } from '../store/types.ts';
import type { Allowances } from './allowance.ts';
import type { Bus, BusState } from './bus.ts';
import type { ClassJudge } from './class-judge.ts';
import type { AddressLimits } from './limits.ts';
import type { LiveClass } from './live-class.ts';
import type { Log } from './log.ts';
import type { Metrics } from './metrics.ts';
import type { StoreState } from './watch-store.ts';
import type { WorkSaver } from './work-saver.ts';

/** What every part of the live server is given. */
export interface Live {
  readonly io: Server;
  /** Opens its database with the first question. */
  readonly store: ClassStore;
  readonly bus: Bus;
  readonly works: WorkSaver;
  readonly judge: ClassJudge;
  readonly metrics: Metrics;
  readonly log: Log;
  readonly limits: AddressLimits;
  readonly attempts: Allowances;
  readonly addresses: () => readonly string[];
  readonly nowMs: () => number;
  /** Whether other processes may write to the same classes. */
  readonly shared: boolean;
  /** What the last thing asked of the store came to, and whether the other processes are reached. */
  readonly health: () => { readonly database: StoreState; readonly redis: BusState };
  readonly stopping: () => boolean;
  readonly classes: Map<string, LiveClass>;
  readonly loading: Map<string, Promise<LiveClass | null>>;
}
