import type { DeskEntry, DeskEvent, ToolId } from '../../machines/index.ts';
import { checkOf } from '../../src/bench/index.ts';
import {
  AT_REST,
  ISOLATED,
  LOCKED_OUT,
  type Plan,
  partsOfCheck,
  STANDING,
} from '../../src/diagnosis/index.ts';
import type { Action, RunSetup, TimedAction } from '../../src/engine/index.ts';
import { arrive, firstRemedy, mendAll, startAfter } from './mend.ts';

/** What it is to find out, one after the other; the ideal path of a case has this form. */
export interface Asked {
  readonly check: string;
  readonly moment: string;
}
/** A visit as a session keeps it. */
export interface Visit {
  readonly setup: RunSetup;
  readonly log: readonly TimedAction[];
  readonly desk: readonly DeskEntry[];
  readonly untilS: number;
}
export interface Robot {
  readonly hands: ReturnType<typeof arrive>;
  write(event: DeskEvent): void;
  /** Finds out one thing as one does it: goes to the situation, and connects or looks there. */
  find(asked: Asked): void;
  /** Connects, looks or listens now, whatever the plant does. */
  check(check: string): void;
  /** Puts what a check shows on paper. */
  pin(check: string): void;
  /** Resets what has locked out, calls for heat, and waits until the start has come to its end. */
  start(): void;
  /** The button alone, with no call for heat behind it. */
  rest(): void;
  /** Supply off and locked, and back. */
  isolate(inside: () => void): void;
  wait(seconds: number): void;
  visit(): Visit;
}

const SETTLES_S = 12;
/** A start that has come no further by then is left, beyond the time of a whole start. */
const END_SEEN_S = 25;
const IN_SERVICE_S = 65;

/** Somebody who stands at a plant and does what is asked, in safety, with every tool. */
export function robotAt(
  setup: RunSetup & { readonly arriveAt: number },
  plan: Plan,
  tools: readonly ToolId[] = [],
): Robot {
  const hands = arrive(setup, setup.arriveAt);
  const { run, act } = hands;
  const desk: DeskEntry[] = [];
  const write = (event: DeskEvent) => {
    desk.push({ t: run.timeS(), ...event });
  };
  const wait = (seconds: number) => run.advanceTo(run.timeS() + seconds);
  write({ type: 'arrive', tools });
  write({ type: 'begin' });

  function rest(): void {
    act({ type: 'call-for-heat', on: false });
    reset();
    wait(SETTLES_S);
  }
  function reset(): void {
    act({ type: 'reset-limits', pressed: true });
    act({ type: 'reset-limits', pressed: false });
    if (run.status().lockout === null) return;
    act({ type: 'reset', pressed: true });
    act({ type: 'reset', pressed: false });
  }
  function isolate(inside: () => void): void {
    // Else it starts by itself when the supply comes back.
    act({ type: 'call-for-heat', on: false });
    act({ type: 'supply', on: false });
    act({ type: 'lock', point: 'isolator', on: true });
    inside();
    act({ type: 'lock', point: 'isolator', on: false });
    act({ type: 'supply', on: true });
  }
  /** On until a start has come to its end, or to a step. */
  function goOn(until: string | null): void {
    const endS = run.timeS() + plan.untilS;
    while (run.timeS() < endS) {
      const { step, sinceS, lockout } = run.status();
      if (step === until) return;
      const heldS = run.timeS() - sinceS;
      if (lockout !== null && heldS >= END_SEEN_S) return;
      if (step === 'modulation' && heldS >= IN_SERVICE_S) return;
      wait(1);
    }
  }
  /** From a plant at rest, so that the start is one from its beginning. */
  function start(atStep: string | null = null, inside: () => void = () => {}): void {
    rest();
    act({ type: 'call-for-heat', on: true });
    goOn(atStep);
    if (run.status().step === atStep) inside();
    goOn(null);
  }
  const check = (name: string) => act(actionOf(name, plan));

  return {
    hands,
    write,
    check,
    wait,
    rest,
    isolate,
    start: () => start(),
    pin(name) {
      const { what, place, other } = actionOf(name, plan);
      const [tool = ''] = what.split(':');
      write({ type: 'pin', what: tool, place, other, reading: '–', step: run.status().step });
    },
    find(asked) {
      const pinIt = () => this.pin(asked.check);
      const checkHere = () => {
        check(asked.check);
        wait(SETTLES_S);
        pinIt();
      };
      if (asked.moment === ISOLATED) return isolate(checkHere);
      if (asked.check.startsWith('watch one start')) return start();
      if (asked.moment === STANDING) return checkHere();
      if (asked.moment === LOCKED_OUT) {
        if (run.status().lockout === null) start();
        return checkHere();
      }
      if (asked.moment === AT_REST) {
        rest();
        return checkHere();
      }
      const isOnce = asked.check.startsWith('listen') || asked.check.startsWith('smell');
      if (!isOnce) check(asked.check);
      start(asked.moment, () => {
        if (isOnce) check(asked.check);
        pinIt();
      });
    },
    visit: () => ({ setup, log: [...run.log()], desk: [...desk], untilS: run.timeS() }),
  };
}

/**
 * A whole job: what is to be found out, the claims that rest on all of it, the repair, the proof and
 * the handover.
 *
 * @param parts what is claimed; left out: the first part at which each fault is ended
 */
export function workJob(
  setup: RunSetup & { readonly arriveAt: number },
  plan: Plan,
  path: readonly Asked[],
  parts: readonly string[] = setup.faults.map(({ fault }) => firstRemedy(fault, setup).part),
): Visit {
  const robot = robotAt(setup, plan);
  const { hands, write } = robot;
  for (const asked of path) robot.find(asked);
  const pins = robot.visit().desk.filter(({ type }) => type === 'pin');
  const claimed = parts.length === 0 ? ['nothing'] : parts;
  for (const part of claimed) write({ type: 'claim', part, why: [...pins.keys()], mechanism: '' });
  hands.act({ type: 'call-for-heat', on: false });
  mendAll(hands, setup.faults);
  write({ type: 'prove' });
  startAfter(hands);
  write({ type: 'hand over', cause: claimed.join(', '), evidence: '', done: '', watch: '' });
  write({ type: 'close' });
  return robot.visit();
}

/** The act of the log that asks what a check of an atlas asks. */
function actionOf(check: string, { uses, wires }: Plan): Extract<Action, { type: 'check' }> {
  const { what, place, other } = partsOfCheck(check);
  const asAction = (name: string, at = place, to = other) =>
    ({ type: 'check', what: name, place: at, other: to }) as const;
  if (what === 'volts') {
    return asAction('multimeter: volts', place, wires.neutralOf.get(place) ?? 'earth');
  }
  if (what === 'continuity') return asAction('multimeter: continuity');
  const use = uses.find((one) => one.tool === what && one.place === place);
  return use === undefined ? asAction(what) : checkOf(use);
}
