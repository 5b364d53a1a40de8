import library from 'virtual:library';
import { describe, expect, it } from 'vitest';
import { wiringFacts } from '../../../src/app/session/wiring-facts.ts';
import type { LadderWiring } from '../../../src/view/index.ts';
import { TERMINAL_PX } from '../../../src/view/ladder/layout-pen.ts';
import type { LadderLayout, Point } from '../../../src/view/ladder/layout-types.ts';
import { sectionsOf } from '../../../src/view/ladder/rung-tree.ts';
import { SYMBOL_SETS } from '../../../src/view/ladder/types.ts';
import { laidOut, widthOf } from './laid-out.ts';
import { wiring, wiringOf } from './wiring.ts';

const WIDTHS = [340, 800, 982, 1472];
const PLANS: readonly (readonly [string, LadderWiring])[] = [
  ['a small plant', wiring],
  ...library.plants.map((plant) => [plant.id, wiringFacts(plant)] as const),
];

describe('the rungs taken apart', () => {
  it('a wire from which many rungs begin is a rail, one from which few do is a branch', () => {
    const sections = sectionsOf(wiring);
    expect(sections.map(({ left }) => left)).toEqual(['L', 'L1', 'P24', 'P5', 'earth']);
    const [, control] = sections;
    expect(control.right).toBe('N');
    const string = control.roots.find(({ elements }) => elements.includes('high-limit'));
    expect(string?.branches.map(({ node }) => node.elements[0])).toEqual([
      'in.waterAboveFirst',
      'in.waterAboveSecond',
      'in.highLimitMade',
      'in.gasPressureAboveLow',
      'in.gasPressureBelowHigh',
    ]);
  });

  it('a rung that bridges part of another hangs beside that part, joined to it at both ends', () => {
    const bridged = wiringOf([
      ['L', 'clock', '17', 'in.secondSetpoint', 'N'],
      ['L', 'hand', '17'],
      ['L', 'a', '1', 'b', '2', 'c', '3', 'd', 'N'],
      ['1', 'e', '3'],
      ['1', 'too-long', '4', 'for-it', '5', 'by-far', '3'],
    ]);
    const { roots } = sectionsOf(bridged)[0];
    expect(roots.map(({ parallels }) => parallels.map(({ rung }) => rung.elements[0]))).toEqual([
      ['hand'],
      ['e'],
    ]);
    expect(roots[1].branches.map(({ node }) => node.elements[0])).toEqual(['too-long']);
    const layout = laidOut(982, bridged);
    const upright = layout.pieces.filter(
      ({ wire, points: [a, b] }) => wire === '17' && a.x === b.x && a.y !== b.y,
    );
    const place = (name: string) => layout.elements.find((each) => each.name === name);
    expect(upright.map(({ points }) => points.map(({ y }) => y))).toEqual([
      [place('clock')?.y, place('hand')?.y],
    ]);
    expect(layout.flags.filter(({ wire }) => wire === '17')).toEqual([]);
  });

  it('every rung is drawn, even where two only feed each other', () => {
    const ring = wiringOf([
      ['a', 'x', 'b'],
      ['b', 'y', 'a'],
      ['L', 'z', 'N'],
    ]);
    const rows = laidOut(982, ring).rows.map(({ rung }) => rung);
    expect([...rows].sort()).toEqual([0, 1, 2]);
  });
});

