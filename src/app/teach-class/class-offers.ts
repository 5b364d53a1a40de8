/** What a class can be about, from the shipped library. */
import type { ClassKind, ClassWhat } from '../../../machines/class/index.ts';
import { exercisesOf } from '../library/exercises.ts';
import { startsByPlant } from '../library/starts.ts';

export interface ClassOffer {
  readonly what: ClassWhat;
  /** For the instructor alone: it may say what is wrong. */
  readonly about: string;
}

/** Quizzes are put together, not chosen from a list. */
export type ListedKind = Exclude<ClassKind, 'quiz'>;

export function offersOf(kind: ListedKind, plant: string): readonly ClassOffer[] {
  const offer = (id: string, title: string, about: string): ClassOffer => ({
    what: { kind, id, title, plant },
    about,
  });
  const { jobs, drills, lessons } = exercisesOf(plant);
  switch (kind) {
    case 'start': {
      const starts = startsByPlant().find((each) => each.plant === plant);
      return [...(starts?.healthy ?? []), ...(starts?.troubled ?? [])].map((start) =>
        offer(start.id, start.title, start.summary),
      );
    }
    case 'job':
      return jobs.map(({ id, title, card }) => offer(id, title, card.complaint));
    case 'drill':
      return drills.map(({ id, title, question }) => offer(id, title, question));
    case 'lesson':
      return lessons.map(({ id, title, intro }) => offer(id, title, intro));
  }
}
