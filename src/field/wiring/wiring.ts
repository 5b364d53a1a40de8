import type { Contact, ContactBoard } from '../contact.ts';
import type { SupplyParameters } from '../supply.ts';
import type { AnalogueChannel } from './analogue.ts';
import type { WiredParameters } from './elements.ts';
import type { MeterNetwork } from './meter-network.ts';
import type { Netlist } from './netlist.ts';
import type { Network } from './network.ts';

/** The wiring of a plant: the netlist as built, the network as it stands, and what it feeds. */
export interface Wiring {
  readonly parameters: WiredParameters;
  readonly supply: SupplyParameters;
  readonly board: ContactBoard;
  readonly netlist: Netlist;
  network: Network;
  /** What the lists of joints, bridges and swaps were when the network was built. */
  builtFor: string;
  /** Elements whose state is a contact's, with what the contact was when last looked at. */
  readonly contacts: readonly Contact[];
  readonly contactElement: Int32Array;
  readonly contactWas: Uint8Array;
  readonly outputs: readonly Contact[];
  readonly outputBits: Int32Array;
  /** By element: conductance while it conducts, volts at which it works, and what it does. */
  readonly conductsS: Float64Array;
  readonly pullInVolts: Float64Array;
  readonly dropOutVolts: Float64Array;
  readonly volts: Float64Array;
  readonly working: Uint8Array;
  readonly inputBits: Int32Array;
  /** Element of each fuse, its rating, and the heat in it, A²·s. */
  readonly fuses: Int32Array;
  readonly fuseRatedA: Float64Array;
  readonly fuseHeat: Float64Array;
  readonly fuseBlown: Uint8Array;
  readonly channels: readonly AnalogueChannel[];
  readonly liveWords: Int32Array;
  readonly madeWords: Int32Array;
  /** Source that each wire hangs on by its shortest way, and where its other end is. */
  readonly wireSource: Int32Array;
  inputWord: number;
  /** What makes direct volts out of the mains, the controller's own element: its place, whether it works. */
  readonly directFrom: number;
  directFed: boolean;
  /** Some island must be solved. */
  dirty: boolean;
  /** Some analogue input has moved since this was last looked at. */
  analogueMoved: boolean;
  wordsStale: boolean;
  melting: boolean;
  /** The network as a meter has it; made when one is first connected. */
  metered: MeterNetwork | null;
}

/** Elements, or wires, in one recorded word. */
export const BITS_A_WORD = 30;

/** Volts that a source has at this moment. */
export function emfOf(w: Wiring, index: number): number {
  const source = w.parameters.wiring.sources[index];
  if (source === undefined) return 0;
  if (source.kind === 'alternating') return w.supply.mainsVolts;
  return w.directFed ? source.volts : 0;
}

/** Place of an element in the netlist; −1 where no rung has it. */
export function elementPlace(w: Wiring, name: string): number {
  return w.netlist.elements.findIndex((element) => element.name === name);
}

/** A coil, load or input that gets its volts. */
export function isWorking(w: Wiring, place: number): boolean {
  return place >= 0 && w.working[place] === 1;
}

export function voltsAt(w: Wiring, place: number): number {
  return place < 0 ? 0 : (w.volts[place] as number);
}

export function wordsFor(bits: number): number {
  return Math.ceil(bits / BITS_A_WORD);
}
