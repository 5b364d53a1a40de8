import { faultsFor } from '../../../../engine/index.ts';
import { burnerOff, history, reset, stop, stopOut, wait } from '../acts.ts';
import { oneOf, type SceneMaker } from '../scene.ts';
import { lockedOutBy } from '../situations.ts';
import { skillsOf } from './skills.ts';

const FAMILIES: ReadonlySet<string> = new Set(['ignition', 'burner and combustion', 'air path']);
const AFTER_PURGE = 'drive to light-off';
const AT_ONCE_S = 5;
/** A third of what could burn, so that a little later there is still a quarter. */
const ENOUGH = 0.33;

/** SC-10: attempt after attempt with gas in the furnace that no purge has swept out. */
export const unburntGas: SceneMaker = (facts, chance) => {
  const faults = faultsFor(facts.plant.plan.setup.plant).filter(({ family }) =>
    FAMILIES.has(family),
  );
  const fault = oneOf(faults, chance);
  if (fault === undefined) return null;
  const situation = lockedOutBy(facts, chance, fault.id, AT_ONCE_S);
  const sweptS = situation?.stepsS[AFTER_PURGE];
  if (situation === null || sweptS === undefined || situation.unburnt < ENOUGH) return null;
  const throughPurge = reset(Math.ceil(sweptS - facts.callS) + 3, 'reset-through-purge');
  const again = reset(5, 'reset-again');
  return {
    ...situation,
    tells: [situation.tells, { code: 'quiz.conduct.tells.unburnt' }],
    before: [],
    safe: [history, throughPurge, burnerOff],
    unsafe: [
      { rule: 'SC-10', steps: [history, reset(), stop, stopOut, again] },
      { rule: 'SC-10', steps: [reset(), stop, stopOut, wait('a-minute', 60), again] },
    ],
    skills: skillsOf(fault.family),
    difficulty: 0.6,
    holds: ({ acts, events }) =>
      (acts[0]?.before.combustible ?? 0) >= 0.25 &&
      events.filter(({ type }) => type === 'lockout').length === 1,
  };
};
