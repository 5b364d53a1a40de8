import { type PlantPart, partsOf } from '../../faults/index.ts';
import type { Case } from './case.ts';

/** Minutes of a dial that is turned, and of work of which nothing is known. */
const ADJUST_MINUTES = 5;
/** A unit of parts is about an hour's wage. */
const MINUTES_A_UNIT = 60;

export interface CostOfWork {
  readonly minutes: number;
  /** With the new part, if it takes one, in minutes of wage. */
  readonly cost: number;
}

export function costOfWork({ plant }: Pick<Case, 'plant'>, part: string, way: string): CostOfWork {
  if (way === 'adjust') return { minutes: ADJUST_MINUTES, cost: ADJUST_MINUTES };
  const row = partsAt(plant).find((one) => one.part === part);
  const known: Readonly<Record<string, number>> = row?.minutes ?? {};
  const minutes = known[way] ?? ADJUST_MINUTES;
  const units = way === 'replace' ? (row?.cost ?? 0) : 0;
  return { minutes, cost: minutes + MINUTES_A_UNIT * units };
}

const kept = new WeakMap<Case['plant'], readonly PlantPart[]>();

function partsAt(plant: Case['plant']): readonly PlantPart[] {
  const parts = kept.get(plant) ?? partsOf(plant);
  kept.set(plant, parts);
  return parts;
}
