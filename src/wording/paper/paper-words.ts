import { say, sayWord } from '../../i18n/index.ts';
import type { UnitSystem } from '../../quantity/index.ts';
import type { Item } from '../../quiz/index.ts';
import { PAPER_PHRASES, type PaperQuestion, type PaperWords } from '../../records/index.ts';
import { type Answer, answerWords, type Names } from '../answer-words.ts';
import { readMoment, sourceWords } from '../check-words.ts';
import { wordItem } from '../quiz/index.ts';

/** What a paper says around its questions. Places such as `{number}` stay open. */
export function paperWords(): PaperWords {
  return Object.fromEntries(
    PAPER_PHRASES.map((phrase) => [phrase, say(`quiz.paper.${phrase}`)]),
  ) as PaperWords;
}

/**
 * A question as it stands on a paper, filed under its first skill: what it asks for most.
 *
 * @param startLines the start as `startWords` tells it
 */
export function paperQuestion(
  item: Item,
  names: Names,
  units: UnitSystem,
  startLines: readonly string[],
): PaperQuestion {
  const skill = sayWord('job.skill', item.skills[0] ?? '');
  const start = item.stem.shows.chart ? startLines : [];
  return {
    item: wordItem(item, names, units, start),
    category: `${skill.charAt(0).toUpperCase()}${skill.slice(1)}`,
    readings: item.stem.readings.map((told) => ({
      of: sourceAt(names, told),
      said: answerWords(names, told, units),
    })),
  };
}

function sourceAt(names: Names, told: Answer & { readonly moment: string }): string {
  const what = sourceWords(names, told.check);
  const moment = readMoment(told);
  return moment === '' ? what : say('quiz.check-at', { what, moment });
}
