import { front } from './en/front.ts';
import type { en } from './en/index.ts';

export type MessageCode = keyof typeof en;
export type MessageParameters = Readonly<Record<string, string | number>>;
export type Catalogue = Readonly<Record<string, string>>;

/** What is known so far: the first page's sentences, and each catalogue that was added since. */
const spoken: Record<string, string> = { ...front };

/** Makes a catalogue's sentences known; a page adds those it needs before it is shown. */
export function addMessages(catalogue: Catalogue): void {
  Object.assign(spoken, catalogue);
}

/** The sentence of a code, its `{name}` places filled in. A code that is not known here throws. */
export function say(code: MessageCode, parameters: MessageParameters = {}): string {
  const sentence = spoken[code];
  if (sentence === undefined) throw new Error(`no message has the code ${code}`);
  return sentence.replace(/\{(\w+)\}/g, (place, name: string) =>
    name in parameters ? String(parameters[name]) : place,
  );
}

export function isMessage(code: string): code is MessageCode {
  return Object.hasOwn(spoken, code);
}

/** For codes made from words of the machine: an unknown one shows its own words, not a blank. */
export function sayWord(prefix: string, word: string, suffix = ''): string {
  const code = `${prefix}.${slugOf(word)}${suffix}`;
  return isMessage(code) ? say(code) : word;
}

/** 'valve proving: hold empty' → 'valve-proving-hold-empty'; terminals keep their own case. */
export function slugOf(word: string): string {
  return word.replace(/:/g, '').replace(/\s+/g, '-');
}
