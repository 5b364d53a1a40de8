/** So many at once, and so many a second in the long run. */
export interface Allowance {
  readonly burst: number;
  readonly perS: number;
}

interface Level {
  left: number;
  atMs: number;
}

/** Allowances by name: of one socket by event, of one server by address. */
export interface Allowances {
  /** Takes one; false where none is left. */
  take(name: string, allowance: Allowance): boolean;
  /** Whether one is left, without taking it. */
  has(name: string, allowance: Allowance): boolean;
}

/** More names than this are only held while someone tries to fill the memory with them. */
const MOST_NAMES = 20_000;

export function createAllowances(nowMs: () => number = Date.now): Allowances {
  const levels = new Map<string, Level>();

  function levelOf(name: string, { burst, perS }: Allowance): Level {
    const now = nowMs();
    const known = levels.get(name);
    if (known === undefined) {
      if (levels.size >= MOST_NAMES) forgetOldest();
      const fresh = { left: burst, atMs: now };
      levels.set(name, fresh);
      return fresh;
    }
    known.left = Math.min(burst, known.left + (Math.max(0, now - known.atMs) / 1000) * perS);
    known.atMs = now;
    return known;
  }
  function forgetOldest(): void {
    const first = levels.keys().next();
    if (!first.done) levels.delete(first.value);
  }
  return {
    take(name, allowance) {
      const level = levelOf(name, allowance);
      if (level.left < 1) return false;
      level.left -= 1;
      return true;
    },
    has: (name, allowance) => levelOf(name, allowance).left >= 1,
  };
}
