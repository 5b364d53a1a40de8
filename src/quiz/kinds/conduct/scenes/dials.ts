import { lessSafe } from '../../../../bench/index.ts';
import type { Setting } from '../../../../engine/index.ts';
import { nextUniform } from '../../../../numeric/index.ts';
import { handOver, leaving, set, start } from '../acts.ts';
import { oneOf, type SceneMaker } from '../scene.ts';
import { atRest } from '../situations.ts';

const LOWER = 0.4;
const HIGHER = 1.4;

/** SC-13: a dial on which safety rests, beyond the sheet with fuel on or at the handover. */
export const dials: SceneMaker = (facts, chance) => {
  const settings = facts.settings.filter(({ part }) => lessSafe(part) !== null);
  const dial = oneOf(settings, chance);
  if (dial === undefined) return null;
  const worse = lessSafe(dial.part);
  const down = worse === 'lower' || (worse === 'either' && nextUniform(chance) < 0.5);
  const situation = atRest(facts, chance);
  const beyond = set(down ? 'set-lower' : 'set-higher', dial, valueTo(dial, down));
  const back = set('set-back', dial, dial.value);
  const started = start(facts.startS);
  const provedFirst = worse !== 'either' && nextUniform(chance) < 0.6;
  const otherSide = set(down ? 'set-higher' : 'set-lower', dial, valueTo(dial, !down));
  return {
    ...situation,
    tells: [
      situation.tells,
      {
        code: 'quiz.conduct.tells.dial',
        with: { part: dial.part, setting: dial.setting },
      },
    ],
    before: [],
    safe: provedFirst
      ? [otherSide, back, handOver]
      : [set('set-sheet', dial, dial.value), started, handOver],
    unsafe: [
      { rule: 'SC-13', steps: [beyond, started, back, handOver] },
      { rule: 'SC-13', steps: [beyond, leaving('hand-over-set')] },
      { rule: 'SC-13', steps: [beyond, started, handOver] },
    ],
    skills: ['limits'],
    difficulty: -0.4,
  };
};

function valueTo({ value, min, max }: Setting, down: boolean): number {
  return Math.min(max, Math.max(min, value * (down ? LOWER : HIGHER)));
}
