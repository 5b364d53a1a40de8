/** How a seat stands at its run, for the board of its class. */
import type { DeskEntry } from '../../../machines/job/index.ts';
import type { SeatState } from '../../classroom/index.ts';
import type { TimedAction } from '../../engine/index.ts';
import type { Facts, HistoryEvent } from '../session/protocol.ts';
import type { Session } from '../session/session-types.ts';
import type { Work } from '../work/work-types.ts';

export type RunStateNow = Omit<SeatState, 'asksHelp' | 'applied' | 'answered' | 'right'>;

interface Also {
  /** Unsafe or careless things, where they are known anyway. */
  readonly flags?: number;
  /** Where the exercise counts its own way, 0 to 1. */
  readonly progress?: number;
}

/** Asked about once a second; remembers when it saw the last act. */
export function createStateOfRun(session: Session, work: Work, nowMs: () => number) {
  let last: { readonly act: TimedAction; readonly atMs: number } | null = null;
  let counted: readonly TimedAction[] | null = null;

  function lastAct(log: readonly TimedAction[]): RunStateNow['last'] {
    if (log !== counted) {
      counted = log;
      const act = ownActs(log, session).at(-1) ?? null;
      if (act === null) last = null;
      else if (last === null || textOf(last.act) !== textOf(act)) last = { act, atMs: nowMs() };
    }
    if (last === null) return null;
    const agoS = Math.min(1e6, Math.max(0, Math.round((nowMs() - last.atMs) / 100) / 10));
    return { type: last.act.type, what: whatOf(last.act), agoS };
  }

  return ({ flags = 0, progress }: Also = {}): RunStateNow => {
    const { events, status, facts } = session.store.read();
    const { record, desk } = work.state.read();
    const runS = session.headS();
    const log = record?.log ?? [];
    const arriveS = facts?.arriveS ?? 0;
    const entered = events.findLast((event) => event.type === 'step');
    const step = entered?.type === 'step' ? entered.step : '';
    const isDone = desk.some(({ type }) => type === 'close');
    return {
      phase: isDone ? 'done' : 'working',
      step,
      stepS: Math.max(0, runS - (entered?.t ?? 0)),
      runS,
      running: status !== null && status.mode !== 'paused',
      lockout: step === 'lockout' ? lastLockout(events) : null,
      last: lastAct(log),
      suspects: suspectsOf(desk),
      flags,
      // What a meter reads is noted on paper; looking and listening are acts.
      readings:
        ownActs(log, session).filter(({ type }) => type === 'check').length +
        desk.filter(({ type }) => type === 'pin').length,
      resets: countOf(events, 'reset', arriveS),
      lockouts: countOf(events, 'lockout', arriveS),
      progress:
        progress ?? (work.name.kind === 'watch' ? progressOfStart(step, facts) : progressOf(desk)),
    };
  };
}

/** What the learner did: neither the plant's own past nor what only a class orders, nor a button let go. */
function ownActs(log: readonly TimedAction[], session: Session): TimedAction[] {
  const arriveS = session.store.read().facts?.arriveS ?? 0;
  const headS = session.headS();
  return log.filter(
    (act) =>
      act.t >= arriveS &&
      act.t <= headS &&
      !ORDERED.has(act.type) &&
      !('pressed' in act && !act.pressed),
  );
}

/** Written out, so that the page need not load the engine for its board. */
const ORDERED: ReadonlySet<string> = new Set([
  'insert-fault',
  'clear-fault',
  'ramp-fault',
  'intermittent-fault',
  'set-weather',
  'set-gas-supply',
  'set-mains',
]);

/** The things an act is about, in one line. */
function whatOf(act: TimedAction): string {
  const { t: _, type: _type, ...fields } = act as TimedAction & Record<string, unknown>;
  const words = Object.values(fields).flatMap((value) => {
    if (typeof value === 'string') return value === '' ? [] : [value];
    if (typeof value === 'number') return [String(Math.round(value * 1000) / 1000)];
    return value === false ? ['off'] : [];
  });
  return words.join(', ').slice(0, 200);
}

function suspectsOf(desk: readonly DeskEntry[]): string[] {
  const ranked = desk.findLast(({ type }) => type === 'suspect');
  return ranked?.type === 'suspect' ? ranked.ranked.slice(0, 3) : [];
}

function lastLockout(events: readonly HistoryEvent[]): string | null {
  const found = events.findLast(({ type }) => type === 'lockout');
  return found?.type === 'lockout' ? found.cause : null;
}

function countOf(
  events: readonly HistoryEvent[],
  type: HistoryEvent['type'],
  fromS: number,
): number {
  return events.filter((event) => event.type === type && event.t >= fromS).length;
}

/** How far up the sequence it has come. */
function progressOfStart(step: string, facts: Facts | null): number {
  const way = facts?.steps.map((one) => one.step) ?? [];
  const full = way.indexOf('modulation');
  const at = way.indexOf(step);
  return at < 0 || at > full ? 0 : at / full;
}

/** The marks that a visit passes, however often and in whatever order. */
const MARKS: readonly (readonly DeskEntry['type'][])[] = [
  ['arrive', 'begin'],
  ['pin', 'note', 'answer'],
  ['suspect', 'claim'],
  ['claim'],
  ['prove', 'hand over'],
  ['close'],
];

function progressOf(desk: readonly DeskEntry[]): number {
  if (desk.some(({ type }) => type === 'close')) return 1;
  const passed = MARKS.filter((mark) => desk.some(({ type }) => mark.includes(type)));
  return passed.length / MARKS.length;
}

function textOf(act: TimedAction): string {
  return JSON.stringify(act);
}
