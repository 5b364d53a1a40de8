/** The meter as one dense matrix a reading, its own conductance in it: what the quick one must equal. */
import type { AnalogueChannel } from '../../../src/field/wiring/analogue.ts';
import type { MeterQuestion } from '../../../src/field/wiring/meter.ts';
import { INSULATION_S, type Network } from '../../../src/field/wiring/network.ts';
import { EARTH } from '../../../src/field/wiring/parameters.ts';
import type { Wiring } from '../../../src/field/wiring/wiring.ts';
import { solvePhasors } from './dense-phasors.ts';

const TEST_AMPS = 1e-6;
const TWO_PI = 6.283185307179586;

export interface DenseReading {
  readonly alternating: number;
  readonly direct: number;
  /** Of the wiring between the places, sources at rest. */
  readonly ohm: number;
}

/** Null where a place is not part of this wiring. */
export function readDenseMeter(
  w: Wiring,
  question: MeterQuestion,
  meterOhm: number,
): DenseReading | null {
  const { network } = w;
  const from = network.nodeAt.get(question.from);
  const to = network.nodeAt.get(question.to);
  if (from === undefined) return null;
  if (question.kind === 'amps') {
    const amps = clamp(w, question.from);
    return amps === null ? null : { ...amps, ohm: 0 };
  }
  if (to === undefined) return null;
  const volts = between(w, from, to, meterOhm);
  const sent = solvePhasors(matrixOf(w, from, to, 0, 0), currentAt(network, from, to, TEST_AMPS));
  const raised = from === to ? 0 : at(sent.re, from) - at(sent.re, to);
  return { ...volts, ohm: Math.abs(raised) / TEST_AMPS };
}

interface Parts {
  readonly alternating: number;
  readonly direct: number;
}

function between(w: Wiring, from: number, to: number, meterOhm: number): Parts {
  const hz = w.supply.mainsHz;
  const swing = solvePhasors(
    matrixOf(w, from, to, 1 / meterOhm, TWO_PI * hz),
    sourceCurrents(w, true),
  );
  const steady = solvePhasors(matrixOf(w, from, to, 1 / meterOhm, 0), directCurrents(w));
  const re = at(swing.re, from) - at(swing.re, to);
  const im = at(swing.im, from) - at(swing.im, to);
  const alternating = Math.sqrt(re * re + im * im);
  return { alternating, direct: at(steady.re, from) - at(steady.re, to) };
}

/** The current through the element, or out of the source, that the terminal belongs to. */
function clamp(w: Wiring, terminal: string): Parts | null {
  const { network, netlist } = w;
  const name = terminal.replace(/:[12]$/, '');
  const place = netlist.elements.findIndex((element) => element.name === name);
  const source = w.parameters.wiring.sources.findIndex(({ id }) => id === name);
  const branch = place >= 0 ? place : netlist.elements.length + branchesBefore(w, source);
  if (place < 0 && source < 0) return null;
  const swing = solvePhasors(matrixOf(w, 0, 0, 0, 0), sourceCurrents(w, true));
  const steady = solvePhasors(matrixOf(w, 0, 0, 0, 0), directCurrents(w));
  const a = network.branchA[branch] as number;
  const b = network.branchB[branch] as number;
  const siemens = network.branchS[branch] as number;
  let alternating = siemens * (at(swing.re, a) - at(swing.re, b));
  let direct = siemens * (at(steady.re, a) - at(steady.re, b));
  if (source >= 0) {
    const emf = emfOf(w, source) * siemens;
    if (network.sources[source]?.alternating) alternating = emf - alternating;
    else direct = emf - direct;
  }
  const channel = w.channels.find(({ from }) => from >= 0 && from === place);
  if (channel !== undefined) direct += sentBy(w, channel);
  alternating = Math.abs(alternating);
  return { alternating, direct };
}

function branchesBefore(w: Wiring, source: number): number {
  let branches = 0;
  for (let i = 0; i < source; i++) branches += w.parameters.wiring.sources[i]?.bonded ? 2 : 1;
  return branches;
}

