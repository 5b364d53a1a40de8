import { CanvasSource, Sprite, Texture } from 'pixi.js';
import type { SceneContext } from './scene.ts';

export interface Letters {
  readonly sprite: Sprite;
  sharpen(resolution: number): void;
}

/** Letters inside a symbol (ISA-5.1), painted once and again when the view is zoomed. */
export function createLetters(text: string, fontPx: number, context: SceneContext): Letters {
  const side = fontPx * (text.length + 1);
  const canvas = document.createElement('canvas');
  const source = new CanvasSource({
    resource: canvas,
    width: side,
    height: side,
    resolution: context.resolution * context.layout.scale,
  });
  const pen = canvas.getContext('2d');
  if (pen === null) throw new Error('a 2D canvas is needed to paint letters');
  const texture = new Texture({ source, dynamic: true });
  const sprite = new Sprite(texture);
  sprite.once('destroyed', () => texture.destroy(true));
  sprite.anchor.set(0.5);
  const paint = (resolution: number): void => {
    pen.setTransform(resolution, 0, 0, resolution, 0, 0);
    pen.clearRect(0, 0, side, side);
    pen.font = `600 ${fontPx}px ${context.fontFamily}`;
    pen.textAlign = 'center';
    pen.fillStyle = context.palette.ink;
    pen.fillText(text, side / 2, side / 2 + fontPx * 0.35);
    source.update();
  };
  paint(source.resolution);
  return {
    sprite,
    sharpen(resolution) {
      source.resize(side, side, resolution * context.layout.scale);
      paint(source.resolution);
    },
  };
}
