/** Kinds of files that are written here, as addresses and the server name them. */
export const AUTHOR_KINDS = ['start', 'job', 'lesson', 'drill', 'quiz'] as const;
export type AuthorKind = (typeof AUTHOR_KINDS)[number];

const FOLDERS: Readonly<Record<AuthorKind, string>> = {
  start: 'starts',
  job: 'jobs',
  lesson: 'lessons',
  drill: 'drills',
  quiz: 'quiz',
};

/** The folder tells the loader what a file is. */
export function pathOfFile(kind: AuthorKind, id: string): string {
  return `${FOLDERS[kind]}/${id}.yaml`;
}

/** Where something is simulated; a quiz file only asks. */
export function runs(kind: AuthorKind): kind is Exclude<AuthorKind, 'quiz'> {
  return kind !== 'quiz';
}
