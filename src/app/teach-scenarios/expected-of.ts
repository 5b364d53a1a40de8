import type { Plain } from '../../scenario/editing/index.ts';
import type { HistoryEvent } from '../session/protocol.ts';

/** Room after the last of it, so that the least change of a plant does not break the promise. */
const MARGIN_S = 20;
const ROUND_S = 10;

/** What a run did, as a file promises it: the steps that it passed, and where it locked out. */
export function expectedOf(events: readonly HistoryEvent[], untilS: number): Plain {
  const inTime = events.filter(({ t }) => t <= untilS);
  const lockout = inTime.find((event) => event.type === 'lockout');
  const steps = inTime.flatMap((event) =>
    event.type === 'step' && (lockout === undefined || event.t <= lockout.t) ? [event] : [],
  );
  const passed = steps.map(({ step }) => step).filter((step) => step !== 'standby');
  const [last] = steps.slice(-1);
  const endS = lockout?.t ?? last?.t ?? untilS;
  const by = Math.min(untilS, Math.ceil((endS + MARGIN_S) / ROUND_S) * ROUND_S);
  const named = passed.filter((step) => step !== 'lockout');
  return {
    ...(named.length === 0 ? {} : { steps: named }),
    lockout: lockout?.type === 'lockout' ? { cause: lockout.cause, step: lockout.step } : 'none',
    by,
  };
}
