import { Container, Graphics } from 'pixi.js';
import { textWidth } from '../text-width.ts';
import type { SchematicItem } from './items.ts';
import { createLabelSymbol, type LabelSymbol } from './label-symbol.ts';
import type { Rect } from './layout-types.ts';
import type { SceneContext } from './scene.ts';
import { pipeRects, placeTags, type TagPlace, type TagWish } from './tag-places.ts';
import type { ItemTag } from './types.ts';

/** Tags beside items: one for each, however many tools are there; only what changed is painted. */
export interface ItemTags {
  readonly node: Container;
  /** True when something has to be drawn. */
  show(tags: readonly ItemTag[]): boolean;
  sharpen(resolution: number): void;
}

interface Hung {
  text: string;
  readonly roomPx: number;
  readonly label: LabelSymbol;
}

/** Digits come and go: a tag is not made anew for each of them. */
const SPARE_PX = 12;
const RING_PX = 4;
const LINE_PX = 2.5;
/** Rooms rather than things: a tag may stand in them. */
const ROOMS = new Set(['furnace', 'vessel', 'burner', 'stack']);

export function createItemTags(items: readonly SchematicItem[], context: SceneContext): ItemTags {
  const { layout, palette } = context;
  const node = new Container();
  const hung = new Map<string, Hung>();
  const blank = new Float64Array(0);
  const ground = {
    size: layout.size,
    lineHeightPx: layout.lineHeightPx,
    solid: [
      ...items.filter(({ kind }) => !ROOMS.has(kind)).map(({ box }) => box),
      ...layout.labels.map(({ box }) => box).filter(({ width }) => width > 0),
      viewTabs(layout.size),
    ],
    soft: pipeRects(layout.pipes),
  };
  let resolution = context.resolution;

  function hangAll(wanted: ReadonlyMap<string, string>): void {
    for (const child of node.removeChildren()) child.destroy({ children: true });
    hung.clear();
    const wishes = items.flatMap(({ id, box }): TagWish[] => {
      const text = wanted.get(id);
      return text === undefined ? [] : [{ id, at: box, textPx: roomFor(text) }];
    });
    for (const [id, place] of placeTags(wishes, ground)) hang(id, wanted.get(id) ?? '', place);
  }

  function hang(id: string, text: string, { box, from, to }: TagPlace): void {
    const line = new Graphics();
    line.moveTo(from.x, from.y).lineTo(to.x, to.y);
    line.stroke({ width: LINE_PX, color: palette.accent });
    line.circle(from.x, from.y, RING_PX).fill(palette.accent);
    line.roundRect(box.x, box.y, box.width, box.height, 5).fill(palette.accent);
    const held: { text: string } = { text };
    const label = createLabelSymbol(
      { id, align: 'center', box: { ...box, y: box.y + 2, height: layout.lineHeightPx } },
      {
        id,
        lines: [{ read: () => [{ text: held.text, tone: 'value', tick: false }], widest: [] }],
      },
      { ...context, resolution, palette: { ...palette, ink: palette.panel } },
    );
    label.refresh(blank);
    node.addChild(line, label.node);
    hung.set(id, Object.assign(held, { roomPx: roomFor(text), label }));
  }

  function roomFor(text: string): number {
    return textWidth(text, layout.fontPx, 600) + SPARE_PX;
  }

  return {
    node,
    show(tags) {
      const wanted = new Map<string, string>();
      for (const { item, text } of tags) {
        if (!items.some(({ id }) => id === item)) continue;
        const before = wanted.get(item);
        wanted.set(item, before === undefined ? text : `${before} · ${text}`);
      }
      const isSame =
        wanted.size === hung.size &&
        [...wanted].every(([id, text]) => {
          const room = hung.get(id)?.roomPx ?? 0;
          return textWidth(text, layout.fontPx, 600) <= room;
        });
      if (!isSame) {
        hangAll(wanted);
        return true;
      }
      let changed = false;
      for (const [id, one] of hung) {
        const text = wanted.get(id) ?? '';
        if (one.text === text) continue;
        one.text = text;
        changed = one.label.refresh(blank) || changed;
      }
      return changed;
    },
    sharpen(next) {
      resolution = next;
      for (const { label } of hung.values()) label.sharpen?.(next);
    },
  };
}

/** Where the page's own buttons lie over the drawing: under the fan, left of the burner. */
function viewTabs(size: { readonly width: number; readonly height: number }): Rect {
  return { x: 0, y: size.height * 0.4, width: 226, height: 112 };
}
