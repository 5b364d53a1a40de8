import { type AnalogueInput, createAnalogueInput } from '../analogue-input.ts';
import { type Contact, type ContactBoard, createContact } from '../contact.ts';
import {
  commandBit,
  inputBit,
  listAnalogue,
  SECOND_SETPOINT_BIT,
  type WiredParameters,
} from './elements.ts';
import { layNetlist, type Netlist } from './netlist.ts';
import { buildNetwork } from './network.ts';
import { AS_BUILT, measureAsBuilt, prepareWiring } from './prepare-wiring.ts';
import { type Wiring, wordsFor } from './wiring.ts';

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
    builtFor: AS_BUILT,
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
    directFrom: place('controller'),
    directFed: true,
    dirty: true,
    analogueMoved: true,
    wordsStale: true,
    melting: false,
    metered: null,
  };
  measureAsBuilt(w);
  prepareWiring(w);
  return w;
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
