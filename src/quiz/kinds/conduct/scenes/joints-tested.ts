import { jointsOf } from '../../../../bench/index.ts';
import { nextUniform } from '../../../../numeric/index.ts';
import { cockBack, handOver, lockShut, repair, smell, spray, start } from '../acts.ts';
import { oneOf, type SceneMaker } from '../scene.ts';
import { asFound, atRest } from '../situations.ts';
import { openingsOf } from './gas-train.ts';

/** SC-7, SC-8: joints that were undone, tested under pressure before fuel and before the handover, or not. */
export const jointsTested: SceneMaker = (facts, chance) => {
  const task = oneOf(openingsOf(facts), chance);
  if (task === undefined) return null;
  const { part, way } = task;
  const joints = jointsOf(facts.plant.plan.setup.plant, part);
  const [first] = joints;
  const tested = joints.every((node) => facts.underPressure.includes(node));
  if (first === undefined || !tested) return null;
  const situation = atRest(facts, chance);
  const withStart = nextUniform(chance) < 0.5;
  const started = start(facts.startS);
  return {
    ...situation,
    tells: [
      asFound(situation),
      {
        code: 'quiz.conduct.tells.opened',
        with: { part, way: { is: 'word', of: 'quiz.conduct.done', word: way } },
      },
    ],
    before: [lockShut, repair(part, way)],
    safe: withStart
      ? [cockBack, spray(joints), started, handOver]
      : [cockBack, spray(joints), handOver],
    unsafe: [
      { rule: 'SC-7', steps: [cockBack, started, spray(joints), handOver] },
      { rule: 'SC-8', steps: [cockBack, smell, handOver] },
      ...(joints.length > 1
        ? [{ rule: 'SC-8' as const, steps: [cockBack, spray([first]), handOver] }]
        : []),
    ],
    skills: ['fuel'],
    difficulty: 0.1,
  };
};
