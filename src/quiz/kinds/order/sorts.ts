/** Which things an item asks for: wide apart, close together, of a stop, round a lockout. */
import { nextUniform, type RandomState, shuffled } from '../../../numeric/index.ts';
import { THINGS, type Timetable } from './things.ts';

export const SORTS = ['whole start', 'stretch', 'stop', 'lockout'] as const;
export type SortOfOrder = (typeof SORTS)[number];

const FEWEST = 4;
const MOST = 5;
/** Things in a row that a stretch is picked from. */
const STRETCH = 8;
const BEFORE_LOCKOUT = 5;
/** Low fire comes on the way up and on the way down, so it has no place in the order of a stop. */
const FIRST_OF_STOP = 'released';
/** Nearer than this two things count as of one moment, s. */
const ONE_MOMENT_S = 1;

/** Four or five things in the order in which they came; null where there are not so many. */
export function windowOf(
  times: Timetable,
  sort: SortOfOrder,
  chance: RandomState,
): readonly string[] | null {
  const all = THINGS.map(({ id }) => id)
    .filter((id) => times.has(id))
    .sort((a, b) => timeOf(times, a) - timeOf(times, b));
  const count = nextUniform(chance) < 0.5 ? FEWEST : MOST;
  const pool = poolOf(all, sort, chance);
  const wanted = sort === 'whole start' ? spread(pool, count, chance) : shuffled(pool, chance);
  const first = sort === 'lockout' ? ['locks-out'] : [];
  const chosen: string[] = [];
  for (const id of [...first, ...wanted]) {
    if (chosen.length < count && chosen.every((other) => goTogether(times, id, other))) {
      chosen.push(id);
    }
  }
  if (chosen.length < FEWEST) return null;
  return chosen.sort((a, b) => timeOf(times, a) - timeOf(times, b));
}

function poolOf(all: readonly string[], sort: SortOfOrder, chance: RandomState): readonly string[] {
  const heatEnds = all.indexOf('heat-ends');
  const start = heatEnds < 0 ? all : all.slice(0, heatEnds);
  switch (sort) {
    case 'whole start':
      return start;
    case 'stop':
      return all.slice(Math.max(0, all.indexOf(FIRST_OF_STOP)));
    case 'lockout':
      return all.slice(Math.max(0, all.indexOf('locks-out') - BEFORE_LOCKOUT));
    case 'stretch': {
      const places = Math.max(1, start.length - STRETCH + 1);
      const from = Math.floor(nextUniform(chance) * places);
      return start.slice(from, from + STRETCH);
    }
  }
}

/** One out of each of so many even parts. */
function spread(from: readonly string[], count: number, chance: RandomState): readonly string[] {
  return Array.from({ length: Math.min(count, from.length) }, (_, i) => {
    const at = ((i + nextUniform(chance)) * from.length) / count;
    return from[Math.floor(at)] as string;
  });
}

/** Of different moments, and neither goes on beside the other. */
function goTogether(times: Timetable, one: string, other: string): boolean {
  const beside = besideOf(one);
  if (one === other || (beside !== undefined && beside === besideOf(other))) return false;
  return Math.abs(timeOf(times, one) - timeOf(times, other)) >= ONE_MOMENT_S;
}

function besideOf(id: string): string | undefined {
  return THINGS.find((one) => one.id === id)?.beside;
}

function timeOf(times: Timetable, id: string): number {
  return times.get(id) ?? Number.POSITIVE_INFINITY;
}
