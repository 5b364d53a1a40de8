import { advanceRegulator, coastRegulators, regulatorOpening } from './regulator.ts';
import { type GasTrain, MOVED } from './train-state.ts';

/** Furnace pressure may stray by this much while the train coasts, Pa. */
const COAST_FURNACE_PA = 5;
/** Steps that one solve may serve while no flow changes … */
const CALM_COAST = 10;
/** … and while no pressure moves faster than QUIET_PA either, and no valve. */
export const LONGEST_COAST = 20;
/** Pa per step: above what a sound seat leaks, far below a leak that matters. */
const QUIET_PA = 0.01;
/** A larger move than this is followed step by step, Pa. */
const JUMP_PA = 50;

/** Change of flow by a moving area, as a share of rated flow, that asks for a new solve … */
const AREA_SHARE = 1e-3;
/** … and that ends the calm. */
const AREA_JUMP_SHARE = 0.01;

/**
 * Where in a coast its flows are taken, from 0 start to 1 end. One half would be exact to second
 * order but would never let a small swing die away; a little more does both well enough.
 */
export const COAST_THETA = 0.6;

/**
 * Coasting: while flows hardly change, one solve gives the flows of several steps, and pressures go
 * in a straight line. It is left at once when something moves; flows times time then still match the
 * gas in the train, because both are in proportion to the steps gone by.
 */
export function mayCoast(
  train: GasTrain,
  furnaceGaugePa: number,
  ambientPa: number,
  stepS: number,
): boolean {
  return (
    !train.disturbed &&
    !train.areaMoved &&
    stepS === train.stepS &&
    ambientPa === train.absolutePa[train.nodeCount] &&
    Math.abs(furnaceGaugePa - train.heldFurnacePa) <= COAST_FURNACE_PA
  );
}

/** Steps that the next solve of a calm train may serve. */
export function coastLength(train: GasTrain): number {
  return train.quiet ? train.longestCoast : Math.min(CALM_COAST, train.longestCoast);
}

export function coast(train: GasTrain, ambientPa: number): void {
  const { nodeCount, absolutePa, pressureGaugePa, ratePa } = train;
  for (let i = 0; i < nodeCount; i++) {
    const pa = (absolutePa[i] as number) + (ratePa[i] as number);
    absolutePa[i] = pa;
    pressureGaugePa[i] = pa - ambientPa;
  }
  coastRegulators(train.regulators);
  train.coastLeft--;
}

/** Whether the inputs moved so far that the train is not calm; also takes note of them. */
export function isJump(
  train: GasTrain,
  furnaceGaugePa: number,
  ambientPa: number,
  stepS: number,
): boolean {
  const jump =
    train.disturbed ||
    stepS !== train.stepS ||
    ambientPa !== train.absolutePa[train.nodeCount] ||
    Math.abs(furnaceGaugePa - train.heldFurnacePa) > JUMP_PA;
  train.disturbed = false;
  train.areaMoved = false;
  train.heldFurnacePa = furnaceGaugePa;
  return jump;
}

/** Takes a solve over that went `steps` ahead, and goes one step. */
export function finish(train: GasTrain, ambientPa: number, steps: number): void {
  const { nodeCount, absolutePa, pressureGaugePa, ratePa, tree, regulators, to, stem } = train;
  const { movableEdges, solvedConductance, conductance } = train;
  const share = 1 / steps;
  let quiet = !train.valvesMoving;
  for (let k = 0; k < regulators.count; k++) {
    const e = regulators.edge[k] as number;
    const outlet = to[e] as number;
    const endPa = (absolutePa[outlet] as number) + (tree.delta[outlet] as number);
    advanceRegulator(regulators, k, endPa - ambientPa, train.linearStroke[k] as number, share);
    stem[e] = regulatorOpening(regulators, k);
  }
  for (let i = 0; i < nodeCount; i++) {
    const rate = (tree.delta[i] as number) * share;
    const pa = (absolutePa[i] as number) + rate;
    ratePa[i] = rate;
    if (Math.abs(rate) > QUIET_PA) quiet = false;
    absolutePa[i] = pa;
    pressureGaugePa[i] = pa - ambientPa;
  }
  train.quiet = quiet;
  for (let i = 0; i < movableEdges.length; i++) {
    const e = movableEdges[i] as number;
    solvedConductance[e] = conductance[e] as number;
  }
}

/** Sets an edge's conductance, and notes when it matters for the flows in use. */
export function setConductance(train: GasTrain, e: number, conductance: number): void {
  if (train.conductance[e] === conductance) return;
  train.conductance[e] = conductance;
  train.moved[e] = MOVED;
  const change =
    Math.abs(conductance - (train.solvedConductance[e] as number)) *
    Math.abs(train.pointUnitFlow[e] as number);
  const rated = train.parameters.supply.ratedFlowKgS;
  if (change > AREA_SHARE * rated) train.areaMoved = true;
  if (change > AREA_JUMP_SHARE * rated) train.disturbed = true;
}
