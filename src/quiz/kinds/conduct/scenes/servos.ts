import { handOver, holdServo, leaving, lookAt, start, wordsOf } from '../acts.ts';
import { oneOf, type SceneMaker } from '../scene.ts';
import { atRest } from '../situations.ts';
import { about } from './task.ts';

const MOTOR = '.motor';
const HALF_OPEN_DEG = 45;
const LETS_GO = -1;

/** SC-14, SC-18: a servo held by hand with fuel on, or still held at the handover. */
export const servos: SceneMaker = (facts, chance) => {
  const motors = facts.elements.filter(
    ({ kind, name }) => kind === 'motor' && name.endsWith(MOTOR),
  );
  const servo = oneOf(motors, chance)?.name.slice(0, -MOTOR.length);
  if (servo === undefined) return null;
  const situation = atRest(facts, chance);
  const hold = holdServo(servo, HALF_OPEN_DEG);
  const letGo = holdServo(servo, LETS_GO);
  const look = lookAt(servo === 'fuel-valve' ? 'fuel valve shaft' : 'damper blade');
  const started = start(facts.startS);
  return {
    ...situation,
    tells: [situation.tells, about('servo', wordsOf(servo))],
    before: [],
    safe: [hold, look, letGo, handOver],
    unsafe: [
      { rule: 'SC-14', steps: [started, hold, look, letGo] },
      { rule: 'SC-18', steps: [hold, look, leaving('hand-over-held')] },
    ],
    skills: ['air'],
    difficulty: 0,
  };
};
