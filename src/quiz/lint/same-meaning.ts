import type { Statement, Term } from '../item/statement.ts';

/** Two numbers nearer than this are one answer, as a share of the greater. */
const AS_GOOD_AS_EQUAL = 0.01;

/** The part that a fault is mended at; the fault itself where it is not known. */
export type PartOf = (fault: string) => string;

/** Whether two statements come to the same: word by word, by the part of a cause, by how near numbers are. */
export function sameMeaning(one: Statement, other: Statement, partOf: PartOf): boolean {
  if (one.code !== other.code) return false;
  const [these, those] = [one.with ?? {}, other.with ?? {}];
  const names = new Set([...Object.keys(these), ...Object.keys(those)]);
  return [...names].every((name) => {
    const [a, b] = [these[name], those[name]];
    return a !== undefined && b !== undefined && sameTerm(a, b, partOf);
  });
}

/** What kind of statement it is, whatever stands in its places. */
export function kindOfStatement({ code, with: places = {} }: Statement): string {
  const kinds = Object.keys(places)
    .sort()
    .map((name) => `${name}:${kindOfTerm(places[name] as Term)}`);
  return [code, ...kinds].join(' ');
}

function kindOfTerm(term: Term): string {
  if (typeof term !== 'object') return typeof term;
  if (term.is === 'statement') return kindOfStatement(term.statement);
  return term.is === 'amount' ? `${term.is} of ${term.of}` : term.is;
}

function sameTerm(a: Term, b: Term, partOf: PartOf): boolean {
  if (typeof a === 'string' && typeof b === 'string') return folded(a) === folded(b);
  if (typeof a === 'number' && typeof b === 'number') return nearlyEqual(a, b);
  if (typeof a !== 'object' || typeof b !== 'object') return false;
  if (a.is === 'cause' && b.is === 'cause') {
    if (a.fault === null || b.fault === null) return a.fault === b.fault;
    return partOf(a.fault) === partOf(b.fault);
  }
  if (a.is === 'amount' && b.is === 'amount') return a.of === b.of && nearlyEqual(a.value, b.value);
  if (a.is === 'statement' && b.is === 'statement') {
    return sameMeaning(a.statement, b.statement, partOf);
  }
  if (a.is === 'list' && b.is === 'list') {
    return (
      a.of.length === b.of.length &&
      a.of.every((term, place) => sameTerm(term, b.of[place] as Term, partOf))
    );
  }
  return sameFields(a, b);
}

/** Case, space and punctuation make no other answer. */
export function folded(text: string): string {
  return text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}%°]+/gu, ' ')
    .trim();
}

function nearlyEqual(a: number, b: number): boolean {
  return Math.abs(a - b) <= AS_GOOD_AS_EQUAL * Math.max(Math.abs(a), Math.abs(b));
}

function sameFields(a: object, b: object): boolean {
  const sorted = (of: object) =>
    JSON.stringify(Object.entries(of).sort(([one], [other]) => (one < other ? -1 : 1)));
  return sorted(a) === sorted(b);
}
