import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { INPUTS } from '../../../machines/burner/index.ts';
import {
  type Atlas,
  type CaseDiagnosed,
  decodeAtlas,
  diagnoseCase,
  partsOfCheck,
  planOf,
  sampleOfCase,
} from '../../diagnosis/index.ts';
import { message, sayMessage } from '../../i18n/index.ts';
import { jobSetup, phrase } from '../../scenario/index.ts';
import { type CommandSpec, inQuotes, parseArguments } from '../arguments.ts';
import { chooseJob } from '../choose-job.ts';
import { type Outcome, refuse, succeed } from '../outcome.ts';
import { soundSetup } from '../sound-setup.ts';
import { alignColumns } from '../table.ts';

const SPEC: CommandSpec = {
  command: 'diagnose',
  options: { '--atlas': { value: phrase('usage.expect.folder') }, '--json': {} },
  least: 1,
  most: 1,
  expected: phrase('usage.expect.job'),
};

/** What a job can be told by, what cannot be told from it, and how hard that is. */
export function diagnose(words: readonly string[], root: string): Outcome {
  const parsed = parseArguments(words, SPEC);
  if (!parsed.ok) return refuse(sayMessage(parsed.mistake));
  const { options, positionals } = parsed.value;
  const choice = chooseJob(positionals[0] ?? '', root, SPEC.command);
  if (!choice.ok) return refuse(choice.mistake);
  const { library, job } = choice;
  const folder = options.get('--atlas') ?? join(root, 'assets', 'page', 'atlas');
  const atlas = readAtlas(join(folder, `${job.plant}.json`));
  const sound = soundSetup(library, job.plant);
  const own = jobSetup(library, 'job', job.id);
  if (atlas === null || sound === null || own === null) {
    const params = { command: SPEC.command, plant: inQuotes(job.plant), folder: inQuotes(folder) };
    return refuse(sayMessage(phrase('usage.no-atlas', params)));
  }
  const found = diagnoseCase({
    atlas,
    truth: sampleOfCase(planOf(sound), own),
    own: job.cause ?? job.faults.map(({ fault }) => fault),
    tools: job.tools,
  });
  return succeed(options.has('--json') ? JSON.stringify(found) : inWords(job.id, found));
}

function readAtlas(file: string): Atlas | null {
  return existsSync(file) ? decodeAtlas(readFileSync(file, 'utf8')) : null;
}

function inWords(
  id: string,
  { inseparable, path, minutes, found, difficulty, wouldSeparate }: CaseDiagnosed,
): string {
  const steps = path.map((step, i) => [
    `${i + 1}`,
    nameOf(step.check),
    step.moment,
    message('diagnose.minutes', { minutes: step.minutes.toFixed(1) }),
    message('diagnose.bits', { bits: step.bits.toFixed(2) }),
    message('diagnose.share', { percent: Math.round(100 * step.share) }),
    toldInWords(step.told),
  ]);
  const rest = inseparable.map((fault) => fault ?? message('diagnose.nothing-wrong'));
  return [
    message('diagnose.heading', { id, difficulty, minutes: minutes.toFixed(0) }),
    message(path.length === 0 ? 'diagnose.at-once' : 'diagnose.path'),
    ...(steps.length === 0 ? [] : [alignColumns(steps)]),
    message(found ? 'diagnose.found' : 'diagnose.not-found'),
    rest.length === 0
      ? message('diagnose.all-told')
      : message('diagnose.not-told', { faults: rest.join(', ') }),
    ...separation(rest.length, wouldSeparate),
  ].join('\n');
}

function toldInWords(told: CaseDiagnosed['path'][number]['told']): string {
  if (told.length === 0) return message('diagnose.as-sound');
  return told.map(({ aspect, word }) => `${inputNamed(aspect)}: ${word}`).join('; ');
}

/** Inputs of the controller are counted in the atlas. */
function inputNamed(aspect: string): string {
  const [, bit] = /^input (\d+)$/.exec(aspect) ?? [];
  return (bit === undefined ? undefined : INPUTS[Number(bit)]) ?? aspect;
}

function separation(rest: number, would: CaseDiagnosed['wouldSeparate']): string[] {
  if (rest === 0) return [];
  return would === null
    ? [message('diagnose.no-check-separates')]
    : [message('diagnose.would-separate', { check: nameOf(would.check), moment: would.moment })];
}

function nameOf(check: string): string {
  const { what, place, other } = partsOfCheck(check);
  return [what, place, other].filter((part) => part !== '').join(', ');
}
