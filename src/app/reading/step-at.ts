import type { HistoryEvent } from '../session/protocol.ts';

export interface StepAt {
  readonly step: string;
  readonly sinceS: number;
  readonly lockout: { readonly cause: string; readonly step: string; readonly atS: number } | null;
  readonly resets: number;
}

/** Which step the run was in at a moment, read from its events. */
export function stepAt(events: readonly HistoryEvent[], tS: number): StepAt {
  let step = 'standby';
  let sinceS = 0;
  let lockout: StepAt['lockout'] = null;
  let resets = 0;
  for (const event of events) {
    if (event.t > tS + 1e-6) break;
    if (event.type === 'lockout') {
      lockout = { cause: event.cause, step: event.step, atS: event.t };
    } else if (event.type === 'step') {
      step = event.step;
      sinceS = event.t;
      if (event.step !== 'lockout') lockout = null;
    } else if (event.type === 'reset') {
      resets = event.count;
    }
  }
  return { step, sinceS, lockout, resets };
}
