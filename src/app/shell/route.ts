import type { Guidance } from '../../../machines/job/index.ts';

export type Route =
  | { readonly page: 'front' }
  | { readonly page: 'practise' }
  /** The learner map. */
  | { readonly page: 'learner' }
  | { readonly page: 'teach' }
  /** Questions on paper. */
  | { readonly page: 'paper' }
  /** A package for a learning system. */
  | { readonly page: 'package' }
  /** Files that are written here: all of them, and one as text and form. */
  | { readonly page: 'scenarios' }
  | { readonly page: 'scenario'; readonly kind: WrittenKind; readonly id: string }
  /** Where classes are opened. */
  | { readonly page: 'classes' }
  /** One class, as its instructor has it. */
  | { readonly page: 'class'; readonly id: string }
  | { readonly page: 'projector'; readonly id: string; readonly key: string }
  | { readonly page: 'class-results'; readonly id: string }
  /** All classes that the server keeps. */
  | { readonly page: 'kept-classes' }
  /** The door of a class; the code is empty where the address has none. */
  | { readonly page: 'join'; readonly code: string }
  /** A learner's place in a class. */
  | { readonly page: 'seat'; readonly code: string }
  | { readonly page: 'quiz' }
  /** A quiz under way, and one that is over; by when it was begun, digits alone. */
  | { readonly page: 'quiz-taking' | 'quiz-result'; readonly quiz: string }
  | { readonly page: 'watch'; readonly scenario: string; readonly projector: boolean }
  /** A start with something wrong, by number only, so that no title gives it away. */
  | { readonly page: 'blind'; readonly number: number }
  | {
      readonly page: ExercisePage;
      readonly id: string;
      /** Suggested for a job that is yet to begin. */
      readonly guidance?: Guidance;
    }
  /** A job gone on with otherwise, from a moment of the work done on it. */
  | { readonly page: 'branch'; readonly id: string; readonly branch: number };

export const EXERCISE_PAGES = ['job', 'drill', 'lesson'] as const;
export type ExercisePage = (typeof EXERCISE_PAGES)[number];

/** As addresses name the kinds of files that are written. */
const WRITTEN_KINDS = ['start', 'job', 'lesson', 'drill', 'quiz'] as const;
export type WrittenKind = (typeof WRITTEN_KINDS)[number];

const GUIDANCE = ['guided', 'practice', 'assessment'] as const satisfies readonly Guidance[];
const LEARNER = 'map';
const PAPER = 'paper';
const PACKAGE = 'package';
const SCENARIOS = 'scenarios';
const CLASSES = 'classes';
const KEPT = 'kept';
const RESULTS = 'results';
/** What stands in the address of a class: made by the server, plain letters and digits. */
const CLASS_WORD = /^[\w-]{8,128}$/;
/** Whatever may stand for a code; the door itself says what is wrong with it. */
const CODE_WORD = /^[A-Za-z0-9]{1,12}$/;
const QUIZ_ACTS = { take: 'quiz-taking', result: 'quiz-result' } as const;

