import type { Elimination } from './elimination.ts';

/**
 * The elimination of `elimination.ts` for alternating volts: the same order and the same slots, with
 * a susceptance beside every conductance.
 *
 * A network of resistances and capacitances alone needs no pivoting: its matrix is complex symmetric
 * with both parts positive definite, and growth stays below 3.
 * Source: N. J. Higham, Math. Comp. 67 (1998) 1591.
 */
export interface PhasorElimination {
  readonly plan: Elimination;
  readonly admittanceRe: Float64Array;
  readonly admittanceIm: Float64Array;
  readonly shareRe: Float64Array;
  readonly shareIm: Float64Array;
  readonly toReferenceRe: Float64Array;
  readonly toReferenceIm: Float64Array;
  readonly totalRe: Float64Array;
  readonly totalIm: Float64Array;
  readonly currentRe: Float64Array;
  readonly currentIm: Float64Array;
  readonly voltsRe: Float64Array;
  readonly voltsIm: Float64Array;
}

export function createPhasorElimination(plan: Elimination): PhasorElimination {
  const slots = plan.neighbour.length;
  const { nodes } = plan;
  return {
    plan,
    admittanceRe: new Float64Array(slots),
    admittanceIm: new Float64Array(slots),
    shareRe: new Float64Array(slots),
    shareIm: new Float64Array(slots),
    toReferenceRe: new Float64Array(nodes),
    toReferenceIm: new Float64Array(nodes),
    totalRe: new Float64Array(nodes),
    totalIm: new Float64Array(nodes),
    currentRe: new Float64Array(nodes),
    currentIm: new Float64Array(nodes),
    voltsRe: new Float64Array(nodes),
    voltsIm: new Float64Array(nodes),
  };
}

/** After the admittances and those to the reference have been filled in. */
export function factorisePhasors(e: PhasorElimination): void {
  const { admittanceRe, admittanceIm, shareRe, shareIm, toReferenceRe, toReferenceIm } = e;
  const { nodes, start, neighbour, pairStart, pairSlot } = e.plan;
  for (let k = 0; k < nodes; k++) {
    const from = start[k] as number;
    const until = start[k + 1] as number;
    const groundRe = toReferenceRe[k] as number;
    const groundIm = toReferenceIm[k] as number;
    let totalRe = groundRe;
    let totalIm = groundIm;
    for (let s = from; s < until; s++) {
      totalRe += admittanceRe[s] as number;
      totalIm += admittanceIm[s] as number;
    }
    e.totalRe[k] = totalRe;
    e.totalIm[k] = totalIm;
    const scale = 1 / (totalRe * totalRe + totalIm * totalIm);
    let pair = pairStart[k] as number;
    for (let s = from; s < until; s++) {
      const re = admittanceRe[s] as number;
      const im = admittanceIm[s] as number;
      const partRe = (re * totalRe + im * totalIm) * scale;
      const partIm = (im * totalRe - re * totalIm) * scale;
      shareRe[s] = partRe;
      shareIm[s] = partIm;
      const j = neighbour[s] as number;
      toReferenceRe[j] = (toReferenceRe[j] as number) + partRe * groundRe - partIm * groundIm;
      toReferenceIm[j] = (toReferenceIm[j] as number) + partRe * groundIm + partIm * groundRe;
      for (let q = s + 1; q < until; q++) {
        const slot = pairSlot[pair++] as number;
        const otherRe = admittanceRe[q] as number;
        const otherIm = admittanceIm[q] as number;
        admittanceRe[slot] = (admittanceRe[slot] as number) + partRe * otherRe - partIm * otherIm;
        admittanceIm[slot] = (admittanceIm[slot] as number) + partRe * otherIm + partIm * otherRe;
      }
    }
  }
}

/** Volts from the currents (used up), after `factorisePhasors`. */
export function solvePhasors(e: PhasorElimination): void {
  const { admittanceRe, admittanceIm, shareRe, shareIm, totalRe, totalIm } = e;
  const { currentRe, currentIm, voltsRe, voltsIm } = e;
  const { nodes, start, neighbour } = e.plan;
  for (let k = 0; k < nodes; k++) {
    const re = currentRe[k] as number;
    const im = currentIm[k] as number;
    if (re === 0 && im === 0) continue;
    for (let s = start[k] as number; s < (start[k + 1] as number); s++) {
      const j = neighbour[s] as number;
      const partRe = shareRe[s] as number;
      const partIm = shareIm[s] as number;
      currentRe[j] = (currentRe[j] as number) + partRe * re - partIm * im;
      currentIm[j] = (currentIm[j] as number) + partRe * im + partIm * re;
    }
  }
  for (let k = nodes - 1; k >= 0; k--) {
    let re = currentRe[k] as number;
    let im = currentIm[k] as number;
    for (let s = start[k] as number; s < (start[k + 1] as number); s++) {
      const j = neighbour[s] as number;
      const yRe = admittanceRe[s] as number;
      const yIm = admittanceIm[s] as number;
      re += yRe * (voltsRe[j] as number) - yIm * (voltsIm[j] as number);
      im += yRe * (voltsIm[j] as number) + yIm * (voltsRe[j] as number);
    }
    const sumRe = totalRe[k] as number;
    const sumIm = totalIm[k] as number;
    const scale = 1 / (sumRe * sumRe + sumIm * sumIm);
    voltsRe[k] = (re * sumRe + im * sumIm) * scale;
    voltsIm[k] = (im * sumRe - re * sumIm) * scale;
  }
  currentRe.fill(0);
  currentIm.fill(0);
}
