import type { Message, MessageParams } from '../message.ts';
import type { TrainEdgeKind } from './plant.ts';

/** Items whose names the catalogue has; an edge of any other id is named by its kind. */
export const NAMED_ITEMS = [
  'cock',
  'strainer',
  'regulator',
  'upstream-valve',
  'vent-valve',
  'downstream-valve',
  'fuel-valve',
  'pilot-valve',
  'pilot-regulator',
  'pilot-orifice',
  'inlet-screen',
  'fan',
  'drive',
  'motor',
  'contactor',
  'damper',
  'servo',
  'air-switch',
  'windbox',
  'burner',
  'burner-direct',
  'spark',
  'flame-sensor',
  'furnace',
  'vessel',
  'level-gauge',
  'thermometer',
  'pump',
  'stack',
] as const;

const NAMED = new Set<string>(NAMED_ITEMS);

/** The short name that stands in the drawing. */
export function shortName(id: string, kind: TrainEdgeKind | null, message: Message): string {
  if (NAMED.has(id)) return message(`view.short.${id}`);
  return kind === null ? id : message(`view.kind.${kind}`, { id });
}

/** The full name for lists, close-ups and captions. */
export function fullName(
  id: string,
  kind: TrainEdgeKind | null,
  message: Message,
  params: MessageParams = {},
): string {
  if (NAMED.has(id)) return message(`view.item.${id}`, params);
  return kind === null ? id : message(`view.kind.${kind}`, { id });
}

const NAMED_NODES = new Set(['inlet', 'regulated', 'interspace', 'manifold', 'pilot']);

export function testPointName(node: string, message: Message): string {
  return message('view.item.test-point', {
    place: NAMED_NODES.has(node) ? message(`view.node.${node}`) : node,
  });
}
