import { NOTHING_TO_ADD, nearest, type Phrase, phrase } from '../scenario/index.ts';

export interface OptionSpec {
  /** What its value must be; without this the option takes none. */
  readonly value?: Phrase;
}
export interface CommandSpec {
  readonly command: string;
  readonly options: Readonly<Record<string, OptionSpec>>;
  readonly least: number;
  readonly most: number;
  readonly expected: Phrase;
}
export interface Arguments {
  readonly positionals: readonly string[];
  readonly options: ReadonlyMap<string, string>;
}
export type ParsedArguments =
  | { readonly ok: true; readonly value: Arguments }
  | { readonly ok: false; readonly mistake: Phrase };

/** Splits what follows a command into names and options; `--` ends the options. */
export function parseArguments(words: readonly string[], spec: CommandSpec): ParsedArguments {
  const { command } = spec;
  const positionals: string[] = [];
  const options = new Map<string, string>();
  const mistake = (code: string, params: Phrase['params']): ParsedArguments => ({
    ok: false,
    mistake: phrase(`usage.${code}`, { command, ...params }),
  });
  for (let i = 0; i < words.length; i++) {
    const word = words[i] ?? '';
    if (word === '--') {
      positionals.push(...words.slice(i + 1));
      break;
    }
    if (!word.startsWith('-') || word === '-') {
      positionals.push(word);
      continue;
    }
    const [name = word, inline] = splitOnce(word);
    const known = Object.keys(spec.options);
    const option = Object.hasOwn(spec.options, name) ? spec.options[name] : undefined;
    if (option === undefined) {
      if (known.length === 0) return mistake('no-options', { found: inQuotes(word) });
      const expected = phrase('expected.one-of', { words: known });
      return mistake('unknown-option', {
        found: inQuotes(name),
        expected,
        perhaps: perhaps(nearest(name.replace(/^-+/, '--'), known)),
      });
    }
    const found = inQuotes(name);
    if (options.has(name)) return mistake('option-twice', { found });
    if (option.value === undefined) {
      if (inline !== undefined) return mistake('option-with-value', { found });
      options.set(name, '');
      continue;
    }
    const value = inline ?? words[++i];
    if (value === undefined || (inline === undefined && value.startsWith('--'))) {
      return mistake('option-without-value', { found, expected: option.value });
    }
    options.set(name, value);
  }
  if (positionals.length < spec.least) {
    return mistake('missing-argument', { expected: spec.expected });
  }
  if (positionals.length > spec.most) {
    const extra = inQuotes(positionals[spec.most] ?? '');
    return mistake('too-many-arguments', { found: extra, expected: spec.expected });
  }
  return { ok: true, value: { positionals, options } };
}

export function perhaps(word: string | null): Phrase {
  return word === null ? NOTHING_TO_ADD : phrase('issue.perhaps', { word });
}

export function inQuotes(text: string): Phrase {
  return phrase('found.text', { text });
}

/** A number written plainly, within its bounds; null for anything else. */
export function numberWithin(text: string, min: number, max: number): number | null {
  if (!/^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i.test(text.trim())) return null;
  const value = Number(text);
  return value >= min && value <= max ? value : null;
}

function splitOnce(word: string): [string, string?] {
  const cut = word.indexOf('=');
  return cut < 0 ? [word] : [word.slice(0, cut), word.slice(cut + 1)];
}
