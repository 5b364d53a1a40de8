import { en } from '../../i18n/en/index.ts';
import { addMessages, sayMessage } from '../../i18n/index.ts';
import { nearest, phrase } from '../../scenario/index.ts';
import { inQuotes, perhaps } from '../arguments.ts';
import { type Outcome, refuse, succeed } from '../outcome.ts';
import { atlas } from './atlas.ts';
import { check } from './check.ts';
import { diagnose } from './diagnose.ts';
import { difficulty } from './difficulty.ts';
import { items } from './items.ts';
import { learners } from './learners.ts';
import { list } from './list.ts';
import { packageForLms } from './package.ts';
import { paper } from './paper.ts';
import { run } from './run.ts';
import { schema } from './schema.ts';

addMessages(en);

const COMMANDS: ReadonlyMap<string, (words: readonly string[], root: string) => Outcome> = new Map([
  ['run', run],
  ['check', check],
  ['diagnose', diagnose],
  ['difficulty', difficulty],
  ['list', list],
  ['schema', schema],
  ['help', () => succeed(sayMessage(phrase('cli.help')))],
]);
/** Those that work on all cores for a while, and say how far they are. */
const LONG_COMMANDS: ReadonlyMap<
  string,
  (words: readonly string[], root: string, tell: (line: string) => void) => Promise<Outcome>
> = new Map([
  ['atlas', atlas],
  ['items', items],
  ['learners', learners],
  ['package', packageForLms],
  ['paper', paper],
]);
const CALLS_FOR_HELP: ReadonlySet<string> = new Set(['help', '--help', '-h']);

/** @returns null where the words ask for none of the long ones */
export function runLongCommand(
  [name = '', ...rest]: readonly string[],
  root: string,
  tell: (line: string) => void,
): Promise<Outcome> | null {
  if (rest.some((word) => word === '--help' || word === '-h')) return null;
  return LONG_COMMANDS.get(name)?.(rest, root, tell) ?? null;
}

/** @param root the folder of the project, where the shipped scenarios lie */
export function runCommand(words: readonly string[], root: string): Outcome {
  const [name, ...rest] = words;
  if (name === undefined) return refuse(sayMessage(phrase('cli.help')));
  if (CALLS_FOR_HELP.has(name) || rest.some((word) => word === '--help' || word === '-h')) {
    return succeed(sayMessage(phrase('cli.help')));
  }
  const command = COMMANDS.get(name);
  if (command !== undefined) return command(rest, root);
  const known = [...COMMANDS.keys(), ...LONG_COMMANDS.keys()];
  const mistake = phrase('usage.unknown-command', {
    found: inQuotes(name),
    expected: phrase('expected.one-of', { words: known }),
    perhaps: perhaps(nearest(name, known)),
  });
  return refuse(`${sayMessage(mistake)}\n${sayMessage(phrase('cli.see-help'))}`);
}
