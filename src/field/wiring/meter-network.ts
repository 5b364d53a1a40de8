import { type Elimination, factorise, planElimination, slotOf, solveVolts } from './elimination.ts';
import { INSULATION_S, type Network } from './network.ts';
import { type CableParameters, EARTH } from './parameters.ts';
import {
  createPhasorElimination,
  factorisePhasors,
  type PhasorElimination,
  solvePhasors,
} from './phasor-elimination.ts';

/**
 * A copy of the network for meters: its factors are kept as long as no contact moves, so that a
 * reading costs a few substitutions. The meter's own conductance g between two places changes the
 * open-circuit volts d₀ between them to d₀ / (1 + g·z), z what the network is between them; written
 * so, the meter is never part of the matrix (the matrix determinant lemma for one branch).
 */
export interface MeterNetwork {
  readonly network: Network;
  readonly place: Int32Array;
  /** Of each branch: its slot, −1 − the place whose way to earth it is, or `BOTH_ALIKE`. */
  readonly branchSlots: Int32Array;
  readonly capacitances: readonly Capacitance[];
  readonly steady: Elimination;
  readonly swing: PhasorElimination;
  /** The state that the factors, and the volts without a meter, are for. */
  readonly factoredS: Float64Array;
  hz: number;
  mainsVolts: number;
  readonly swingRe: Float64Array;
  readonly swingIm: Float64Array;
}

interface Capacitance {
  readonly slot: number;
  readonly farad: number;
}

/** A branch with both ends on one node. */
const BOTH_ALIKE = -2147483648;
const TWO_PI = 6.283185307179586;

/** The copy for the network of this moment: the one held, where it is of the same network. */
export function meterNetworkFor(
  held: MeterNetwork | null,
  network: Network,
  cables: readonly CableParameters[],
  mainsHz: number,
  mainsVolts: number,
): MeterNetwork {
  const m = held?.network === network ? held : layMeterNetwork(network, cables);
  if (mainsHz !== m.hz || !isSame(m.factoredS, network.branchS)) {
    m.factoredS.set(network.branchS);
    m.hz = mainsHz;
    fillIn(m);
    factorise(m.steady);
    factorisePhasors(m.swing);
    swingFree(m, mainsVolts);
  } else if (mainsVolts !== m.mainsVolts) {
    swingFree(m, mainsVolts);
  }
  return m;
}

/** Resistance of the network between two places, sources at rest, Ω. */
export function ohmBetween(m: MeterNetwork, from: number, to: number): number {
  if (from === to) return 0;
  const { current } = m.steady;
  putInto(m, current, from, 1);
  putInto(m, current, to, -1);
  solveVolts(m.steady);
  const ohm = voltsAtNode(m, m.steady.volts, from) - voltsAtNode(m, m.steady.volts, to);
  current.fill(0);
  return ohm;
}

/** Alternating volts that a meter of this conductance finds between two places, r.m.s. */
export function swingBetween(m: MeterNetwork, from: number, to: number, meterS: number): number {
  if (from === to) return 0;
  const { swing } = m;
  putInto(m, swing.currentRe, from, 1);
  putInto(m, swing.currentRe, to, -1);
  solvePhasors(swing);
  const ohmRe = voltsAtNode(m, swing.voltsRe, from) - voltsAtNode(m, swing.voltsRe, to);
  const ohmIm = voltsAtNode(m, swing.voltsIm, from) - voltsAtNode(m, swing.voltsIm, to);
  const re = voltsAtNode(m, m.swingRe, from) - voltsAtNode(m, m.swingRe, to);
  const im = voltsAtNode(m, m.swingIm, from) - voltsAtNode(m, m.swingIm, to);
  const loadRe = 1 + meterS * ohmRe;
  const loadIm = meterS * ohmIm;
  return Math.sqrt((re * re + im * im) / (loadRe * loadRe + loadIm * loadIm));
}

/** Volts of every node for currents into nodes, sources and senders as direct currents, into `into`. */
export function solveSteady(m: MeterNetwork, currents: Float64Array, into: Float64Array): void {
  const { steady, place } = m;
  for (let node = 0; node < place.length; node++) {
    steady.current[place[node] as number] = currents[node] as number;
  }
  solveVolts(steady);
  for (let node = 0; node < place.length; node++) {
    into[node] = steady.volts[place[node] as number] as number;
  }
  steady.current.fill(0);
}

