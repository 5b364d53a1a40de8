import { initialTransition, transition } from 'xstate';
import type { DeskKind, DeskPlan, DeskState, JobPhase, Taken } from './desk.ts';
import { drillMachine } from './drill.ts';
import type { DeskEntry } from './entries.ts';
import { jobMachine } from './job.ts';
import { lessonMachine } from './lesson.ts';
import type { DeskContext } from './setup.ts';

/** All three are charts over the same paper; they differ in their phases alone. */
const MACHINES: Readonly<Record<DeskKind, typeof jobMachine>> = {
  job: jobMachine,
  drill: drillMachine as unknown as typeof jobMachine,
  lesson: lessonMachine as unknown as typeof jobMachine,
};

/** The desk before anything is said. */
export function createDesk(kind: DeskKind, plan: DeskPlan): DeskState {
  const [first] = initialTransition(MACHINES[kind], emptyPaper(plan));
  return { kind, phase: first.value, entries: [], ...paperOf(first.context) };
}

/** The desk after one more entry, or why it is not taken. Pure: the state given is left as it is. */
export function takeEntry(state: DeskState, entry: DeskEntry): Taken {
  const late = refusedByTime(state, entry);
  if (late !== null) return { ok: false, refusal: late };
  const machine = MACHINES[state.kind];
  const { kind, phase, entries, ...paper } = state;
  const before = machine.resolveState({
    value: phase as JobPhase,
    context: { ...paper, refusal: null },
  });
  const [after] = transition(machine, before, entry);
  const { refusal } = after.context;
  if (refusal !== null) return { ok: false, refusal };
  return {
    ok: true,
    state: { kind, phase: after.value, entries: [...entries, entry], ...paperOf(after.context) },
  };
}

/**
 * The desk as it stands after all of these entries: leaving and coming back. One that is not
 * taken changes nothing and is not among the entries of the result.
 */
export function foldDesk(kind: DeskKind, plan: DeskPlan, entries: readonly DeskEntry[]): DeskState {
  let state = createDesk(kind, plan);
  for (const entry of entries) {
    const taken = takeEntry(state, entry);
    if (taken.ok) state = taken.state;
  }
  return state;
}

function emptyPaper(plan: DeskPlan): DeskContext {
  return {
    plan,
    pins: [],
    notes: [],
    claims: [],
    suspects: [],
    asked: [],
    sheetRead: false,
    tools: [],
    guidance: 'practice',
    hints: [],
    feedbacks: [],
    handover: null,
    answers: [],
    begunAt: null,
    stops: 0,
    broken: null,
    refusal: null,
  };
}

function paperOf({ refusal: _, ...paper }: DeskContext) {
  return paper;
}

/** A lesson may be taken back to before something was broken; elsewhere time only goes on. */
function refusedByTime({ kind, entries }: DeskState, { t }: DeskEntry) {
  if (!Number.isFinite(t) || t < 0) return 'time is not a number' as const;
  const last = entries.at(-1)?.t ?? 0;
  return kind !== 'lesson' && t < last ? ('earlier than the last entry' as const) : null;
}
