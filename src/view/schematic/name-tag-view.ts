import type { Rect, Size } from './layout-types.ts';

const PADDING_PX = 8;
const FROM_ITEM_PX = 10;

/** Where the name of an item stands: over it, or under it at the top of the picture; always inside. */
export function tagBox(item: Rect, textPx: number, lineHeightPx: number, size: Size): Rect {
  const width = Math.ceil(textPx) + 2 * PADDING_PX;
  const height = lineHeightPx + 4;
  const above = item.y - FROM_ITEM_PX - height;
  const below = Math.min(size.height - height, item.y + item.height + FROM_ITEM_PX);
  const x = item.x + item.width / 2 - width / 2;
  return {
    x: Math.max(2, Math.min(size.width - width - 2, x)),
    y: above >= 2 ? above : below,
    width,
    height,
  };
}
