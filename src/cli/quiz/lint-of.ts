import { createRun } from '../../engine/index.ts';
import { findFault } from '../../faults/index.ts';
import {
  type Item,
  type LintFinding,
  lintItem,
  lintWords,
  type QuizPlant,
} from '../../quiz/index.ts';
import { LINT_VOCABULARY, namesOfPlant, wordItem } from '../../wording/index.ts';

/** What is wrong with an item of a plant, by its structure and as it reads. */
export function lintOf({
  sound,
}: Pick<QuizPlant, 'sound'>): (item: Item) => readonly LintFinding[] {
  const { channels } = createRun(sound, { keep: 'hash only' });
  const names = namesOfPlant(sound.plant, channels);
  const partOf = (fault: string) => findFault(fault)?.component ?? fault;
  return (item) => [
    ...lintItem(item, { partOf }),
    ...lintWords(wordItem(item, names), LINT_VOCABULARY),
  ];
}
