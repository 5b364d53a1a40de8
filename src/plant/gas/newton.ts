import { assemble, displaceGas, linearise, setRegulator, setSlopes } from './balance.ts';
import { aimRegulator } from './regulator.ts';
import { type GasTrain, MOVED } from './train-state.ts';
import { solveTree } from './tree.ts';

const MAX_SOLVES = 40;
const MAX_HALVINGS = 12;
/** Balance error that ends the search, as a share of rated flow. */
const CLOSED_SHARE = 1e-6;
/** A step must lessen the squared error by this share of its length; a mirror image does not. */
const ENOUGH = 0.5;
/** A node may lose at most this share of its absolute pressure in one Newton step. */
const MAX_FALL = 0.8;

/**
 * The balance of a step in which something leaves the range of its linearisation: a valve opens on an
 * empty pipe, a regulator meets its seat or stop.
 *
 * Newton's method with exact slopes; each step is halved until the sum of squared balance errors
 * falls. Flow through every edge rises with the pressure before it and falls with the one behind it,
 * so there is one solution. The flows kept are those of the last linear solve, which close the
 * balance exactly and lie within CLOSED_SHARE of the curves.
 */
export function solveByNewton(train: GasTrain, ambientPa: number): void {
  const { change, trial, nodeCount } = train;
  const { delta } = train.tree;
  const closedKgS = CLOSED_SHARE * train.parameters.supply.ratedFlowKgS;
  const closed = closedKgS * closedKgS;
  change.fill(0);
  train.moved.fill(MOVED);
  let error = moveTo(train, change, ambientPa);
  for (let count = 0; count < MAX_SOLVES; count++) {
    solveLinear(train);
    const longest = longestStep(train);
    let length = longest;
    let next = 0;
    for (let halving = 0; halving <= MAX_HALVINGS; halving++) {
      for (let i = 0; i < nodeCount; i++) {
        trial[i] = (change[i] as number) + length * (delta[i] as number);
      }
      next = moveTo(train, trial, ambientPa);
      if (next <= error * (1 - ENOUGH * length) || (length === 1 && next < closed)) break;
      length *= 0.5;
    }
    change.set(trial);
    error = next;
    if (length === 1 && error < closed) {
      delta.set(change);
      return;
    }
  }
  delta.set(change);
  takeCurves(train);
}

/** Unsettled after all: flows by the curves at the last point, so that they are at least physical. */
function takeCurves(train: GasTrain): void {
  train.flowKgS.set(train.baseFlow);
  train.linearStroke.set(train.regulators.aim);
}

/** Linearises everything at the pressures changed by `change`; returns the squared balance error. */
function moveTo(train: GasTrain, change: Float64Array, ambientPa: number): number {
  const { nodeCount, liveCount, from, to, absolutePa, regulators, capacityKgPa, solveS } = train;
  const { rhs } = train.tree;
  rhs.fill(0);
  for (let e = 0; e < liveCount; e++) {
    const a = from[e] as number;
    const b = to[e] as number;
    linearise(
      train,
      e,
      (absolutePa[a] as number) + (change[a] as number),
      (absolutePa[b] as number) + (change[b] as number),
    );
  }
  for (let k = 0; k < regulators.count; k++) {
    const outlet = to[regulators.edge[k] as number] as number;
    const outletPa = (absolutePa[outlet] as number) + (change[outlet] as number);
    aimRegulator(regulators, k, outletPa - ambientPa);
    setRegulator(train, k, 0);
  }
  for (let e = 0; e < liveCount; e++) {
    const a = from[e] as number;
    const b = to[e] as number;
    const flow = (train.conductance[e] as number) * (train.pointUnitFlow[e] as number);
    train.baseFlow[e] = flow;
    rhs[a] = (rhs[a] as number) - flow;
    rhs[b] = (rhs[b] as number) + flow;
  }
  displaceGas(train);
  let error = 0;
  for (let i = 0; i < nodeCount; i++) {
    const net = (rhs[i] as number) - ((capacityKgPa[i] as number) * (change[i] as number)) / solveS;
    rhs[i] = net;
    error += net * net;
  }
  return error;
}

/** A whole Newton step from the present point: pressures, flows and strokes that close the balance. */
function solveLinear(train: GasTrain): void {
  const { liveCount, from, to, baseFlow, flowKgS, fromSlope, toSlope, regulators } = train;
  for (let e = 0; e < liveCount; e++) setSlopes(train, e, 0);
  if (train.matrixMoved) assemble(train);
  solveTree(train.tree);
  const { delta } = train.tree;
  for (let e = 0; e < liveCount; e++) {
    flowKgS[e] =
      (baseFlow[e] as number) +
      (fromSlope[e] as number) * (delta[from[e] as number] as number) -
      (toSlope[e] as number) * (delta[to[e] as number] as number);
  }
  for (let k = 0; k < regulators.count; k++) {
    const outlet = to[regulators.edge[k] as number] as number;
    train.linearStroke[k] =
      (regulators.aim[k] as number) -
      (train.regulatorSlope[k] as number) * (delta[outlet] as number);
  }
}

/** The share of a Newton step, at most 1, that leaves every node some pressure. */
function longestStep(train: GasTrain): number {
  const { nodeCount, absolutePa, change, tree } = train;
  let longest = 1;
  for (let i = 0; i < nodeCount; i++) {
    const room = MAX_FALL * ((absolutePa[i] as number) + (change[i] as number));
    const fall = -(tree.delta[i] as number);
    if (fall * longest > room) longest = room / fall;
  }
  return longest;
}
