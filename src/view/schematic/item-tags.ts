import { Container, Graphics } from 'pixi.js';
import { textWidth } from '../text-width.ts';
import type { SchematicItem } from './items.ts';
import { createLabelSymbol, type LabelSymbol } from './label-symbol.ts';
import type { Rect } from './layout-types.ts';
import { tagBox } from './name-tag-view.ts';
import type { SceneContext } from './scene.ts';
import type { ItemTag } from './types.ts';

/** Tags beside items: one for each, however many tools are there; only what changed is painted. */
export interface ItemTags {
  readonly node: Container;
  /** True when something has to be drawn. */
  show(tags: readonly ItemTag[]): boolean;
}

interface Hung {
  text: string;
  readonly roomPx: number;
  readonly label: LabelSymbol;
  readonly node: Container;
}

/** Digits come and go: a tag is not made anew for each of them. */
const SPARE_PX = 24;

export function createItemTags(items: readonly SchematicItem[], context: SceneContext): ItemTags {
  const node = new Container();
  const hung = new Map<string, Hung>();
  const blank = new Float64Array(0);

  function hang(item: SchematicItem, text: string): Hung {
    const { layout, palette } = context;
    const roomPx = textWidth(text, layout.fontPx, 600) + SPARE_PX;
    const box: Rect = tagBox(item.box, roomPx, layout.lineHeightPx, layout.size);
    const shape = new Graphics();
    shape.roundRect(box.x, box.y, box.width, box.height, 5).fill(palette.accent);
    const held: { text: string } = { text };
    const label = createLabelSymbol(
      { id: item.id, align: 'center', box: { ...box, y: box.y + 2, height: layout.lineHeightPx } },
      {
        id: item.id,
        lines: [{ read: () => [{ text: held.text, tone: 'value', tick: false }], widest: [] }],
      },
      { ...context, palette: { ...palette, ink: palette.panel } },
    );
    label.refresh(blank);
    const holder = new Container({ children: [shape, label.node] });
    node.addChild(holder);
    return Object.assign(held, { roomPx, label, node: holder });
  }

  return {
    node,
    show(tags) {
      let changed = false;
      const wanted = new Map<string, string>();
      for (const { item, text } of tags) {
        const before = wanted.get(item);
        wanted.set(item, before === undefined ? text : `${before} · ${text}`);
      }
      for (const [id, one] of hung) {
        const text = wanted.get(id);
        const fits =
          text !== undefined && textWidth(text, context.layout.fontPx, 600) <= one.roomPx;
        if (fits) continue;
        one.node.destroy({ children: true });
        hung.delete(id);
        changed = true;
      }
      for (const [id, text] of wanted) {
        const item = items.find((each) => each.id === id);
        if (item === undefined) continue;
        const one = hung.get(id);
        if (one === undefined) hung.set(id, hang(item, text));
        else if (one.text !== text) {
          one.text = text;
          one.label.refresh(blank);
        } else continue;
        changed = true;
      }
      return changed;
    },
  };
}
