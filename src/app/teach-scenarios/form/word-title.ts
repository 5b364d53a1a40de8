import { isMessage, say, slugOf } from '../../../i18n/index.ts';
import type { Path } from '../../../scenario/editing/index.ts';

/** Where the words of a key have names in the catalogue already. */
const PREFIXES: Readonly<Record<string, readonly [string, string]>> = {
  step: ['step', '.title'],
  reaches: ['step', '.title'],
  steps: ['step', '.title'],
  cause: ['cause', ''],
  skill: ['job.skill', ''],
  skills: ['job.skill', ''],
  topic: ['job.topic', ''],
  tools: ['bench.tool', ''],
  do: ['author.do', ''],
  allow: ['author.do', ''],
  way: ['job.way', ''],
  truth: ['author.truth', ''],
  kind: ['quiz.kind', ''],
  what: ['author.what', ''],
  mode: ['author.mode', ''],
};

/** A word of the file as people read it; the word itself where no other is known. */
export function wordTitle(path: Path, word: string): string {
  const key = path.findLast((part) => typeof part === 'string') ?? '';
  const [prefix, suffix] = PREFIXES[key] ?? ['', ''];
  const code = `${prefix}.${slugOf(word)}${suffix}`;
  const title = isMessage(code) ? say(code) : word;
  return title.charAt(0).toUpperCase() + title.slice(1);
}
