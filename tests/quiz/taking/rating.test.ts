import { describe, expect, it } from 'vitest';
import {
  expectedScore,
  meanValue,
  type Ratings,
  ratingsOf,
  SKILL_ORDER,
} from '../../../src/diagnosis/mastery/index.ts';
import { createRandom, nextNormal, nextUniform } from '../../../src/numeric/index.ts';
import {
  composeQuiz,
  difficultyOf,
  FEWEST_LEARNERS,
  type GivenAnswer,
  guessChance,
  type ItemCard,
  type LearnerAnswer,
  resultOfAnswer,
  rightChanceOf,
} from '../../../src/quiz/taking/index.ts';
import { answerTo, atDay, bankOf, shuffled } from './small-bank.ts';

const BANK = bankOf(600);

function ratingsAt(value: number): Ratings {
  return Object.fromEntries(SKILL_ORDER.map((skill) => [skill, { value, count: 5 }]));
}

function quizFor(ratings: Ratings, answers: readonly GivenAnswer[], seed: number, day: number) {
  const ids = composeQuiz({
    mode: 'standard',
    cards: BANK,
    answers,
    ratings,
    due: [],
    seed,
    nowISO: atDay(day),
  });
  return ids.map((id) => BANK.find((one) => one.id === id) as ItemCard);
}

/** Ratings after a standard quiz a day; what is answered comes of the chance given, by one seed. */
function practise(quizzes: number, chanceOf: (card: ItemCard) => number, seed: number): Ratings {
  const random = createRandom(seed, 'practise');
  const answers: GivenAnswer[] = [];
  for (let day = 0; day < quizzes; day += 1) {
    const ratings = ratingsOf(answers.map(resultOfAnswer));
    quizFor(ratings, answers, seed * 100 + day, day).forEach((card, i) => {
      answers.push(answerTo(card, day + i / 1000, nextUniform(random) < chanceOf(card)));
    });
  }
  return ratingsOf(answers.map(resultOfAnswer));
}

function meanRating(ratings: Ratings): number {
  return meanOf(SKILL_ORDER.map((skill) => ratings[skill]?.value ?? -1));
}

/** By the rule of ratings, of an answer as it enters them. */
function expectedOf(card: ItemCard, ratings: Ratings): number {
  const { difficulty } = resultOfAnswer(answerTo(card, 0, true));
  return expectedScore(meanValue(ratings, card.skills), difficulty);
}

function meanOf(list: readonly number[]): number {
  return list.reduce((sum, one) => sum + one, 0) / list.length;
}

describe('an answer as a result for the map', () => {
  it('expects of a learner what comes of him, guesses taken in, so that his rating stays', () => {
    for (const ability of [-2, -1, 0, 1]) {
      const own = ratingsAt(ability);
      const items = [1, 2, 3, 4].flatMap((seed) => quizFor(own, [], seed, 0));
      const drift = meanOf(items.map((card) => rightChanceOf(card, own) - expectedOf(card, own)));
      expect(Math.abs(drift), `ability ${ability}`).toBeLessThan(0.02);
      // Were guesses taken for knowledge, every quiz would raise everyone.
      const naive = meanOf(
        items.map((card) => rightChanceOf(card, own) - expectedScore(ability, card.difficulty)),
      );
      expect(naive, `ability ${ability}`).toBeGreaterThan(0.1);
    }
  });
  it('ranks learners by what they know, and whoever only guesses last', () => {
    const able = [1, -0.5, -2].map((ability) => {
      const own = ratingsAt(ability);
      return practise(12, (card) => rightChanceOf(card, own), 3);
    });
    const means = [...able, practise(12, ({ kind }) => guessChance(kind), 4)].map(meanRating);
    expect(means).toEqual([...means].sort((a, b) => b - a));
    // A newcomer is taken to be at −1; guessing must not make one of it.
    expect(means[3]).toBeLessThan(-1.8);
  });
  it('counts an item asked again in another quiz, and how sure one was not at all', () => {
    const card = BANK[0] as ItemCard;
    const once = [answerTo(card, 0, true)];
    const twice = [...once, answerTo(card, 20, true)];
    const [skill] = card.skills;
    const countOf = (answers: readonly GivenAnswer[]) =>
      ratingsOf(answers.map(resultOfAnswer))[skill as 'air']?.count ?? 0;
    expect(countOf(twice)).toBeGreaterThan(countOf(once));
    const surer = [answerTo(card, 0, true, { confidence: 95 })].map(resultOfAnswer);
    expect(surer).toEqual(once.map(resultOfAnswer));
  });
});

describe('the difficulty of an item', () => {
  const card = { id: 'cause/dairy/9', kind: 'cause', difficulty: -0.5 } as const;

  /** Learners about as able as the bank is hard, each once. */
  function learnersAt(planted: number, count: number, seed: number): LearnerAnswer[] {
    const random = createRandom(seed, 'learners');
    return Array.from({ length: count }, (_, i) => {
      const rating = nextNormal(random);
      const chance = rightChanceOf(
        { ...card, skills: ['air'], difficulty: planted },
        { air: { value: rating, count: 5 } },
      );
      const right = nextUniform(random) < chance;
      return { learner: `learner ${i}`, item: card.id, atISO: atDay(i / 10), right, rating };
    });
  }

  it('stays that of the atlas until enough different learners have answered', () => {
    const few = learnersAt(1.5, FEWEST_LEARNERS - 1, 1);
    expect(difficultyOf(card, few)).toBe(-0.5);
    const again = few.map((one) => ({ ...one, atISO: atDay(50), right: false }));
    expect(difficultyOf(card, [...few, ...again])).toBe(-0.5);
    const ofOther = learnersAt(1.5, 60, 2).map((one) => ({ ...one, item: 'cause/dairy/10' }));
    expect(difficultyOf(card, [...few, ...ofOther])).toBe(-0.5);
    expect(difficultyOf(card, learnersAt(1.5, FEWEST_LEARNERS, 1))).not.toBe(-0.5);
  });
  it('counts the first answer of each learner alone, and not the order in which they come', () => {
    const answers = learnersAt(0.5, 80, 3);
    const found = difficultyOf(card, answers);
    const again = answers.map((one) => ({ ...one, atISO: atDay(90), right: true }));
    expect(difficultyOf(card, shuffled([...again, ...answers], 5))).toBe(found);
  });
  it('is off by less than 0.35 in the root mean square once 300 learners have answered', () => {
    for (const planted of [-1.5, 0, 1.5]) {
      const errors = Array.from(
        { length: 20 },
        (_, i) => difficultyOf(card, learnersAt(planted, 300, i + 1)) - planted,
      );
      const rms = Math.sqrt(meanOf(errors.map((error) => error * error)));
      expect(rms, `planted ${planted}`).toBeLessThan(0.35);
      expect(Math.abs(meanOf(errors)), `planted ${planted}`).toBeLessThan(0.2);
    }
  });
  it('is nearer to it than the atlas was, already by the fewest learners that count', () => {
    const found = Array.from({ length: 20 }, (_, i) =>
      difficultyOf(card, learnersAt(1.5, FEWEST_LEARNERS, i + 1)),
    );
    expect(meanOf(found)).toBeGreaterThan(0);
    expect(Math.max(...found)).toBeLessThan(2.5);
  });
});
