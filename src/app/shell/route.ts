import type { Guidance } from '../../../machines/job/index.ts';

export type Route =
  | { readonly page: 'front' }
  | { readonly page: 'practise' }
  /** The learner map. */
  | { readonly page: 'learner' }
  | { readonly page: 'teach' }
  /** Questions on paper. */
  | { readonly page: 'paper' }
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

const GUIDANCE = ['guided', 'practice', 'assessment'] as const satisfies readonly Guidance[];
const LEARNER = 'map';
const PAPER = 'paper';
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
