import type { Candidate } from './candidates.ts';

/** What two items in a row that are alike count against the second. */
const ALIKE = { topic: 3, kind: 1, skill: 0.6, plant: 0.4 } as const;
/** By how much what is left of a kind or plant presses: the most frequent must not all come at the end. */
const PRESSING = { kind: 0.3, plant: 0.1, topic: 0.3 } as const;

/** The items of a quiz by turns of kind, skill and plant: mixed practice holds longer than blocks. */
export function arrange(chosen: readonly Candidate[]): readonly Candidate[] {
  const left = [...chosen].sort((a, b) => a.lot - b.lot);
  const arranged: Candidate[] = [];
  while (left.length > 0) {
    const last = arranged[arranged.length - 1];
    let best = 0;
    let least = Number.POSITIVE_INFINITY;
    left.forEach((one, at) => {
      const cost = (last === undefined ? 0 : likeness(last, one)) - pressing(one, left);
      if (cost >= least) return;
      best = at;
      least = cost;
    });
    arranged.push(...left.splice(best, 1));
  }
  return arranged;
}

function likeness({ card: a }: Candidate, { card: b }: Candidate): number {
  return (
    (a.topic === b.topic ? ALIKE.topic : 0) +
    (a.kind === b.kind ? ALIKE.kind : 0) +
    (a.skills.some((skill) => b.skills.includes(skill)) ? ALIKE.skill : 0) +
    (a.plant === b.plant ? ALIKE.plant : 0)
  );
}

function pressing({ card }: Candidate, left: readonly Candidate[]): number {
  let sum = 0;
  for (const { card: other } of left) {
    if (other.kind === card.kind) sum += PRESSING.kind;
    if (other.plant === card.plant) sum += PRESSING.plant;
    if (other.topic === card.topic) sum += PRESSING.topic;
  }
  return sum;
}
