import { SUPPLY } from './train-parameters.ts';

/**
 * Air left in the train by work on it, on its way to the burner.
 *
 * It stands in everything behind the train's first path, as far as it goes, and what is more than
 * that as a plug in the pipe before it. Each point of the train is a stirred tank:
 *   x·M of a point changes by Σ ṁ_in·x_from − Σ ṁ_out·x, x the share of its moles that is air,
 * implicit in x, in the order of the flow, so that air is neither made nor lost and 0 ≤ x ≤ 1.
 * Valid for: air and gas at one temperature, flow away from the supply.
 * Left out: that air, being heavier, passes an orifice more slowly; layers in a pipe at rest.
 * Source: species balance of a stirred tank, any text on process dynamics.
 */
export interface AirInLine {
  /** While there is none, nothing is worked here. */
  present: boolean;
  /** Of each point: nodes, then boundaries, which hold none. */
  readonly share: Float64Array;
  /** Plug before the first path, counted as if it were gas, kg. */
  plugKg: number;
  /** The amount last put in, dm³. */
  putInDm3: number;
  /** First path out of the supply, and the nodes behind it in the order of the flow. */
  readonly inlet: number;
  readonly order: Int32Array;
}

export function createAirInLine(
  nodeIds: readonly string[],
  from: Int32Array,
  to: Int32Array,
  pointCount: number,
): AirInLine {
  const supply = nodeIds.indexOf(SUPPLY);
  const order: number[] = [];
  const found = new Set([supply]);
  const reached = [supply];
  for (let point = reached.shift(); point !== undefined; point = reached.shift()) {
    from.forEach((start, e) => {
      const end = to[e] as number;
      if (start !== point || end >= nodeIds.length || found.has(end)) return;
      found.add(end);
      reached.push(end);
      order.push(end);
    });
  }
  return {
    present: false,
    share: new Float64Array(pointCount),
    plugKg: 0,
    putInDm3: 0,
    inlet: from.indexOf(supply),
    order: Int32Array.from(order),
  };
}
