/**
 * The pressure equations of a network without loops, eliminated along its tree.
 *
 * Row i: diagonal·δᵢ − toParent·δ_parent = rhsᵢ, with points numbered so that a parent comes after
 * all its children. Elimination then fills nothing in, and costs a few operations a point.
 */
export interface PressureTree {
  readonly count: number;
  /** Parent of each point; `count` for a root. */
  readonly parent: Int32Array;
  /** [2i] coupling of row i to its parent, [2i + 1] of the parent's row to i. Last pair: unused. */
  readonly coupling: Float64Array;
  /** Longer than `count` by the boundaries, whose entries are never read. */
  readonly diagonal: Float64Array;
  readonly rhs: Float64Array;
  /** Solution, Pa; the boundaries' entries stay 0. */
  readonly delta: Float64Array;
  readonly inverse: Float64Array;
  readonly upFactor: Float64Array;
  readonly downFactor: Float64Array;
}

/** Order of elimination over points 0…count−1: children first. `pairs` holds linked points. */
export function orderTree(count: number, pairs: readonly (readonly [number, number])[]): number[] {
  const neighbours = Array.from({ length: count }, () => new Set<number>());
  for (const [a, b] of pairs) {
    neighbours[a]?.add(b);
    neighbours[b]?.add(a);
  }
  const seen = new Set<number>();
  const order: number[] = [];
  const visit = (point: number): void => {
    seen.add(point);
    for (const next of neighbours[point] ?? []) if (!seen.has(next)) visit(next);
    order.push(point);
  };
  for (let point = 0; point < count; point++) if (!seen.has(point)) visit(point);
  return order;
}

/** `pairs` in the numbering of `orderTree`: of two linked points the higher is the parent. */
export function createTree(
  count: number,
  boundaries: number,
  pairs: readonly (readonly [number, number])[],
): PressureTree {
  const parent = new Int32Array(count).fill(count);
  for (const [a, b] of pairs) parent[Math.min(a, b)] = Math.max(a, b);
  const size = count + boundaries;
  return {
    count,
    parent,
    coupling: new Float64Array(2 * (count + 1)),
    diagonal: new Float64Array(size),
    rhs: new Float64Array(size),
    delta: new Float64Array(size),
    inverse: new Float64Array(count),
    upFactor: new Float64Array(count),
    downFactor: new Float64Array(count),
  };
}

/** Factors the matrix in `diagonal` and `coupling`; `diagonal` is used up. */
export function factorTree(tree: PressureTree): void {
  const { count, parent, coupling, diagonal, inverse, upFactor, downFactor } = tree;
  for (let i = 0; i < count; i++) {
    const toParent = coupling[2 * i] as number;
    const fromParent = coupling[2 * i + 1] as number;
    const above = parent[i] as number;
    const inv = 1 / (diagonal[i] as number);
    inverse[i] = inv;
    downFactor[i] = toParent * inv;
    upFactor[i] = fromParent * inv;
    if (above < count) {
      diagonal[above] = (diagonal[above] as number) - fromParent * toParent * inv;
    }
  }
}

/** Solves for `delta`; `rhs` is used up. */
export function solveTree(tree: PressureTree): void {
  const { count, parent, rhs, delta, inverse, upFactor, downFactor } = tree;
  for (let i = 0; i < count - 1; i++) {
    const above = parent[i] as number;
    rhs[above] = (rhs[above] as number) + (upFactor[i] as number) * (rhs[i] as number);
  }
  for (let i = count - 1; i >= 0; i--) {
    delta[i] =
      (rhs[i] as number) * (inverse[i] as number) +
      (downFactor[i] as number) * (delta[parent[i] as number] as number);
  }
}