describe.each(
  PLANS.flatMap(([name, plan]) =>
    WIDTHS.flatMap((width) => SYMBOL_SETS.map((set) => ({ name, plan, width, set }))),
  ),
)('the ladder of $name at $width wide with $set symbols', ({ plan, width, set }) => {
  const layout = laidOut(width, plan, set);

  it('has every element once and every wire', () => {
    const drawn = layout.elements.map(({ name }) => name);
    expect([...drawn].sort()).toEqual(plan.elements.map(({ name }) => name).sort());
    const pieces = new Set(layout.pieces.map(({ wire }) => wire));
    expect(plan.wires.filter((wire) => !pieces.has(wire))).toEqual([]);
  });

  it('names every wire somewhere', () => {
    const named = new Set([...layout.names, ...layout.flags].map(({ wire }) => wire));
    expect(plan.wires.filter((wire) => !named.has(wire))).toEqual([]);
  });

  it('stays inside its width', () => {
    for (const { x, lines } of layout.elements) {
      for (const line of lines) {
        expect(x - widthOf(line) / 2).toBeGreaterThanOrEqual(0);
        expect(x + widthOf(line) / 2).toBeLessThanOrEqual(layout.width);
      }
    }
    for (const { x, widthPx } of layout.flags) {
      expect(x).toBeGreaterThan(0);
      expect(x + widthPx).toBeLessThan(layout.width);
    }
  });

  it('keeps the names of neighbours apart', () => {
    for (const a of layout.elements) {
      for (const b of layout.elements) {
        if (a === b || a.y !== b.y || b.x < a.x) continue;
        const widest = (lines: readonly string[]): number => Math.max(...lines.map(widthOf));
        expect(b.x - a.x).toBeGreaterThanOrEqual((widest(a.lines) + widest(b.lines)) / 2);
      }
    }
  });

  it('draws each wire as one connected whole, where it is not led on by its name', () => {
    for (const wire of plan.wires) expect([wire, islands(layout, wire)]).toEqual([wire, 1]);
  });

  it('crosses no wire with another wire or element', () => {
    const uprights = layout.pieces.filter(({ points: [a, b] }) => a.x === b.x && a.y !== b.y);
    for (const upright of uprights) {
      const [a, b] = upright.points;
      const crossed = layout.pieces.filter(
        ({ wire, points: [p, q] }) =>
          wire !== upright.wire && p.y === q.y && between(p.y, a.y, b.y) && between(a.x, p.x, q.x),
      );
      expect(crossed.map(({ wire }) => `${upright.wire} × ${wire}`)).toEqual([]);
      const struck = layout.elements.filter(
        ({ x, y }) => between(y, a.y, b.y) && Math.abs(x - a.x) < TERMINAL_PX,
      );
      expect(struck.map(({ name }) => name)).toEqual([]);
    }
  });
});

function between(value: number, a: number, b: number): boolean {
  return value > Math.min(a, b) + 0.5 && value < Math.max(a, b) - 0.5;
}

/** How many parts a wire falls into; a rail joins, and so does its name on it or on a flag. */
function islands(layout: LadderLayout, wire: string): number {
  const groups: Point[][] = layout.pieces
    .filter((piece) => piece.wire === wire)
    .map(({ points }) => [...points]);
  const rails = layout.rails.filter((rail) => rail.wire === wire);
  const flags = layout.flags.filter((flag) => flag.wire === wire);
  const names = layout.names.filter((name) => name.wire === wire);
  const joins = (a: readonly Point[], b: readonly Point[]): boolean =>
    a.some((p) => b.some((q) => on(p, q, b) || on(q, p, a)));
  const isHome = (group: readonly Point[]): boolean =>
    names.some(({ x, y }) => {
      const [a, b] = group;
      return y > a.y && y - a.y < 24 && x >= a.x && x <= b.x + 8;
    }) ||
    group.some(
      (p) =>
        rails.some(({ x }) => Math.abs(p.x - x) < 0.5) ||
        flags.some(
          (flag) =>
            flag.y === p.y &&
            (Math.abs(p.x - flag.x) < 0.5 || Math.abs(p.x - flag.x - flag.widthPx) < 0.5),
        ),
    );
  let joined = true;
  while (joined) {
    joined = false;
    outer: for (let i = 0; i < groups.length; i += 1) {
      for (let k = i + 1; k < groups.length; k += 1) {
        const both = isHome(groups[i]) && isHome(groups[k]);
        if (!both && !joins(groups[i], groups[k])) continue;
        groups[i].push(...groups[k]);
        groups.splice(k, 1);
        joined = true;
        break outer;
      }
    }
  }
  return groups.length;
}

function on(p: Point, q: Point, of: readonly Point[]): boolean {
  if (Math.abs(p.x - q.x) < 0.5 && Math.abs(p.y - q.y) < 0.5) return true;
  for (let i = 1; i < of.length; i += 1) {
    const [a, b] = [of[i - 1], of[i]];
    const level = Math.abs(a.y - b.y) < 0.5 && Math.abs(p.y - a.y) < 0.5;
    if (level && p.x >= Math.min(a.x, b.x) && p.x <= Math.max(a.x, b.x)) return true;
  }
  return false;
}
