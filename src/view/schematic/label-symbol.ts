import { CanvasSource, Container, Sprite, Texture } from 'pixi.js';
import type { LineText } from './label-lines.ts';
import type { LabelSpec } from './labels.ts';
import type { PlacedLabel } from './layout-types.ts';
import type { Drawn, SceneContext } from './scene.ts';
import { paintLine, type TextStyle } from './text-paint.ts';

export interface LabelSymbol extends Drawn {
  readonly node: Container;
  readonly isFixed: boolean;
  /** Read the frame and paint what changed; true if something did. */
  refresh(values: Float64Array): boolean;
  /** Paint all of it again, as when the font has come. */
  repaint(): void;
}

/** Letters may hang over their box by this much. */
const OVERHANG_PX = 2;

/**
 * A label painted on a small canvas of its own: a changed reading is one fillText, and the
 * scene's list of what to draw stays as it is (a Text that changes has that list built anew).
 */
export function createLabelSymbol(
  place: PlacedLabel,
  spec: LabelSpec,
  context: SceneContext,
): LabelSymbol {
  const { layout, fontFamily, palette } = context;
  const style: TextStyle = {
    fontFamily,
    fontPx: layout.fontPx,
    lineHeightPx: layout.lineHeightPx,
    palette,
  };
  const width = Math.ceil(place.box.width) + 2 * OVERHANG_PX;
  const height = Math.ceil(place.box.height) + 2 * OVERHANG_PX;
  const canvas = document.createElement('canvas');
  const source = new CanvasSource({
    resource: canvas,
    width,
    height,
    resolution: context.resolution,
  });
  const pen = canvas.getContext('2d');
  if (pen === null) throw new Error('a 2D canvas is needed to paint labels');
  const texture = new Texture({ source, dynamic: true });
  const sprite = new Sprite(texture);
  sprite.once('destroyed', () => texture.destroy(true));
  sprite.position.set(Math.round(place.box.x) - OVERHANG_PX, Math.round(place.box.y) - OVERHANG_PX);
  const node = new Container({ children: [sprite] });
  const shown: (readonly LineText[] | null)[] = spec.lines.map(() => null);
  let resolution = context.resolution;

  const paint = (): void => {
    pen.setTransform(resolution, 0, 0, resolution, 0, 0);
    pen.clearRect(0, 0, width, height);
    for (let i = 0; i < shown.length; i += 1) {
      const runs = shown[i];
      if (runs === null) continue;
      paintLine(
        pen,
        runs,
        { x: OVERHANG_PX, y: OVERHANG_PX + i * style.lineHeightPx, width: place.box.width },
        place.align,
        style,
      );
    }
    source.update();
  };
  return {
    node,
    isFixed: spec.lines.every((line) => line.fixed === true),
    refresh(values) {
      let changed = false;
      for (let i = 0; i < shown.length; i += 1) {
        const runs = spec.lines[i].read(values);
        if (!sameText(shown[i], runs)) {
          shown[i] = runs;
          changed = true;
        }
      }
      if (changed) paint();
      return changed;
    },
    repaint: paint,
    sharpen(next) {
      if (next === resolution) return;
      resolution = next;
      source.resize(width, height, next);
      paint();
    },
  };
}

function sameText(before: readonly LineText[] | null, now: readonly LineText[]): boolean {
  if (before === null || before.length !== now.length) return false;
  for (let i = 0; i < now.length; i += 1) {
    if (before[i].text !== now[i].text || before[i].tone !== now[i].tone) return false;
    if (before[i].tick !== now[i].tick) return false;
  }
  return true;
}
