import type { Cause, StepName } from '../../machines/burner/index.ts';
import type { TimedAction } from './actions.ts';

/** What happened in a run, in order; times in simulated seconds. */
export type RunEvent =
  | { readonly t: number; readonly type: 'step'; readonly step: StepName; readonly rule?: string }
  | { readonly t: number; readonly type: 'proved'; readonly what: string }
  | { readonly t: number; readonly type: 'lost'; readonly what: string }
  | { readonly t: number; readonly type: 'command'; readonly device: string; readonly to: string }
  | {
      readonly t: number;
      readonly type: 'lockout';
      readonly cause: Cause;
      readonly step: StepName;
    }
  | { readonly t: number; readonly type: 'reset'; readonly count: number }
  | { readonly t: number; readonly type: 'action'; readonly action: TimedAction }
  | {
      readonly t: number;
      readonly type: 'fault';
      readonly fault: string;
      readonly severity: number;
      readonly on: boolean;
    }
  | {
      readonly t: number;
      readonly type: 'end';
      readonly step: StepName;
      readonly lockout: Cause | null;
      readonly hash: string;
    };
