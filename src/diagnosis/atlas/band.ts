import { type ReadingValue, UNSTEADY } from '../observe/reading.ts';

/** Where a sound plant's numbers lie in one situation, and below what there is nothing at all. */
export interface Band {
  readonly low: number;
  readonly high: number;
  /** Amounts up to this are nothing; negative where a sound plant has nothing there itself. */
  readonly dead: number;
}

export const NOT_REACHED = 'not reached';

/** The spread of sound plants is widened by these shares of itself and of its middle. */
const OF_SPREAD = 0.3;
const OF_MIDDLE = 0.03;
const DEAD_SHARE = 0.05;

/**
 * @param sound readings of sound plants
 * @param resolution smallest difference that means something
 */
export function bandOf(sound: readonly number[], resolution: number): Band {
  const least = Math.min(...sound);
  const most = Math.max(...sound);
  const middle = Math.abs(least + most) / 2;
  const margin = Math.max(resolution, OF_SPREAD * (most - least), OF_MIDDLE * middle);
  const dead = Math.max(resolution, DEAD_SHARE * middle);
  const low = toFiveDigits(least - margin);
  const high = toFiveDigits(most + margin);
  const soundIsDead = low <= dead && high >= -dead;
  return { low, high, dead: soundIsDead ? -1 : toFiveDigits(dead) };
}

/** As an edge is kept in a file: what is sorted anew later falls into the same bins. */
function toFiveDigits(value: number): number {
  return Number(value.toPrecision(5));
}

/** Name of the bin of a reading. */
export function binName(band: Band | null, value: ReadingValue): string {
  if (typeof value === 'string') return value;
  if (band === null || Number.isNaN(value)) return UNSTEADY;
  if (value >= band.low && value <= band.high) return 'in band';
  if (Math.abs(value) <= band.dead) return 'dead';
  return value < band.low ? 'low' : 'high';
}
