import { Container, Graphics } from 'pixi.js';
import { textWidth } from '../text-width.ts';
import type { SchematicItem } from './items.ts';
import { nameLine } from './label-lines.ts';
import { createLabelSymbol, type LabelSymbol } from './label-symbol.ts';
import { tagBox } from './name-tag-view.ts';
import type { SceneContext } from './scene.ts';

/** A ring round an item with its full name, for whoever points at it or comes to it by key. */
export interface NameTag {
  readonly node: Container;
  sharpen(resolution: number): void;
}

const RING_GAP_PX = 6;

export function createNameTag(item: SchematicItem, context: SceneContext): NameTag {
  const { layout, palette } = context;
  const { x, y, width, height } = item.box;
  const box = tagBox(
    item.box,
    textWidth(item.name, layout.fontPx, 400),
    layout.lineHeightPx,
    layout.size,
  );
  const shape = new Graphics();
  shape.roundRect(
    x - RING_GAP_PX,
    y - RING_GAP_PX,
    width + 2 * RING_GAP_PX,
    height + 2 * RING_GAP_PX,
    6,
  );
  shape.stroke({ width: 2, color: palette.accent });
  shape.roundRect(box.x, box.y, box.width, box.height, 5).fill(palette.panel);
  shape.roundRect(box.x, box.y, box.width, box.height, 5);
  shape.stroke({ width: 1, color: palette.accent });
  const label: LabelSymbol = createLabelSymbol(
    { id: item.id, align: 'center', box: { ...box, y: box.y + 2, height: layout.lineHeightPx } },
    { id: item.id, lines: [nameLine(item.name)] },
    context,
  );
  label.refresh(new Float64Array(0));
  return {
    node: new Container({ children: [shape, label.node] }),
    sharpen: (resolution) => label.sharpen?.(resolution),
  };
}
