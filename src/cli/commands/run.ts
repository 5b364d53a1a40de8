import { createRun, type RunEvent } from '../../engine/index.ts';
import { sayMessage } from '../../i18n/index.ts';
import {
  MAX_RUN_S,
  MAX_SEED,
  type Phrase,
  phrase,
  type RunChoices,
  readActionLog,
} from '../../scenario/index.ts';
import { type CommandSpec, inQuotes, numberWithin, parseArguments } from '../arguments.ts';
import { chooseScenario } from '../choose-scenario.ts';
import { issueLines } from '../issue-lines.ts';
import { jsonLines } from '../json-lines.ts';
import { type Outcome, refuse, succeed } from '../outcome.ts';
import { readTextFile } from '../read-text-file.ts';
import { timeline } from '../timeline.ts';

const SPEC: CommandSpec = {
  command: 'run',
  options: {
    '--seed': { value: phrase('usage.expect.seed', { max: MAX_SEED }) },
    '--until': { value: phrase('usage.expect.seconds', { max: MAX_RUN_S }) },
    '--actions': { value: phrase('usage.expect.file') },
    '--json': {},
  },
  least: 1,
  most: 1,
  expected: phrase('usage.expect.run'),
};
/** Of the clock of the run: a step is a hundredth of a second. */
const STEPS_PER_S = 100;

/** Runs one scenario, job, drill or lesson from rest to its end, without a page. */
export function run(words: readonly string[], root: string): Outcome {
  const parsed = parseArguments(words, SPEC);
  if (!parsed.ok) return refuse(sayMessage(parsed.mistake));
  const { options, positionals } = parsed.value;

  const seed = numberOption(options, '--seed', MAX_SEED, Number.isInteger);
  if (!seed.ok) return refuse(sayMessage(seed.mistake));
  const until = numberOption(options, '--until', MAX_RUN_S, () => true);
  if (!until.ok) return refuse(sayMessage(until.mistake));

  const choice = chooseScenario(positionals[0] ?? '', root, SPEC.command);
  if (!choice.ok) return refuse(choice.mistake);
  const { library, chosen } = choice;

  let choices: RunChoices = seed.value === null ? {} : { seed: seed.value };
  const actionsPath = options.get('--actions');
  if (actionsPath !== undefined) {
    const file = readTextFile(actionsPath);
    const log = file.ok ? readActionLog(file.value, library, chosen) : file;
    if (!log.ok) return refuse(issueLines(log.issues));
    choices = { ...choices, actions: log.value };
  }
  const setup = chosen.setup(choices, actionsPath === undefined);
  if (setup === null) throw new Error(`a checked library lacks what ${chosen.id} needs`);

  const engine = createRun(setup);
  const untilS = until.value ?? chosen.untilS;
  engine.advanceTo(Math.floor(untilS * STEPS_PER_S + 1e-6) / STEPS_PER_S);
  const { step, lockout } = engine.status();
  const end: RunEvent = { t: engine.timeS(), type: 'end', step, lockout, hash: engine.hash() };
  const events = [...engine.events().filter(({ type }) => type !== 'end'), end];
  return succeed(
    options.has('--json') ? jsonLines(events) : timeline(events, { chosen, setup, run: engine }),
  );
}

type NumberOption =
  | { readonly ok: true; readonly value: number | null }
  | { readonly ok: false; readonly mistake: Phrase };

function numberOption(
  options: ReadonlyMap<string, string>,
  option: string,
  max: number,
  isFine: (value: number) => boolean,
): NumberOption {
  const text = options.get(option);
  if (text === undefined) return { ok: true, value: null };
  const value = numberWithin(text, 0, max);
  if (value !== null && isFine(value)) return { ok: true, value };
  const expected = SPEC.options[option]?.value ?? phrase('expected.something-else');
  const params = { command: SPEC.command, option, found: inQuotes(text), expected };
  return { ok: false, mistake: phrase('usage.bad-value', params) };
}
