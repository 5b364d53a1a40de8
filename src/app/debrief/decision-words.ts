import type { JudgedDecision } from '../../diagnosis/index.ts';
import { say, sayWord } from '../../i18n/index.ts';
import { momentWords, partWords } from '../../wording/index.ts';

export type DecisionLike = Pick<JudgedDecision, 'kind' | 'what' | 'way' | 'moments'>;

/** More moments than these are a start, not a list. */
const MOST_MOMENTS = 2;
const NO_STEP: ReadonlySet<string> = new Set(['lockout', 'at rest', 'standing', 'isolated', '']);

/** What was decided, in one line. */
export function decisionWords(
  { kind, what, way, moments }: DecisionLike,
  check: (name: string) => string,
  wayOf: (way: string) => string,
): string {
  switch (kind) {
    case 'arrive':
      return say('debrief.decision.arrive');
    case 'watch':
      return watchWords(moments);
    case 'check':
      return whereAndWhen(check(what), moments);
    case 'ask':
      return say('debrief.decision.ask', { topic: sayWord('job.topic', what) });
    case 'work':
      return say('debrief.decision.work', { part: partWords(what), way: wayOf(way) });
    case 'suspect':
      return what === ''
        ? say('debrief.decision.suspect-none')
        : say('debrief.decision.suspect', { part: partWords(what) });
    case 'claim':
      return say('debrief.decision.claim', { part: partWords(what) });
    case 'withdraw':
      return say('debrief.decision.withdraw');
  }
}

function watchWords(all: readonly string[]): string {
  const moments = all.filter((moment) => moment !== 'standing' && moment !== '');
  if (moments.length === 0) return say('debrief.decision.watch-only');
  return moments.length > MOST_MOMENTS
    ? say('debrief.decision.watch-through', { step: furthestWords(moments) })
    : say('debrief.decision.watch', { moments: moments.map(momentWords).join(', ') });
}

/** What stands the same all the time is said without a moment. */
export function whereAndWhen(what: string, moments: readonly string[]): string {
  const told = moments.filter((moment) => moment !== 'standing' && moment !== '');
  if (told.length === 0) return what;
  return told.length > MOST_MOMENTS
    ? say('debrief.decision.through', { what, step: furthestWords(told) })
    : say('debrief.decision.check', { what, when: told.map(momentWords).join(', ') });
}

/** The step a start was followed to; how it ended is another matter. */
function furthestWords(moments: readonly string[]): string {
  const last = moments.findLast((moment) => !NO_STEP.has(moment)) ?? 'lockout';
  return sayWord('step', last, '.title').toLowerCase();
}
