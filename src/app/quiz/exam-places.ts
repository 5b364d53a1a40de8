import type { QuizState } from '../../../machines/quiz/index.ts';
import type { Chosen } from './answer-form.tsx';
import type { Draft } from './open-quiz.ts';

/** 'begun': something is chosen, but it is no whole answer. */
export type PlaceState = 'open' | 'begun' | 'answered';

export function placeStates(
  { answers }: Pick<QuizState, 'answers'>,
  drafts: readonly Draft[],
): readonly PlaceState[] {
  return answers.map((answer, place) => {
    const draft = drafts.find((each) => each.place === place);
    if (draft === undefined) return answer === null ? 'open' : 'answered';
    if (isWhole(draft)) return 'answered';
    return draft.response === null && draft.confidence === null ? 'open' : 'begun';
  });
}

/** What stands at a question: what was chosen since, else what was answered. */
export function chosenAt(
  { answers }: Pick<QuizState, 'answers'>,
  drafts: readonly Draft[],
  place: number,
): Chosen {
  const { response = null, confidence = null } =
    drafts.find((each) => each.place === place) ?? answers[place] ?? {};
  return { response, confidence };
}

export function isWhole<C extends Chosen>(
  chosen: C,
): chosen is C & { readonly [Key in keyof Chosen]: NonNullable<Chosen[Key]> } {
  return chosen.response !== null && chosen.confidence !== null;
}
