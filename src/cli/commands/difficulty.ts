import { message, sayMessage } from '../../i18n/index.ts';
import {
  type ItemCard,
  type LearnerAnswer,
  learnerAnswers,
  type Moved,
  movedBy,
  writtenCards,
} from '../../quiz/index.ts';
import { readRecord } from '../../records/answers/index.ts';
import { phrase } from '../../scenario/index.ts';
import { type CommandSpec, inQuotes } from '../arguments.ts';
import { begin } from '../begin.ts';
import { issueLines } from '../issue-lines.ts';
import { type Outcome, refuse, succeed } from '../outcome.ts';
import { bankFile, readBank, writeBank } from '../quiz/bank-file.ts';
import { readTextFile } from '../read-text-file.ts';
import { alignColumns } from '../table.ts';

const SPEC: CommandSpec = {
  command: 'difficulty',
  options: { '--write': {} },
  least: 1,
  most: Number.POSITIVE_INFINITY,
  expected: phrase('usage.expect.answers'),
};

/** How hard items have shown to be, from the answer files of a class: one file is one learner. */
export function difficulty(words: readonly string[], root: string): Outcome {
  const begun = begin(words, SPEC, root);
  if (!begun.ok) return begun.outcome;
  const { options, library } = begun;
  const answers: LearnerAnswer[] = [];
  for (const path of new Set(begun.positionals)) {
    const read = readTextFile(path);
    if (!read.ok) return refuse(issueLines(read.issues));
    const { record, issues } = readRecord(read.value.text);
    const [first] = issues;
    if (first !== undefined) {
      const where = first.where === '' ? phrase('difficulty.whole') : first.where;
      const params = { file: inQuotes(path), where };
      return refuse(sayMessage(phrase(`difficulty.${first.trouble.replaceAll(' ', '-')}`, params)));
    }
    answers.push(...learnerAnswers(path, record.answers));
  }
  const file = bankFile(root);
  const bank = readBank(file);
  const cards = [...(bank?.items ?? []), ...writtenCards(library.quizzes)];
  const moved = movedBy(cards, answers);
  if (bank !== null && options.has('--write')) {
    writeBank(file, { ...bank, moved: { ...bank.moved, ...moved } });
  }
  return succeed(tableOf(cards, moved));
}

function tableOf(cards: readonly ItemCard[], moved: Moved): string {
  const rows = cards.flatMap(({ id, difficulty: first }) => {
    const shown = moved[id];
    if (shown === undefined) return [];
    const { learners, difficulty: now } = shown;
    return [
      [id, message('difficulty.moved', { first: first.toFixed(2), now: now.toFixed(2), learners })],
    ];
  });
  return rows.length === 0 ? message('difficulty.too-few') : alignColumns(rows);
}
