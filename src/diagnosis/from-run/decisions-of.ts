import type { DeskEntry } from '../../../machines/index.ts';
import { arrivedS, lookedAt, wholeLog } from '../../bench/index.ts';
import {
  createRun,
  type Run,
  type RunSetup,
  STEP_S,
  type TimedAction,
} from '../../engine/index.ts';
import type { Plan } from '../atlas/plan.ts';
import { LOCKED_OUT } from '../observe/moment.ts';
import type { Decision, DecisionAct } from '../score/decision.ts';
import { type CheckAction, checkAsked, momentAsked } from './check-asked.ts';
import { followPlant, type PlantFollowed } from './follow-plant.ts';
import { hangingOf } from './hanging.ts';
import { happeningsOf } from './happenings.ts';
import { type LeftWrong, leftWrong, putRight, withoutRighted } from './left-wrong.ts';
import { type AskedBefore, questionOfPin } from './question-of-pin.ts';
import { readOnce } from './read-once.ts';

/** A topic, so that the paper of the last visit is asked as people are. */
const LAST_VISIT = 'read sheet';

type Why = Extract<DecisionAct, { kind: 'claim' }>['why'];

/** A visit on its way, run again. */
interface Visit {
  readonly run: Run;
  readonly plan: Plan;
  readonly plant: PlantFollowed;
  readonly decisions: Decision[];
  readonly asked: AskedBefore[];
  /** The question of each pin, in the order in which they were pinned. */
  readonly pins: Why[number][];
  left: LeftWrong;
  workedS: number;
}

/**
 * What a learner did that bears on finding out, from the two logs of a visit: the log is run again,
 * once, and every reading is made as those of the atlas are.
 *
 * Times are of the doing. A tool, leads on wires and eyes go on telling: what they show first is told
 * with the check itself, once they have settled or the step has ended; what they show afterwards, of
 * each step that passes, is told with the watched start in which it passes. A watched start is told
 * when it has come to its end, or when hands are put to the plant or a conclusion is drawn. A tool hangs
 * until it is connected there anew, eyes stay on one thing until they go to another: the log does not
 * know when they were taken off. What came before the arrival is nobody's; nobody who arrived, nothing.
 *
 * @param log everything done, with or without what the setup itself brings
 * @param untilS how far to look, s
 * @param plan of the same plant
 */
export function decisionsOf(
  setup: RunSetup,
  log: readonly TimedAction[],
  desk: readonly DeskEntry[],
  untilS: number,
  plan: Plan,
): readonly Decision[] {
  const fromS = arrivedS(desk);
  if (fromS > untilS || !desk.some(({ type }) => type === 'arrive' || type === 'begin')) return [];
  const brought = new Set(setup.actions.map((action) => JSON.stringify(action)));
  const actions = wholeLog(setup.actions, log).filter(({ t }) => t <= untilS);
  const isMine = (action: TimedAction) => action.t >= fromS && !brought.has(JSON.stringify(action));
  const run = createRun({ ...setup, actions }, { keep: 'hash only' });
  const decisions: Decision[] = [];
  const plant = followPlant(run, plan, () => takeWatched(visit, run.timeS()));
  const visit: Visit = {
    run,
    plan,
    plant,
    decisions,
    asked: [],
    pins: [],
    left: { parts: new Set(), cocks: new Set() },
    workedS: 0,
  };

  for (const action of actions.filter(({ t }) => t < fromS)) {
    plant.goTo(action.t);
    if (action.type !== 'check') plant.disturb();
  }
  plant.goTo(fromS);
  decisions.push({ t: fromS, kind: 'arrive', seen: plant.arrive() });
  visit.left = leftWrong(
    run,
    actions.filter(({ t }) => t < fromS),
  );

  let touchedS = Number.NEGATIVE_INFINITY;
  const theirs = actions.filter(({ t }) => t >= fromS);
  for (const one of happeningsOf(
    theirs,
    desk.filter(({ t }) => t >= fromS && t <= untilS),
  )) {
    plant.goTo(one.t);
    if (one.at === 'desk') {
      takeEntry(visit, one.entry);
      continue;
    }
    // The plant must have gone on for a step to answer to what was done in the same instant.
    if (touchedS === one.t) {
      run.advanceTo(one.t + STEP_S);
      plant.refresh();
    }
    if (one.action.type === 'check') {
      if (isMine(one.action)) takeCheck(visit, one.action);
      continue;
    }
    if (isMine(one.action)) takeAct(visit, one.action);
    plant.disturb();
    touchedS = one.t;
  }
  plant.goTo(untilS);
  // What was done in the last instant is done.
  run.advanceTo(untilS + STEP_S);
  plant.refresh();
  plant.readNow();
  takeWatched(visit, untilS, true);
  return decisions;
}

