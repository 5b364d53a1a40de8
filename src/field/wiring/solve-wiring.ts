import { type Contact, moveContact } from '../contact.ts';
import { factoriseIsland, type Island, inject, solveIsland } from './network.ts';
import { aimChannels, solveDirect } from './prepare-wiring.ts';
import { BITS_A_WORD, type Wiring } from './wiring.ts';

/** A fuse carries this share of its rating for ever. */
const FUSE_CARRIES = 1.6;
/** Heat at which it melts, as a multiple of the square of its rating, s. */
const FUSE_MELTS_S = 6;
const LIVE_SHARE = 0.5;
/** Less than this share of a signal is none. */
const SIGNAL_ARRIVES = 0.1;
const SENDS: ReadonlySet<string> = new Set(['loop', 'signal', 'source-out', 'wiper', 'burden']);

/** The controller's outputs as it commands them; `inverted` has the bits that are made without. */
export function setOutputs(w: Wiring, commandsWord: number, inverted: number): void {
  const { outputs, outputBits } = w;
  const word = commandsWord ^ inverted;
  for (let i = 0; i < outputs.length; i++) {
    moveContact(outputs[i] as Contact, (word & (outputBits[i] as number)) !== 0);
  }
}

/** True when a contact or a source has moved since the last solve. */
export function isWiringStale(w: Wiring): boolean {
  return w.board.changed || w.dirty;
}

/** Solves the islands in which something has moved. Returns whether there were any. */
export function solveWiring(w: Wiring): boolean {
  if (w.board.changed) takeContacts(w);
  if (!w.dirty) return false;
  w.dirty = false;
  w.wordsStale = true;
  let aim = solveDirtyIslands(w);
  if (feedDirect(w)) aim = solveDirtyIslands(w) || aim;
  if (aim) aimChannels(w);
  heatFuses(w, 0);
  return true;
}

/** Returns whether an analogue circuit was among them. */
function solveDirtyIslands(w: Wiring): boolean {
  const { islands } = w.network;
  let aim = false;
  for (let i = 0; i < islands.length; i++) {
    const island = islands[i] as Island;
    if (!island.dirty) continue;
    island.dirty = false;
    if (isFed(island, false)) {
      solveDirect(w, island);
      aim = true;
    } else {
      factoriseIsland(w.network, island);
      if (island.sources.length === 0) aim = true;
    }
    if (isFed(island, true)) solveAlternating(w, island);
    takeVolts(w, island);
  }
  return aim;
}

/** Direct volts are made in the controller: without mains it makes none. True when that is new. */
function feedDirect(w: Wiring): boolean {
  const fed = w.directFrom < 0 || w.working[w.directFrom] === 1;
  if (fed === w.directFed) return false;
  w.directFed = fed;
  for (const island of w.network.islands) {
    if (isFed(island, false)) island.dirty = true;
  }
  return true;
}

/**
 * While a fuse carries more than it can for long: it melts when the integral of what is over
 * that, ∫(I² − (1.6·Ir)²)dt, reaches 6 s·Ir², about a second at 2.75 and a twentieth at 10 times its
 * rating (the time-lag band of IEC 60127-2).
 */
export function heatFuses(w: Wiring, stepS: number): void {
  w.melting = false;
  for (let i = 0; i < w.fuses.length; i++) {
    const place = w.fuses[i] as number;
    const rated = w.fuseRatedA[i] as number;
    const amps = (w.volts[place] as number) * (w.network.branchS[place] as number);
    const over = amps * amps - FUSE_CARRIES * FUSE_CARRIES * rated * rated;
    if (over <= 0) {
      w.fuseHeat[i] = 0;
      continue;
    }
    w.melting = true;
    w.fuseHeat[i] = (w.fuseHeat[i] as number) + over * stepS;
    if ((w.fuseHeat[i] as number) < FUSE_MELTS_S * rated * rated) continue;
    w.fuseBlown[i] = 1;
    w.fuseHeat[i] = 0;
    setBranch(w, place, 0);
  }
}

/** A new fuse in the place of every one that has blown by itself. */
export function renewFuses(w: Wiring): void {
  for (let i = 0; i < w.fuses.length; i++) {
    if (w.fuseBlown[i] === 0) continue;
    w.fuseBlown[i] = 0;
    const place = w.fuses[i] as number;
    setBranch(w, place, w.conductsS[place] as number);
  }
}

/** Whether the wire behind the window of a fuse is whole; one in no rung counts as whole. */
export function isFuseWhole(w: Wiring, id: string): boolean {
  return w.fuses.every((place, i) => {
    if (w.netlist.elements[place]?.name !== id) return true;
    return w.fuseBlown[i] === 0 && w.netlist.elements[place]?.condition() !== 'open';
  });
}

