import {
  buildLibrary,
  EMPTY_LIBRARY,
  type Issue,
  type LearnerLibrary,
  learnerPart,
} from '../../scenario/index.ts';
import { type LibraryKind, pathOfFile } from './library-kinds.ts';

/** What a written file leans on. */
export type LibraryBase = Pick<LearnerLibrary, 'plants' | 'profiles'>;

export type CheckedFile =
  | {
      readonly ok: true;
      readonly id: string;
      readonly title: string;
      /** Empty where it is about none. */
      readonly plant: string;
      /** A small library with this file alone in it, as a class is given one. */
      readonly data: unknown;
    }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** One file by itself, against the shipped plants and profiles. */
export function checkFile(
  kind: LibraryKind,
  id: string,
  text: string,
  { plants, profiles }: LibraryBase,
): CheckedFile {
  const base = { ...EMPTY_LIBRARY, plants, profiles };
  const built = buildLibrary([{ path: pathOfFile(kind, id), text }], { base });
  if (!built.ok) return built;
  const { scenarios, jobs, drills, lessons, quizzes } = built.value;
  const [written] = { start: scenarios, job: jobs, drill: drills, lesson: lessons, quiz: quizzes }[
    kind
  ];
  if (written === undefined) throw new Error(`a checked ${kind} is not where it belongs`);
  const plant = 'plant' in written ? written.plant : '';
  const data = { [LISTS[kind]]: [learnerPart(written as { readonly expect?: unknown })] };
  return { ok: true, id: written.id, title: written.title, plant, data };
}

const LISTS: Readonly<Record<LibraryKind, keyof LearnerLibrary>> = {
  start: 'scenarios',
  job: 'jobs',
  drill: 'drills',
  lesson: 'lessons',
  quiz: 'quizzes',
};
