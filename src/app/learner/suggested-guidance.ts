import type { Guidance } from '../../../machines/job/index.ts';
import { parseRoute } from '../shell/route.ts';

/** What the address suggests, where one came by a suggestion; null elsewhere. */
export function suggestedGuidance(): Guidance | null {
  const route = parseRoute(location.hash);
  return route.page === 'job' ? (route.guidance ?? null) : null;
}
