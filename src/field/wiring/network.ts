import { type Elimination, factorise, planElimination, slotOf, solveVolts } from './elimination.ts';
import type { Netlist } from './netlist.ts';
import { EARTH, type WiringParameters } from './parameters.ts';

/** Insulation of every wire to earth, S: keeps a wire that hangs on nothing solvable. */
export const INSULATION_S = 1e-11;
const BOND_S = 50;

/** A source as the network has it: its volts behind its own resistance. */
export interface NetworkSource {
  readonly alternating: boolean;
  readonly liveNode: number;
  readonly neutralNode: number;
  readonly seriesS: number;
  /** Place in `parameters.sources`. */
  readonly index: number;
}

/** A part of the network that nothing but earth joins to the rest. */
export interface Island {
  readonly elimination: Elimination;
  /** Node at each place of the elimination. */
  readonly nodes: Int32Array;
  readonly branches: Int32Array;
  /** Of each branch: its slot, or −1 − the place whose way to the reference it is. */
  readonly slots: Int32Array;
  readonly elements: Int32Array;
  readonly sources: readonly NetworkSource[];
  readonly wires: Int32Array;
  dirty: boolean;
}

/**
 * Nodes and branches as they stand now, faults of the wiring included. The first branches are the
 * elements in their order. Node `nodes` is earth, at no volts.
 */
export interface Network {
  readonly nodes: number;
  readonly branchA: Int32Array;
  readonly branchB: Int32Array;
  readonly branchS: Float64Array;
  readonly sources: readonly NetworkSource[];
  readonly islands: readonly Island[];
  readonly islandOfNode: Int32Array;
  readonly placeOfNode: Int32Array;
  readonly alternating: Float64Array;
  readonly direct: Float64Array;
  /** Node of every wire, of earth, and of every terminal `element:1`, `element:2`. */
  readonly nodeAt: ReadonlyMap<string, number>;
}

export type WiringChanges = Pick<WiringParameters, 'sources' | 'joints' | 'bridges' | 'swaps'>;

export function buildNetwork(netlist: Netlist, changes: WiringChanges): Network {
  const { wires, elements } = netlist;
  const wireAt = new Map<string, string>();
  for (const { name, fromWire, toWire } of elements) {
    wireAt.set(`${name}:1`, fromWire);
    wireAt.set(`${name}:2`, toWire);
  }
  for (const { id, live, neutral } of changes.sources) {
    wireAt.set(`${id}:1`, live);
    wireAt.set(`${id}:2`, neutral);
  }
  for (const { one, other } of changes.swaps) {
    const wire = wireAt.get(one);
    const otherWire = wireAt.get(other);
    if (wire === undefined || otherWire === undefined) continue;
    wireAt.set(one, otherWire);
    wireAt.set(other, wire);
  }

  const nodeOfWire = new Map(wires.map((wire, i) => [wire, i]));
  const nodeAt = new Map<string, number>();
  let nodes = wires.length;
  const jointOhm = new Map<string, number>();
  for (const { terminal, ohm } of changes.joints) {
    if (!wireAt.has(terminal) || ohm <= 0) continue;
    if (!jointOhm.has(terminal)) nodeAt.set(terminal, nodes++);
    jointOhm.set(terminal, (jointOhm.get(terminal) ?? 0) + ohm);
  }
  const earth = nodes;
  nodeOfWire.set(EARTH, earth);
  for (const [terminal, wire] of wireAt) {
    if (!nodeAt.has(terminal)) nodeAt.set(terminal, nodeOfWire.get(wire) as number);
  }

  const a: number[] = [];
  const b: number[] = [];
  const s: number[] = [];
  const branch = (from: number, to: number, siemens: number) => {
    a.push(from);
    b.push(to);
    s.push(siemens);
  };
  const nodeOf = (place: string) => nodeAt.get(place) ?? (nodeOfWire.get(place) as number);
  for (const { name } of elements) branch(nodeOf(`${name}:1`), nodeOf(`${name}:2`), 0);
  const sources = changes.sources.map((source, index): NetworkSource => {
    const liveNode = nodeOf(`${source.id}:1`);
    const neutralNode = nodeOf(`${source.id}:2`);
    const seriesS = 1 / source.seriesOhm;
    branch(liveNode, neutralNode, seriesS);
    if (source.bonded) branch(neutralNode, earth, BOND_S);
    return {
      alternating: source.kind === 'alternating',
      liveNode,
      neutralNode,
      seriesS,
      index,
    };
  });
  for (const [terminal, ohm] of jointOhm) {
    branch(nodeOf(terminal), nodeOfWire.get(wireAt.get(terminal) as string) as number, 1 / ohm);
  }
  for (const { from, to, ohm } of changes.bridges) {
    const one = nodeAt.get(from) ?? nodeOfWire.get(from);
    const other = nodeAt.get(to) ?? nodeOfWire.get(to);
    if (one !== undefined && other !== undefined) branch(one, other, 1 / ohm);
  }
  for (const [wire, node] of nodeOfWire) nodeAt.set(wire, node);

  const branchA = Int32Array.from(a);
  const branchB = Int32Array.from(b);
  const placeOfNode = new Int32Array(nodes);
  const islandOfNode = new Int32Array(nodes + 1).fill(-1);
  const groups = groupNodes(nodes, branchA, branchB);
  const islands = groups.map((group, i) => {
    for (const node of group) islandOfNode[node] = i;
    const isHere = (node: number) => node < earth && islandOfNode[node] === i;
    return layIsland(
      group,
      earth,
      branchA,
      branchB,
      placeOfNode,
      elements.length,
      wires.length,
      sources.filter(({ liveNode, neutralNode }) => isHere(liveNode) || isHere(neutralNode)),
    );
  });
  return {
    nodes,
    branchA,
    branchB,
    branchS: Float64Array.from(s),
    sources,
    islands,
    islandOfNode,
    placeOfNode,
    alternating: new Float64Array(nodes + 1),
    direct: new Float64Array(nodes + 1),
    nodeAt,
  };
}

