import { createAirInLine } from './air-in-line.ts';
import { lineariseAll } from './balance.ts';
import { describeMixture, REFERENCE_PRESSURE_PA } from './mixture.ts';
import { prepareNozzle } from './nozzle.ts';
import { prepareGasTrain } from './prepare.ts';
import {
  createRegulatorBank,
  prepareRegulator,
  regulatorOpening,
  settleRegulator,
} from './regulator.ts';
import {
  BOUNDARIES,
  checkGasTrain,
  type GasTrainParameters,
  isBoundary,
  SUPPLY,
} from './train-parameters.ts';
import { findNode, type GasTrain, MOVED } from './train-state.ts';
import { createTree, orderTree } from './tree.ts';
import { aimValve, createValveBank } from './valve-motion.ts';

/** The gas main: a boundary at the supply's own pressure. */
const MAIN = 'main';
/** The edge from the main to the supply. */
const SERVICE = 'service';

/** Builds a train at rest at its start pressures. The parameters must have passed `checkGasTrain`. */
export function createGasTrain(
  parameters: GasTrainParameters,
  ambientPa: number = REFERENCE_PRESSURE_PA,
): GasTrain {
  const issue = checkGasTrain(parameters)[0];
  if (issue) throw new RangeError(`gas train: ${issue.code} at ${issue.id} (${issue.found})`);
  const declared = [SUPPLY, ...parameters.nodes.map(({ id }) => id)];
  const declaredPairs = parameters.edges
    .filter(({ from, to }) => !isBoundary(from) && !isBoundary(to))
    .map(({ from, to }) => [declared.indexOf(from), declared.indexOf(to)] as const);
  const nodeIds = orderTree(declared.length, declaredPairs).map((i) => declared[i] as string);
  const nodeCount = nodeIds.length;
  const points = [...nodeIds, ...BOUNDARIES, MAIN];
  const ends = [
    ...parameters.edges.map(({ id, from, to }) => ({ id, from, to })),
    { id: SERVICE, from: MAIN, to: SUPPLY },
  ];
  const edgeCount = ends.length;
  const room: (typeof BOUNDARIES)[number] = 'atmosphere';
  const paths = [...ends, ...nodeIds.map((id) => ({ id, from: id, to: room }))];
  const from = Int32Array.from(paths, (path) => points.indexOf(path.from));
  const to = Int32Array.from(paths, (path) => points.indexOf(path.to));
  const pairs = ends
    .map((_, e) => [from[e] as number, to[e] as number] as const)
    .filter(([a, b]) => a < nodeCount && b < nodeCount);
  const column = () => new Float64Array(paths.length);
  const ofKind = (kind: string) =>
    parameters.edges.flatMap((edge, e) => (edge.kind === kind ? [e] : []));
  const valves = createValveBank(ofKind('shutoff'));
  const regulators = createRegulatorBank(ofKind('regulator'));
  const gas = describeMixture(parameters.mixture);
  const train: GasTrain = {
    parameters,
    nodeIds,
    edgeIds: ends.map(({ id }) => id),
    pressureGaugePa: new Float64Array(nodeCount),
    flowKgS: column(),
    stem: column(),
    bladeDeg: column(),
    gas,
    air: createAirInLine(nodeIds, from, to, points.length),
    nodeCount,
    edgeCount,
    liveCount: edgeCount,
    from,
    to,
    absolutePa: new Float64Array(points.length),
    capacityKgPa: new Float64Array(nodeCount),
    shaftDeg: column(),
    conductance: column(),
    regulatorGain: column(),
    unitFromSlope: column(),
    unitToSlope: column(),
    fromSlope: column(),
    toSlope: column(),
    baseFlow: column(),
    pointFromPa: column(),
    pointToPa: column(),
    pointUnitFlow: column(),
    tolerancePa: column(),
    moved: new Uint8Array(paths.length).fill(MOVED),
    isRegulator: new Uint8Array(paths.length),
    fromCoupling: new Int32Array(paths.length),
    toCoupling: new Int32Array(paths.length),
    change: new Float64Array(points.length),
    trial: new Float64Array(points.length),
    tree: createTree(nodeCount, points.length - nodeCount, pairs),
    valves,
    valveOfEdge: new Int32Array(edgeCount).fill(-1),
    regulators,
    regulatorSlope: new Float64Array(regulators.count),
    linearStroke: new Float64Array(regulators.count),
    curves: ends.map(() => null),
    fullConductance: column(),
    unit: { flow: 0.5, fromSlope: 0.5, toSlope: 0.5 },
    nozzle: prepareNozzle(gas.heatCapacityRatio),
    stepS: NaN,
    solveS: NaN,
    matrixMoved: true,
    ratePa: new Float64Array(nodeCount),
    coastLeft: 0,
    calmSteps: 0,
    longestCoast: 1,
    quiet: false,
    disturbed: true,
    areaMoved: false,
    valvesMoving: true,
    heldFurnacePa: 0.5,
    movableEdges: Int32Array.from([...ofKind('control'), ...valves.edge]),
    solvedConductance: column(),
    preparedFrom: '',
  };
  valves.edge.forEach((e, k) => {
    train.valveOfEdge[e] = k;
  });
  linkCouplings(train);
  regulators.edge.forEach((e) => {
    train.isRegulator[e] = 1;
  });
  setStart(train, ambientPa);
  lineariseAll(train);
  prepareGasTrain(train);
  return train;
}

/** Slots of the tree's couplings for each edge; edges at a boundary write to the unused pair. */
function linkCouplings(train: GasTrain): void {
  const { nodeCount, from, to, fromCoupling, toCoupling } = train;
  for (let e = 0; e < from.length; e++) {
    const a = from[e] as number;
    const b = to[e] as number;
    const child = Math.max(a, b) < nodeCount ? Math.min(a, b) : nodeCount;
    fromCoupling[e] = a < b ? 2 * child : 2 * child + 1;
    toCoupling[e] = a < b ? 2 * child + 1 : 2 * child;
  }
}

function setStart(train: GasTrain, ambientPa: number): void {
  const { parameters, absolutePa, pressureGaugePa, regulators, valves } = train;
  absolutePa.fill(ambientPa);
  const starts = [
    { id: SUPPLY, startGaugePa: parameters.supply.pressureGaugePa },
    ...parameters.nodes,
  ];
  for (const { id, startGaugePa } of starts) {
    const i = findNode(train, id);
    pressureGaugePa[i] = startGaugePa;
    absolutePa[i] = ambientPa + startGaugePa;
  }
  absolutePa[train.nodeCount + BOUNDARIES.length] = ambientPa + parameters.supply.pressureGaugePa;
  let regulator = 0;
  parameters.edges.forEach((edge, e) => {
    if (edge.kind === 'shutoff') train.stem[e] = edge.normallyOpen ? edge.stuckShutFraction : 0;
    if (edge.kind !== 'regulator') return;
    const k = regulator++;
    prepareRegulator(regulators, k, edge, 0, 0, 0);
    const outlet = (absolutePa[train.to[e] as number] as number) - ambientPa;
    settleRegulator(regulators, k, outlet);
    train.stem[e] = regulatorOpening(regulators, k);
  });
  for (let k = 0; k < valves.count; k++) {
    const edge = parameters.edges[valves.edge[k] as number];
    if (edge?.kind === 'shutoff') aimValve(valves, k, edge);
  }
}
