/**
 * What the machine does, found out once and then remembered.
 *
 * The statechart stays the one truth: it is asked whenever something new comes up. Its answer to
 * an event rests on the state that it is in, on some bits of the word of inputs and on some
 * timings, all of which are watched while it is asked. Where those are the same again the answer
 * is too, so that a second start costs next to nothing, and neither does a word in which no bit
 * changed that the present state could heed. An answer for which the clock was read is not kept.
 */
import type { EventObject } from 'xstate';
import type { BurnerContext, SavedLockout } from './context.ts';
import {
  type BurnerSnapshot,
  createEvaluator,
  type Evaluator,
  type Outcome,
  type Surroundings,
  type TakenRule,
  type TimerAct,
} from './evaluate.ts';
import { outputsOf, type PhaseOutputs } from './outputs.ts';
import { STEPS, type Variant } from './terminals.ts';
import type { TimingName, Timings } from './timings.ts';

/** The machine at rest between two events; its word of inputs is not a part of this. */
export interface Station {
  readonly snapshot: BurnerSnapshot;
  readonly context: BurnerContext;
  readonly outputs: PhaseOutputs;
  /** Place in STEPS. */
  readonly step: number;
  readonly onInputs: Answer[];
  readonly onTimer: Map<string, Answer[]>;
}

/** Where an event leads on every word that has `bits` under `mask`. */
export interface Answer {
  readonly to: Station;
  readonly rules: readonly TakenRule[];
  readonly timers: readonly TimerAct[];
  readonly mask: number;
  readonly bits: number;
  readonly timingNames: readonly TimingName[];
  readonly timingValues: readonly Timings[TimingName][];
}

/** All that was found out about the machine on one variant of the plant. */
export interface Decisions {
  readonly evaluator: Evaluator;
  /** By what they hold, so that a way that leads back leads to the same one. */
  readonly stations: Map<string, Station>;
  readonly onPower: Map<string, Answer[]>;
}

/** Bounds on what is kept; past one, that part is forgotten and found out anew. */
const MOST_VARIANTS = 12;
const MOST_STATIONS = 1000;
const MOST_ANSWERS = 24;

const known = new Map<string, Decisions>();

export function decisionsFor(variant: Variant): Decisions {
  const key = JSON.stringify(Object.entries(variant).sort());
  let decisions = known.get(key);
  if (decisions === undefined) {
    if (known.size >= MOST_VARIANTS) known.clear();
    decisions = {
      evaluator: createEvaluator({ ...variant }),
      stations: new Map(),
      onPower: new Map(),
    };
    known.set(key, decisions);
  }
  return decisions;
}

export function powerUp(
  decisions: Decisions,
  saved: SavedLockout | undefined,
  around: Surroundings,
): Answer {
  const answers = listAt(decisions.onPower, JSON.stringify(saved ?? null));
  return (
    findAnswer(answers, around) ??
    keepAnswer(decisions, answers, decisions.evaluator.powerUp(saved, around), around)
  );
}

export function takeInputs(decisions: Decisions, at: Station, around: Surroundings): Answer {
  return (
    findAnswer(at.onInputs, around) ??
    keepAnswer(decisions, at.onInputs, decisions.evaluator.inputs(at.snapshot, around), around)
  );
}

export function takeTimer(
  decisions: Decisions,
  at: Station,
  event: EventObject,
  around: Surroundings,
): Answer {
  const answers = listAt(at.onTimer, event.type);
  return (
    findAnswer(answers, around) ??
    keepAnswer(decisions, answers, decisions.evaluator.timer(at.snapshot, event, around), around)
  );
}

function findAnswer(answers: readonly Answer[], { word, timings }: Surroundings): Answer | null {
  for (const answer of answers) {
    if ((word & answer.mask) === answer.bits && holdsFor(answer, timings)) return answer;
  }
  return null;
}

function holdsFor({ timingNames, timingValues }: Answer, timings: Timings): boolean {
  for (let i = 0; i < timingNames.length; i++) {
    if (timings[timingNames[i] as TimingName] !== timingValues[i]) return false;
  }
  return true;
}

function keepAnswer(
  decisions: Decisions,
  answers: Answer[],
  outcome: Outcome,
  { word, timings }: Surroundings,
): Answer {
  const { snapshot, rules, timers, bitsRead, timeRead } = outcome;
  const timingNames = [...outcome.timingsRead];
  const answer: Answer = {
    to: stationOf(decisions, snapshot),
    rules,
    timers,
    mask: bitsRead,
    bits: word & bitsRead,
    timingNames,
    timingValues: timingNames.map((name) => timings[name]),
  };
  if (timeRead) return answer;
  if (answers.length >= MOST_ANSWERS) answers.length = 0;
  answers.push(answer);
  return answer;
}

function stationOf(decisions: Decisions, snapshot: BurnerSnapshot): Station {
  const { stations } = decisions;
  const key = keyOf(snapshot);
  let station = stations.get(key);
  if (station === undefined) {
    if (stations.size >= MOST_STATIONS) {
      stations.clear();
      decisions.onPower.clear();
    }
    const { context } = snapshot;
    station = {
      snapshot,
      context,
      outputs: outputsOf(snapshot),
      step: STEPS.indexOf(context.step),
      onInputs: [],
      onTimer: new Map(),
    };
    stations.set(key, station);
  }
  return station;
}

/** All of a snapshot but the word, which comes anew with every event, and what comes from outside. */
function keyOf({ value, context }: BurnerSnapshot): string {
  return JSON.stringify([value, { ...context, word: 0, variant: null, timings: null }]);
}

function listAt(lists: Map<string, Answer[]>, key: string): Answer[] {
  let list = lists.get(key);
  if (list === undefined) {
    list = [];
    lists.set(key, list);
  }
  return list;
}
