/** What a seed has wrong with a plant, from the beginning or from some moment of its start on. */
import { type FaultOrder, faultsFor } from '../../../engine/index.ts';
import { nextUniform, type RandomState } from '../../../numeric/index.ts';
import type { ItemRun } from '../../item/item.ts';
import type { QuizPlant } from '../../item/maker.ts';
import { pickTolerances } from '../../item/other-plant.ts';
import { stoppingFaults } from '../next-check/stopping-faults.ts';

/** Shares of the seeds with nothing wrong, and with a fault that comes later. */
const SOUND = 0.08;
const LATER = 0.27;
const CALL_S = 60;
const INTO_SERVICE_S = 25;
/** Plants alike may have so much more or less of it, as a share of its range. */
const MORE_OR_LESS = 0.25;

export function pickRun(plant: QuizPlant, chance: RandomState): Omit<ItemRun, 'untilS'> {
  const { id, plan } = plant;
  const kind = nextUniform(chance);
  const tolerances = pickTolerances(chance);
  const fault = pickFault(plant, chance);
  const severity = within(fault.severity, nextUniform(chance));
  const lastS = plan.serviceS + INTO_SERVICE_S;
  const atS = Math.round(CALL_S + (lastS - CALL_S) * nextUniform(chance));
  const onset =
    kind < SOUND + LATER ? ({ kind: 'time', atS } as const) : ({ kind: 'start' } as const);
  const faults = kind < SOUND ? [] : [{ fault: fault.id, severity, onset }];
  return { plant: id, tolerances, faults, actions: [] };
}

/** @param at 0 to 1 */
export function anotherSeverity({ plan }: QuizPlant, order: FaultOrder, at: number): number {
  const severity = faultsFor(plan.setup.plant).find(({ id }) => id === order.fault)?.severity;
  if (severity === undefined) return order.severity;
  const { low, high } = severity;
  const more = (2 * at - 1) * MORE_OR_LESS * (high - low);
  return Math.max(low, Math.min(high, order.severity + more));
}

function within({ low, high }: { readonly low: number; readonly high: number }, at: number) {
  return low + (high - low) * at;
}

/** One that ends a start, by the root of how often it happens, so that what is rare comes too. */
function pickFault(plant: QuizPlant, chance: RandomState) {
  const stopping = stoppingFaults(plant);
  const faults = faultsFor(plant.plan.setup.plant).filter(({ id }) => stopping.includes(id));
  const weights = faults.map(({ priorWeight }) => Math.sqrt(priorWeight));
  let left = nextUniform(chance) * weights.reduce((a, b) => a + b, 0);
  const place = weights.findIndex((weight) => {
    left -= weight;
    return left < 0;
  });
  return faults[Math.max(0, place)] as (typeof faults)[number];
}
