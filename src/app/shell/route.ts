export type Route =
  | { readonly page: 'front' }
  | { readonly page: 'practise' }
  | { readonly page: 'teach' }
  | { readonly page: 'quiz' }
  | { readonly page: 'watch'; readonly scenario: string; readonly projector: boolean }
  /** A start with something wrong, by number only, so that no title gives it away. */
  | { readonly page: 'blind'; readonly number: number }
  | { readonly page: ExercisePage; readonly id: string };

export const EXERCISE_PAGES = ['job', 'drill', 'lesson'] as const;
export type ExercisePage = (typeof EXERCISE_PAGES)[number];

/** Routes live behind the `#`, so that any server, or none, can serve the page. */
export function parseRoute(hash: string): Route {
  const parts = hash
    .replace(/^#\/?/, '')
    .split('/')
    .filter((part) => part !== '');
  const [door, act, scenario] = parts.map(decode);
  if (door === 'practise' && act === 'watch' && scenario)
    return { page: 'watch', scenario, projector: false };
  if (door === 'teach' && act === 'show' && scenario)
    return { page: 'watch', scenario, projector: true };
  if (door === 'practise' && act === 'blind' && scenario && /^\d{1,4}$/.test(scenario))
    return { page: 'blind', number: Number(scenario) };
  const exercise = EXERCISE_PAGES.find((page) => page === act);
  if (door === 'practise' && exercise !== undefined && scenario)
    return { page: exercise, id: scenario };
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
    case 'job':
    case 'drill':
    case 'lesson':
      return `#/practise/${route.page}/${encodeURIComponent(route.id)}`;
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
