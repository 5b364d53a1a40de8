import type { LookReading } from '../../engine/index.ts';

/** A word without its place: `look.valve.shut` said of a valve. */
export function says({ words }: LookReading, ...codes: readonly string[]): boolean {
  return codes.some((code) => (words as readonly string[]).includes(`look.${code}`));
}

/** A share of 0 to 1; a look that does not give it has none. */
export function shareOf({ values }: LookReading, name: string, missing = 0): number {
  return Math.min(1, Math.max(0, values[name] ?? missing));
}

export function numberOf({ values }: LookReading, name: string, missing = 0): number {
  return values[name] ?? missing;
}
