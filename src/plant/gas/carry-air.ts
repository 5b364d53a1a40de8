import type { GasTrain } from './train-state.ts';

/** Below this share, air is gone. */
const GONE = 1e-4;

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
  const { air, from, to, flowKgS, absolutePa, capacityKgPa, liveCount } = train;
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
    for (let e = 0; e < liveCount; e++) {
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