function takeCheck({ run, plan, plant, decisions, asked, workedS }: Visit, action: CheckAction) {
  const check = checkAsked(action, plan.wires);
  const hanging = hangingOf(action, run, plant.tail, plan.wires);
  asked.push({ action, check });
  if (hanging !== null) {
    decisions.push({ t: action.t, kind: 'check', check, seen: plant.hang(hanging) });
    return;
  }
  if (lookedAt({ action }) !== null) plant.takeEyesOff();
  const readings = readOnce(action, run, workedS);
  const moment = momentAsked(check, plant.moment());
  const isOver = moment === LOCKED_OUT && plant.isOfBefore();
  const seen = readings.length === 0 || isOver ? [] : [{ moment, readings }];
  decisions.push({ t: action.t, kind: 'check', check, seen });
}

function takeAct(visit: Visit, action: TimedAction): void {
  const { run, plant, decisions } = visit;
  const { t } = action;
  const righted = putRight(action, visit.left, run);
  const works = action.type === 'repair' || action.type === 'adjust' || righted !== null;
  if (works) plant.work();
  else plant.readNow();
  takeWatched(visit, t, works);
  if (action.type === 'repair') {
    visit.workedS = t;
    decisions.push({ t, kind: 'work', part: action.part, way: action.way });
  }
  if (action.type === 'adjust') takeAdjust(visit, t, action.part);
  if (righted === null) return;
  visit.left = withoutRighted(visit.left, action, righted);
  takeAdjust(visit, t, righted);
}

/** A dial that is turned on and on is turned once. */
function takeAdjust(visit: Visit, t: number, part: string): void {
  visit.workedS = t;
  const last = visit.decisions.at(-1);
  if (last?.kind === 'work' && last.part === part && last.way === 'adjust') return;
  visit.decisions.push({ t, kind: 'work', part, way: 'adjust' });
}

function takeEntry(visit: Visit, entry: DeskEntry): void {
  const { plan, plant, decisions, asked, pins } = visit;
  const { t } = entry;
  switch (entry.type) {
    case 'ask':
      decisions.push({ t, kind: 'ask', topic: entry.topic });
      return;
    case 'read sheet':
      decisions.push({ t, kind: 'ask', topic: LAST_VISIT });
      return;
    case 'pin':
      pins.push(questionOfPin(entry, asked, plant.moment(), plan.wires));
      return;
    case 'suspect':
      conclude(visit, t);
      decisions.push({ t, kind: 'suspect', ranked: [...entry.ranked] });
      return;
    case 'claim': {
      conclude(visit, t);
      const why = entry.why.flatMap((place): Why => {
        const pin = pins[place];
        return pin === undefined ? [] : [pin];
      });
      decisions.push({ t, kind: 'claim', part: entry.part, why });
      return;
    }
    case 'withdraw':
      conclude(visit, t);
      decisions.push({ t, kind: 'withdraw' });
      return;
    default:
  }
}

/** What has been seen by now is what a conclusion rests on. */
function conclude(visit: Visit, t: number): void {
  visit.plant.conclude();
  takeWatched(visit, t, true);
}

function takeWatched({ plant, decisions }: Visit, t: number, forGood = false): void {
  const seen = plant.takeWatched(forGood);
  if (seen.length > 0) decisions.push({ t, kind: 'watch', seen });
}
