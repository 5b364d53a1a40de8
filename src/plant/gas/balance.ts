import { evaluateNozzle } from './nozzle.ts';
import { regulatorConductance } from './regulator.ts';
import { type GasTrain, MOVED } from './train-state.ts';
import { factorTree } from './tree.ts';

/** An edge keeps its linearisation until its pressure difference moves by this share … */
const KEEP_SHARE = 1e-3;
/** … of itself plus this much, Pa; its flow is then within 1e-6 of the curve. */
const KEEP_FLOOR_PA = 50;

/**
 * Puts the conductance and slope of an aimed regulator into its edge. When gas runs backwards through
 * it, its stroke counts as it was before the step: only so is the balance sure to have one solution.
 */
export function setRegulator(train: GasTrain, k: number, keepShare: number): void {
  const { regulators } = train;
  const e = regulators.edge[k] as number;
  const unitFlow = train.pointUnitFlow[e] as number;
  const slope = regulators.slope[k] as number;
  train.conductance[e] = regulatorConductance(regulators, k, unitFlow < 0);
  train.regulatorGain[e] = (regulators.gain[k] as number) * slope * Math.max(0, unitFlow);
  const used = train.regulatorSlope[k] as number;
  if (Math.abs(slope - used) > keepShare * used) {
    train.regulatorSlope[k] = slope;
    train.matrixMoved = true;
  }
}

/** Unit flow of an edge and its slopes at two absolute pressures. */
export function linearise(train: GasTrain, e: number, fromPa: number, toPa: number): void {
  const { unit } = train;
  evaluateNozzle(train.nozzle, fromPa, toPa, unit);
  train.pointUnitFlow[e] = unit.flow;
  train.unitFromSlope[e] = unit.fromSlope;
  train.unitToSlope[e] = unit.toSlope;
  train.pointFromPa[e] = fromPa;
  train.pointToPa[e] = toPa;
  train.tolerancePa[e] = KEEP_SHARE * (Math.abs(fromPa - toPa) + KEEP_FLOOR_PA);
}

/** Slopes of an edge's flow; the matrix follows only when they moved by more than a share. */
export function setSlopes(train: GasTrain, e: number, keepShare: number): void {
  const conductance = train.conductance[e] as number;
  const fromSlope = conductance * (train.unitFromSlope[e] as number);
  const toSlope =
    conductance * (train.unitToSlope[e] as number) + (train.regulatorGain[e] as number);
  const oldFrom = train.fromSlope[e] as number;
  const oldTo = train.toSlope[e] as number;
  if (
    Math.abs(fromSlope - oldFrom) > keepShare * oldFrom ||
    Math.abs(toSlope - oldTo) > keepShare * oldTo
  ) {
    train.fromSlope[e] = fromSlope;
    train.toSlope[e] = toSlope;
    train.matrixMoved = true;
  }
}

/** Adds the gas that the moving diaphragms push into their outlets to the rhs. */
export function displaceGas(train: GasTrain): void {
  const { to, regulators, solveS, tree } = train;
  for (let k = 0; k < regulators.count; k++) {
    const outlet = to[regulators.edge[k] as number] as number;
    const stroke = (regulators.aim[k] as number) - (regulators.booked[k] as number);
    tree.rhs[outlet] =
      (tree.rhs[outlet] as number) + ((regulators.displacedKg[k] as number) * stroke) / solveS;
  }
}

/** The matrix of the node balances from the edges' slopes, factored. */
export function assemble(train: GasTrain): void {
  const { tree, nodeCount, liveCount, from, to, capacityKgPa, solveS, regulators } = train;
  const { fromSlope, toSlope, fromCoupling, toCoupling } = train;
  const { diagonal, coupling } = tree;
  const perStep = 1 / solveS;
  for (let i = 0; i < nodeCount; i++) diagonal[i] = (capacityKgPa[i] as number) * perStep;
  for (let i = 0; i < coupling.length; i++) coupling[i] = 0;
  for (let e = 0; e < liveCount; e++) {
    const a = from[e] as number;
    const b = to[e] as number;
    const byFrom = fromSlope[e] as number;
    const byTo = toSlope[e] as number;
    diagonal[a] = (diagonal[a] as number) + byFrom;
    diagonal[b] = (diagonal[b] as number) + byTo;
    const inFrom = fromCoupling[e] as number;
    const inTo = toCoupling[e] as number;
    coupling[inFrom] = (coupling[inFrom] as number) + byTo;
    coupling[inTo] = (coupling[inTo] as number) + byFrom;
  }
  for (let k = 0; k < regulators.count; k++) {
    const outlet = to[regulators.edge[k] as number] as number;
    const displaced =
      (regulators.displacedKg[k] as number) * (train.regulatorSlope[k] as number) * perStep;
    diagonal[outlet] = (diagonal[outlet] as number) + displaced;
  }
  factorTree(tree);
  train.matrixMoved = false;
}

/** Linearises every edge at the present pressures. */
export function lineariseAll(train: GasTrain): void {
  const { liveCount, from, to, absolutePa } = train;
  for (let e = 0; e < liveCount; e++) {
    linearise(
      train,
      e,
      absolutePa[from[e] as number] as number,
      absolutePa[to[e] as number] as number,
    );
    train.moved[e] = MOVED;
  }
}
