/** A quiz as its parts: right of asked, by skill and by kind. Pure. */
import type { Skill } from '../../../machines/job/index.ts';
import { SKILL_ORDER } from '../../diagnosis/mastery/index.ts';
import { type GivenAnswer, ITEM_KINDS, type ItemKind } from '../../quiz/index.ts';

export interface ResultPart<Name extends string> {
  readonly name: Name;
  readonly right: number;
  readonly count: number;
}

/** In the order of skills; a question that asks for two counts for each. */
export function partsBySkill(answers: readonly GivenAnswer[]): readonly ResultPart<Skill>[] {
  return partsOf(SKILL_ORDER, answers, ({ skills }, skill) => skills.includes(skill));
}

export function partsByKind(answers: readonly GivenAnswer[]): readonly ResultPart<ItemKind>[] {
  return partsOf(ITEM_KINDS, answers, ({ kind }, name) => kind === name);
}

function partsOf<Name extends string>(
  names: readonly Name[],
  answers: readonly GivenAnswer[],
  isOf: (answer: GivenAnswer, name: Name) => boolean,
): readonly ResultPart<Name>[] {
  return names
    .map((name) => {
      const own = answers.filter((answer) => isOf(answer, name));
      return { name, right: own.filter(({ right }) => right).length, count: own.length };
    })
    .filter(({ count }) => count > 0);
}
