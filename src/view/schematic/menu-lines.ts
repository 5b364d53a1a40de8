import type { MenuLine } from './item-menu.ts';
import { lookItem } from './look-items.ts';
import type { SchematicPlant } from './plant.ts';
import type { SchematicOptions } from './types.ts';

/** What can be looked at and connected at an item. */
export function menuLines(
  itemId: string,
  plant: SchematicPlant,
  { looks = [], points = [], onLook, onTestPoint }: SchematicOptions,
): MenuLine[] {
  return [
    ...looks
      .filter(({ what }) => onLook !== undefined && lookItem(what, plant) === itemId)
      .map(({ what, label }) => ({ label, act: () => onLook?.(what) })),
    ...points
      .filter(({ item }) => onTestPoint !== undefined && item === itemId)
      // A mirror goes where eyes go: what can be looked at is not offered twice.
      .filter((point) => !looks.some(({ what }) => what === point.id))
      .map((point) => ({ label: point.label, act: () => onTestPoint?.(point.id) })),
  ];
}
