import { writeFileSync } from 'node:fs';
import { message, sayMessage } from '../../i18n/index.ts';
import { lmsPackage } from '../../records/lms/index.ts';
import { phrase } from '../../scenario/index.ts';
import { inQuotes } from '../arguments.ts';
import { begin } from '../begin.ts';
import { buildPageIfStale } from '../house/page-build.ts';
import { DIST } from '../house/paths.ts';
import { type Outcome, refuse, succeed } from '../outcome.ts';
import { pageFiles } from '../package/page-files.ts';
import { COMMAND, SPEC, wantedPackage } from '../package/wanted.ts';
import { paperCards } from '../paper/cards.ts';
import { bankFile, readBank } from '../quiz/bank-file.ts';

/** The whole page about one exercise, as a package for a learning system. */
export async function packageForLms(
  words: readonly string[],
  root: string,
  tell: (line: string) => void,
): Promise<Outcome> {
  const begun = begin(words, SPEC, root);
  if (!begun.ok) return begun.outcome;
  const { library } = begun;
  const wanted = wantedPackage(begun, library, () => {
    const bank = readBank(bankFile(root));
    return bank === null ? null : paperCards(bank, library);
  });
  if (!wanted.ok) return refuse(sayMessage(wanted.mistake));
  const { packaged, about, file } = wanted.value;
  tell(message('package.building'));
  await buildPageIfStale();
  const made = lmsPackage(packaged, pageFiles(DIST), { about });
  try {
    writeFileSync(file, made.data);
  } catch {
    const params = { command: COMMAND, found: inQuotes(file) };
    return refuse(sayMessage(phrase('usage.not-written', params)));
  }
  const kilobytes = Math.ceil(made.data.length / 1024);
  return succeed(message('package.written', { file, title: packaged.title, kilobytes }));
}