/** Routes live behind the `#`, so that any server, or none, can serve the page. */
export function parseRoute(hash: string): Route {
  const parts = hash
    .replace(/^#\/?/, '')
    .split('/')
    .filter((part) => part !== '');
  const [door, act, scenario, way, branch] = parts.map(decode);
  if (door === 'practise' && act === 'watch' && scenario)
    return { page: 'watch', scenario, projector: false };
  if (door === 'teach' && act === 'show' && scenario)
    return { page: 'watch', scenario, projector: true };
  if (door === 'practise' && act === 'blind' && scenario && /^\d{1,4}$/.test(scenario))
    return { page: 'blind', number: Number(scenario) };
  if (door === 'practise' && act === 'job' && scenario && way === 'branch')
    return /^[1-9]$/.test(branch ?? '')
      ? { page: 'branch', id: scenario, branch: Number(branch) }
      : { page: 'job', id: scenario };
  const exercise = EXERCISE_PAGES.find((page) => page === act);
  if (door === 'practise' && exercise !== undefined && scenario) {
    const guidance = exercise === 'job' ? GUIDANCE.find((each) => each === way) : undefined;
    return { page: exercise, id: scenario, ...(guidance === undefined ? {} : { guidance }) };
  }
  if (door === 'quiz' && (act === 'take' || act === 'result') && /^\d{17}$/.test(scenario ?? ''))
    return { page: QUIZ_ACTS[act], quiz: scenario ?? '' };
  if (door === 'practise' && act === LEARNER && parts.length === 2) return { page: 'learner' };
  if (door === 'teach' && act === PAPER && parts.length === 2) return { page: 'paper' };
  if (door === 'teach' && act === PACKAGE && parts.length === 2) return { page: 'package' };
  if (door === 'teach' && act === SCENARIOS) {
    const kind = WRITTEN_KINDS.find((each) => each === scenario);
    if (parts.length === 2) return { page: 'scenarios' };
    if (kind !== undefined && way && parts.length === 4) return { page: 'scenario', kind, id: way };
  }
  if (door === 'teach' && act === CLASSES && parts.length === 2) return { page: 'classes' };
  if (door === 'teach' && act === CLASSES && scenario === KEPT && parts.length === 3)
    return { page: 'kept-classes' };
  if (door === 'teach' && act === 'class' && CLASS_WORD.test(scenario ?? '')) {
    const id = scenario ?? '';
    if (parts.length === 3) return { page: 'class', id };
    if (way === RESULTS && parts.length === 4) return { page: 'class-results', id };
    const key = branch ?? '';
    if (way === 'projector' && CLASS_WORD.test(key)) return { page: 'projector', id, key };
  }
  if (door === 'class') {
    const code = CODE_WORD.test(act ?? '') ? (act ?? '').toUpperCase() : '';
    const isSeat = scenario === 'seat' && parts.length === 3 && code !== '';
    return { page: isSeat ? 'seat' : 'join', code };
  }
  if (parts.length === 1 && (door === 'practise' || door === 'teach' || door === 'quiz'))
    return { page: door };
  return { page: 'front' };
}

export function hrefOf(route: Route): string {
  switch (route.page) {
    case 'front':
      return '#/';
    case 'watch':
      return `#/${route.projector ? 'teach/show' : 'practise/watch'}/${encodeURIComponent(route.scenario)}`;
    case 'blind':
      return `#/practise/blind/${route.number}`;
    case 'learner':
      return `#/practise/${LEARNER}`;
    case 'paper':
      return `#/teach/${PAPER}`;
    case 'package':
      return `#/teach/${PACKAGE}`;
    case 'scenarios':
      return `#/teach/${SCENARIOS}`;
    case 'scenario':
      return `#/teach/${SCENARIOS}/${route.kind}/${encodeURIComponent(route.id)}`;
    case 'classes':
      return `#/teach/${CLASSES}`;
    case 'class':
      return `#/teach/class/${route.id}`;
    case 'class-results':
      return `#/teach/class/${route.id}/${RESULTS}`;
    case 'kept-classes':
      return `#/teach/${CLASSES}/${KEPT}`;
    case 'projector':
      return `#/teach/class/${route.id}/projector/${route.key}`;
    case 'join':
      return route.code === '' ? '#/class' : `#/class/${route.code}`;
    case 'seat':
      return `#/class/${route.code}/seat`;
    case 'quiz-taking':
      return `#/quiz/take/${route.quiz}`;
    case 'quiz-result':
      return `#/quiz/result/${route.quiz}`;
    case 'job':
    case 'drill':
    case 'lesson':
      return `#/practise/${route.page}/${encodeURIComponent(route.id)}${
        route.guidance === undefined ? '' : `/${route.guidance}`
      }`;
    case 'branch':
      return `${hrefOf({ page: 'job', id: route.id })}/branch/${route.branch}`;
    default:
      return `#/${route.page}`;
  }
}

function decode(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return '';
  }
}
