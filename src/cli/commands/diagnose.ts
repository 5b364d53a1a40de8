import { type CaseDiagnosed, diagnoseCase, rankCorrelation } from '../../diagnosis/index.ts';
import { message, sayMessage } from '../../i18n/index.ts';
import { phrase } from '../../scenario/index.ts';
import { type CommandSpec, inQuotes, parseArguments } from '../arguments.ts';
import { atlasFolder } from '../atlas/files.ts';
import { chooseScenario } from '../choose-scenario.ts';
import { diagnosisText } from '../diagnosis-text.ts';
import { exerciseCases, runnableJob } from '../exercise-case.ts';
import { issueLines } from '../issue-lines.ts';
import { readLibrary } from '../library.ts';
import { type Outcome, refuse, succeed } from '../outcome.ts';
import { alignColumns } from '../table.ts';

const SPEC: CommandSpec = {
  command: 'diagnose',
  options: { '--atlas': { value: phrase('usage.expect.folder') }, '--json': {}, '--all': {} },
  least: 0,
  most: 1,
  expected: phrase('usage.expect.diagnose'),
};

/** What an exercise can be told by, what cannot be told from it, and how hard that is. */
export function diagnose(words: readonly string[], root: string): Outcome {
  const parsed = parseArguments(words, SPEC);
  if (!parsed.ok) return refuse(sayMessage(parsed.mistake));
  const { options, positionals } = parsed.value;
  const folder = options.get('--atlas') ?? atlasFolder(root);
  const asData = options.has('--json');
  const { command, expected } = SPEC;
  const [name] = positionals;
  if (options.has('--all')) {
    if (name === undefined) return allJobs(root, folder, asData);
    const found = inQuotes(name);
    return refuse(sayMessage(phrase('usage.too-many-arguments', { command, found, expected })));
  }
  if (name === undefined) {
    return refuse(sayMessage(phrase('usage.missing-argument', { command, expected })));
  }
  const choice = chooseScenario(name, root, command);
  if (!choice.ok) return refuse(choice.mistake);
  const one = exerciseCases(choice.library, folder, command)(choice.chosen);
  if (!one.ok) return refuse(sayMessage(one.mistake));
  const found = diagnoseCase(one.value);
  return succeed(asData ? JSON.stringify(found) : diagnosisText(one.value, found));
}

/** One line a job, and how far its difficulty agrees with the level that its writer gave it. */
function allJobs(root: string, folder: string, asData: boolean): Outcome {
  const library = readLibrary(root);
  if (!library.ok) return refuse(issueLines(library.issues));
  const caseOf = exerciseCases(library.value, folder, SPEC.command);
  const all: (CaseDiagnosed & { readonly id: string; readonly level: number })[] = [];
  for (const job of library.value.jobs) {
    const one = caseOf(runnableJob(library.value, job));
    if (!one.ok) return refuse(sayMessage(one.mistake));
    all.push({ id: job.id, level: job.level, ...diagnoseCase(one.value) });
  }
  if (asData) return succeed(JSON.stringify(all));
  const rows = all.map(({ id, level, difficulty, checks, minutes, found, rounds }) => [
    id,
    message('list.level', { level }),
    message('diagnose.all.difficulty', { difficulty }),
    message('diagnose.all.checks', { count: checks }),
    message('diagnose.minutes', { minutes: minutes.toFixed(1) }),
    message(found ? 'diagnose.all.found' : 'diagnose.all.not-found'),
    message('diagnose.all.rest', {
      count: Math.max(...rounds.map(({ inseparable }) => inseparable.length)),
    }),
  ]);
  const levels = all.map(({ level }) => level);
  const agreement = rankCorrelation(
    levels,
    all.map(({ score }) => score),
  );
  return succeed(
    `${alignColumns(rows)}\n${message('diagnose.all.agreement', { agreement: agreement.toFixed(2) })}`,
  );
}
