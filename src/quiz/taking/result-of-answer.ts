import type { PractiseResult } from '../../diagnosis/mastery/index.ts';
import type { GivenAnswer } from '../item/given-answer.ts';
import { guessChance } from './guessing.ts';

/**
 * By how much a question with three answers is easier than knowing it, log-odds. Questions are chosen
 * where seven in ten are answered rightly; with one in three by a guess alone, that is knowing 0.55 of
 * them: logit 0.7 − logit 0.55. Without it every guess would count as knowledge: whoever knows 0.55
 * would be rated as if it were 0.7. Above that level it is exact within 0.02 of a chance; far below,
 * where three in ten are known, it flatters by 0.08, and quizzes then choose easier questions.
 */
const EASE_OF_THREE = 0.647;

/**
 * An answer as a result for the map by skill. Its name is the item with the quiz, so that one that was
 * kept and one made again from the list of answers count once.
 */
export function resultOfAnswer(answer: GivenAnswer): PractiseResult {
  const { item, kind, quizStartedISO, atISO, skills, difficulty, right } = answer;
  return {
    kind: 'quiz',
    id: item,
    startedISO: quizStartedISO,
    atISO,
    skills,
    difficulty: difficulty - (guessChance(kind) > 0 ? EASE_OF_THREE : 0),
    guidance: null,
    hints: 0,
    // How sure someone said to be is left out: it would pay to overstate it.
    outcome: right ? 1 : 0,
    conduct: null,
  };
}
