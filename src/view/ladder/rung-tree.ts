import type { LadderWiring } from './types.ts';

/** A rung with those that branch off its wires. */
export interface RungNode {
  /** Place in the description. */
  readonly rung: number;
  readonly wires: readonly string[];
  readonly elements: readonly string[];
  readonly branches: readonly Branch[];
  readonly parallels: readonly Parallel[];
}
/** A rung that begins and ends at wires of another, with no branch between them. */
export interface Parallel {
  readonly from: number;
  readonly to: number;
  readonly rung: RungNode;
}
export interface Branch {
  /** Which of the rung's wires it leaves from. */
  readonly wire: number;
  readonly node: RungNode;
}

/** Rungs between one pair of rails. */
export interface LadderSection {
  readonly left: string;
  readonly right: string;
  readonly roots: readonly RungNode[];
}

/** A wire from which so many rungs begin is drawn as a rail of its own. */
export const RAIL_FROM_STARTS = 4;
const NEUTRAL_FIRST = 10_000;

/**
 * Takes the rungs apart the way they are drawn: under the rail they begin at, or as a branch
 * under the rung in which their first wire comes up first.
 */
export function sectionsOf(wiring: LadderWiring): LadderSection[] {
  const rungs = wiring.rungs.map((parts) => ({
    wires: parts.filter((_part, i) => i % 2 === 0),
    elements: parts.filter((_part, i) => i % 2 === 1),
  }));
  const rails = railsOf(wiring);
  const home = new Map<string, { readonly rung: number; readonly wire: number }>();
  rungs.forEach(({ wires }, rung) => {
    wires.forEach((name, wire) => {
      if (wire > 0 && !rails.has(name) && !home.has(name)) home.set(name, { rung, wire });
    });
  });
  const besideOf = rungs.map((_parts, rung) => besideWhich(rung, rungs));
  const parentOf = rungs.map(({ wires }, rung) => {
    if (besideOf[rung] !== null) return null;
    const place = home.get(wires[0] ?? '');
    return place === undefined || place.rung === rung ? null : place;
  });
  const neutrals = new Set(wiring.sources.map(({ neutral }) => neutral));
  const drawn = new Set<number>();
  const nodeOf = (rung: number): RungNode => {
    drawn.add(rung);
    const branches = parentOf.flatMap((place, child) =>
      place?.rung === rung && !drawn.has(child) ? [{ wire: place.wire, node: nodeOf(child) }] : [],
    );
    const parallels = besideOf.flatMap((place, child) =>
      place?.rung === rung && !drawn.has(child)
        ? [{ from: place.from, to: place.to, rung: nodeOf(child) }]
        : [],
    );
    return { rung, wires: rungs[rung].wires, elements: rungs[rung].elements, branches, parallels };
  };
  const sections = new Map<string, RungNode[]>();
  const put = (rung: number): void => {
    const left = rungs[rung].wires[0] ?? '';
    sections.set(left, [...(sections.get(left) ?? []), nodeOf(rung)]);
  };
  rungs.forEach((_rung, i) => {
    if (parentOf[i] === null && besideOf[i] === null && !drawn.has(i)) put(i);
  });
  // Rungs that only feed one another in a ring have no beginning: any of them will do.
  rungs.forEach((_rung, i) => {
    if (!drawn.has(i)) put(i);
  });
  return [...sections].map(([left, roots]) => ({ left, right: usualEnd(roots, neutrals), roots }));
}

interface RungParts {
  readonly wires: readonly string[];
  readonly elements: readonly string[];
}

/** Which rung a rung lies beside: it joins two wires of it, and nothing leaves between these. */
function besideWhich(
  rung: number,
  rungs: readonly RungParts[],
): { readonly rung: number; readonly from: number; readonly to: number } | null {
  const { wires, elements } = rungs[rung];
  const starts = new Set(rungs.flatMap((other, i) => (i === rung ? [] : [other.wires[0]])));
  for (const [beside, other] of rungs.entries()) {
    const from = other.wires.indexOf(wires[0]);
    const to = other.wires.indexOf(wires[wires.length - 1], from + 1);
    if (beside === rung || from < 0 || to < 0 || to === other.wires.length - 1) continue;
    const between = other.wires.slice(from + 1, to);
    if (elements.length > to - from || between.some((wire) => starts.has(wire))) continue;
    return { rung: beside, from, to };
  }
  return null;
}

function railsOf({ sources, rungs }: LadderWiring): ReadonlySet<string> {
  const rails = new Set(sources.flatMap(({ live, neutral }) => [live, neutral]));
  const starts = new Map<string, number>();
  for (const [first = ''] of rungs) starts.set(first, (starts.get(first) ?? 0) + 1);
  for (const [wire, count] of starts) if (count >= RAIL_FROM_STARTS) rails.add(wire);
  return rails;
}

/** The neutral at which most rungs of a section end; where none does, the wire at which most end. */
function usualEnd(roots: readonly RungNode[], neutrals: ReadonlySet<string>): string {
  const ends = new Map<string, number>();
  const count = (node: RungNode): void => {
    const end = node.wires[node.wires.length - 1] ?? '';
    ends.set(end, (ends.get(end) ?? 0) + 1);
    for (const branch of node.branches) count(branch.node);
  };
  for (const root of roots) count(root);
  const rank = ([wire, times]: readonly [string, number]): number =>
    times + (neutrals.has(wire) ? NEUTRAL_FIRST : 0);
  return [...ends].sort((a, b) => rank(b) - rank(a))[0]?.[0] ?? '';
}
