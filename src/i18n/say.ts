import { en } from './en/index.ts';

export type Catalogue = Readonly<Record<MessageCode, string>>;
export type MessageCode = keyof typeof en;
export type MessageParameters = Readonly<Record<string, string | number>>;

/** A second language is one more file beside `en` and one more line here. */
const CATALOGUES: Readonly<Record<string, Catalogue>> = { en };
let spoken: Catalogue = en;

export function speak(language: string): void {
  spoken = CATALOGUES[language] ?? en;
}

/** The sentence of a code, its `{name}` places filled in. */
export function say(code: MessageCode, parameters: MessageParameters = {}): string {
  return spoken[code].replace(/\{(\w+)\}/g, (place, name: string) =>
    name in parameters ? String(parameters[name]) : place,
  );
}

export function isMessage(code: string): code is MessageCode {
  return Object.hasOwn(en, code);
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
