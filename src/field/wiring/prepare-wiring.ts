import { aimInput, type ChannelResponse, measureChannel } from './analogue.ts';
import { buildNetwork, factoriseIsland, type Island, inject, solveIsland } from './network.ts';
import { emfOf, type Wiring } from './wiring.ts';

const SHORTED_S = 10;
/** `builtFor` of a network without joints, bridges and swaps. */
export const AS_BUILT = JSON.stringify([[], [], []]);

/**
 * After any change of a parameter: conductances anew, the network itself only when joints,
 * bridges or swaps have changed. States stay: what was energised, which fuse has blown.
 */
export function prepareWiring(w: Wiring): void {
  const { wiring } = w.parameters;
  const { joints, bridges, swaps } = wiring;
  const wanted = JSON.stringify([joints, bridges, swaps]);
  if (wanted !== w.builtFor) {
    w.builtFor = wanted;
    w.network = buildNetwork(w.netlist, wiring);
    forgetUnconnected(w);
  }
  const { elements } = w.netlist;
  for (let i = 0; i < elements.length; i++) {
    const { ohm, condition, leakS } = elements[i] as (typeof elements)[number];
    const now = condition();
    w.conductsS[i] = leakS() + (now === 'open' ? 0 : now === 'shorted' ? SHORTED_S : 1 / ohm);
  }
  for (const { id, made } of wiring.contacts) {
    const place = elements.findIndex(({ name }) => name === id);
    if (place >= 0 && !made) w.conductsS[place] = 0;
  }
  w.network.branchS.set(w.conductsS);
  for (let i = 0; i < w.contacts.length; i++) {
    const made = w.contacts[i]?.made === true;
    w.contactWas[i] = made ? 1 : 0;
    if (!made) w.network.branchS[w.contactElement[i] as number] = 0;
  }
  for (let i = 0; i < w.fuses.length; i++) {
    const place = w.fuses[i] as number;
    if (w.fuseBlown[i] === 1) w.network.branchS[place] = 0;
  }
  for (const island of w.network.islands) island.dirty = true;
  w.dirty = true;
}

/** An element with both ends on one wire, or both at earth, is in no island and sees no volts. */
function forgetUnconnected(w: Wiring): void {
  const { branchA, branchB } = w.network;
  for (let i = 0; i < w.volts.length; i++) {
    if (branchA[i] !== branchB[i]) continue;
    w.volts[i] = 0;
    w.working[i] = 0;
    w.inputWord &= ~(w.inputBits[i] as number);
  }
}

/** What every analogue circuit answers as it was built: what span and zero were set with. */
export function measureAsBuilt(w: Wiring): void {
  const { elements } = w.netlist;
  elements.forEach(({ ohm }, i) => {
    w.network.branchS[i] = 1 / ohm;
  });
  const response: ChannelResponse = { volts: 0, perUnit: 0, most: 0 };
  for (const island of w.network.islands) solveDirect(w, island);
  for (const channel of w.channels) {
    measureChannel(w.network, channel, scratchFor(w), response);
    channel.builtVolts = response.volts;
    channel.builtPerUnit = response.perUnit;
  }
}

/** The direct part of an island; its factors stay for the analogue channels. */
export function solveDirect(w: Wiring, island: Island): void {
  factoriseIsland(w.network, island);
  let fed = false;
  for (const source of island.sources) {
    if (source.alternating) continue;
    const amps = emfOf(w, source.index) * source.seriesS;
    inject(w.network, island, source.liveNode, amps);
    inject(w.network, island, source.neutralNode, -amps);
    fed = fed || amps !== 0;
  }
  if (fed) solveIsland(island, w.network.direct);
  else for (const node of island.nodes) w.network.direct[node] = 0;
}

export function aimChannels(w: Wiring): void {
  const { network } = w;
  const response: ChannelResponse = { volts: 0, perUnit: 0, most: 0 };
  for (const channel of w.channels) {
    measureChannel(network, channel, scratchFor(w), response);
    if (aimInput(channel, response)) w.analogueMoved = true;
  }
}

function scratchFor(w: Wiring): Float64Array {
  return new Float64Array(w.network.nodes + 1);
}
