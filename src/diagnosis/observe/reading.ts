/** What a check tells, before it is sorted into bins. */
export interface Reading {
  /** `checkName` of what was done where. */
  readonly check: string;
  readonly aspect: string;
  /** A number in SI, or a word. */
  readonly value: ReadingValue;
}
export type ReadingValue = number | string;

/** A check by what is done and where; ranges of a tool are the same check. */
export function checkName(what: string, place = '', other = ''): string {
  return other === '' ? `${what}|${place}` : `${what}|${place}|${other}`;
}

/** Tool, sense or paper of a check, and its places. */
export function partsOfCheck(check: string): {
  readonly what: string;
  readonly place: string;
  readonly other: string;
} {
  const [what = '', place = '', other = ''] = check.split('|');
  return { what, place, other };
}

/** What a display shows besides a value that stands still, and the aspect that says so. */
export const UNSTEADY = 'unsteady';
export const STEADY = 'steady';
