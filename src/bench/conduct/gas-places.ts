import type { Bench, PlantFile } from '../../engine/index.ts';

type Edge = PlantFile['gasTrain']['edges'][number];

const SUPPLY = 'supply';
const NOT_PIPE = new Set([SUPPLY, 'furnace', 'atmosphere']);
const SHUT = 0.005;

/** Which edges of the train a part word means; a joint or an impulse line is named by a node instead. */
const EDGES_OF: Readonly<Record<string, (edge: Edge) => boolean>> = {
  'manual gas cock': ({ kind }) => kind === 'cock',
  strainer: ({ kind }) => kind === 'strainer',
  'gas regulator': ({ kind, id }) => kind === 'regulator' && !id.startsWith('pilot'),
  'pilot regulator': ({ kind, id }) => kind === 'regulator' && id.startsWith('pilot'),
  'pilot orifice': ({ id }) => id === 'pilot-orifice',
  'upstream valve': ({ id }) => id === 'upstream-valve',
  'downstream valve': ({ id }) => id === 'downstream-valve',
  'vent valve': ({ id }) => id === 'vent-valve',
  'pilot valve': ({ id }) => id === 'pilot-valve',
  'fuel control valve': ({ kind }) => kind === 'control',
  'main gas nozzle': ({ id }) => id === 'nozzle',
  'pilot burner': ({ id }) => id === 'pilot-orifice',
};
const REGULATED = 'regulated';
const INTERSPACE = 'interspace';
const NODE_OF: Readonly<Record<string, string>> = {
  'low-gas switch': REGULATED,
  'high-gas switch': REGULATED,
  'gas supply pressure transmitter': REGULATED,
  'interspace pressure transmitter': INTERSPACE,
  'interspace impulse line': INTERSPACE,
  'cock joint': 'strainer-inlet',
  'strainer joint': 'inlet',
  'regulator joint': REGULATED,
  'main valve joint': INTERSPACE,
  'fuel valve joint': 'manifold',
  'burner joint': 'nozzle-inlet',
  'pilot line joint': 'pilot-inlet',
};

/** The joints that opening a part undoes, by gas node. Empty where the part is on no node of this train. */
export function jointsOf({ gasTrain }: PlantFile, part: string): readonly string[] {
  const isIt = EDGES_OF[part];
  const node = NODE_OF[part];
  if (isIt !== undefined) {
    const ends = gasTrain.edges.filter(isIt).flatMap(({ from, to }) => [from, to]);
    return [...new Set(ends)].filter((end) => !NOT_PIPE.has(end));
  }
  return gasTrain.nodes.some(({ id }) => id === node) && node !== undefined ? [node] : [];
}

export interface Isolation {
  /** No open cock lets supply gas to the part. Shut-off valves of the train are no isolation. */
  readonly shut: boolean;
  /** The shut cocks that do it. */
  readonly by: readonly string[];
  /** The open ones that let gas through. */
  readonly open: readonly string[];
}

/** Whether supply gas is kept from a part by cocks. A part on no node counts as behind the first cock. */
export function isolationOf(plant: PlantFile, part: string, cocks: Bench['cocks']): Isolation {
  const { edges } = plant.gasTrain;
  const opening = (id: string) => cocks.find((cock) => cock.id === id)?.opening ?? 0;
  const reached = new Set<string>([SUPPLY]);
  const passed = new Set<string>();
  const met = new Set<string>();
  for (let grew = true; grew; ) {
    grew = false;
    for (const { kind, id, from, to } of edges) {
      const next = reached.has(from) ? to : reached.has(to) ? from : null;
      if (next === null) continue;
      if (kind === 'cock') {
        met.add(id);
        if (opening(id) <= SHUT) continue;
        passed.add(id);
      }
      if (reached.has(next) || next === 'furnace' || next === 'atmosphere') continue;
      reached.add(next);
      grew = true;
    }
  }
  const joints = jointsOf(plant, part);
  const shut = joints.length > 0 ? !joints.some((node) => reached.has(node)) : passed.size === 0;
  return { shut, by: [...met].filter((id) => !passed.has(id)), open: [...passed] };
}
