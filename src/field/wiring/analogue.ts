import type { AnalogueInput } from '../analogue-input.ts';
import type { AnaloguePlan } from './elements.ts';
import { inject, type Network, solveIsland } from './network.ts';

export interface AnalogueChannel {
  readonly plan: AnaloguePlan;
  readonly input: AnalogueInput;
  /** Places of the elements; −1 where the plant does not have it in a rung. */
  readonly from: number;
  readonly to: number;
  readonly upper: number;
  readonly lower: number;
  /** What the device sends now, in its own unit; only a meter asks. */
  readonly signal: () => number;
  /** The most that it can send now, A. */
  most: number;
  /** Volts at the measuring element with no signal, and per unit of it, as built. */
  builtVolts: number;
  builtPerUnit: number;
}

/** What the network makes of one channel: volts at no signal and per unit, and the most it can send. */
export interface ChannelResponse {
  volts: number;
  perUnit: number;
  most: number;
}

/**
 * The response of the channel's circuit.
 *
 * A two-wire transmitter takes its current from the loop, as long as it has its least volts: the
 * most it can send is (Voc − Vleast)/R of the loop. A wiper stands between two legs as a source of
 * (x − ½) of the volts across them; the current that the input draws from the track is taken as at
 * mid-track (an input of 1 MΩ on 1 kΩ: 0.03 % at the ends).
 * Left out: what the other loops on the same supply add through a common resistance.
 *
 * @param unit scratch for the volts of a unit signal
 */
export function measureChannel(
  network: Network,
  channel: AnalogueChannel,
  unit: Float64Array,
  into: ChannelResponse,
): void {
  const { branchA, branchB, branchS, direct, islandOfNode, nodes } = network;
  const { from, to } = channel;
  into.volts = 0;
  into.perUnit = 0;
  into.most = Number.POSITIVE_INFINITY;
  if (from < 0 || to < 0) return;
  const toA = branchA[to] as number;
  const toB = branchB[to] as number;
  into.volts = (direct[toA] as number) - (direct[toB] as number);
  const fromA = branchA[from] as number;
  const fromB = branchB[from] as number;
  const place = fromA < nodes ? islandOfNode[fromA] : islandOfNode[fromB];
  const island = network.islands[place as number];
  if (island === undefined || fromA === fromB) return;

  let amps = 1;
  if (channel.plan.legs !== null) {
    const across =
      (direct[branchA[channel.upper] as number] as number) -
      (direct[branchB[channel.lower] as number] as number);
    amps = across * (branchS[from] as number);
  }
  unit.fill(0);
  inject(network, island, fromA, -amps);
  inject(network, island, fromB, amps);
  solveIsland(island, unit);
  into.perUnit = (unit[toA] as number) - (unit[toB] as number);
  if (channel.plan.legs !== null) {
    into.volts -= 0.5 * into.perUnit;
    return;
  }
  const open = (direct[fromA] as number) - (direct[fromB] as number);
  const drop = (unit[fromB] as number) - (unit[fromA] as number);
  into.most = Math.max(0, (open - channel.plan.leastVolts) / drop);
}

/** Sets the input from the response, against the circuit as built. Returns whether it is new. */
export function aimInput(channel: AnalogueChannel, response: ChannelResponse): boolean {
  const { plan, input, builtPerUnit, builtVolts } = channel;
  if (builtPerUnit === 0) return false;
  channel.most = response.most;
  const share = response.perUnit / builtPerUnit;
  const offset = (response.volts - builtVolts) / builtPerUnit;
  const gain = response.most > 0 ? share : 0;
  const zero = (offset + plan.atZero * (gain - 1)) / plan.perUnit;
  const most =
    response.most > 0 ? (response.most - plan.atZero) / plan.perUnit : Number.POSITIVE_INFINITY;
  if (gain === input.gain && zero === input.zero && most === input.most) return false;
  input.gain = gain;
  input.zero = zero;
  input.most = most;
  return true;
}
