/** The list of answers that were given: it is what is kept, all else is made from it each time. */
import type { GivenAnswer, QuizMode } from '../item/given-answer.ts';
import type { Item, ItemCard } from '../item/item.ts';
import { type Confidence, isRight, type Response } from '../item/response.ts';
import { msOfISO } from './instant.ts';

export interface JustAnswered {
  readonly response: Response;
  readonly confidence: Confidence;
  readonly atISO: string;
}
export interface OfQuiz {
  readonly mode: QuizMode;
  readonly startedISO: string;
}

/** One answer to an item, as it is kept. */
export function givenAnswer(
  item: Item,
  { response, confidence, atISO }: JustAnswered,
  { mode, startedISO }: OfQuiz,
  /** Where it has moved since the item was made. */
  difficulty = item.difficulty,
): GivenAnswer {
  const { id, kind, plant, topic, skills } = item;
  return {
    item: id,
    kind,
    plant,
    topic,
    skills,
    difficulty,
    mode,
    quizStartedISO: startedISO,
    atISO,
    response,
    right: isRight(item, response),
    confidence,
  };
}

/** What is known of an item before it is made. */
export function cardOf(item: Item): ItemCard {
  const { id, kind, plant, topic, skills, difficulty } = item;
  const place = item.answer === 'choice' || item.answer === 'spot' ? item.key : null;
  return { id, kind, plant, topic, skills, difficulty, place };
}

/** The name of an answer: no quiz asks an item twice, so that each counts once. */
export function keyOfAnswer({
  quizStartedISO,
  item,
}: Pick<GivenAnswer, 'quizStartedISO' | 'item'>): string {
  return `${quizStartedISO} ${item}`;
}

/** In the order of time; those of one moment in the order of their names. */
export function answersInOrder<A extends GivenAnswer>(answers: readonly A[]): A[] {
  return [...answers].sort(
    (a, b) => msOfISO(a.atISO) - msOfISO(b.atISO) || compareText(keyOfAnswer(a), keyOfAnswer(b)),
  );
}

/**
 * All of them, each once, in the order of time. The order they come in does not matter. Of two with
 * one name the first that was given stands: what came later has been told the reasons.
 */
export function mergeAnswers<A extends GivenAnswer>(answers: readonly A[]): A[] {
  const byKey = new Map<string, A>();
  for (const answer of answers) {
    const key = keyOfAnswer(answer);
    const known = byKey.get(key);
    if (known === undefined || isBefore(answer, known)) byKey.set(key, answer);
  }
  return answersInOrder([...byKey.values()]);
}

/** By code unit: the same in every language of the device. */
export function compareText(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

function isBefore(one: GivenAnswer, other: GivenAnswer): boolean {
  const apart = msOfISO(one.atISO) - msOfISO(other.atISO);
  return apart === 0 ? JSON.stringify(one) < JSON.stringify(other) : apart < 0;
}
