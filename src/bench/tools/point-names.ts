import type { PlantFile } from '../../engine/index.ts';
import type { Message } from '../message.ts';
import { testPointsOf } from './test-points.ts';
import type { TestPoint, ToolId } from './tool-types.ts';

/** Gas nodes whose joints the catalogue can place; another is named by its id. */
const PLACED_JOINTS = new Set([
  'strainer-inlet',
  'inlet',
  'regulated',
  'interspace',
  'manifold',
  'nozzle-inlet',
  'pilot-inlet',
  'pilot',
]);
const LEAK_SPRAY: ToolId = 'leak spray';

const pointsByPlant = new WeakMap<PlantFile, ReadonlyMap<string, TestPoint>>();

/** What the place of a tool is called: a manometer goes to a nipple, leak spray on the joint there. */
export function placeLabel(point: TestPoint, tool: string): Message {
  return tool === LEAK_SPRAY
    ? { code: 'bench.point.joint', params: { where: jointWords(point.id) } }
    : point.label;
}

/** Where a joint of the gas train is, as it stands behind "joint": "behind the strainer". */
export function jointWords(node: string): Message {
  return PLACED_JOINTS.has(node)
    ? { code: `bench.joint.${node}` }
    : { code: 'bench.joint.other', params: { node: node.replace(/-/g, ' ') } };
}

/** The test point of this id; undefined where the plant has none. */
export function pointOf(plant: PlantFile, id: string): TestPoint | undefined {
  const known =
    pointsByPlant.get(plant) ?? new Map(testPointsOf(plant).map((point) => [point.id, point]));
  pointsByPlant.set(plant, known);
  return known.get(id);
}
