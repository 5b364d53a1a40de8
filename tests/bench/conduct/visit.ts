/** A visit to a plant as its two logs, judged; and every sentence that comes of it said. */
import { expect } from 'vitest';
import type { DeskEntry } from '../../../machines/index.ts';
import {
  type ConductFinding,
  conductOf,
  type JobTrace,
  type Proof,
  type ProofId,
  proofFrom,
  traceJob,
} from '../../../src/bench/index.ts';
import {
  type Action,
  faultsFor,
  type RunSetup,
  type TimedAction,
} from '../../../src/engine/index.ts';
import { bench } from '../../../src/i18n/en/bench.ts';
import { conduct } from '../../../src/i18n/en/conduct.ts';
import { addMessages, sayMessage } from '../../../src/i18n/index.ts';
import { shippedSetup } from '../../support/library.ts';

addMessages(bench);
addMessages(conduct);

export const ARRIVE: DeskEntry = { t: 0, type: 'arrive', tools: [] };
export const CALL = at(1, { type: 'call-for-heat', on: true });

/** The dairy, sound, hot, at rest. */
export const sound: RunSetup = { ...shippedSetup('healthy-start'), actions: [] };

export function withFault(fault: string, severity: number): RunSetup {
  if (!faultsFor(sound.plant).some(({ id }) => id === fault)) throw new Error(`no fault ${fault}`);
  return { ...sound, faults: [{ fault, severity, onset: { kind: 'start' } }] };
}

export function at(t: number, action: Action): TimedAction {
  return { t, ...action };
}
export function check(t: number, what: string, place = '', other = ''): TimedAction {
  return at(t, { type: 'check', what, place, other });
}
export function volts(t: number, place: string, other = 'N'): TimedAction {
  return check(t, 'multimeter: volts', place, other);
}
export function repair(t: number, part: string, way: RepairAction['way']): TimedAction {
  return at(t, { type: 'repair', part, way });
}
type RepairAction = Extract<Action, { type: 'repair' }>;
export function lock(t: number, point: string, on = true): TimedAction {
  return at(t, { type: 'lock', point, on });
}
export function supply(t: number, on: boolean): TimedAction {
  return at(t, { type: 'supply', on });
}
export function cock(t: number, opening: number): TimedAction {
  return at(t, { type: 'turn-cock', cock: 'cock', opening });
}
export function handOver(t: number): DeskEntry {
  return { t, type: 'hand over', cause: 'a', evidence: 'b', done: 'c', watch: 'd' };
}

/** Isolated, locked and proved dead from `t` to two seconds later. */
export function madeDead(t: number): TimedAction[] {
  return [volts(t, 'L1'), supply(t + 1, false), lock(t + 1, 'isolator'), volts(t + 2, 'L1')];
}
/** Shut and locked from `t`. */
export function gasOff(t: number): TimedAction[] {
  return [cock(t, 0), lock(t, 'cock')];
}
export function gasOn(t: number): TimedAction[] {
  return [lock(t, 'cock', false), cock(t, 1)];
}

export interface Visit {
  readonly setup?: RunSetup;
  readonly log: readonly TimedAction[];
  readonly desk?: readonly DeskEntry[];
  readonly untilS?: number;
}

export function traceOf({ setup = sound, log, desk = [ARRIVE], untilS }: Visit): JobTrace {
  return traceJob(setup, log, desk, untilS);
}

export function judge(visit: Visit): readonly ConductFinding[] {
  const found = conductOf(traceOf(visit), visit.desk ?? [ARRIVE]);
  for (const { what, state } of found) {
    for (const said of [what, state]) expect(sayMessage(said)).not.toMatch(/[{}]/);
  }
  return found;
}

export function rulesOf(visit: Visit): string[] {
  return judge(visit).map(({ rule }) => rule);
}

export function proofOf(visit: Visit): Proof {
  const proof = proofFrom(traceOf(visit));
  for (const { why } of proof.items) expect(sayMessage(why)).not.toMatch(/[{}]/);
  return proof;
}

export function itemOf(visit: Visit, id: ProofId) {
  const item = proofOf(visit).items.find((one) => one.id === id);
  if (item === undefined) throw new Error(`no item ${id}`);
  return { met: item.met, why: item.why.code.split('.').at(-1), t: item.t };
}