/** Of alternating sources, with nothing connected but the wiring itself. */
function swingFree(m: MeterNetwork, mainsVolts: number): void {
  m.mainsVolts = mainsVolts;
  const { swing, network } = m;
  for (const source of network.sources) {
    if (!source.alternating) continue;
    putInto(m, swing.currentRe, source.liveNode, mainsVolts * source.seriesS);
    putInto(m, swing.currentRe, source.neutralNode, -mainsVolts * source.seriesS);
  }
  solvePhasors(swing);
  m.swingRe.set(swing.voltsRe);
  m.swingIm.set(swing.voltsIm);
}

function fillIn(m: MeterNetwork): void {
  const { steady, swing, branchSlots, capacitances, hz } = m;
  steady.conductance.fill(0);
  steady.toReference.fill(INSULATION_S);
  for (let i = 0; i < branchSlots.length; i++) {
    const slot = branchSlots[i] as number;
    const siemens = m.factoredS[i] as number;
    if (slot === BOTH_ALIKE) continue;
    if (slot >= 0) steady.conductance[slot] = (steady.conductance[slot] as number) + siemens;
    else steady.toReference[-1 - slot] = (steady.toReference[-1 - slot] as number) + siemens;
  }
  swing.admittanceRe.set(steady.conductance);
  swing.toReferenceRe.set(steady.toReference);
  swing.admittanceIm.fill(0);
  swing.toReferenceIm.fill(0);
  for (const { slot, farad } of capacitances) {
    const siemens = TWO_PI * hz * farad;
    const into = slot >= 0 ? swing.admittanceIm : swing.toReferenceIm;
    const at = slot >= 0 ? slot : -1 - slot;
    into[at] = (into[at] as number) + siemens;
  }
}

function layMeterNetwork(network: Network, cables: readonly CableParameters[]): MeterNetwork {
  const { nodes, branchA, branchB, nodeAt } = network;
  const pairs: { a: number; b: number; farad: number }[] = [];
  const earth = nodeAt.get(EARTH) as number;
  for (const { wires, lengthM, coreToCorePfM, coreToEarthPfM } of cables) {
    const cores = wires.map((wire) => nodeAt.get(wire) as number);
    cores.forEach((a, i) => {
      pairs.push({ a, b: earth, farad: coreToEarthPfM * 1e-12 * lengthM });
      for (const b of cores.slice(i + 1)) {
        pairs.push({ a, b, farad: coreToCorePfM * 1e-12 * lengthM });
      }
    });
  }
  const edges: [number, number][] = [];
  const join = (a: number, b: number) => {
    if (a < nodes && b < nodes && a !== b) edges.push([a, b]);
  };
  branchA.forEach((a, i) => {
    join(a, branchB[i] as number);
  });
  for (const { a, b } of pairs) join(a, b);
  const { elimination, place } = planElimination(nodes, edges);
  const slotBetween = (a: number, b: number): number => {
    if (a === b) return BOTH_ALIKE;
    if (a >= nodes) return -1 - (place[b] as number);
    if (b >= nodes) return -1 - (place[a] as number);
    const p = place[a] as number;
    const q = place[b] as number;
    return slotOf(elimination, Math.min(p, q), Math.max(p, q));
  };
  return {
    network,
    place,
    branchSlots: branchA.map((a, i) => slotBetween(a, branchB[i] as number)),
    capacitances: pairs
      .map(({ a, b, farad }) => ({ slot: slotBetween(a, b), farad }))
      .filter(({ slot }) => slot !== BOTH_ALIKE),
    steady: elimination,
    swing: createPhasorElimination(elimination),
    factoredS: new Float64Array(branchA.length).fill(Number.NaN),
    hz: Number.NaN,
    mainsVolts: Number.NaN,
    swingRe: new Float64Array(nodes),
    swingIm: new Float64Array(nodes),
  };
}

function isSame(a: Float64Array, b: Float64Array): boolean {
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}

/** Earth takes any current and has no volts. */
function putInto(m: MeterNetwork, currents: Float64Array, node: number, amps: number): void {
  if (node >= m.place.length) return;
  const at = m.place[node] as number;
  currents[at] = (currents[at] as number) + amps;
}

function voltsAtNode(m: MeterNetwork, volts: Float64Array, node: number): number {
  return node < m.place.length ? (volts[m.place[node] as number] as number) : 0;
}
