/** Written items as the bank has them: what can be said of them without running anything. */
import { difficultyOfLevel } from '../../diagnosis/mastery/index.ts';
import { createRandom, seedFromText, shuffled } from '../../numeric/index.ts';
import type { QuizFile, WrittenItem } from '../../scenario/index.ts';
import type { ItemCard } from '../item/item.ts';

const HEAD = 'written/';

export function writtenId(file: string, item: string): string {
  return `${HEAD}${file}.${item}`;
}

/** Null where the id is of no written item, or of one that is gone. */
export function findWritten(
  quizzes: readonly QuizFile[],
  id: string,
): { readonly file: QuizFile; readonly item: WrittenItem } | null {
  for (const file of quizzes) {
    const item = file.items.find((one) => writtenId(file.id, one.id) === id);
    if (item !== undefined) return { file, item };
  }
  return null;
}

export function writtenCards(quizzes: readonly QuizFile[]): readonly ItemCard[] {
  return quizzes.flatMap((file) => file.items.map((item) => cardOfWritten(file.id, item)));
}

export function cardOfWritten(file: string, item: WrittenItem): ItemCard {
  const id = writtenId(file, item.id);
  return {
    id,
    kind: item.kind,
    plant: item.plant ?? '',
    topic: item.topic ?? `${item.kind}/${item.id}`,
    skills: [...new Set(item.skills)],
    difficulty: difficultyOfLevel(item.level),
    place: shownOrder(id, item.options.length).indexOf(item.right),
  };
}

/** Places of the options as they are written, in the order in which they are shown: an author has his habits. */
export function shownOrder(id: string, count: number): readonly number[] {
  const places = Array.from({ length: count }, (_, i) => i);
  return shuffled(places, createRandom(seedFromText(id), 'order of options'));
}
