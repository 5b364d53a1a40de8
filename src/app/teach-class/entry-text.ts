import type { ClassEntry } from '../../../machines/class/index.ts';
import { say, sayWord } from '../../i18n/index.ts';
import { clockText } from '../working/clock-text.ts';
import { actText } from './act-text.ts';
import { toText } from './to-text.ts';

/** One line of what was said in the class. */
export function entryText(entry: ClassEntry): string {
  switch (entry.type) {
    case 'open':
      return say('teach-class.log.open', { title: entry.what.title });
    case 'freeze':
    case 'next step':
      return say(entry.type === 'freeze' ? 'teach-class.log.freeze' : 'teach-class.log.next-step', {
        who: toText(entry.to),
      });
    case 'run':
      return say('teach-class.log.run', { who: toText(entry.to), speed: entry.speed });
    case 'rewind':
      return say('teach-class.log.rewind', {
        who: toText(entry.to),
        time: clockText(entry.toS),
      });
    case 'rewind by':
      return say('teach-class.log.rewind-by', { who: toText(entry.to), seconds: entry.byS });
    case 'do':
      return say('teach-class.log.do', {
        who: toText(entry.to),
        what: entry.acts.map(actText).join(', '),
      });
    case 'when':
      return say('teach-class.log.when', {
        who: toText(entry.to),
        step: sayWord('step', entry.step, '.title'),
        what: entry.acts.map(actText).join(', '),
      });
    case 'lock tools':
      return entry.tools.length === 0
        ? say('teach-class.tools.none')
        : say('teach-class.tools.locked', {
            tools: entry.tools.map((tool) => sayWord('bench.tool', tool)).join(', '),
          });
    case 'hint':
      return say('teach-class.log.hint', { who: toText(entry.to), text: entry.text });
    case 'poll':
      return say('teach-class.log.poll', { text: entry.question.text });
    case 'spotlight':
      return entry.seat === null
        ? say('teach-class.spotlight.none')
        : say('teach-class.spotlight.now', { seat: entry.seat });
    case 'project':
      return say('teach-class.log.project', { what: sayWord('teach-class.show', entry.shows) });
    case 'begin':
    case 'forget when':
    case 'show poll':
    case 'end poll':
    case 'close':
      return sayWord('teach-class.log', entry.type);
  }
}
