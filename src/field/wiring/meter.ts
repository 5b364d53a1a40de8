import type { AnalogueChannel } from './analogue.ts';
import {
  type MeterNetwork,
  meterNetworkFor,
  ohmBetween,
  solveSteady,
  swingBetween,
} from './meter-network.ts';
import { emfOf, type Wiring } from './wiring.ts';

/**
 * A hand-held meter as a part of the network, on a copy of it: see `meter-network.ts`.
 *
 * Volts: 10 MΩ between the tips, alternating and direct apart. Wires in one cable have capacitance
 * to each other and to earth, so a wire that hangs on nothing else shows ghost volts: phasors,
 * G + jωC. Ohms and continuity: the meter sends a small current and reads what volts that takes;
 * on a live circuit the reading is nonsense, and `live` says so. Amps: a clamp round the wire at a
 * terminal.
 * Left out: inductance of coils (a coil is its resistance), the meter's frequency response.
 * Source of the capacitive divider: any electricity text.
 */
export const METER_KINDS = ['volts', 'ohms', 'continuity', 'amps'] as const;
export type MeterKind = (typeof METER_KINDS)[number];

export interface MeterQuestion {
  readonly kind: MeterKind;
  /** A wire, `earth`, or a terminal such as `fan-relay.coil:1`; for amps a terminal. */
  readonly from: string;
  readonly to: string;
}

export interface MeterReading {
  readonly value: number;
  readonly unit: 'V' | 'Ω' | 'A';
  /** Of a reading in volts or amps: its two parts, the direct one with its sign. */
  readonly alternating: number;
  readonly direct: number;
  /** Beyond what the meter shows. */
  readonly overload: boolean;
  /** There are volts where there should be none for this measurement: it means nothing. */
  readonly live: boolean;
  readonly beeps: boolean;
}

export const METER_OHM = 1e7;
const TEST_AMPS = 1e-6;
const MOST_OHM = 5e7;
const BEEPS_BELOW_OHM = 30;
const LIVE_VOLTS = 0.5;

/** @returns null where a place is not part of this wiring */
export function readMeter(
  w: Wiring,
  question: MeterQuestion,
  meterOhm: number = METER_OHM,
): MeterReading | null {
  const { network } = w;
  const from = network.nodeAt.get(question.from);
  const to = network.nodeAt.get(question.to);
  if (from === undefined) return null;
  if (question.kind === 'amps') return clamp(w, question.from);
  if (to === undefined) return null;
  const m = meteredOf(w);
  const ohmHere = ohmBetween(m, from, to);
  const alternating = swingBetween(m, from, to, 1 / meterOhm);
  const direct = directBetween(w, from, to) / (1 + ohmHere / meterOhm);
  const live = alternating >= LIVE_VOLTS || Math.abs(direct) >= LIVE_VOLTS;
  if (question.kind === 'volts') {
    return {
      value: Math.max(alternating, Math.abs(direct)),
      unit: 'V',
      alternating,
      direct,
      overload: false,
      live,
      beeps: false,
    };
  }
  const foreign = live ? alternating + Math.abs(direct) : 0;
  const ohm = Math.abs(ohmHere) + foreign / TEST_AMPS;
  return {
    value: Math.min(ohm, MOST_OHM),
    unit: 'Ω',
    alternating: 0,
    direct: 0,
    overload: ohm >= MOST_OHM,
    live,
    beeps: question.kind === 'continuity' && ohm < BEEPS_BELOW_OHM,
  };
}

function meteredOf(w: Wiring): MeterNetwork {
  const { mainsHz, mainsVolts } = w.supply;
  w.metered = meterNetworkFor(
    w.metered,
    w.network,
    w.parameters.wiring.cables,
    mainsHz,
    mainsVolts,
  );
  return w.metered;
}

/** Direct volts with nothing connected. */
function directBetween(w: Wiring, from: number, to: number): number {
  if (from === to) return 0;
  const volts = steadyVolts(w, directCurrents(w));
  return at(volts, from) - at(volts, to);
}

function steadyVolts(w: Wiring, currents: Float64Array): Float64Array {
  const volts = new Float64Array(w.network.nodes);
  solveSteady(meteredOf(w), currents, volts);
  return volts;
}

/** The current through the element, or out of the source, that the terminal belongs to. */
function clamp(w: Wiring, terminal: string): MeterReading | null {
  const { network, netlist } = w;
  const name = terminal.replace(/:[12]$/, '');
  const place = netlist.elements.findIndex((element) => element.name === name);
  const source = w.parameters.wiring.sources.findIndex(({ id }) => id === name);
  const branch = place >= 0 ? place : netlist.elements.length + branchesBefore(w, source);
  if (place < 0 && source < 0) return null;
  const swing = steadyVolts(w, sourceCurrents(w, true));
  const steady = steadyVolts(w, directCurrents(w));
  const a = network.branchA[branch] as number;
  const b = network.branchB[branch] as number;
  const siemens = network.branchS[branch] as number;
  let alternating = siemens * (at(swing, a) - at(swing, b));
  let direct = siemens * (at(steady, a) - at(steady, b));
  if (source >= 0) {
    const emf = emfOf(w, source) * siemens;
    if (network.sources[source]?.alternating) alternating = emf - alternating;
    else direct = emf - direct;
  }
  const channel = w.channels.find(({ from }) => from >= 0 && from === place);
  if (channel !== undefined) direct += sentBy(w, channel);
  alternating = Math.abs(alternating);
  return {
    value: Math.max(alternating, Math.abs(direct)),
    unit: 'A',
    alternating,
    direct,
    overload: false,
    live: false,
    beeps: false,
  };
}

function branchesBefore(w: Wiring, source: number): number {
  let branches = 0;
  for (let i = 0; i < source; i++) branches += w.parameters.wiring.sources[i]?.bonded ? 2 : 1;
  return branches;
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

function put(currents: Float64Array, node: number, amps: number): void {
  if (node < currents.length) currents[node] = (currents[node] as number) + amps;
}

function at(volts: Float64Array, node: number): number {
  return node < volts.length ? (volts[node] as number) : 0;
}
