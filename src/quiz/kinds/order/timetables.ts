/** In which order things come at a plant, and in others of its kind. */
import { createRun, type TimedAction } from '../../../engine/index.ts';
import type { ItemRun } from '../../item/item.ts';
import type { QuizPlant } from '../../item/maker.ts';
import { setupOfRun } from '../../item/setup-of-run.ts';
import { type Timetable, timetableOf } from './things.ts';

/** One run of a plant: a start and a stop, or a start that ends in lockout and is reset. */
export interface Course {
  readonly run: ItemRun;
  readonly times: Timetable;
  readonly lockout: string | null;
}

/** Others that must agree, and the tolerances that they have. */
const OTHERS = 10;
const FIRST_OTHER = 2_000_000;
/** In service for so long before the call ends, and watched for so long after it, s. */
const SERVES_S = 60;
const STOPS_S = 75;
/** A plant within tolerances may come into service a little later, s. */
const STARTED_S = 12;
const MENDED_AFTER_S = 20;
const RESET_AFTER_S = 5;
const PRESSED_S = 1;
const WATCHED_S = 12;
/** Two things are in one order for everybody from here on, s. */
const LEAST_APART_S = 1;

const known = new WeakMap<QuizPlant, Map<string, readonly Course[]>>();

/** @param fault of severity one, null for a sound start that is stopped again, if `stops` */
export function courseOf(
  plant: QuizPlant,
  tolerances: number,
  fault: string | null,
  stops: boolean,
): Course {
  return fault === null ? sound(plant, tolerances, stops) : lockedOut(plant, tolerances, fault);
}

/** Whether these come in this order, and apart, in each of the others too. */
export function comesEverywhere(
  plant: QuizPlant,
  fault: string | null,
  things: readonly string[],
): boolean {
  return othersOf(plant, fault).every(({ times }) => isInOrder(times, things));
}

export function isInOrder(times: Timetable, things: readonly string[]): boolean {
  let before = Number.NEGATIVE_INFINITY;
  for (const thing of things) {
    const t = times.get(thing);
    if (t === undefined || t - before < LEAST_APART_S) return false;
    before = t;
  }
  return true;
}

function othersOf(plant: QuizPlant, fault: string | null): readonly Course[] {
  const of = known.get(plant) ?? new Map<string, readonly Course[]>();
  known.set(plant, of);
  const name = fault ?? '';
  const made =
    of.get(name) ??
    Array.from({ length: OTHERS }, (_, i) => courseOf(plant, FIRST_OTHER + i, fault, true));
  of.set(name, made);
  return made;
}

function sound(plant: QuizPlant, tolerances: number, stops: boolean): Course {
  const { serviceS } = plant.plan;
  const endS = serviceS + SERVES_S;
  const actions: readonly TimedAction[] = stops
    ? [{ t: endS, type: 'call-for-heat', on: false }]
    : [];
  const untilS = stops ? endS + STOPS_S : serviceS + STARTED_S;
  const planned = { plant: plant.id, tolerances, faults: [], actions };
  const run = createRun(setupOfRun(plant.plan, planned), { keep: 'hash only' });
  run.advanceTo(untilS);
  return {
    run: { ...planned, untilS },
    times: timetableOf(run.events()),
    lockout: run.status().lockout,
  };
}

function lockedOut(plant: QuizPlant, tolerances: number, fault: string): Course {
  const faults = [{ fault, severity: 1, onset: { kind: 'start' } as const }];
  const planned = { plant: plant.id, tolerances, faults, actions: [] };
  const run = createRun(setupOfRun(plant.plan, planned), { keep: 'hash only' });
  while (run.status().lockout === null && run.timeS() < plant.plan.untilS) {
    run.advanceTo(run.timeS() + 1);
  }
  const lockout = run.status().lockout;
  run.advanceTo(run.timeS() + MENDED_AFTER_S);
  const mended = run.act({ type: 'clear-fault', fault });
  run.advanceTo(run.timeS() + RESET_AFTER_S);
  const pressed = run.act({ type: 'reset', pressed: true });
  run.advanceTo(run.timeS() + PRESSED_S);
  const released = run.act({ type: 'reset', pressed: false });
  run.advanceTo(run.timeS() + WATCHED_S);
  return {
    run: { ...planned, actions: [mended, pressed, released], untilS: run.timeS() },
    times: timetableOf(run.events()),
    lockout,
  };
}
