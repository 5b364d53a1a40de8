import { createRun, faultsFor } from '../../../../engine/index.ts';
import { setupOfRun } from '../../../item/setup-of-run.ts';
import { burnerOn, isolatorOff, lockOff, lockShut, reset, smell, stop, wait } from '../acts.ts';
import { oneOf, type SceneMaker } from '../scene.ts';
import { atRest } from '../situations.ts';

const SMELT = 0.12;
const LONGEST_S = 1800;
const LOOK_EVERY_S = 30;
const OUTSIDE_S = 120;

/** SC-11: what may be touched in a room that smells of gas. */
export const smellOfGas: SceneMaker = (facts, chance) => {
  const { plan } = facts.plant;
  const leaks = faultsFor(plan.setup.plant).filter(({ id }) => id.startsWith('gas escapes'));
  const leak = oneOf(leaks, chance);
  if (leak === undefined) return null;
  const severity = oneOf([leak.severity.high, leak.severity.high / 2], chance) ?? 0;
  const order = { fault: leak.id, severity, onset: { kind: 'start' as const } };
  const leaking = atRest(facts, chance, [order]);
  const run = createRun(setupOfRun(plan, leaking.run), { keep: 'hash only' });
  run.advanceTo(leaking.run.untilS);
  while (run.smell() < SMELT && run.timeS() < LONGEST_S) run.advanceTo(run.timeS() + LOOK_EVERY_S);
  if (run.smell() < SMELT) return null;
  const outside = wait('outside', OUTSIDE_S);
  return {
    run: { ...leaking.run, untilS: Math.round(run.timeS()) },
    shows: false,
    tells: [leaking.tells, { code: 'quiz.conduct.tells.smell' }],
    before: [],
    safe: [lockShut, outside, smell],
    unsafe: [
      { rule: 'SC-11', steps: [lockOff, outside, smell] },
      { rule: 'SC-11', steps: [isolatorOff, lockShut, outside] },
      { rule: 'SC-11', steps: [lockShut, isolatorOff, outside] },
      { rule: 'SC-11', steps: [lockShut, reset(), outside] },
      { rule: 'SC-11', steps: [burnerOn, lockShut, outside] },
      { rule: 'SC-11', steps: [stop, isolatorOff, outside] },
    ],
    skills: ['fuel'],
    difficulty: -0.3,
  };
};
