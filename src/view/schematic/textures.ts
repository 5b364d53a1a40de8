import { CanvasSource, Texture } from 'pixi.js';
import type { Palette } from '../palette.ts';
import { type FlamePart, flamePixels } from './flame-pixels.ts';

/** Painted once per theme; both renderers draw them, where neither need know a filter. */
export interface Textures {
  /** Marks for a pipe of a bore, in px: chevrons that point along it. */
  chevrons(borePx: number): Texture;
  readonly dots: Texture;
  readonly flameBody: Texture;
  readonly flameFoot: Texture;
  readonly glow: Texture;
  readonly haze: Texture;
  readonly bubble: Texture;
  destroy(): void;
}

const DENSITY = 2;

export function createTextures(palette: Palette): Textures {
  const made: Texture[] = [];
  const byBore = new Map<number, Texture>();
  const keep = (texture: Texture): Texture => {
    made.push(texture);
    return texture;
  };
  return {
    chevrons(borePx) {
      const bore = Math.round(borePx);
      const known = byBore.get(bore);
      if (known !== undefined) return known;
      const texture = keep(paintChevrons(bore, palette.mark));
      byBore.set(bore, texture);
      return texture;
    },
    dots: keep(paintDots(palette.gas)),
    flameBody: keep(paintFlame('body')),
    flameFoot: keep(paintFlame('foot')),
    glow: keep(paintRadial('255, 170, 80', 128, 0.5)),
    haze: keep(paintRadial(hexToRgb(palette.haze), 64, 0.55)),
    bubble: keep(paintBubble()),
    destroy() {
      for (const texture of made) texture.destroy(true);
    },
  };
}

function canvasOf(width: number, height: number): CanvasRenderingContext2D {
  const canvas = document.createElement('canvas');
  canvas.width = width * DENSITY;
  canvas.height = height * DENSITY;
  const context = canvas.getContext('2d');
  if (context === null) throw new Error('a 2D canvas is needed to paint textures');
  context.scale(DENSITY, DENSITY);
  return context;
}

function textureOf(context: CanvasRenderingContext2D, repeats = false): Texture {
  return new Texture({
    source: new CanvasSource({
      resource: context.canvas,
      resolution: DENSITY,
      addressMode: repeats ? 'repeat' : 'clamp-to-edge',
    }),
  });
}

function paintChevrons(bore: number, colour: string): Texture {
  const pitch = Math.max(16, Math.round(bore * 0.9));
  const context = canvasOf(pitch, bore);
  const reach = Math.min(bore * 0.26, 6);
  context.strokeStyle = colour;
  context.globalAlpha = 0.82;
  context.lineWidth = Math.max(1.6, bore * 0.085);
  context.lineCap = 'round';
  context.lineJoin = 'round';
  context.beginPath();
  context.moveTo(pitch / 2 - reach / 2, bore / 2 - reach);
  context.lineTo(pitch / 2 + reach / 2, bore / 2);
  context.lineTo(pitch / 2 - reach / 2, bore / 2 + reach);
  context.stroke();
  return textureOf(context, true);
}

function paintDots(colour: string): Texture {
  const context = canvasOf(20, 20);
  context.fillStyle = colour;
  for (const [x, y] of [
    [5, 5],
    [15, 15],
  ]) {
    context.beginPath();
    context.arc(x, y, 2.6, 0, 2 * Math.PI);
    context.fill();
  }
  return textureOf(context, true);
}

function paintFlame(part: FlamePart): Texture {
  const { width, height, data } = flamePixels(part, 256 * DENSITY, 96 * DENSITY);
  const context = canvasOf(256, 96);
  context.putImageData(new ImageData(data, width, height), 0, 0);
  return textureOf(context);
}

function paintRadial(rgb: string, size: number, alpha: number): Texture {
  const context = canvasOf(size, size);
  const shade = context.createRadialGradient(size / 2, size / 2, 0, size / 2, size / 2, size / 2);
  shade.addColorStop(0, `rgba(${rgb}, ${alpha})`);
  shade.addColorStop(0.5, `rgba(${rgb}, ${alpha * 0.4})`);
  shade.addColorStop(1, `rgba(${rgb}, 0)`);
  context.fillStyle = shade;
  context.fillRect(0, 0, size, size);
  return textureOf(context);
}

function paintBubble(): Texture {
  const context = canvasOf(12, 12);
  context.fillStyle = 'rgba(255, 255, 255, 0.55)';
  context.strokeStyle = 'rgba(255, 255, 255, 0.9)';
  context.lineWidth = 1.2;
  context.beginPath();
  context.arc(6, 6, 4.4, 0, 2 * Math.PI);
  context.fill();
  context.stroke();
  return textureOf(context);
}

function hexToRgb(hex: string): string {
  const value = Number.parseInt(hex.slice(1), 16);
  return `${(value >> 16) & 255}, ${(value >> 8) & 255}, ${value & 255}`;
}
