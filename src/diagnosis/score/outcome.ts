import type { FoundWay, Reasoning } from './reasoning.ts';

/** Of the outcome, what each way of finding begins with and what the path adds to it. */
const OUTCOMES: Readonly<Record<FoundWay, readonly [number, number]>> = {
  'by readings': [0.5, 0.5],
  'by trying parts': [0.25, 0.25],
  'not found': [0, 0.25],
};
const UNSAFE = 0.1;

/**
 * One number for the map of skills, 0 to 1; never shown bare. Who was lucky with parts stays below
 * whoever found out by readings, however long that took; unsafe conduct leaves a tenth of either.
 *
 * @param conductUnsafe whether anything unsafe was done
 */
export function outcomeOf(
  { found, path }: Pick<Reasoning, 'found' | 'path'>,
  conductUnsafe: boolean,
): number {
  const [least, more] = OUTCOMES[found];
  const outcome = least + more * Math.max(0, Math.min(1, path.score));
  return conductUnsafe ? UNSAFE * outcome : outcome;
}
