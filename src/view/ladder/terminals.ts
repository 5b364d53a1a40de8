import type { LadderLayout, Point } from './layout-types.ts';

/** Where a lead can be put: a device's terminal, or the head of a rail by its wire's name. */
export interface Terminal extends Point {
  readonly id: string;
  /** Which side of its device it is on; a lead leans away from the device. */
  readonly side: 'left' | 'right';
}

/** In reading order: row by row, left to right. */
export function terminalsOf({ elements, rails }: LadderLayout): readonly Terminal[] {
  const found: Terminal[] = [
    ...rails.map(({ wire, x, top, side }) => ({ id: wire, x, y: top, side })),
    ...elements.flatMap(({ name, terminals: [one, two] }) => [
      { id: `${name}:1`, ...one, side: 'left' as const },
      { id: `${name}:2`, ...two, side: 'right' as const },
    ]),
  ];
  return found.sort((a, b) => a.y - b.y || a.x - b.x);
}

export function nearestTerminal(
  terminals: readonly Terminal[],
  at: Point,
  withinPx: number,
): Terminal | null {
  let nearest: Terminal | null = null;
  let least = withinPx;
  for (const each of terminals) {
    const apart = Math.hypot(each.x - at.x, each.y - at.y);
    if (apart > least) continue;
    nearest = each;
    least = apart;
  }
  return nearest;
}

export const WALK_KEYS = [
  'ArrowLeft',
  'ArrowRight',
  'ArrowUp',
  'ArrowDown',
  'Home',
  'End',
] as const;
export type WalkKey = (typeof WALK_KEYS)[number];

/**
 * From one terminal to the next: left and right in reading order, up and down to the one most
 * nearly above or below.
 *
 * @param from place in `terminals`
 */
export function walkTerminals(terminals: readonly Terminal[], from: number, key: WalkKey): number {
  const last = terminals.length - 1;
  switch (key) {
    case 'Home':
      return 0;
    case 'End':
      return last;
    case 'ArrowLeft':
      return Math.max(0, from - 1);
    case 'ArrowRight':
      return Math.min(last, from + 1);
    default:
      return inNextRow(terminals, from, key === 'ArrowDown' ? 1 : -1);
  }
}

function inNextRow(terminals: readonly Terminal[], from: number, way: 1 | -1): number {
  const here = terminals[from];
  if (here === undefined) return 0;
  let row: number | null = null;
  let best = from;
  for (let i = from + way; i >= 0 && i < terminals.length; i += way) {
    const each = terminals[i] as Terminal;
    if (each.y === here.y) continue;
    if (row !== null && each.y !== row) break;
    const isNearer =
      row === null ||
      Math.abs(each.x - here.x) < Math.abs((terminals[best] as Terminal).x - here.x);
    row = each.y;
    if (isNearer) best = i;
  }
  return best;
}
