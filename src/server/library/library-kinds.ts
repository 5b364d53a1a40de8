/** Kinds of files that an instructor writes, as addresses name them. */
export const LIBRARY_KINDS = ['start', 'job', 'drill', 'lesson', 'quiz'] as const;
export type LibraryKind = (typeof LIBRARY_KINDS)[number];

/** A path tells the loader what a file is by its folder. */
const FOLDERS: Readonly<Record<LibraryKind, string>> = {
  start: 'starts',
  job: 'jobs',
  drill: 'drills',
  lesson: 'lessons',
  quiz: 'quiz',
};

export function pathOfFile(kind: LibraryKind, id: string): string {
  return `${FOLDERS[kind]}/${id}.yaml`;
}
