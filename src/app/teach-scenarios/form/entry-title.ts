import { say } from '../../../i18n/index.ts';
import { isGroup, type Path, type Plain } from '../../../scenario/editing/index.ts';
import { wordTitle } from './word-title.ts';

const MOST = 70;

/** An entry in one line: what it is, before it is opened. */
export function entryTitle(path: Path, entry: Plain): string {
  if (!isGroup(entry)) return String(entry);
  const { at } = entry;
  const said = Object.entries(entry)
    .filter(([key, value]) => key !== 'at' && typeof value !== 'object')
    .slice(0, 2)
    .map(([key, value]) =>
      typeof value === 'string' ? wordTitle([...path, key], value) : String(value),
    )
    .filter((text) => text !== '')
    .join(', ');
  const words = said === '' ? say('author.entry.empty') : said;
  const line = typeof at === 'number' ? say('author.entry.at', { at, what: words }) : words;
  return line.length > MOST ? `${line.slice(0, MOST)}…` : line;
}
