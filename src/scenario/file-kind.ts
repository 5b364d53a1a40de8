import { readSource } from './read-source.ts';

export const FILE_KINDS = [
  'plant',
  'profile',
  'scenario',
  'job',
  'drill',
  'lesson',
  'quiz',
  'action log',
] as const;
export type FileKind = (typeof FILE_KINDS)[number];

const KIND_OF_FOLDER: Readonly<Record<string, FileKind>> = {
  plants: 'plant',
  profiles: 'profile',
  starts: 'scenario',
  jobs: 'job',
  drills: 'drill',
  lessons: 'lesson',
  quiz: 'quiz',
};

/** What a file means to be: by the folder it lies in, else by what only that kind has. */
export function kindOfFile(path: string, data: unknown): FileKind | null {
  if (Array.isArray(data)) return 'action log';
  const folder = path.split(/[\\/]/).at(-2) ?? '';
  const byFolder = Object.hasOwn(KIND_OF_FOLDER, folder) ? KIND_OF_FOLDER[folder] : undefined;
  if (byFolder !== undefined) return byFolder;
  const has = (key: string) =>
    typeof data === 'object' && data !== null && Object.hasOwn(data, key);
  if (has('gasTrain') || has('airPath')) return 'plant';
  if (has('timings')) return 'profile';
  if (has('card') || has('budgetMinutes')) return 'job';
  if (has('question')) return 'drill';
  if (has('items')) return 'quiz';
  if (has('intro') || has('outro')) return 'lesson';
  return has('plant') || has('expect') || has('initial') ? 'scenario' : null;
}

export function kindOfText(path: string, text: string): FileKind | null {
  const read = readSource(text, path);
  return read.ok ? kindOfFile(path, read.value.data) : null;
}