/** A new fuse in the place of this one, if it has blown by itself. */
export function renewFuse(w: Wiring, id: string): void {
  for (let i = 0; i < w.fuses.length; i++) {
    const place = w.fuses[i] as number;
    if (w.netlist.elements[place]?.name !== id || w.fuseBlown[i] === 0) continue;
    w.fuseBlown[i] = 0;
    setBranch(w, place, w.conductsS[place] as number);
  }
}

/** `liveWords` and `madeWords` as of the last solve. */
export function readWiringWords(w: Wiring): void {
  if (!w.wordsStale) return;
  w.wordsStale = false;
  const { alternating, direct, branchS } = w.network;
  const { sources } = w.parameters.wiring;
  w.liveWords.fill(0);
  w.madeWords.fill(0);
  for (let i = 0; i < w.wireSource.length; i++) {
    const index = w.wireSource[i] as number;
    const source = w.network.sources[index];
    const rated = sources[index];
    if (source === undefined || rated === undefined) continue;
    const from = source.neutralNode;
    const volts = source.alternating
      ? (alternating[i] as number) - (alternating[from] as number)
      : (direct[i] as number) - (direct[from] as number);
    const nominal = source.alternating ? w.supply.nominalVolts : rated.volts;
    if (Math.abs(volts) >= LIVE_SHARE * nominal) {
      const word = Math.floor(i / BITS_A_WORD);
      w.liveWords[word] = (w.liveWords[word] as number) | (1 << (i % BITS_A_WORD));
    }
  }
  const { elements } = w.netlist;
  for (let i = 0; i < elements.length; i++) {
    const { kind } = elements[i] as (typeof elements)[number];
    if (SENDS.has(kind)) continue;
    const works = (w.pullInVolts[i] as number) > 0;
    if (works ? w.working[i] === 1 : (branchS[i] as number) > 0) markMade(w, i);
  }
  for (const { input, from, to } of w.channels) {
    if (input.gain < SIGNAL_ARRIVES) continue;
    if (from >= 0) markMade(w, from);
    if (to >= 0) markMade(w, to);
  }
}

function markMade(w: Wiring, place: number): void {
  const word = Math.floor(place / BITS_A_WORD);
  w.madeWords[word] = (w.madeWords[word] as number) | (1 << (place % BITS_A_WORD));
}

function takeContacts(w: Wiring): void {
  w.board.changed = false;
  const { contacts, contactWas, contactElement, conductsS } = w;
  for (let i = 0; i < contacts.length; i++) {
    const made = (contacts[i] as Contact).made;
    if ((contactWas[i] === 1) === made) continue;
    contactWas[i] = made ? 1 : 0;
    const place = contactElement[i] as number;
    setBranch(w, place, made ? (conductsS[place] as number) : 0);
  }
}

function setBranch(w: Wiring, place: number, siemens: number): void {
  const { branchS, branchA, branchB, islandOfNode, islands, nodes } = w.network;
  if (branchS[place] === siemens) return;
  branchS[place] = siemens;
  const a = branchA[place] as number;
  const index = islandOfNode[a < nodes ? a : (branchB[place] as number)] as number;
  const island = islands[index];
  if (island === undefined) return;
  island.dirty = true;
  w.dirty = true;
}

function isFed(island: Island, alternating: boolean): boolean {
  const { sources } = island;
  for (let i = 0; i < sources.length; i++) {
    if (sources[i]?.alternating === alternating) return true;
  }
  return false;
}

function solveAlternating(w: Wiring, island: Island): void {
  const { sources } = island;
  for (let i = 0; i < sources.length; i++) {
    const source = sources[i] as (typeof sources)[number];
    if (!source.alternating) continue;
    const amps = w.supply.mainsVolts * source.seriesS;
    inject(w.network, island, source.liveNode, amps);
    inject(w.network, island, source.neutralNode, -amps);
  }
  solveIsland(island, w.network.alternating);
}

/** Volts across each element, rms of both kinds together; what pulls in, what lets go. */
function takeVolts(w: Wiring, island: Island): void {
  const { branchA, branchB, branchS, alternating, direct } = w.network;
  const { elements } = island;
  for (let i = 0; i < elements.length; i++) {
    const place = elements[i] as number;
    const a = branchA[place] as number;
    const b = branchB[place] as number;
    const steady = (direct[a] as number) - (direct[b] as number);
    const swing = (alternating[a] as number) - (alternating[b] as number);
    const volts =
      steady === 0
        ? Math.abs(swing)
        : swing === 0
          ? Math.abs(steady)
          : Math.sqrt(steady * steady + swing * swing);
    w.volts[place] = volts;
    const pullIn = w.pullInVolts[place] as number;
    if (pullIn === 0) continue;
    const least = w.working[place] === 1 ? (w.dropOutVolts[place] as number) : pullIn;
    const works = volts >= least && (branchS[place] as number) > 0 ? 1 : 0;
    if (works === w.working[place]) continue;
    w.working[place] = works;
    const bit = w.inputBits[place] as number;
    if (bit !== 0) w.inputWord = works === 1 ? w.inputWord | bit : w.inputWord & ~bit;
  }
}
