/** Papers are told apart by people: a number that can be said. */
export const MOST_NUMBER = 9999;
/** More would be a book. */
export const MOST_QUESTIONS = 50;

/** Null where a text is no whole number within the bounds. */
export function wholeWithin(text: string, min: number, max: number): number | null {
  if (!/^\d{1,9}$/.test(text.trim())) return null;
  const value = Number(text);
  return value >= min && value <= max ? value : null;
}
