import type { CurveTable } from '../../numeric/index.ts';
import type { AirInLine } from './air-in-line.ts';
import type { MixtureProperties } from './mixture.ts';
import type { NozzleCurve, UnitFlow } from './nozzle.ts';
import type { RegulatorBank } from './regulator.ts';
import type { GasTrainParameters } from './train-parameters.ts';
import type { PressureTree } from './tree.ts';
import type { ValveBank } from './valve-motion.ts';

/** Mark of an edge whose slopes may have changed since the matrix was made. */
export const MOVED = 1;

/**
 * A gas train in a run: parameters (shared, changed in place by faults), readable results, state.
 *
 * Nodes stand in the order of elimination, edges in the order of the parameters, and after them
 * the service connection from the main to the supply. Behind those, one path a node from its joints
 * into the room: the columns have them always, the balance only while some joint leaks.
 */
export interface GasTrain {
  readonly parameters: GasTrainParameters;
  readonly nodeIds: readonly string[];
  readonly edgeIds: readonly string[];

  /** Results of the last step. */
  readonly pressureGaugePa: Float64Array;
  /** Flow that went into the balance, forward positive. */
  readonly flowKgS: Float64Array;
  /** 0 shut … 1 open: valve stem, regulator stroke, cock handle, blade over 90°. */
  readonly stem: Float64Array;
  readonly bladeDeg: Float64Array;
  gas: MixtureProperties;
  readonly air: AirInLine;

  readonly nodeCount: number;
  /** Paths of the parameters and the service connection. */
  readonly edgeCount: number;
  /** Paths that the balance counts: `edgeCount`, or those and one a node while gas escapes. */
  liveCount: number;
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly absolutePa: Float64Array;
  readonly capacityKgPa: Float64Array;
  readonly shaftDeg: Float64Array;
  readonly conductance: Float64Array;
  readonly regulatorGain: Float64Array;
  readonly unitFromSlope: Float64Array;
  readonly unitToSlope: Float64Array;
  readonly fromSlope: Float64Array;
  readonly toSlope: Float64Array;
  readonly baseFlow: Float64Array;
  /** Where an edge was linearised: pressures and unit flow. */
  readonly pointFromPa: Float64Array;
  readonly pointToPa: Float64Array;
  readonly pointUnitFlow: Float64Array;
  readonly tolerancePa: Float64Array;
  readonly moved: Uint8Array;
  readonly isRegulator: Uint8Array;
  readonly fromCoupling: Int32Array;
  readonly toCoupling: Int32Array;
  /** Pressure changes of the step at the present and the next Newton point. */
  readonly change: Float64Array;
  readonly trial: Float64Array;
  readonly tree: PressureTree;
  readonly valves: ValveBank;
  readonly valveOfEdge: Int32Array;
  readonly regulators: RegulatorBank;
  readonly regulatorSlope: Float64Array;
  /** Stroke as the balance had it. */
  readonly linearStroke: Float64Array;
  readonly curves: (CurveTable | null)[];
  readonly fullConductance: Float64Array;
  readonly unit: UnitFlow;
  nozzle: NozzleCurve;
  stepS: number;
  /** Time of the last solve; NaN asks for a new matrix. */
  solveS: number;
  matrixMoved: boolean;

  /** Coasting: pressure change per step, steps left, quiet steps so far, most steps of one solve. */
  readonly ratePa: Float64Array;
  coastLeft: number;
  calmSteps: number;
  longestCoast: number;
  /** No pressure moves to speak of. */
  quiet: boolean;
  /** A parameter or a valve's drive changed; an area moved enough for a new solve. */
  disturbed: boolean;
  areaMoved: boolean;
  valvesMoving: boolean;
  heldFurnacePa: number;
  readonly movableEdges: Int32Array;
  readonly solvedConductance: Float64Array;
  /** The parameters as text when they were last prepared. */
  preparedFrom: string;
}

export function findNode(train: GasTrain, id: string): number {
  const index = train.nodeIds.indexOf(id);
  if (index < 0) throw new RangeError(`no gas node ${id}`);
  return index;
}

export function findEdge(train: GasTrain, id: string): number {
  const index = train.edgeIds.indexOf(id);
  if (index < 0) throw new RangeError(`no gas edge ${id}`);
  return index;
}

/** Gas that escapes into the room at the joints of each node, kg/s, in the order of `nodeIds`. */
export function escapeKgS(train: GasTrain): Float64Array {
  return train.flowKgS.subarray(train.edgeCount);
}

/** All gas in the train, kg, apart from a constant: what a balance over the boundaries must match. */
export function gasContentsKg(train: GasTrain): number {
  const { nodeCount, absolutePa, capacityKgPa, regulators } = train;
  let sum = 0;
  for (let i = 0; i < nodeCount; i++) {
    sum += (absolutePa[i] as number) * (capacityKgPa[i] as number);
  }
  for (let k = 0; k < regulators.count; k++) {
    sum -= (regulators.displacedKg[k] as number) * (regulators.booked[k] as number);
  }
  return sum;
}
