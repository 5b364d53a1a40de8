import { type AnalogueInput, createAnalogueInput } from '../analogue-input.ts';
import { type Contact, type ContactBoard, createContact } from '../contact.ts';
import type { SupplyParameters } from '../supply.ts';
import type { AnalogueChannel } from './analogue.ts';
import {
  commandBit,
  inputBit,
  listAnalogue,
  SECOND_SETPOINT_BIT,
  type WiredParameters,
} from './elements.ts';
import { layNetlist, type Netlist } from './netlist.ts';
import { buildNetwork, type Network } from './network.ts';
import { measureAsBuilt, prepareWiring } from './prepare-wiring.ts';

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
  /** Some island must be solved. */
  dirty: boolean;
  /** Some analogue input has moved since this was last looked at. */
  analogueMoved: boolean;
  wordsStale: boolean;
  melting: boolean;
}

/** Elements, or wires, in one recorded word. */
export const BITS_A_WORD = 30;

/**
 * @param contacts of the devices, by the name of their element
 * @param inputs of those who read analogue signals, by the name of the measuring element
 * @param signals what each sender sends at the moment, by the name of its element
 */
export function createWiring(
  parameters: WiredParameters,
  contacts: ReadonlyMap<string, Contact>,
  inputs: ReadonlyMap<string, AnalogueInput>,
  signals: ReadonlyMap<string, () => number>,
  board: ContactBoard,
): Wiring {
  const netlist = layNetlist(parameters);
  const { elements, wires } = netlist;
  const { wiring, field } = parameters;
  const network = buildNetwork(netlist, { ...wiring, joints: [], bridges: [], swaps: [] });
  const placeOf = new Map(elements.map(({ name }, i) => [name, i]));
  const place = (name: string) => placeOf.get(name) ?? -1;

  const held: Contact[] = [];
  const heldElement: number[] = [];
  const outputs: Contact[] = [];
  const outputBits: number[] = [];
  elements.forEach(({ name, kind }, i) => {
    if (kind !== 'contact' && kind !== 'output') return;
    const site = wiring.contacts.find(({ id }) => id === name);
    if (site !== undefined) return;
    const contact = contacts.get(name) ?? createContact(board, false);
    held.push(contact);
    heldElement.push(i);
    if (kind !== 'output') return;
    outputs.push(contact);
    outputBits.push(commandBit(name));
  });
  const fuses = elements.flatMap(({ kind }, i) => (kind === 'fuse' ? [i] : []));
  const allInputs = elements.reduce((word, { name }) => word | inputBit(name), 0);
  const w: Wiring = {
    parameters,
    supply: field.supply,
    board,
    netlist,
    network,
    builtFor: '',
    contacts: held,
    contactElement: Int32Array.from(heldElement),
    contactWas: new Uint8Array(held.length),
    outputs,
    outputBits: Int32Array.from(outputBits),
    conductsS: new Float64Array(elements.length),
    pullInVolts: Float64Array.from(elements, ({ pullInVolts }) => pullInVolts),
    dropOutVolts: Float64Array.from(elements, ({ dropOutVolts }) => dropOutVolts),
    volts: new Float64Array(elements.length),
    working: new Uint8Array(elements.length),
    inputBits: Int32Array.from(elements, ({ name }) => inputBit(name)),
    fuses: Int32Array.from(fuses),
    fuseRatedA: Float64Array.from(fuses, (i) => ratingOf(parameters, elements[i]?.name)),
    fuseHeat: new Float64Array(fuses.length),
    fuseBlown: new Uint8Array(fuses.length),
    channels: listAnalogue(field).map((plan) => ({
      plan,
      input: inputs.get(plan.to) ?? createAnalogueInput(),
      from: place(plan.from),
      to: place(plan.to),
      upper: plan.legs === null ? -1 : place(plan.legs[0]),
      lower: plan.legs === null ? -1 : place(plan.legs[1]),
      signal: signals.get(plan.from) ?? nothing,
      most: Number.POSITIVE_INFINITY,
      builtVolts: 0,
      builtPerUnit: 0,
    })),
    liveWords: new Int32Array(wordsFor(wires.length)),
    madeWords: new Int32Array(wordsFor(elements.length)),
    wireSource: Int32Array.from(sourceOfWires(netlist, parameters)),
    inputWord: ~allInputs & ~SECOND_SETPOINT_BIT,
    dirty: true,
    analogueMoved: true,
    wordsStale: true,
    melting: false,
  };
  measureAsBuilt(w);
  prepareWiring(w);
  return w;
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

const nothing = (): number => 0;

function ratingOf({ wiring }: WiredParameters, id: string | undefined): number {
  return wiring.fuses.find((fuse) => fuse.id === id)?.ratedA ?? Number.POSITIVE_INFINITY;
}

/** A wire belongs to the source that it reaches first without passing the other end of one. */
function sourceOfWires(netlist: Netlist, { wiring }: WiredParameters): number[] {
  const { wires, elements } = netlist;
  const owner = new Map<string, number>();
  wiring.sources.forEach(({ neutral }, i) => {
    if (!owner.has(neutral)) owner.set(neutral, i);
  });
  let edge: string[] = [];
  wiring.sources.forEach(({ live }, i) => {
    owner.set(live, i);
    edge.push(live);
  });
  while (edge.length > 0) {
    const next: string[] = [];
    for (const wire of edge) {
      for (const { fromWire, toWire } of elements) {
        const other = fromWire === wire ? toWire : toWire === wire ? fromWire : null;
        if (other === null || owner.has(other)) continue;
        owner.set(other, owner.get(wire) as number);
        next.push(other);
      }
    }
    edge = next;
  }
  return wires.map((wire) => owner.get(wire) ?? 0);
}
