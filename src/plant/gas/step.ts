import {
  assemble,
  displaceGas,
  linearise,
  lineariseAll,
  setRegulator,
  setSlopes,
} from './balance.ts';
import { carryAir } from './carry-air.ts';
import {
  COAST_THETA,
  coast,
  coastLength,
  finish,
  isJump,
  mayCoast,
  setConductance,
} from './coast.ts';
import { solveByNewton } from './newton.ts';
import { aimRegulator, regulatorConductance, setRegulatorStep } from './regulator.ts';
import { type GasTrain, MOVED } from './train-state.ts';
import { solveTree } from './tree.ts';
import { moveStem, valveConductance } from './valve-motion.ts';

/** An edge is also linearised anew when its `from` pressure moved by this much, Pa. */
const KEEP_FROM_PA = 100;
/** One linear solve is enough while its flows are this close to the curves, as a share of rated … */
const CLOSE_SHARE_OF_RATED = 2e-4;
/** … or of the flow itself. */
const CLOSE_SHARE = 0.01;
/** The matrix keeps a slope until it has changed by this share: convergence slows by as much. */
const KEEP_SLOPE_SHARE = 0.02;

/** A step is calm when no flow changed by more than this share of rated flow. */
const CALM_SHARE = 5e-5;
/** Calm steps before the train may coast. */
const CALM_STEPS = 3;
/** Steps before the next try when coasting did not hold. */
const TRY_AGAIN_STEPS = 20;

/**
 * One step of the gas train.
 *
 * Equation: V·M/(R·T)·dp/dt = Σṁ at each node (isothermal ideal gas), implicit Euler. Flows are
 * linearised about the present state and solved along the tree; a step that leaves the range of the
 * linearisation is solved again by Newton's method. The flow reported is the one in the balance, so
 * mass closes to rounding. When nothing moves, one solve serves several steps (coast.ts).
 * Left out: inertia and pressure waves in the pipes, heat exchange, composition (gas that flows back
 * from the furnace counts as fuel gas; air left in the line flows as gas
 * does, see air-in-line.ts).
 *
 * @param furnaceGaugePa pressure at the burner, Pa gauge
 */
export function stepGasTrain(
  train: GasTrain,
  furnaceGaugePa: number,
  ambientPa: number,
  stepS: number,
): void {
  if (train.valvesMoving) moveValves(train, stepS);
  balance(train, furnaceGaugePa, ambientPa, stepS);
  if (train.air.present) carryAir(train, stepS);
}

function balance(train: GasTrain, furnaceGaugePa: number, ambientPa: number, stepS: number): void {
  if (train.coastLeft > 0 && mayCoast(train, furnaceGaugePa, ambientPa, stepS)) {
    coast(train, ambientPa);
    return;
  }
  if (isJump(train, furnaceGaugePa, ambientPa, stepS)) train.calmSteps = 0;
  train.stepS = stepS;
  moveBoundaries(train, furnaceGaugePa, ambientPa);
  let count = train.calmSteps >= CALM_STEPS ? coastLength(train) : 1;
  let steps = count > 1 ? COAST_THETA * count : 1;
  if (count > 1 && !solveFor(train, ambientPa, steps * stepS)) {
    lineariseAll(train);
    train.calmSteps = -TRY_AGAIN_STEPS;
    count = 1;
    steps = 1;
  }
  if (count === 1 && !solveFor(train, ambientPa, stepS)) {
    solveByNewton(train, ambientPa);
    train.calmSteps = Math.min(0, train.calmSteps);
  }
  finish(train, ambientPa, steps);
  train.coastLeft = count - 1;
}

/** Solves for a time; false when the linearisation did not hold over it. */
function solveFor(train: GasTrain, ambientPa: number, timeS: number): boolean {
  if (timeS !== train.solveS) {
    train.solveS = timeS;
    train.matrixMoved = true;
    setRegulatorStep(train.regulators, timeS);
  }
  aimRegulators(train, ambientPa);
  refreshEdges(train);
  return !solveOnce(train, ambientPa);
}

function moveValves(train: GasTrain, stepS: number): void {
  const { valves, stem } = train;
  let moving = false;
  for (let k = 0; k < valves.count; k++) {
    const e = valves.edge[k] as number;
    const before = stem[e] as number;
    const after = moveStem(valves, k, before, stepS);
    if (after === before) continue;
    stem[e] = after;
    setConductance(train, e, valveConductance(valves, k, after));
    moving = true;
  }
  train.valvesMoving = moving;
}

function moveBoundaries(train: GasTrain, furnaceGaugePa: number, ambientPa: number): void {
  const { absolutePa, nodeCount } = train;
  absolutePa[nodeCount] = ambientPa;
  absolutePa[nodeCount + 1] = ambientPa + furnaceGaugePa;
  absolutePa[nodeCount + 2] = ambientPa + train.parameters.supply.pressureGaugePa;
}

