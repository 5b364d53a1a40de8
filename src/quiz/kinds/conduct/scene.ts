/** A situation at the plant, a safe course and unsafe ones near by. */
import type { Skill } from '../../../../machines/index.ts';
import type { JobTrace } from '../../../bench/index.ts';
import { nextUniform, type RandomState } from '../../../numeric/index.ts';
import type { ItemRun } from '../../item/item.ts';
import type { Statement } from '../../item/statement.ts';
import type { PlantFacts } from './plant-facts.ts';
import type { Step } from './step.ts';

/** A rule of CONDUCT.md. */
export type Rule = `SC-${number}`;

export interface UnsafeCourse {
  /** What judging has to find, and nothing else. */
  readonly rule: Rule;
  readonly steps: readonly Step[];
}
export interface Scene {
  /** Up to the arrival, which is its end. */
  readonly run: ItemRun;
  readonly shows: boolean;
  /** The situation and what is to be done. */
  readonly tells: readonly Statement[];
  /** What the learner has done already, whichever course follows. */
  readonly before: readonly Step[];
  readonly safe: readonly Step[];
  readonly unsafe: readonly UnsafeCourse[];
  /** Beside conduct. */
  readonly skills: readonly Skill[];
  /** Log-odds. */
  readonly difficulty: number;
  /** Whether the run of the safe course is what the words say; left out: it is. */
  readonly holds?: (trace: JobTrace) => boolean;
}

/** Null where this plant, or this draw, has nothing of the kind. */
export type SceneMaker = (facts: PlantFacts, chance: RandomState) => Scene | null;

/** @throws nothing; undefined only of an empty list */
export function oneOf<T>(list: readonly T[], chance: RandomState): T | undefined {
  return list[Math.floor(nextUniform(chance) * list.length)];
}