function emfOf(w: Wiring, index: number): number {
  const source = w.parameters.wiring.sources[index];
  if (source === undefined) return 0;
  return source.kind === 'alternating' ? w.supply.mainsVolts : w.directFed ? source.volts : 0;
}

function sourceCurrents(w: Wiring, alternating: boolean): Float64Array {
  const { network } = w;
  const currents = new Float64Array(network.nodes);
  for (const source of network.sources) {
    if (source.alternating !== alternating) continue;
    put(currents, source.liveNode, emfOf(w, source.index) * source.seriesS);
    put(currents, source.neutralNode, -emfOf(w, source.index) * source.seriesS);
  }
  return currents;
}

/** Direct sources and what every sender sends at this moment. */
function directCurrents(w: Wiring): Float64Array {
  const { network } = w;
  const currents = sourceCurrents(w, false);
  for (const channel of w.channels) {
    const { from } = channel;
    if (from < 0) continue;
    const amps = sentBy(w, channel);
    put(currents, network.branchA[from] as number, -amps);
    put(currents, network.branchB[from] as number, amps);
  }
  return currents;
}

/** The current that a sender drives at this moment, beside what flows through its resistance. */
function sentBy(w: Wiring, channel: AnalogueChannel): number {
  const { plan, from, upper, lower, most, signal } = channel;
  const sent = plan.atZero + plan.perUnit * signal();
  if (plan.legs === null) return Math.min(most, sent);
  const { direct, branchA, branchB, branchS } = w.network;
  const across = at(direct, branchA[upper] as number) - at(direct, branchB[lower] as number);
  return (sent - 0.5) * across * (branchS[from] as number);
}

/** Every conductance and capacitance, and the meter's own, as a full matrix with its row of ω·C. */
function matrixOf(w: Wiring, from: number, to: number, meterS: number, omega: number) {
  const { network } = w;
  const { nodes } = network;
  const re = new Float64Array(nodes * nodes);
  const im = new Float64Array(nodes * nodes);
  const join = (matrix: Float64Array, a: number, b: number, value: number) => {
    if (a === b) return;
    if (a < nodes) matrix[a * nodes + a] = (matrix[a * nodes + a] as number) + value;
    if (b < nodes) matrix[b * nodes + b] = (matrix[b * nodes + b] as number) + value;
    if (a >= nodes || b >= nodes) return;
    matrix[a * nodes + b] = (matrix[a * nodes + b] as number) - value;
    matrix[b * nodes + a] = (matrix[b * nodes + a] as number) - value;
  };
  for (let node = 0; node < nodes; node++) join(re, node, nodes, INSULATION_S);
  for (let i = 0; i < network.branchA.length; i++) {
    join(
      re,
      network.branchA[i] as number,
      network.branchB[i] as number,
      network.branchS[i] as number,
    );
  }
  join(re, from, to, meterS);
  if (omega > 0) {
    const earth = network.nodeAt.get(EARTH) as number;
    for (const { wires, lengthM, coreToCorePfM, coreToEarthPfM } of w.parameters.wiring.cables) {
      const cores = wires.map((wire) => network.nodeAt.get(wire) as number);
      cores.forEach((core, i) => {
        join(im, core, earth, omega * coreToEarthPfM * 1e-12 * lengthM);
        for (const other of cores.slice(i + 1)) {
          join(im, core, other, omega * coreToCorePfM * 1e-12 * lengthM);
        }
      });
    }
  }
  return { nodes, re, im };
}

function currentAt(network: Network, from: number, to: number, amps: number): Float64Array {
  const currents = new Float64Array(network.nodes);
  put(currents, from, amps);
  put(currents, to, -amps);
  return currents;
}

function put(currents: Float64Array, node: number, amps: number): void {
  if (node < currents.length) currents[node] = (currents[node] as number) + amps;
}

function at(volts: Float64Array, node: number): number {
  return node < volts.length ? (volts[node] as number) : 0;
}
