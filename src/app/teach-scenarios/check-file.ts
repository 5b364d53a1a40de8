import { ACTION_TABLES, type ActionType } from '../../engine/index.ts';
import {
  buildLibrary,
  EMPTY_LIBRARY,
  firstStartOf,
  type LearnerLibrary,
  type LearnerScenario,
  type Library,
  learnerPart,
  phraseOfIssue,
} from '../../scenario/index.ts';
import { type AuthorKind, pathOfFile } from './author-kinds.ts';
import type { FileChecked } from './author-protocol.ts';

/** In messages a file has no name but its place in them. */
const NAME = 'this-file';
export const PREVIEW_ID = 'preview';

export interface CheckedText {
  readonly checked: FileChecked;
  /** With the one file in it; null where it is not in order. */
  readonly library: Library | null;
}

/** One text against the shipped plants, as the command line checks a file. */
export function checkFile(
  kind: AuthorKind,
  text: string,
  { plants, profiles }: Pick<LearnerLibrary, 'plants' | 'profiles'>,
): CheckedText {
  const base = { ...EMPTY_LIBRARY, plants, profiles };
  const built = buildLibrary([{ path: pathOfFile(kind, NAME), text }], { base });
  if (!built.ok) {
    const issues = built.issues.map((issue) => {
      const { line, column, path } = issue;
      return { line, column, path, says: phraseOfIssue(issue) };
    });
    return { checked: { issues, start: null, isCase: false }, library: null };
  }
  const start = startOf(kind, built.value);
  const isCase =
    kind === 'job' || ((kind === 'start' || kind === 'drill') && (start?.faults.length ?? 0) > 0);
  return { checked: { issues: [], start, isCase }, library: built.value };
}

/** A start to look at: of an exercise the one that failed before the call, or the next. */
function startOf(kind: AuthorKind, library: Library): LearnerScenario | null {
  const { scenarios, jobs, drills, lessons } = library;
  const [scenario] = kind === 'start' ? scenarios : [];
  if (scenario !== undefined) return { ...learnerPart(scenario), id: PREVIEW_ID };
  const [lesson] = kind === 'lesson' ? lessons : [];
  if (lesson !== undefined) return asStart(lesson, [], lesson.until);
  const [exercise] = kind === 'job' ? jobs : kind === 'drill' ? drills : [];
  if (exercise === undefined) return null;
  const { actions, untilS } = firstStartOf(exercise);
  const added = actions.map(({ t, type, ...fields }) => ({ at: t, do: type, ...fields }));
  return asStart(exercise, added as LearnerScenario['actions'], untilS);
}

type Startable = Omit<LearnerScenario, 'summary' | 'teaches' | 'allow' | 'until'>;

function asStart(
  from: Startable,
  added: LearnerScenario['actions'],
  untilS: number,
): LearnerScenario {
  const { title, plant, profile, caution, seed, initial, load, faults, actions } = from;
  return {
    id: PREVIEW_ID,
    title,
    plant,
    ...(profile === undefined ? {} : { profile }),
    ...(caution === undefined ? {} : { caution }),
    summary: title,
    seed,
    initial,
    load,
    faults,
    actions: [...actions, ...added].sort((a, b) => a.at - b.at),
    allow: Object.keys(ACTION_TABLES) as ActionType[],
    until: Math.max(1, untilS),
  };
}