export function factoriseIsland(network: Network, island: Island): void {
  const { conductance, toReference } = island.elimination;
  const { branches, slots } = island;
  conductance.fill(0);
  toReference.fill(INSULATION_S);
  for (let i = 0; i < branches.length; i++) {
    const slot = slots[i] as number;
    const siemens = network.branchS[branches[i] as number] as number;
    if (slot >= 0) conductance[slot] = (conductance[slot] as number) + siemens;
    else toReference[-1 - slot] = (toReference[-1 - slot] as number) + siemens;
  }
  factorise(island.elimination);
}

/** Puts a current into a node of an island; earth takes any. */
export function inject(network: Network, island: Island, node: number, amps: number): void {
  if (node >= network.nodes) return;
  const { current } = island.elimination;
  const place = network.placeOfNode[node] as number;
  current[place] = (current[place] as number) + amps;
}

/** Solves for the currents put in, and hands the volts out to `into` by node. */
export function solveIsland(island: Island, into: Float64Array): void {
  const { elimination, nodes } = island;
  solveVolts(elimination);
  for (let k = 0; k < nodes.length; k++) {
    into[nodes[k] as number] = elimination.volts[k] as number;
  }
  elimination.current.fill(0);
}

function groupNodes(nodes: number, a: Int32Array, b: Int32Array): number[][] {
  const leader = Int32Array.from({ length: nodes }, (_, i) => i);
  const find = (node: number): number => {
    let at = node;
    while (leader[at] !== at) at = leader[at] as number;
    return at;
  };
  for (let i = 0; i < a.length; i++) {
    if ((a[i] as number) >= nodes || (b[i] as number) >= nodes) continue;
    const one = find(a[i] as number);
    const other = find(b[i] as number);
    leader[Math.max(one, other)] = Math.min(one, other);
  }
  const groups = new Map<number, number[]>();
  for (let node = 0; node < nodes; node++) {
    const head = find(node);
    const group = groups.get(head);
    if (group === undefined) groups.set(head, [node]);
    else group.push(node);
  }
  return [...groups.values()];
}

function layIsland(
  group: readonly number[],
  earth: number,
  branchA: Int32Array,
  branchB: Int32Array,
  placeOfNode: Int32Array,
  elementCount: number,
  wireCount: number,
  sources: readonly NetworkSource[],
): Island {
  const local = new Map(group.map((node, i) => [node, i]));
  const branches: number[] = [];
  const edges: [number, number][] = [];
  for (let i = 0; i < branchA.length; i++) {
    const one = local.get(branchA[i] as number);
    const other = local.get(branchB[i] as number);
    if (one === undefined && other === undefined) continue;
    if (branchA[i] === branchB[i]) continue;
    branches.push(i);
    if (one !== undefined && other !== undefined) edges.push([one, other]);
  }
  const { elimination, place } = planElimination(group.length, edges);
  const nodes = new Int32Array(group.length);
  group.forEach((node, i) => {
    placeOfNode[node] = place[i] as number;
    nodes[place[i] as number] = node;
  });
  const slots = branches.map((i) => {
    const one = branchA[i] as number;
    const other = branchB[i] as number;
    if (one === earth) return -1 - (placeOfNode[other] as number);
    if (other === earth) return -1 - (placeOfNode[one] as number);
    const p = placeOfNode[one] as number;
    const q = placeOfNode[other] as number;
    return slotOf(elimination, Math.min(p, q), Math.max(p, q));
  });
  return {
    elimination,
    nodes,
    branches: Int32Array.from(branches),
    slots: Int32Array.from(slots),
    elements: Int32Array.from(branches.filter((i) => i < elementCount)),
    sources,
    wires: Int32Array.from(group.filter((node) => node < wireCount)),
    dirty: true,
  };
}