function aimRegulators(train: GasTrain, ambientPa: number): void {
  const { regulators, absolutePa, to, moved } = train;
  for (let k = 0; k < regulators.count; k++) {
    const e = regulators.edge[k] as number;
    const outletGaugePa = (absolutePa[to[e] as number] as number) - ambientPa;
    aimRegulator(regulators, k, outletGaugePa);
    setRegulator(train, k, KEEP_SLOPE_SHARE);
    moved[e] = MOVED;
  }
}

/** Flows at the present state, their sums at the nodes, and the slopes of what moved. */
function refreshEdges(train: GasTrain): void {
  const { liveCount, moved, from, to, absolutePa } = train;
  const { conductance, baseFlow, pointFromPa, pointToPa } = train;
  const { pointUnitFlow, unitFromSlope, unitToSlope } = train;
  const { rhs } = train.tree;
  rhs.fill(0);
  for (let e = 0; e < liveCount; e++) {
    const a = from[e] as number;
    const b = to[e] as number;
    if (moved[e] === MOVED) {
      setSlopes(train, e, KEEP_SLOPE_SHARE);
      moved[e] = 0;
    }
    const flow =
      (conductance[e] as number) *
      ((pointUnitFlow[e] as number) +
        (unitFromSlope[e] as number) * ((absolutePa[a] as number) - (pointFromPa[e] as number)) -
        (unitToSlope[e] as number) * ((absolutePa[b] as number) - (pointToPa[e] as number)));
    baseFlow[e] = flow;
    rhs[a] = (rhs[a] as number) - flow;
    rhs[b] = (rhs[b] as number) + flow;
  }
  displaceGas(train);
}

/**
 * Balances the nodes by one linear solve, and linearises anew what moved; true when a flow in the
 * balance is not close to its curve.
 */
function solveOnce(train: GasTrain, ambientPa: number): boolean {
  if (train.matrixMoved) assemble(train);
  solveTree(train.tree);
  const { liveCount, from, to, baseFlow, flowKgS, absolutePa, moved } = train;
  const { fromSlope, toSlope, pointFromPa, pointToPa, tolerancePa, isRegulator } = train;
  const { delta } = train.tree;
  let strayed = false;
  const calmKgS = CALM_SHARE * train.parameters.supply.ratedFlowKgS;
  let calm = true;
  for (let e = 0; e < liveCount; e++) {
    const a = from[e] as number;
    const b = to[e] as number;
    const byFrom = delta[a] as number;
    const byTo = delta[b] as number;
    const flow =
      (baseFlow[e] as number) + (fromSlope[e] as number) * byFrom - (toSlope[e] as number) * byTo;
    if (Math.abs(flow - (flowKgS[e] as number)) > calmKgS) calm = false;
    flowKgS[e] = flow;
    const fromPa = (absolutePa[a] as number) + byFrom;
    const toPa = (absolutePa[b] as number) + byTo;
    const fromDrift = fromPa - (pointFromPa[e] as number);
    const drift = Math.abs(fromDrift - toPa + (pointToPa[e] as number));
    if (drift > (tolerancePa[e] as number) || Math.abs(fromDrift) > KEEP_FROM_PA) {
      linearise(train, e, fromPa, toPa);
      moved[e] = MOVED;
      if (isRegulator[e] === 0 && isOff(train, e)) strayed = true;
    }
  }
  train.calmSteps = calm || train.calmSteps < 0 ? train.calmSteps + 1 : 0;
  return checkRegulators(train, ambientPa) || strayed;
}

/** Aims the regulators at the new pressures; true when one is not close to where the balance had it. */
function checkRegulators(train: GasTrain, ambientPa: number): boolean {
  const { regulators, to, absolutePa, tree, linearStroke } = train;
  let strayed = false;
  for (let k = 0; k < regulators.count; k++) {
    const e = regulators.edge[k] as number;
    const outlet = to[e] as number;
    const delta = tree.delta[outlet] as number;
    linearStroke[k] = (regulators.aim[k] as number) - (train.regulatorSlope[k] as number) * delta;
    aimRegulator(regulators, k, (absolutePa[outlet] as number) + delta - ambientPa);
    const backwards = (train.pointUnitFlow[e] as number) < 0;
    train.conductance[e] = regulatorConductance(regulators, k, backwards);
    if (isOff(train, e)) strayed = true;
  }
  return strayed;
}

/** Whether the flow in the balance is far from the curve at the new pressures. */
function isOff(train: GasTrain, e: number): boolean {
  const { absolutePa, from, to, tree } = train;
  const a = from[e] as number;
  const b = to[e] as number;
  const byFrom =
    (absolutePa[a] as number) + (tree.delta[a] as number) - (train.pointFromPa[e] as number);
  const byTo =
    (absolutePa[b] as number) + (tree.delta[b] as number) - (train.pointToPa[e] as number);
  const curve =
    (train.conductance[e] as number) *
    ((train.pointUnitFlow[e] as number) +
      (train.unitFromSlope[e] as number) * byFrom -
      (train.unitToSlope[e] as number) * byTo);
  const error = Math.abs(curve - (train.flowKgS[e] as number));
  return (
    error > CLOSE_SHARE_OF_RATED * train.parameters.supply.ratedFlowKgS &&
    error > CLOSE_SHARE * Math.abs(curve)
  );
}
