/** Runs behind a sum: one more plant of the kind, with what the seed puts wrong. */
import {
  createRun,
  type FaultOrder,
  faultsFor,
  type Run,
  type TimedAction,
} from '../../../engine/index.ts';
import { nextUniform, type RandomState } from '../../../numeric/index.ts';
import type { ItemRun } from '../../item/item.ts';
import type { QuizPlant } from '../../item/maker.ts';
import { setupOfRun } from '../../item/setup-of-run.ts';

export interface Planned {
  readonly faults: readonly FaultOrder[];
  readonly actions: readonly TimedAction[];
}

export function between(chance: RandomState, low: number, high: number): number {
  return low + (high - low) * nextUniform(chance);
}

/** @param of not empty */
export function pick<T>(chance: RandomState, of: readonly T[]): T {
  return of[Math.floor(nextUniform(chance) * of.length)] as T;
}

export function standing(fault: string, severity: number): FaultOrder {
  return { fault, severity, onset: { kind: 'start' } };
}

/** Of these, the faults that this plant can have. */
export function faultsThere(plant: QuizPlant, ids: readonly string[]): readonly string[] {
  const own = new Set(faultsFor(plant.plan.setup.plant).map(({ id }) => id));
  return ids.filter((id) => own.has(id));
}

export function startRun(plant: QuizPlant, tolerances: number, planned: Planned): Run {
  return createRun(setupOfRun(plant.plan, { plant: plant.id, tolerances, ...planned }));
}

export function itemRun(plant: QuizPlant, tolerances: number, planned: Planned, run: Run): ItemRun {
  return { plant: plant.id, tolerances, ...planned, untilS: run.timeS() };
}

/** What a channel had at a time that has passed; undefined where the plant has no such channel. */
export function recorded(run: Run, channel: string, atS: number): number | undefined {
  const place = run.channels.findIndex(({ id }) => id === channel);
  return run.frame(Math.round(atS / run.frameS))[place];
}
