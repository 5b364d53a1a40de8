import { jointsOf } from '../../../../bench/index.ts';
import { nextUniform } from '../../../../numeric/index.ts';
import {
  backOn,
  cockBack,
  cockHalf,
  findDead,
  handOver,
  leaving as leave,
  lockOff,
  lockOpen,
  lockShut,
  repair,
  spray,
  unlockOnly,
} from '../acts.ts';
import { oneOf, type Scene, type SceneMaker } from '../scene.ts';
import { asFound, atRest } from '../situations.ts';
import { openingsOf } from './gas-train.ts';

/** SC-18: locks, an isolator off or a cock less open than it was found, left at the handover. */
export const leaving: SceneMaker = (facts, chance) =>
  nextUniform(chance) < 0.5 ? afterGasWork(facts, chance) : afterElectricalWork(facts, chance);

const afterGasWork: SceneMaker = (facts, chance) => {
  const task = oneOf(openingsOf(facts), chance);
  if (task === undefined) return null;
  const { part, way } = task;
  const joints = jointsOf(facts.plant.plan.setup.plant, part);
  if (joints.length === 0 || joints.some((node) => !facts.underPressure.includes(node)))
    return null;
  const situation = atRest(facts, chance);
  const test = spray(joints);
  const scene: Scene = {
    ...situation,
    tells: [
      asFound(situation),
      {
        code: 'quiz.conduct.tells.opened',
        with: { part, way: { is: 'word', of: 'quiz.conduct.done', word: way } },
      },
    ],
    before: [lockShut, repair(part, way)],
    safe: [cockBack, test, handOver],
    unsafe: [
      { rule: 'SC-18', steps: [cockHalf, test, handOver] },
      { rule: 'SC-18', steps: [cockBack, test, lockOpen, handOver] },
      { rule: 'SC-18', steps: [cockBack, test, lockShut, handOver] },
    ],
    skills: ['fuel'],
    difficulty: -0.6,
  };
  return scene;
};

const afterElectricalWork: SceneMaker = (facts, chance) => {
  const parts = facts.parts.filter(
    ({ electrical, minutes, part }) =>
      electrical && minutes.replace !== undefined && !part.startsWith('mains'),
  );
  const part = oneOf(parts, chance)?.part;
  if (part === undefined) return null;
  const situation = atRest(facts, chance);
  return {
    ...situation,
    tells: [asFound(situation), { code: 'quiz.conduct.tells.replaced', with: { part } }],
    before: [lockOff, findDead('L1', 'N'), repair(part, 'replace')],
    safe: [backOn, handOver],
    unsafe: [
      { rule: 'SC-18', steps: [unlockOnly, leave('hand-over-off')] },
      { rule: 'SC-18', steps: [leave('hand-over-locked')] },
    ],
    skills: ['wiring'],
    difficulty: -0.6,
  };
};
