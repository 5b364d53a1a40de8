import { faultsFor, type RepairWay } from '../../../../engine/index.ts';
import { nextUniform } from '../../../../numeric/index.ts';
import { burnerOff, findDead, isolatorOff, lockOff, repair, stop } from '../acts.ts';
import type { PlantFacts } from '../plant-facts.ts';
import { oneOf, type SceneMaker } from '../scene.ts';
import { atRest, lockedOutBy } from '../situations.ts';
import { jobOn } from './task.ts';

/** The isolator of the panel does not part these from the mains. */
const BEFORE_ISOLATOR: ReadonlySet<string> = new Set(['mains supply', 'mains feed']);
const BY_HAND: readonly RepairWay[] = ['replace', 'clean', 'refit', 'tighten', 'free', 'realign'];
/** Live behind the isolator, whatever the burner does. */
const LIVE = 'L1';
const NEUTRAL = 'N';
const EARTH = 'earth';
/** Fans and shafts have come to rest by then, s. */
const STILL_S = 150;

/** SC-2, SC-3, SC-4: work on a circuit, isolated, locked and proved dead, or not. */
export const electricalWork: SceneMaker = (facts, chance) => {
  const task = oneOf(tasksOf(facts), chance);
  if (task === undefined) return null;
  const { part, way, fault } = task;
  const broken = fault !== null && nextUniform(chance) < 0.5;
  const situation =
    (broken ? lockedOutBy(facts, chance, fault, STILL_S) : null) ?? atRest(facts, chance);
  const deadWire = oneOf(wiresDeadAtRest(facts), chance);
  if (deadWire === undefined) return null;
  const work = repair(part, way);
  const proved = findDead(LIVE, NEUTRAL);
  const offOnly = oneOf([stop, burnerOff], chance) ?? stop;
  return {
    ...situation,
    tells: [situation.tells, jobOn(part, way)],
    before: [],
    safe: [lockOff, proved, work],
    unsafe: [
      { rule: 'SC-2', steps: [offOnly, findDead(deadWire, NEUTRAL), work] },
      { rule: 'SC-3', steps: [isolatorOff, proved, work] },
      { rule: 'SC-4', steps: [lockOff, work, proved] },
      { rule: 'SC-4', steps: [lockOff, findDead(NEUTRAL, EARTH), work] },
      { rule: 'SC-4', steps: [lockOff, findDead(deadWire, NEUTRAL), work] },
    ],
    skills: ['wiring'],
    difficulty: broken ? -0.2 : -0.4,
  };
};

interface Task {
  readonly part: string;
  readonly way: RepairWay;
  /** One that this work ends; null where the work is due anyhow. */
  readonly fault: string | null;
}

function tasksOf({ parts, plant }: PlantFacts): readonly Task[] {
  const faults = faultsFor(plant.plan.setup.plant);
  return parts.flatMap(({ part, electrical, minutes }): Task[] => {
    if (!electrical || BEFORE_ISOLATOR.has(part)) return [];
    return BY_HAND.filter((way) => minutes[way] !== undefined).map((way) => ({
      part,
      way,
      fault:
        faults.find(({ remedies }) => remedies.some((one) => one.part === part && one.way === way))
          ?.id ?? null,
    }));
  });
}

/** The live ends of the coils of valves, which have volts only while their valve is told to open. */
function wiresDeadAtRest({ elements }: PlantFacts): readonly string[] {
  return elements.flatMap(({ kind, name, from, to }) =>
    kind === 'coil' && /^(?:pilot|upstream|downstream)-valve$/.test(name) && to === NEUTRAL
      ? [from]
      : [],
  );
}
