import type { DeskState } from '../../../machines/job/index.ts';
import { say } from '../../i18n/index.ts';

/** How much help there was, and how much of it was taken. */
export function helpWords({ guidance, hints, feedbacks }: DeskState): string {
  const furthest = Math.max(...hints.map(({ rung }) => rung), 0) as 0 | 1 | 2 | 3;
  const taken = [
    ...(hints.length === 0
      ? []
      : [
          say('debrief.help.hints', {
            count: hints.length,
            rung: say(`debrief.rung.${furthest}`),
          }),
        ]),
    ...(feedbacks.length === 0
      ? []
      : [
          say(feedbacks.length === 1 ? 'debrief.help.feedback-one' : 'debrief.help.feedbacks', {
            count: feedbacks.length,
          }),
        ]),
  ];
  if (guidance === 'assessment') return '';
  return taken.length === 0 ? say('debrief.help.none') : taken.join(' ');
}
