import { writeFileSync } from 'node:fs';
import { message, sayMessage } from '../../i18n/index.ts';
import { writtenCards } from '../../quiz/index.ts';
import { composePaper, type Paper } from '../../records/index.ts';
import { phrase } from '../../scenario/index.ts';
import { paperWords } from '../../wording/index.ts';
import { inQuotes, parseArguments } from '../arguments.ts';
import { atlasFolder } from '../atlas/files.ts';
import { issueLines } from '../issue-lines.ts';
import { readLibrary } from '../library.ts';
import { type Outcome, refuse, succeed } from '../outcome.ts';
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
  const parsed = parseArguments(words, SPEC);
  if (!parsed.ok) return refuse(sayMessage(parsed.mistake));
  const library = readLibrary(root);
  if (!library.ok) return refuse(issueLines(library.issues));
  const file = bankFile(root);
  const bank = readBank(file);
  if (bank === null) {
    return refuse(sayMessage(phrase('usage.no-items', { command: COMMAND, file: inQuotes(file) })));
  }
  const cards = [...bank.items, ...writtenCards(library.value.quizzes)];
  const wanted = wantedFrom(parsed.value.options, library.value, cards);
  if (!wanted.ok) return refuse(sayMessage(wanted.mistake));
  const ids = composePaper(wanted.value.choice, cards);
  if (ids.length === 0)
    return refuse(sayMessage(phrase('usage.no-questions', { command: COMMAND })));
  const folder = atlasFolder(root);
  const asked = paperQuestions(library.value, folder, ids, (done) =>
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
