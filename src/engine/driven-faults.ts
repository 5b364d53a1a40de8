/**
 * Faults that an act has set going: one that grows or shrinks, one that comes and goes. Each goes on
 * by itself, at times that the log alone decides, until it is there or something ends it.
 */
import { findFault } from '../faults/index.ts';
import { createRandom, exactPow } from '../numeric/index.ts';
import type { Action } from './actions.ts';
import type { DrivenFault, Ramp, Scale, Spells } from './driven-fault.ts';
import type { RunState } from './run-state.ts';
import { nextDueMs, putFirst } from './schedule.ts';
import { insertFault, nextSpellMs, removeFault } from './standing-faults.ts';

type ActOf<T extends Action['type']> = Extract<Action, { type: T }>;

/** A range of severities wider than this ratio is gone through by ratios. */
const DECADES = 1000;
const STEP_MS = 1000;
/** A long ramp has no more steps than these: some faults make new tables of combustion in each. */
const MOST_STEPS = 120;

/** @returns true when parameters changed at once */
export function startRamp(
  run: RunState,
  { fault, severity, overS }: ActOf<'ramp-fault'>,
  t: number,
): boolean {
  if (!(overS >= 0 && overS < Number.POSITIVE_INFINITY)) return false;
  forgetDriven(run, fault);
  const overMs = Math.round(overS * 100) * 10;
  if (overMs === 0) return setSeverity(run, fault, severity);
  const from = severityOf(run, fault);
  const startMs = Math.round(t * 1000);
  const scale = scaleOf(fault);
  const ramp: Ramp = { kind: 'ramp', fault, from, to: severity, scale, startMs, overMs };
  run.driven.push(ramp);
  putNext(run, ramp, startMs + Math.min(stepOf(ramp), overMs));
  return setSeverity(run, fault, severityAt(ramp, 0));
}

/** Comes at once; how long it stands and stays away is chance of its own. */
export function startSpells(
  run: RunState,
  { fault, severity, periodS, duty }: ActOf<'intermittent-fault'>,
  t: number,
): boolean {
  // Otherwise a spell without end or beginning would stay due for ever.
  if (!(periodS > 0 && periodS < Number.POSITIVE_INFINITY && duty >= 0 && duty <= 1)) return false;
  forgetDriven(run, fault);
  const startMs = Math.round(t * 1000);
  const chance = createRandom(run.setup.seed, `act.${startMs}.${fault}`);
  const onset = { kind: 'intermittent', fromS: t, periodS, duty } as const;
  const spells: Spells = { kind: 'spells', fault, severity, onset, chance };
  run.driven.push(spells);
  putNext(run, spells, startMs + nextSpellMs(chance, onset, true));
  return setSeverity(run, fault, severity);
}

/** One more step of it; nothing when it was ended. True when parameters changed. */
export function takeDriven(run: RunState, driven: DrivenFault, nowMs: number): boolean {
  if (!run.driven.includes(driven)) return false;
  return driven.kind === 'ramp' ? takeRamp(run, driven, nowMs) : takeSpell(run, driven, nowMs);
}

/** Whatever was set going of this fault goes no further; what stands of it stands. */
export function forgetDriven(run: RunState, fault: string): void {
  forgetDrivenIf(run, (one) => one === fault);
}

export function forgetDrivenIf({ driven }: RunState, isIt: (fault: string) => boolean): void {
  for (let i = driven.length - 1; i >= 0; i--) {
    if (isIt((driven[i] as DrivenFault).fault)) driven.splice(i, 1);
  }
}

function takeRamp(run: RunState, ramp: Ramp, nowMs: number): boolean {
  const doneMs = nowMs - ramp.startMs;
  if (doneMs >= ramp.overMs) {
    forgetDriven(run, ramp.fault);
    return setSeverity(run, ramp.fault, ramp.to);
  }
  putNext(run, ramp, Math.min(nowMs + stepOf(ramp), ramp.startMs + ramp.overMs));
  return setSeverity(run, ramp.fault, severityAt(ramp, doneMs / ramp.overMs));
}

function takeSpell(run: RunState, spells: Spells, nowMs: number): boolean {
  const { fault, severity, onset, chance } = spells;
  const comes = severityOf(run, fault) === 0;
  putNext(run, spells, nowMs + nextSpellMs(chance, onset, comes));
  return setSeverity(run, fault, comes ? severity : 0);
}

function putNext(run: RunState, driven: DrivenFault, ms: number): void {
  putFirst(run.due, ms, { kind: 'driven', driven });
  run.dueMs = nextDueMs(run.due);
}

function stepOf({ overMs }: Ramp): number {
  return Math.max(STEP_MS, Math.ceil(overMs / MOST_STEPS / 10) * 10);
}

function severityAt({ from, to, scale }: Ramp, share: number): number {
  switch (scale.kind) {
    case 'at once':
      return from;
    case 'amounts':
      return from + (to - from) * share;
    case 'ratios': {
      const lowest = Math.max(from, scale.low);
      return lowest * exactPow(Math.max(to, scale.low) / lowest, share);
    }
  }
}

function scaleOf(fault: string): Scale {
  const { low = 0, high = 0 } = findFault(fault)?.severity ?? {};
  if (low > 0 && low === high) return { kind: 'at once' };
  return low > 0 && high / low >= DECADES ? { kind: 'ratios', low } : { kind: 'amounts' };
}

function severityOf({ faults }: RunState, fault: string): number {
  return faults.standing.find((one) => one.fault === fault)?.severity ?? 0;
}

/** 0 is sound: it does not stand. */
function setSeverity({ faults }: RunState, fault: string, severity: number): boolean {
  if (severity === 0) return removeFault(faults, fault);
  insertFault(faults, fault, severity);
  return true;
}
