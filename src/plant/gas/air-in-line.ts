import { SUPPLY } from './train-parameters.ts';
import type { GasTrain } from './train-state.ts';

/** Below this share, air is gone. */
const GONE = 1e-4;

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

/** After a change of the amount: all of it stands there anew; none means that the line was purged. */
export function putAirIn(train: GasTrain): void {
  const { air, capacityKgPa, absolutePa } = train;
  const { airDm3, volumeDm3 } = train.parameters.supply;
  if (airDm3 === air.putInDm3) return;
  air.putInDm3 = airDm3;
  air.present = airDm3 > 0;
  air.share.fill(0);
  const supply = train.from[air.inlet] as number;
  const perDm3 = (capacityKgPa[supply] as number) / volumeDm3;
  let left = airDm3 * perDm3;
  for (let i = 0; i < air.order.length; i++) {
    const node = air.order[i] as number;
    const room = capacityKgPa[node] as number;
    air.share[node] = Math.min(1, left / room);
    left = Math.max(0, left - room);
  }
  air.plugKg = left * (absolutePa[supply] as number);
}

/** Carries the air on with the flows of the step just solved. */
export function carryAir(train: GasTrain, stepS: number): void {
  const { air, from, to, flowKgS, absolutePa, capacityKgPa, edgeCount } = train;
  const { share, order, inlet } = air;
  let most = 0;
  let plugShare = 0;
  const through = (flowKgS[inlet] as number) * stepS;
  if (air.plugKg > 0) {
    if (through > 0) {
      plugShare = Math.min(1, air.plugKg / through);
      air.plugKg = Math.max(0, air.plugKg - through);
    }
    most = 1;
  }
  for (let i = 0; i < order.length; i++) {
    const node = order[i] as number;
    let inKg = 0;
    let airKg = 0;
    let outKg = 0;
    for (let e = 0; e < edgeCount; e++) {
      const kg = (flowKgS[e] as number) * stepS;
      if ((kg > 0 ? to[e] : from[e]) === node) {
        const source = (kg > 0 ? from[e] : to[e]) as number;
        inKg += Math.abs(kg);
        airKg += Math.abs(kg) * (e === inlet && kg > 0 ? plugShare : (share[source] as number));
      } else if ((kg > 0 ? from[e] : to[e]) === node) {
        outKg += Math.abs(kg);
      }
    }
    const endKg = (absolutePa[node] as number) * (capacityKgPa[node] as number);
    const startKg = Math.max(0, endKg + outKg - inKg);
    const x = ((share[node] as number) * startKg + airKg) / (startKg + inKg);
    share[node] = x > GONE ? x : 0;
    if (x > most) most = x;
  }
  air.present = most > GONE;
}

/** Share of the moles flowing through an edge that is air. */
export function airShareOf(train: GasTrain, e: number): number {
  if (!train.air.present) return 0;
  const source = ((train.flowKgS[e] as number) > 0 ? train.from[e] : train.to[e]) as number;
  return train.air.share[source] as number;
}
