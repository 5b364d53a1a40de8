import { INSIDE_PARTS } from '../../../../bench/index.ts';
import type { RepairWay } from '../../../../engine/index.ts';
import { cockShut, isolatorOff, lockOff, lockShut, repair, seeValvesShut, stop } from '../acts.ts';
import type { PlantFacts } from '../plant-facts.ts';
import { oneOf, type SceneMaker } from '../scene.ts';
import { atRest } from '../situations.ts';
import { jobOn } from './task.ts';

/** What the only cock of the train does not isolate. */
const AT_THE_COCK = 'manual gas cock';
/** Nothing comes apart where a joint is only drawn tighter. */
const OPENING: readonly RepairWay[] = ['replace', 'clean', 'refit', 'free', 'realign'];

/** SC-5, SC-6, SC-16: the gas train opened behind a cock that is shut and locked, or not. */
export const gasTrain: SceneMaker = (facts, chance) => {
  const task = oneOf(openingsOf(facts), chance);
  if (task === undefined) return null;
  const situation = atRest(facts, chance);
  const { part, way } = task;
  const work = repair(part, way);
  // Hands are in the burner for these: the isolator belongs to it.
  const inside = INSIDE_PARTS.has(part);
  return {
    ...situation,
    tells: [situation.tells, jobOn(part, way)],
    before: [],
    safe: inside ? [lockOff, lockShut, work] : [lockShut, work],
    unsafe: inside
      ? [
          { rule: 'SC-5', steps: [lockOff, seeValvesShut, work] },
          { rule: 'SC-6', steps: [lockOff, cockShut, work] },
          { rule: 'SC-16', steps: [stop, lockShut, work] },
        ]
      : [
          { rule: 'SC-5', steps: [lockOff, work] },
          { rule: 'SC-5', steps: [seeValvesShut, work] },
          { rule: 'SC-5', steps: [isolatorOff, seeValvesShut, work] },
          { rule: 'SC-6', steps: [cockShut, work] },
          { rule: 'SC-6', steps: [lockOff, cockShut, work] },
        ],
    skills: ['fuel'],
    difficulty: inside ? 0.2 : -0.5,
  };
};

export function openingsOf({ parts }: PlantFacts) {
  return parts.flatMap(({ part, opens, minutes }) =>
    opens === 'gas' && part !== AT_THE_COCK
      ? OPENING.filter((way) => minutes[way] !== undefined).map((way) => ({ part, way }))
      : [],
  );
}
