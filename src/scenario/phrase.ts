/**
 * What is to be said, as a code with parameters; the sentences are in src/i18n.
 * A parameter may itself be a phrase, or a list of words.
 */
export interface Phrase {
  readonly code: string;
  readonly params?: Readonly<Record<string, PhraseValue>>;
}
export type PhraseValue = string | number | Phrase | readonly string[];

export function phrase(code: string, params?: Readonly<Record<string, PhraseValue>>): Phrase {
  return params === undefined ? { code } : { code, params };
}

/** The empty phrase: says nothing where a sentence has room for a remark. */
export const NOTHING_TO_ADD: Phrase = { code: 'nothing-to-add' };
