/** What an item says, without words: a code of the catalogue and what fills its places. Plain data. */
import type { Told } from '../../diagnosis/index.ts';
import type { QuantityKind } from '../../quantity/index.ts';

export interface Statement {
  /** Of the catalogue; `quiz.as-written` with a text where an author wrote it. */
  readonly code: string;
  readonly with?: Readonly<Record<string, Term>>;
}

/** One thing named within a sentence; each is worded in one way, wherever it stands. */
export type Term =
  | string
  | number
  /** A fault by its plain words; null: nothing is wrong. */
  | { readonly is: 'cause'; readonly fault: string | null }
  /** A part by which causes are named. */
  | { readonly is: 'part'; readonly part: string }
  /** What is done where, and when. */
  | { readonly is: 'check'; readonly check: string; readonly moment: string }
  /** One thing that was read. */
  | { readonly is: 'reading'; readonly told: Told }
  /** The same without what was read and when: "low, 12.3 mbar". */
  | { readonly is: 'said'; readonly told: Told }
  /** A number with its unit, kept in SI. */
  | { readonly is: 'amount'; readonly value: number; readonly of: QuantityKind }
  | { readonly is: 'step'; readonly step: string }
  /** A word of the program by its prefix in the catalogue, as in `cause` or `input`. */
  | { readonly is: 'word'; readonly of: string; readonly word: string; readonly suffix?: string }
  /** A test point of the plant, by its id. */
  | { readonly is: 'place'; readonly place: string; readonly tool: string }
  | { readonly is: 'statement'; readonly statement: Statement }
  | { readonly is: 'list'; readonly of: readonly Term[] };
