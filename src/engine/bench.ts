import type { RunState } from './run-state.ts';

/** What hands have left at the plant, for conduct and for the page. */
export interface Bench {
  /** `isolator` and cocks that a padlock holds. */
  readonly locks: readonly string[];
  readonly jumpers: readonly { readonly from: string; readonly to: string }[];
  /** Servos held by hand, and where the hand wants their motor. */
  readonly strokes: readonly { readonly servo: string; readonly deg: number }[];
  /** Parts whose repair opened the gas train, and when, s. */
  readonly opened: readonly { readonly part: string; readonly t: number }[];
  readonly supplyOn: boolean;
  /** As they stand, whoever left them so. */
  readonly cocks: readonly { readonly id: string; readonly opening: number }[];
}

export function benchOf({ hands, field, faults }: RunState): Bench {
  return {
    locks: [...hands.locks],
    jumpers: [...hands.jumpers],
    strokes: field.servos.flatMap(({ parameters, heldDeg }) =>
      heldDeg >= 0 ? [{ servo: parameters.id, deg: heldDeg }] : [],
    ),
    opened: [...hands.opened],
    supplyOn: field.panel.supplyOn,
    cocks: faults.live.gasTrain.edges.flatMap((edge) =>
      edge.kind === 'cock' ? [{ id: edge.id, opening: edge.opening }] : [],
    ),
  };
}
