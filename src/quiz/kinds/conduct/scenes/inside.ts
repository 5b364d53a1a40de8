import { INSIDE_PARTS, LOOKS_INSIDE } from '../../../../bench/index.ts';
import { faultsFor, type RepairWay } from '../../../../engine/index.ts';
import type { RandomState } from '../../../../numeric/index.ts';
import { burnerOff, lockOff, lookAt, repair, stop, wait } from '../acts.ts';
import type { PlantFacts } from '../plant-facts.ts';
import { oneOf, type SceneMaker, type UnsafeCourse } from '../scene.ts';
import { inStep, lockedOutBy, type Situation } from '../situations.ts';
import type { Step } from '../step.ts';

const WAYS: readonly RepairWay[] = ['replace', 'clean', 'refit', 'free', 'realign', 'tighten'];
/** Not a place of its own to look at. */
const THROUGH_OTHERS: ReadonlySet<string> = new Set(['flue', 'scanner sight line']);
const RUNS_DOWN_S = 240;
const AT_ONCE_S = 3;
const WELL_IN_S = 6;

/** SC-15, SC-16: hands or eyes inside fan or burner, after the shaft has come to rest or before. */
export const inside: SceneMaker = (facts, chance) => {
  const situation = whileTurning(facts, chance);
  const work = oneOf(worksInside(facts), chance);
  if (situation === null || work === undefined) return null;
  const still = wait('until-still', RUNS_DOWN_S);
  const ends = oneOf([burnerOff, stop], chance) ?? stop;
  const unsafe: UnsafeCourse[] = [
    { rule: 'SC-15', steps: [ends, lockOff, work] },
    { rule: 'SC-15', steps: [ends, work] },
    { rule: 'SC-16', steps: [ends, still, work] },
  ];
  return {
    ...situation,
    tells: [situation.tells, { code: 'quiz.conduct.tells.inside' }],
    before: [],
    safe: [ends, lockOff, still, work],
    unsafe,
    skills: ['air'],
    difficulty: -0.3,
  };
};

/** In a lockout the fan coasts for a while; in purge and in service it is driven. */
function whileTurning(facts: PlantFacts, chance: RandomState): Situation | null {
  const where = oneOf(['lockout', 'purge', 'pilot proving', 'modulation'], chance);
  if (where !== 'lockout') return inStep(facts, chance, where ?? 'purge', WELL_IN_S);
  const fault = oneOf(faultsFor(facts.plant.plan.setup.plant), chance);
  return fault === undefined ? null : lockedOutBy(facts, chance, fault.id, AT_ONCE_S);
}

/** Gas and circuits have scenes of their own. */
function worksInside({ parts, looks }: PlantFacts): readonly Step[] {
  return [
    ...parts.flatMap(({ part, electrical, opens, minutes }) =>
      INSIDE_PARTS.has(part) && !electrical && opens === null
        ? WAYS.filter((way) => minutes[way] !== undefined).map((way) => repair(part, way))
        : [],
    ),
    ...looks.filter((what) => LOOKS_INSIDE.has(what) && !THROUGH_OTHERS.has(what)).map(lookAt),
  ];
}
