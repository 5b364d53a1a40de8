import { type DrawnPlant, findItem } from './drawn-plant.ts';
import { createNameTag, type NameTag } from './name-tag.ts';

/** The item that is pointed at, with a ring and its name; one at a time. */
export interface PointedItem {
  /** null takes the ring away. */
  show(itemId: string | null): void;
}

/** @param resolution device pixels to a drawing pixel, as the zoom has it now */
export function createPointedItem(
  drawn: () => DrawnPlant,
  resolution: () => number,
  draw: () => void,
): PointedItem {
  let tag: NameTag | null = null;
  let tagId: string | null = null;
  return {
    show(itemId) {
      if (itemId === tagId) return;
      tag?.node.destroy({ children: true });
      tag = null;
      tagId = itemId;
      const { context, stage } = drawn();
      const item = findItem(drawn(), itemId);
      if (item !== null) {
        tag = createNameTag(item, { ...context, resolution: resolution() });
        stage.world.addChild(tag.node);
      }
      draw();
    },
  };
}
