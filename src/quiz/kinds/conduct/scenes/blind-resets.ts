import { faultsFor, type LookWhat } from '../../../../engine/index.ts';
import {
  burnerOff,
  burnerOn,
  history,
  isolatorOff,
  isolatorOn,
  lookAt,
  reset,
  wait,
} from '../acts.ts';
import { oneOf, type SceneMaker } from '../scene.ts';
import { lockedOutBy } from '../situations.ts';
import { skillsOf } from './skills.ts';

/** So late a lockout makes two more of them too long to wait for, s. */
const LATEST_S = 140;
const SOON_S = 20;
const SOME_MINUTES_S = 300;
const LOOKS: readonly LookWhat[] = ['control relays', 'terminal strip'];
/** These say something of a lockout only where the fault is of their kind. */
const LOOKS_OF: Readonly<Record<string, readonly LookWhat[]>> = {
  'supply and wiring': ['fuses'],
  'vessel and limits': ['limit buttons'],
  'air path': ['air switch tube'],
};

/** SC-9: the third reset in a row, after something was found out or not. */
export const blindResets: SceneMaker = (facts, chance) => {
  const { plant } = facts;
  const fault = oneOf(faultsFor(plant.plan.setup.plant), chance);
  if (fault === undefined) return null;
  const situation = lockedOutBy(facts, chance, fault.id, SOON_S);
  if (situation === null || situation.lockoutS - facts.callS > LATEST_S) return null;
  const again = reset(Math.ceil(situation.lockoutS - facts.callS) + SOON_S);
  const look = oneOf(
    [
      history,
      ...[...LOOKS, ...(LOOKS_OF[fault.family] ?? [])]
        .filter((what) => facts.looks.includes(what))
        .map(lookAt),
    ],
    chance,
  );
  if (look === undefined) return null;
  const last = reset(5);
  return {
    ...situation,
    tells: [situation.tells, { code: 'quiz.conduct.tells.two-resets' }],
    before: [again, again],
    safe: [look, last],
    unsafe: [
      { rule: 'SC-9', steps: [wait('some-minutes', SOME_MINUTES_S), last] },
      { rule: 'SC-9', steps: [isolatorOff, isolatorOn, last] },
      { rule: 'SC-9', steps: [burnerOff, burnerOn, last] },
    ],
    skills: skillsOf(fault.family),
    difficulty: -0.8,
    holds: ({ events }) =>
      events.filter((event) => event.type === 'lockout' && event.cause === situation.cause)
        .length >= 3,
  };
};
