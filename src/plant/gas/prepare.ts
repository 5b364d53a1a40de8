import { createMonotoneTable, readTable } from '../../numeric/index.ts';
import { lineariseAll } from './balance.ts';
import { putAirIn } from './carry-air.ts';
import { LONGEST_COAST, setConductance } from './coast.ts';
import type { ControlParameters } from './edge-parameters.ts';
import { describeMixture, REFERENCE_PRESSURE_PA } from './mixture.ts';
import { conductanceOf, nozzleFlow, prepareNozzle } from './nozzle.ts';
import { heldPa, prepareRegulator } from './regulator.ts';
import { SEAT_LEAK_TEST_PA } from './seat-leak.ts';
import { SUPPLY } from './train-parameters.ts';
import { findNode, type GasTrain } from './train-state.ts';
import { aimValve, prepareValve, valveConductance } from './valve-motion.ts';

/** A regulator slower than this may hunt, which long solves would hide, s. */
const COAST_LAG_S = 0.005;
/**
 * Takes changed parameters over: areas, volumes, settings, mixture. Pressures, stems and the
 * positions set from outside stay; called without a change it changes nothing, to the last bit.
 */
export function prepareGasTrain(train: GasTrain): void {
  const { parameters, valves, regulators } = train;
  const text = JSON.stringify(parameters);
  if (text === train.preparedFrom) return;
  train.preparedFrom = text;
  const { temperatureK } = parameters;
  const gas = describeMixture(parameters.mixture);
  const nozzle = prepareNozzle(gas.heatCapacityRatio);
  train.gas = gas;
  train.nozzle = nozzle;
  const perArea = conductanceOf(1, gas.gasConstantJKgK, temperatureK);
  const testFlow = nozzleFlow(
    nozzle,
    1,
    REFERENCE_PRESSURE_PA + SEAT_LEAK_TEST_PA,
    REFERENCE_PRESSURE_PA,
  );
  const leakOf = (dm3PerHour: number) => (gas.densityKgM3 * dm3PerHour) / 3.6e6 / testFlow;
  const perVolume = 1 / 1000 / (gas.gasConstantJKgK * temperatureK);
  for (const { id, volumeDm3 } of [{ id: SUPPLY, ...parameters.supply }, ...parameters.nodes]) {
    train.capacityKgPa[findNode(train, id)] = volumeDm3 * perVolume;
  }
  let regulator = 0;
  let valve = 0;
  parameters.edges.forEach((edge, e) => {
    const full = perArea * edge.areaM2;
    train.fullConductance[e] = full;
    switch (edge.kind) {
      case 'cock':
        train.stem[e] = edge.opening;
        setConductance(train, e, full * edge.opening);
        break;
      case 'strainer':
      case 'orifice':
        train.stem[e] = 1 - edge.blockedFraction;
        setConductance(train, e, full * (1 - edge.blockedFraction));
        break;
      case 'control':
        train.curves[e] = createMonotoneTable(edge.bladeDeg, edge.openFraction);
        placeBlade(train, e, edge);
        break;
      case 'shutoff': {
        const k = valve++;
        prepareValve(valves, k, edge, full, leakOf(edge.seatLeakDm3H));
        setConductance(train, e, valveConductance(valves, k, train.stem[e] as number));
        break;
      }
      case 'regulator': {
        const k = regulator++;
        const outletPa = REFERENCE_PRESSURE_PA + heldPa(edge);
        const density = outletPa / (gas.gasConstantJKgK * temperatureK);
        prepareRegulator(regulators, k, edge, full, leakOf(edge.seatLeakDm3H), density);
        break;
      }
    }
  });
  const { pressureGaugePa, ratedFlowKgS, ratedDropPa } = parameters.supply;
  const mainPa = REFERENCE_PRESSURE_PA + Math.max(pressureGaugePa, ratedDropPa);
  const service = ratedFlowKgS / nozzleFlow(nozzle, 1, mainPa, mainPa - ratedDropPa);
  train.stem[train.edgeCount - 1] = 1;
  // A main without pressure is shut off by who supplies it; nothing goes back into it.
  setConductance(train, train.edgeCount - 1, pressureGaugePa > 0 ? service : 0);
  openJoints(train, leakOf);
  putAirIn(train);
  lineariseAll(train);
  train.solveS = NaN;
  train.disturbed = true;
  train.valvesMoving = true;
  train.longestCoast = LONGEST_COAST;
  for (let k = 0; k < regulators.count; k++) {
    if ((regulators.lagS[k] as number) > COAST_LAG_S) train.longestCoast = 1;
  }
}

/** While no joint leaks, the balance is spared their paths. */
function openJoints(train: GasTrain, leakOf: (dm3PerHour: number) => number): void {
  const { nodes } = train.parameters;
  const { edgeCount } = train;
  for (const { id, escapeDm3H } of nodes) {
    setConductance(train, edgeCount + findNode(train, id), leakOf(escapeDm3H));
  }
  const escapes = nodes.some(({ escapeDm3H }) => escapeDm3H > 0);
  train.liveCount = escapes ? edgeCount + train.nodeCount : edgeCount;
  if (escapes) return;
  train.flowKgS.fill(0, edgeCount);
  train.baseFlow.fill(0, edgeCount);
}

/** Powers a valve or takes its power away; whether it moves is up to coil, spring and stem. */
export function energise(train: GasTrain, edgeIndex: number, on: boolean): void {
  const k = train.valveOfEdge[edgeIndex] as number;
  const edge = train.parameters.edges[edgeIndex];
  if (edge?.kind !== 'shutoff') throw new RangeError(`edge ${edgeIndex} is no powered valve`);
  const before = train.valves.opens[k];
  train.valves.powered[k] = on ? 1 : 0;
  aimValve(train.valves, k, edge);
  if (train.valves.opens[k] === before) return;
  train.valvesMoving = true;
  train.disturbed = true;
}

/** Sets the shaft of a control valve; its blade follows with the slip of the coupling. */
export function setBlade(train: GasTrain, edgeIndex: number, shaftDeg: number): void {
  if (train.shaftDeg[edgeIndex] === shaftDeg) return;
  const edge = train.parameters.edges[edgeIndex];
  if (edge?.kind !== 'control') throw new RangeError(`edge ${edgeIndex} is no control valve`);
  train.shaftDeg[edgeIndex] = shaftDeg;
  placeBlade(train, edgeIndex, edge);
}

function placeBlade(train: GasTrain, e: number, p: ControlParameters): void {
  const curve = train.curves[e];
  if (!curve) return;
  const bladeDeg = Math.min(90, Math.max(0, (train.shaftDeg[e] as number) + p.shaftSlipDeg));
  train.bladeDeg[e] = bladeDeg;
  train.stem[e] = bladeDeg / 90;
  setConductance(train, e, (train.fullConductance[e] as number) * readTable(curve, bladeDeg));
}
