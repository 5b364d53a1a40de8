import type { ToolId } from '../../../machines/job/index.ts';
import { describeWiring, type LookWhat, type PlantFile } from '../../engine/index.ts';
import type { Message } from '../message.ts';
import { lookPlaceName } from './look-words.ts';
import type { PointPlace, TestPoint } from './tool-types.ts';

/** Nodes of a gas train whose nipple the catalogue can name; another is named by its id. */
const NAMED_NODES = new Set([
  'strainer-inlet',
  'inlet',
  'regulated',
  'interspace',
  'manifold',
  'nozzle-inlet',
  'pilot-inlet',
  'pilot',
]);

/** What mirror and torch make readable, and the item of the schematic it belongs to. */
const MIRROR_PLACES: readonly (readonly [what: LookWhat, item: string])[] = [
  ['sight glass', 'burner'],
  ['pilot flame', 'burner'],
  ['spark', 'burner'],
  ['strainer', 'strainer'],
  ['regulator breather', 'regulator'],
  ['damper blade', 'damper'],
  ['belt', 'fan'],
  ['fan rotation', 'fan'],
  ['air switch tube', 'air-switch'],
  ['air inlet screen', 'inlet-screen'],
  ['boiler passes', 'vessel'],
  ['electrode', 'burner'],
  ['ignition lead', 'burner'],
  ['lens', 'flame-sensor'],
  ['scanner sight line', 'flame-sensor'],
  ['flame rod', 'flame-sensor'],
  ['pilot burner', 'burner'],
  ['nozzle', 'burner'],
  ['diffuser', 'burner'],
];

/**
 * Every place of a plant where a tool of the bag connects: a nipple at each gas node, windbox,
 * furnace and flue, each wire and terminal, the shafts, pockets, what a mirror reaches. The same
 * for each job, whatever is wrong.
 */
export function testPointsOf(plant: PlantFile): readonly TestPoint[] {
  return [
    ...gasPoints(plant),
    ...airPoints(),
    ...sensorPoints(plant),
    ...shaftPoints(plant),
    ...heatPoints(plant),
    ...mirrorPoints(plant),
    ...wirePoints(plant),
  ];
}

/** The fan turns by a belt: two shafts, two speeds. */
export function isBelted(plant: PlantFile): boolean {
  return plant.field.drives[0] !== undefined && plant.field.drives[0].beltRatio !== 1;
}

function gasPoints(plant: PlantFile): TestPoint[] {
  const { nodes, edges } = plant.gasTrain;
  return nodes.map(({ id }) => {
    // A node before a strainer or behind a control valve has no point of its own in the drawing.
    const strainer = edges.find((edge) => edge.from === id && edge.kind === 'strainer');
    const control = edges.find((edge) => edge.to === id && edge.kind === 'control');
    const pilot = edges.find(
      (edge) => edge.from === id && edge.kind === 'regulator' && edge.id.startsWith('pilot'),
    );
    const item = (strainer ?? control ?? pilot)?.id ?? `test-point:${id}`;
    return point(id, ['manometer', 'leak spray'], gasLabel(id), { item });
  });
}

function gasLabel(node: string): Message {
  return NAMED_NODES.has(node)
    ? { code: `bench.point.gas.${node}` }
    : { code: 'bench.point.gas', params: { node } };
}

function airPoints(): TestPoint[] {
  return [
    point('windbox', ['manometer'], { code: 'bench.point.windbox' }, { item: 'windbox' }),
    point('furnace', ['manometer'], { code: 'bench.point.furnace' }, { item: 'furnace' }),
    point(
      'flue',
      ['manometer', 'flue-gas analyser', 'thermometer', 'mirror and torch'],
      { code: 'bench.point.flue' },
      { item: 'stack' },
    ),
  ];
}

/** The recorder keeps the signal of the first sensor. */
function sensorPoints(plant: PlantFile): TestPoint[] {
  return plant.field.flameSensors
    .slice(0, 1)
    .map(({ id }) =>
      point(
        id,
        ['flame-signal meter'],
        { code: 'bench.point.flame-sensor' },
        { item: 'flame-sensor' },
      ),
    );
}

function shaftPoints(plant: PlantFile): TestPoint[] {
  const isVariable = plant.field.drives[0]?.kind === 'variable speed';
  const fan = point('fan-shaft', ['strobe'], { code: 'bench.point.fan-shaft' }, { item: 'fan' });
  const motor = point(
    'motor-shaft',
    ['strobe'],
    { code: 'bench.point.motor-shaft' },
    { item: 'motor' },
  );
  const lead = point(
    'fan-motor-lead',
    ['multimeter'],
    { code: 'bench.point.fan-motor-lead' },
    { item: isVariable ? 'drive' : 'motor' },
  );
  return isBelted(plant) ? [fan, motor, lead] : [fan, lead];
}

function heatPoints(plant: PlantFile): TestPoint[] {
  const hotWater = plant.vessel.kind === 'hot water';
  const water = point(
    'water',
    ['thermometer'],
    { code: hotWater ? 'bench.point.flow-pipe' : 'bench.point.water' },
    { item: hotWater ? 'thermometer' : 'vessel' },
  );
  const casing = point(
    'casing',
    ['thermometer'],
    { code: 'bench.point.casing' },
    { item: 'vessel' },
  );
  const back = point(
    'return',
    ['thermometer'],
    { code: 'bench.point.return-pipe' },
    { item: 'pump' },
  );
  return hotWater ? [water, back, casing] : [water, casing];
}

function mirrorPoints(plant: PlantFile): TestPoint[] {
  const optical = plant.field.flameSensors.some(({ kind }) => kind !== 'ionisation');
  const missing = new Set<string>([
    ...(isBelted(plant) ? [] : ['belt']),
    ...(plant.flame.hasPilot ? [] : ['pilot flame', 'pilot burner']),
    ...(optical ? ['flame rod'] : ['lens', 'scanner sight line']),
  ]);
  return MIRROR_PLACES.flatMap(([what, item]) =>
    missing.has(what) ? [] : [point(what, ['mirror and torch'], lookPlaceName(what), { item })],
  );
}

/** Wires first, then both terminals of each element and of each source. */
function wirePoints(plant: PlantFile): TestPoint[] {
  const { wires, elements } = describeWiring(plant);
  const ends = [
    ...elements.map(({ name, from, to }) => [name, from, to] as const),
    ...plant.wiring.sources.map(({ id, live, neutral }) => [id, live, neutral] as const),
  ];
  return [
    ...[...wires, 'earth'].map((wire) => point(wire, ['multimeter'], wireLabel(wire), { wire })),
    ...ends.flatMap(([name, from, to]) => [
      terminalPoint(`${name}:1`, from),
      terminalPoint(`${name}:2`, to),
    ]),
  ];
}

function wireLabel(wire: string): Message {
  return wire === 'earth'
    ? { code: 'bench.point.earth' }
    : { code: 'bench.point.wire', params: { wire } };
}

function terminalPoint(terminal: string, wire: string): TestPoint {
  const label = { code: 'bench.point.terminal', params: { terminal, wire } };
  return point(terminal, ['multimeter'], label, { terminal, wire });
}

function point(id: string, tools: readonly ToolId[], label: Message, where: PointPlace): TestPoint {
  return { id, tools, label, where };
}
