import type { Skill } from '../../../machines/job/index.ts';
import { SKILL_ORDER } from '../../diagnosis/mastery/index.ts';
import type { Candidate } from './candidates.ts';
import { type Choice, chooseBest, isFull } from './choice.ts';

/** Of thirty questions. The sequence, fuel and air are what every start goes through. */
const SHARES: Readonly<Record<Skill, number>> = {
  sequence: 4,
  fuel: 4,
  air: 4,
  ignition: 3,
  sensing: 3,
  limits: 3,
  wiring: 3,
  combustion: 3,
  conduct: 3,
};
/** What a level off the wanted difficulty counts. */
const MISFIT_OF_LEVEL = 0.4;

/**
 * All skills by fixed shares, easy to hard within each: the same measure for everyone, whatever the
 * ratings say. Where a skill has too few items the rest is filled with others.
 */
export function chooseForExam(choice: Choice, candidates: readonly Candidate[]): void {
  const places = sharesOf(choice.most);
  const wanted = SKILL_ORDER.flatMap((skill) => {
    const own = candidates.filter(({ card }) => card.skills.includes(skill));
    return targetsOf(own, places[skill]).map((target, turn) => ({ own, target, turn }));
  });
  // A question of each skill by turns, so that no skill uses up the topics of another.
  for (const { own, target } of wanted.sort((a, b) => a.turn - b.turn)) {
    chooseBest(choice, own, ({ card }) => MISFIT_OF_LEVEL * Math.abs(card.difficulty - target));
  }
  while (!isFull(choice) && chooseBest(choice, candidates, () => 0)) {
    // Each turn has added one.
  }
}

/** Whole numbers that add up to `most`: rounded down, then one more to the largest remainders. */
function sharesOf(most: number): Readonly<Record<Skill, number>> {
  const whole = SKILL_ORDER.reduce((sum, skill) => sum + SHARES[skill], 0);
  const exact = SKILL_ORDER.map((skill) => ({ skill, share: (SHARES[skill] * most) / whole }));
  const counts = Object.fromEntries(
    exact.map(({ skill, share }) => [skill, Math.floor(share)]),
  ) as Record<Skill, number>;
  const left = most - exact.reduce((sum, { share }) => sum + Math.floor(share), 0);
  const byRemainder = exact.sort(
    (a, b) => b.share - Math.floor(b.share) - (a.share - Math.floor(a.share)),
  );
  for (const { skill } of byRemainder.slice(0, left)) counts[skill] += 1;
  return counts;
}

/** Difficulties in the middle of as many equal parts of what there is. */
function targetsOf(candidates: readonly Candidate[], parts: number): number[] {
  const difficulties = candidates.map(({ card }) => card.difficulty).sort((a, b) => a - b);
  if (difficulties.length === 0) return [];
  return Array.from(
    { length: parts },
    (_, i) => difficulties[Math.floor(((i + 0.5) / parts) * difficulties.length)] as number,
  );
}
