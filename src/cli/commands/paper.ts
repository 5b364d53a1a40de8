import { writeFileSync } from 'node:fs';
import { message, sayMessage } from '../../i18n/index.ts';
import { composePaper, type Paper } from '../../records/index.ts';
import { phrase } from '../../scenario/index.ts';
import { paperWords } from '../../wording/index.ts';
import { inQuotes } from '../arguments.ts';
import { atlasFolder } from '../atlas/files.ts';
import { begin } from '../begin.ts';
import { type Outcome, refuse, succeed } from '../outcome.ts';
import { paperCards } from '../paper/cards.ts';
import { paperInForm } from '../paper/forms.ts';
import { paperQuestions } from '../paper/questions.ts';
import { COMMAND, SPEC, type Wanted, wantedFrom } from '../paper/wanted.ts';
import { bankFile, readBank } from '../quiz/bank-file.ts';

/** Questions for a class with their key, the same for the same number and choices. */
export async function paper(
  words: readonly string[],
  root: string,
  tell: (line: string) => void,
): Promise<Outcome> {
  const begun = begin(words, SPEC, root);
  if (!begun.ok) return begun.outcome;
  const { options, library } = begun;
  const file = bankFile(root);
  const bank = readBank(file);
  if (bank === null) {
    return refuse(sayMessage(phrase('usage.no-items', { command: COMMAND, file: inQuotes(file) })));
  }
  const cards = paperCards(bank, library);
  const wanted = wantedFrom(options, library, cards);
  if (!wanted.ok) return refuse(sayMessage(wanted.mistake));
  const ids = composePaper(wanted.value.choice, cards);
  if (ids.length === 0)
    return refuse(sayMessage(phrase('usage.no-questions', { command: COMMAND })));
  const folder = atlasFolder(root);
  const asked = paperQuestions(library, folder, ids, (done) =>
    tell(message('paper.progress', { done, of: ids.length })),
  );
  if (!asked.ok) {
    const plant = inQuotes(asked.plantWithoutAtlas);
    const params = { command: COMMAND, plant, folder: inQuotes(folder) };
    return refuse(sayMessage(phrase('usage.no-atlas', params)));
  }
  const { questions, leftOut } = asked;
  for (const id of leftOut) tell(message('paper.left-out', { id }));
  if (ids.length < wanted.value.choice.count) tell(message('paper.fewer', { count: ids.length }));
  const made: Paper = { number: wanted.value.choice.number, questions, words: paperWords() };
  return put(made, wanted.value, root);
}

function put(made: Paper, { form, file }: Wanted, root: string): Outcome {
  const data = paperInForm(made, form, root);
  if (file === null) return succeed(String(data));
  try {
    writeFileSync(file, data);
  } catch {
    const params = { command: COMMAND, found: inQuotes(file) };
    return refuse(sayMessage(phrase('usage.not-written', params)));
  }
  return succeed(message('paper.written', { file, count: made.questions.length }));
}
