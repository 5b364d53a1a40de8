import type { ShutoffParameters } from './edge-parameters.ts';

/** The powered valves of a train, one entry each. Rates are strokes per second. */
export interface ValveBank {
  readonly count: number;
  readonly edge: Int32Array;
  readonly powered: Uint8Array;
  /** 1 where power (through a sound coil) or its absence drives the stem open. */
  readonly opens: Uint8Array;
  readonly slowRate: Float64Array;
  readonly fastRate: Float64Array;
  readonly fastUntil: Float64Array;
  readonly closeRate: Float64Array;
  readonly stuckOpen: Float64Array;
  readonly stuckShut: Float64Array;
  readonly seal: Float64Array;
  readonly fullConductance: Float64Array;
  readonly leakConductance: Float64Array;
}

export function createValveBank(edges: readonly number[]): ValveBank {
  const count = edges.length;
  return {
    count,
    edge: Int32Array.from(edges),
    powered: new Uint8Array(count),
    opens: new Uint8Array(count),
    slowRate: new Float64Array(count),
    fastRate: new Float64Array(count),
    fastUntil: new Float64Array(count),
    closeRate: new Float64Array(count),
    stuckOpen: new Float64Array(count),
    stuckShut: new Float64Array(count),
    seal: new Float64Array(count),
    fullConductance: new Float64Array(count),
    leakConductance: new Float64Array(count),
  };
}

export function prepareValve(
  bank: ValveBank,
  k: number,
  p: ShutoffParameters,
  fullConductance: number,
  leakConductance: number,
): void {
  bank.slowRate[k] = 1 / p.openingTimeS;
  bank.fastRate[k] = 1 / p.fastStrokeTimeS;
  bank.fastUntil[k] = p.fastOpenFraction;
  bank.closeRate[k] = 1 / p.closingTimeS;
  bank.stuckOpen[k] = p.stuckOpenFraction;
  bank.stuckShut[k] = p.stuckShutFraction;
  bank.seal[k] = p.sealTravelFraction;
  bank.fullConductance[k] = fullConductance;
  bank.leakConductance[k] = leakConductance;
  aimValve(bank, k, p);
}

/** Which way the stem is driven, after a change of power, coil or spring. */
export function aimValve(bank: ValveBank, k: number, p: ShutoffParameters): void {
  const works = bank.powered[k] === 1 && p.coilIntact;
  bank.opens[k] = works !== p.normallyOpen ? 1 : 0;
}

/**
 * Stem of valve k after a step, 0 shut … 1 open.
 *
 * Opening: fast up to a share of the stroke, then slow (hydraulically braked); closing at one speed.
 * A stuck valve stops where it sticks, but is not thrown to that place if it stands beyond.
 * Left out: delay of the coil, acceleration, pressure on the disc.
 */
export function moveStem(bank: ValveBank, k: number, stem: number, stepS: number): number {
  if (bank.opens[k] === 0) {
    const lowest = bank.stuckOpen[k] as number;
    if (stem <= lowest) return stem;
    return Math.max(lowest, stem - (bank.closeRate[k] as number) * stepS);
  }
  const highest = bank.stuckShut[k] as number;
  if (stem >= highest) return stem;
  const fastUntil = bank.fastUntil[k] as number;
  const slowRate = bank.slowRate[k] as number;
  if (stem >= fastUntil) return Math.min(highest, stem + slowRate * stepS);
  const fastRate = bank.fastRate[k] as number;
  const fast = stem + fastRate * stepS;
  if (fast <= fastUntil) return Math.min(highest, fast);
  return Math.min(highest, fastUntil + ((fast - fastUntil) / fastRate) * slowRate);
}

/**
 * Conductance of valve k at a stem position: the seat's leak, plus an opening in proportion to lift
 * from where the seat lets go.
 */
export function valveConductance(bank: ValveBank, k: number, stem: number): number {
  const seal = bank.seal[k] as number;
  const leak = bank.leakConductance[k] as number;
  if (stem <= seal) return leak;
  return leak + ((bank.fullConductance[k] as number) * (stem - seal)) / (1 - seal);
}
