import library from 'virtual:library';
import type { AuthorKind } from './author-kinds.ts';

export interface ShippedFile {
  readonly kind: AuthorKind;
  readonly id: string;
  readonly title: string;
  /** Empty where it is about none. */
  readonly plant: string;
}

/** What is shipped of a kind, by title. */
export function shippedFiles(kind: AuthorKind): readonly ShippedFile[] {
  const { scenarios, jobs, lessons, drills, quizzes } = library;
  const all: readonly { readonly id: string; readonly title: string; readonly plant?: string }[] = {
    start: scenarios,
    job: jobs,
    lesson: lessons,
    drill: drills,
    quiz: quizzes,
  }[kind];
  return all
    .map(({ id, title, plant = '' }) => ({ kind, id, title, plant }))
    .sort((a, b) => a.title.localeCompare(b.title));
}

export function shippedIds(kind: AuthorKind): ReadonlySet<string> {
  return new Set(shippedFiles(kind).map(({ id }) => id));
}
