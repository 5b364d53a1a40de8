export interface StepCount {
  readonly name: string;
  readonly count: number;
}

/** How many are at which step, the fullest first; what is alike keeps the order in which it came. */
export function countSteps(names: readonly string[]): readonly StepCount[] {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts].map(([name, count]) => ({ name, count })).sort((a, b) => b.count - a.count);
}
